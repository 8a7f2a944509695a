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

import { alongLine, type Line, lineThrough, offsetLine } from "../geom/line.ts";
import { cross, distance, isNear, type Point } from "../geom/point.ts";
import type { Ring } from "../geom/ring.ts";
import type { Mm } from "../units.ts";
import type { DrawnWall } from "./drawnWall.ts";
import type { WallSide } from "./face.ts";
import type { Joints } from "./joints.ts";
import type { MitreCorners } from "./mitre.ts";
import { type EndCorners, meetSides, sideLines, squareEnd } from "./wallEnd.ts";

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
  /** For the union: a hair larger than the edges say. */
  readonly ring: Ring;
  /** Whether a joint cuts one of the two sides away altogether. */
  readonly isCutAway: boolean;
}

/** Builds the bodies, in the order of the walls. */
export function buildBodies(walls: readonly DrawnWall[], joints: Joints, mitres: MitreCorners): Body[] {
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

function runToLine(wall: DrawnWall, line: Line, square: EndCorners): EndCorners {
  const stop = { at: line, grown: line };
  return {
    left: meetSides(sideLines(wall, "left"), stop) ?? square.left,
    between: [],
    right: meetSides(sideLines(wall, "right"), stop) ?? square.right,
  };
}

function isCutAway(wall: DrawnWall, from: EndCorners, to: EndCorners): boolean {
  const runs = (a: Point, b: Point) => alongLine(wall.line, b) - alongLine(wall.line, a);
  return runs(from.left.at, to.left.at) <= 0 || runs(from.right.at, to.right.at) <= 0;
}

function bodyOf(index: number, wall: DrawnWall, [from, to]: readonly [EndCorners, EndCorners]): Body {
  const corners = [from.right, to.right, ...[...to.between].reverse(), to.left, from.left, ...from.between];
  const lastTo = 1 + to.between.length;
  const edges: BodyEdge[] = [];
  corners.forEach(({ at }, i) => {
    const next = corners[(i + 1) % corners.length]!.at;
    if (isNear(at, next, LEAST_EDGE)) return;
    const side = i === 0 ? "right" : i <= lastTo ? "to" : i === lastTo + 1 ? "left" : "from";
    const isSide = side === "left" || side === "right";
    const line = isSide ? sideLine(wall, side, [at, next]) : endLine(wall, at, next);
    edges.push({
      wall: index,
      side,
      from: at,
      to: next,
      line,
      weight: isSide ? wall.length : distance(at, next),
    });
  });
  return { edges, ring: corners.map((corner) => corner.grown), isCutAway: isCutAway(wall, from, to) };
}

// Sides take their line from the wall, so that every piece of one straight wall has the same.
function sideLine(wall: DrawnWall, side: "left" | "right", [from, to]: readonly [Point, Point]): Line {
  const { x, y, ux, uy } = offsetLine(wall.line, wall[side]);
  const isForward = (to[0] - from[0]) * ux + (to[1] - from[1]) * uy > 0;
  return isForward ? { x, y, ux, uy } : { x, y, ux: -ux, uy: -uy };
}

// A square end takes its direction from the wall.
function endLine(wall: DrawnWall, from: Point, to: Point): Line {
  const direct = lineThrough(from, to);
  const { ux, uy } = wall.line;
  const square = cross(ux, uy, direct.ux, direct.uy);
  if (square > SAME_DIRECTION) return { ...direct, ux: -uy, uy: ux };
  return square < -SAME_DIRECTION ? { ...direct, ux: uy, uy: -ux } : direct;
}

const LEAST_EDGE = 1e-6; // mm; anything shorter is rounding and has no direction
const SAME_DIRECTION = 1 - 1e-12;
