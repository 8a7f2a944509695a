// The body of each wall: its two sides, run at either end to where the joint puts them.
//
//                  left side, walked against the drawn line
//        ┌──────────────◀──────────────┐
//   from │  ●───────────────────────▶● │ to
//        └──────────────▶──────────────┘
//                  right side
//
// Rings run counter-clockwise. A side that its two joints cut away altogether runs backwards: the ring then takes from
// the neighbour in the corner exactly what the drawing leaves out, and the union counts it so.

import { alongLine, intersectLines, type Line, lineThrough, offsetLine } from "../geom/line.ts";
import { distance, isNear, type Point } from "../geom/point.ts";
import type { Ring } from "../geom/ring.ts";
import type { Mm } from "../units.ts";
import type { DrawnWall } from "./drawnWall.ts";
import type { WallSide } from "./face.ts";
import type { Joints } from "./joints.ts";
import type { MitrePoints } from "./mitre.ts";
import { type EndPoints, squareEnd } from "./wallEnd.ts";

/** One edge of a body's ring, the body on its left. */
export interface BodyEdge {
  /** Position of the wall in the list of drawn walls. */
  readonly wall: number;
  readonly side: WallSide;
  readonly from: Point;
  readonly to: Point;
  /** The line of the edge; exact along the axes. */
  readonly line: Line;
  /** How much the line counts where two are to become one: the length drawn for a side, its own for an end. */
  readonly weight: Mm;
}

/** The body of one wall. */
export interface Body {
  readonly edges: readonly BodyEdge[];
  /** Whether a joint cuts one of the two sides away altogether. */
  readonly isCutAway: boolean;
}

/** Builds the bodies, in the order of the walls. */
export function buildBodies(walls: readonly DrawnWall[], joints: Joints, mitres: MitrePoints): Body[] {
  return walls.map((wall, i) => {
    const ends = [0, 1].map((at) => {
      const end = 2 * i + at;
      const joint = joints.ends[end]!;
      const square = squareEnd(walls, end);
      if (joint.kind === "line") return { points: runToLine(wall, joint.line, square), square };
      if (joint.kind === "corner") return { points: mitres.get(end) ?? square, square };
      return { points: square, square };
    });
    const [from, to] = [ends[0]!, ends[1]!];
    if (!isCutAway(wall, from.points, to.points)) return bodyOf(i, wall, [from.points, to.points]);
    // Running to a line must not cut a side away: the wall passing by would lose concrete that is its own.
    const kept = ends.map((end, at) => (joints.ends[2 * i + at]!.kind === "line" ? end.square : end.points));
    return bodyOf(i, wall, [kept[0]!, kept[1]!]);
  });
}

/** The ring of a body, for the union. */
export function bodyRing(body: Body): Ring {
  return body.edges.map((edge) => edge.from);
}

function runToLine(wall: DrawnWall, line: Line, square: EndPoints): EndPoints {
  return {
    left: intersectLines(offsetLine(wall.line, wall.left), line) ?? square.left,
    between: [],
    right: intersectLines(offsetLine(wall.line, wall.right), line) ?? square.right,
  };
}

function isCutAway(wall: DrawnWall, from: EndPoints, to: EndPoints): boolean {
  const runs = (a: Point, b: Point) => alongLine(wall.line, b) - alongLine(wall.line, a);
  return runs(from.left, to.left) <= 0 || runs(from.right, to.right) <= 0;
}

function bodyOf(index: number, wall: DrawnWall, [from, to]: readonly [EndPoints, EndPoints]): Body {
  const corners: { readonly at: Point; readonly side: WallSide }[] = [
    { at: from.right, side: "right" },
    { at: to.right, side: "to" },
    ...[...to.between].reverse().map((at) => ({ at, side: "to" as const })),
    { at: to.left, side: "left" },
    { at: from.left, side: "from" },
    ...from.between.map((at) => ({ at, side: "from" as const })),
  ];
  const edges: BodyEdge[] = [];
  corners.forEach(({ at, side }, i) => {
    const next = corners[(i + 1) % corners.length]!.at;
    if (isNear(at, next, LEAST_EDGE)) return;
    const weight = side === "left" || side === "right" ? wall.length : distance(at, next);
    edges.push({ wall: index, side, from: at, to: next, line: edgeLine(wall, side, [at, next]), weight });
  });
  return { edges, isCutAway: isCutAway(wall, from, to) };
}

// Sides and square ends take their direction from the wall, so that every piece of one straight wall has the same.
function edgeLine(wall: DrawnWall, side: WallSide, [from, to]: readonly [Point, Point]): Line {
  const direct = lineThrough(from, to);
  const { ux, uy } = wall.line;
  for (const [x, y] of [
    [ux, uy],
    [-ux, -uy],
    [-uy, ux],
    [uy, -ux],
  ] as const) {
    if (x * direct.ux + y * direct.uy > SAME_DIRECTION)
      return sideLine(wall, side, { ...direct, ux: x, uy: y });
  }
  return direct;
}

const LEAST_EDGE = 1e-6; // mm; anything shorter is rounding and has no direction
const SAME_DIRECTION = 1 - 1e-12;

function sideLine(wall: DrawnWall, side: WallSide, line: Line): Line {
  if (side !== "left" && side !== "right") return line;
  const { x, y } = offsetLine(wall.line, wall[side]);
  return { ...line, x, y };
}
