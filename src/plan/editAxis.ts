// The drawn line of a wall and the body beside it, as edits need them: length, places along it, which walls meet
// at an end and which carry straight on.
//
//        left
//   ┌──────────────────────┐ ▲
//   ●─────────────────────▶● │ span: from how far right to how far left of the drawn line the body reaches
//   └──────────────────────┘ ▼

import { alongLine, asideOfLine, type Line, lineThrough, pointAt } from "../geom/line.ts";
import { cross, isNear } from "../geom/point.ts";
import type { Mm } from "../units.ts";
import { type Entry, find, listed, type Records } from "./document.ts";
import type { Justify, Position, Wall } from "./project.ts";

/** Ends no further apart than this are one joint: the tie tolerance, common practice, no source. */
export const JOINT_REACH = 2;

/** The shortest wall an edit leaves, mm. */
export const LEAST_WALL = 1;

const NEARLY_WHOLE = 1e-6; // far under any length that is drawn, far over the noise of a few products
const COLLINEAR = 1e-3; // 1 mm in 1 m: sine between two drawn lines that are meant as one

type Walls = Records<Entry<Wall>>;
export type WallEnd = "from" | "to";

/** The whole number next to `value` where only rounding noise parts them; never −0. */
export function tidy(value: number): number {
  const whole = Math.round(value);
  return Math.abs(value - whole) < NEARLY_WHOLE ? whole + 0 : value;
}

/** A place with both coordinates rid of rounding noise. */
export function tidyPosition([x, y]: Position): Position {
  return [tidy(x), tidy(y)];
}

/** A place moved. */
export function shifted([x, y]: Position, dx: Mm, dy: Mm): Position {
  return [tidy(x + dx), tidy(y + dy)];
}

/**
 * The drawn line from `from` towards `to`.
 *
 * @throws {RangeError} if both ends coincide
 */
export function wallLine(wall: Pick<Wall, "from" | "to">): Line {
  return lineThrough(wall.from, wall.to);
}

/** Length of the drawn line, exact along an axis. */
export function spanLength(from: Position, to: Position): Mm {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  if (dx === 0) return Math.abs(dy);
  return dy === 0 ? Math.abs(dx) : tidy(Math.sqrt(dx * dx + dy * dy));
}

export function wallLength(wall: Pick<Wall, "from" | "to">): Mm {
  return spanLength(wall.from, wall.to);
}

/** The place `at` along the drawn line. */
export function placeOnWall(wall: Pick<Wall, "from" | "to">, at: Mm): Position {
  return tidyPosition(pointAt(wallLine(wall), at, 0));
}

/** How far right (negative) and left (positive) of its drawn line the body reaches. */
export function bodySpan(wall: Pick<Wall, "thickness" | "justify">): readonly [right: Mm, left: Mm] {
  const t = wall.thickness;
  if (wall.justify === "left") return [-t, 0];
  return wall.justify === "right" ? [0, t] : [-t / 2, t / 2];
}

/** What a justification reads as from the other end, or in a mirror. */
export function otherJustify(justify: Justify): Justify {
  if (justify === "centre") return "centre";
  return justify === "left" ? "right" : "left";
}

/** Whether `place` lies on the drawn line between the ends, clear of both joints. */
export function isOnWall(wall: Pick<Wall, "from" | "to">, place: Position): boolean {
  const line = wallLine(wall);
  const along = alongLine(line, place);
  const isBetween = along > JOINT_REACH && along < wallLength(wall) - JOINT_REACH;
  return isBetween && Math.abs(asideOfLine(line, place)) <= JOINT_REACH;
}

/** Which end of the wall lies at `place`, or null. */
export function endAt(wall: Pick<Wall, "from" | "to">, place: Position): WallEnd | null {
  if (isNear(wall.from, place, JOINT_REACH)) return "from";
  return isNear(wall.to, place, JOINT_REACH) ? "to" : null;
}

/** Whether two drawn lines lie on one straight line. */
export function isCollinear(a: Pick<Wall, "from" | "to">, b: Pick<Wall, "from" | "to">): boolean {
  const line = wallLine(a);
  const other = wallLine(b);
  return (
    Math.abs(cross(line.ux, line.uy, other.ux, other.uy)) < COLLINEAR &&
    Math.abs(asideOfLine(line, b.from)) <= JOINT_REACH &&
    Math.abs(asideOfLine(line, b.to)) <= JOINT_REACH
  );
}

/**
 * The walls that carry straight on from `id` through shared ends, itself among them, in the order of the file.
 * They are one wall drawn in pieces, so they move across their line together.
 */
export function straightChain(walls: Walls, id: string): readonly Entry<Wall>[] {
  const first = find(walls, id);
  if (first === undefined) return [];
  const all = listed(walls);
  const chain = new Set([first]);
  for (const wall of chain) {
    for (const other of all) {
      const meets = endAt(wall, other.from) !== null || endAt(wall, other.to) !== null;
      if (!chain.has(other) && meets && isCollinear(first, other)) chain.add(other);
    }
  }
  return all.filter((wall) => chain.has(wall));
}
