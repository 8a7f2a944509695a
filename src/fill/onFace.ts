// From places on a line of wall to x on a face and to points in the plan.

import type { Position } from "../plan/project.ts";
import { type Mm, roundTo } from "../units.ts";
import { placeOf } from "./lines.ts";
import type { SettledFace } from "./settled.ts";

/** x of the stretch from `low` to `high` as the assembler sees it: its left end. */
export function xOf(face: SettledFace, low: Mm, high: Mm): Mm {
  return face.isReversed ? face.high - high : low - face.low;
}

/** The point of the face's own line at a place, coordinates to 0.001 mm. */
export function pointAt(face: SettledFace, place: Mm): Position {
  const [dx, dy] = face.direction;
  const { from } = face.formed;
  const by = place - placeOf(face.direction, from);
  return [roundTo(from[0] + dx * by, 3), roundTo(from[1] + dy * by, 3)];
}

/** The point `depth` into the concrete from the face at a place, coordinates to 0.001 mm. */
export function pointInside(face: SettledFace, place: Mm, depth: Mm): Position {
  const [dx, dy] = face.direction;
  const { from } = face.formed;
  const by = place - placeOf(face.direction, from);
  // Concrete is on the left of the face's own direction, which may run against the line.
  const sign = face.isReversed ? -1 : 1;
  return [
    roundTo(from[0] + dx * by - sign * dy * depth, 3),
    roundTo(from[1] + dy * by + sign * dx * depth, 3),
  ];
}
