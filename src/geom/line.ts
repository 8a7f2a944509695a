// Directed straight lines: a point on the line and its unit direction.
//
//         left
//   ●─────────────▶ (ux, uy)
//   (x, y)

import { cross, type Point } from "./point.ts";

/** A directed line through (x, y). (ux, uy) has length 1, exactly so along an axis. */
export interface Line {
  readonly x: number;
  readonly y: number;
  readonly ux: number;
  readonly uy: number;
}

/**
 * The line from `a` towards `b`.
 *
 * @throws {RangeError} if the points coincide
 */
export function lineThrough(a: Point, b: Point): Line {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  // The root of a square is exact, that of a sum need not be: along an axis no root is drawn of a sum.
  const length = dx === 0 ? Math.abs(dy) : dy === 0 ? Math.abs(dx) : Math.sqrt(dx * dx + dy * dy);
  if (!(length > 0)) throw new RangeError("a line needs two different points");
  return { x: a[0], y: a[1], ux: dx / length, uy: dy / length };
}

/** The parallel line `offset` to the left (negative: to the right). */
export function offsetLine(line: Line, offset: number): Line {
  return { ...line, x: line.x - line.uy * offset, y: line.y + line.ux * offset };
}

/** The point `along` from the line's own point, `aside` to its left. */
export function pointAt(line: Line, along: number, aside: number): Point {
  return [line.x + line.ux * along - line.uy * aside, line.y + line.uy * along + line.ux * aside];
}

/** How far along the line the foot of `point` lies. */
export function alongLine(line: Line, point: Point): number {
  return (point[0] - line.x) * line.ux + (point[1] - line.y) * line.uy;
}

/** How far to the left of the line `point` lies; negative to the right. */
export function asideOfLine(line: Line, point: Point): number {
  return cross(line.ux, line.uy, point[0] - line.x, point[1] - line.y);
}

const PARALLEL = 1e-9; // sine of the least angle at which two lines are taken to cross

/**
 * Where two lines cross, or null where they are parallel. Lines along the two axes give their own coordinates back,
 * free of rounding.
 */
export function intersectLines(a: Line, b: Line): Point | null {
  const sine = cross(a.ux, a.uy, b.ux, b.uy);
  if (Math.abs(sine) < PARALLEL) return null;
  if (a.uy === 0 && b.ux === 0) return [b.x, a.y];
  if (a.ux === 0 && b.uy === 0) return [a.x, b.y];
  const along = cross(b.x - a.x, b.y - a.y, b.ux, b.uy) / sine;
  const x = a.ux === 0 ? a.x : b.ux === 0 ? b.x : a.x + a.ux * along;
  const y = a.uy === 0 ? a.y : b.uy === 0 ? b.y : a.y + a.uy * along;
  return [x, y];
}
