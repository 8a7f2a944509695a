// From places on a line of wall to x on a face and to points in the plan.

import type { Position } from "../plan/project.ts";
import { type Mm, roundTo } from "../units.ts";
import type { SettledFace } from "./settled.ts";

/** x of the stretch from `low` to `high` as the assembler sees it: its left end. */
export function xOf(face: SettledFace, low: Mm, high: Mm): Mm {
  return face.isReversed ? face.high - high : low - face.low;
}

/** The point of the face's own line at a place, coordinates to 0.001 mm. */
export function pointAt(face: SettledFace, place: Mm): Position {
  return pointInside(face, place, 0);
}

/** The point `depth` into the concrete from the face at a place, coordinates to 0.001 mm. */
export function pointInside(face: SettledFace, place: Mm, depth: Mm): Position {
  const { from, to } = face.formed;
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const length = Math.sqrt(dx * dx + dy * dy);
  if (length === 0) return [roundTo(from[0], 3), roundTo(from[1], 3)];
  const [ux, uy] = [dx / length, dy / length];
  // Along the face as drawn: on a line a hair off its axis the settled direction would lead away from it.
  const by = face.isReversed ? face.drawnHigh - place : place - face.drawnLow;
  return [roundTo(from[0] + ux * by - uy * depth, 3), roundTo(from[1] + uy * by + ux * depth, 3)];
}
