// The corners of one end of a wall body, and where they go when the body is grown by a hair for the union.
//
//   left  ●─────────────
//         │  ● drawn line
//   right ●─────────────
//
// Bodies that share a line exactly need not share it once the union has rounded it: a slit too thin to see would be
// left, and the union loses rooms along such slits. So the union is given every body a hair larger, and the outline is
// put back on the drawn lines afterwards.

import { intersectLines, type Line, offsetLine } from "../geom/line.ts";
import type { Point } from "../geom/point.ts";
import type { Mm } from "../units.ts";
import type { DrawnWall } from "./drawnWall.ts";
import { endPoint } from "./joints.ts";

/** How much a body grows to each side for the union: 64 of the union's steps, and far below any tolerance. */
const GROWTH: Mm = 1 / 256;

/** A corner as drawn, and as given to the union. */
export interface BodyCorner {
  readonly at: Point;
  readonly grown: Point;
}

/** Corners of an end of a body: the one on the wall's left first, then any between, the one on its right last. */
export interface EndCorners {
  readonly left: BodyCorner;
  readonly between: readonly BodyCorner[];
  readonly right: BodyCorner;
}

/** A side of a body as drawn, and as given to the union. */
export interface SideLines {
  readonly at: Line;
  readonly grown: Line;
}

/** The line of one side of a wall, directed as the wall. */
export function sideLines(wall: DrawnWall, side: "left" | "right"): SideLines {
  const outwards = side === "left" ? GROWTH : -GROWTH;
  return { at: offsetLine(wall.line, wall[side]), grown: offsetLine(wall.line, wall[side] + outwards) };
}

/** Where two sides meet, or null where they are parallel. */
export function meetSides(a: SideLines, b: SideLines): BodyCorner | null {
  const at = intersectLines(a.at, b.at);
  const grown = intersectLines(a.grown, b.grown);
  return at === null || grown === null ? null : { at, grown };
}

/** An end cut square at the end of the drawn line. */
export function squareEnd(walls: readonly DrawnWall[], end: number): EndCorners {
  const wall = walls[end >> 1]!;
  const [x, y] = endPoint(walls, end);
  const { ux, uy } = wall.line;
  const outwards = end % 2 === 0 ? -GROWTH : GROWTH;
  const corner = (by: number, growth: number): BodyCorner => ({
    at: [x - uy * by, y + ux * by],
    grown: [x - uy * (by + growth) + ux * outwards, y + ux * (by + growth) + uy * outwards],
  });
  return { left: corner(wall.left, GROWTH), between: [], right: corner(wall.right, -GROWTH) };
}
