// The corners of one end of a wall body.
//
//   left  ●─────────────
//         │  ● drawn line
//   right ●─────────────

import type { Point } from "../geom/point.ts";
import type { DrawnWall } from "./drawnWall.ts";
import { endPoint } from "./joints.ts";

/** Corners of an end of a body: the one on the wall's left first, then any between, the one on its right last. */
export interface EndPoints {
  readonly left: Point;
  readonly between: readonly Point[];
  readonly right: Point;
}

/** An end cut square at the end of the drawn line. */
export function squareEnd(walls: readonly DrawnWall[], end: number): EndPoints {
  const wall = walls[end >> 1]!;
  const [x, y] = endPoint(walls, end);
  const { ux, uy } = wall.line;
  const aside = (by: number): Point => [x - uy * by, y + ux * by];
  return { left: aside(wall.left), between: [], right: aside(wall.right) };
}
