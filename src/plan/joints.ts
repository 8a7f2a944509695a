// How the end of each wall meets the other walls.
//
//    square          line               corner
//   ────┐          ──────┤ │          ─────────╱      a free end, or the other half of a straight wall;
//   ----●          ------● │          --------●       an end on the drawn line of a wall passing by;
//   ────┘          ──────┤ │          ──────╱ │       ends that meet and are mitred
//
// Ends are numbered 2 × wall for `from`, 2 × wall + 1 for `to`.

import { clusterPoints } from "../geom/cluster.ts";
import { buildGridIndex } from "../geom/gridIndex.ts";
import { alongLine, asideOfLine, type Line } from "../geom/line.ts";
import { compareDirections, cross, type Point } from "../geom/point.ts";
import type { DrawnWall } from "./drawnWall.ts";
import { TIE_TOLERANCE } from "./tolerance.ts";

/** How an end is formed. `walls` are the walls it joins. */
export type EndJoint =
  | { readonly kind: "square" }
  | { readonly kind: "line"; readonly line: Line; readonly walls: readonly number[] }
  | { readonly kind: "corner"; readonly corner: number };

/** Ends that meet and are mitred, counter-clockwise by the direction in which their walls leave. */
export interface MitredCorner {
  readonly node: Point;
  readonly ends: readonly number[];
}

export interface Joints {
  /** By number of the end. */
  readonly ends: readonly EndJoint[];
  readonly corners: readonly MitredCorner[];
}

const CELL = 1000; // mm
const LEAST_SINE = 0.02; // a wall running in at less than about 1° has no useful meeting point with a line
const HAIR_BEND = 0.1; // mm over the thickness: a slip of the hand, a few hundredths of a degree
const STRAIGHT_COSINE = 0.99; // opposite directions: beyond this two ends are never one straight wall

/** Finds the joint of every end. Cost is near-linear in the number of walls. */
export function findJoints(walls: readonly DrawnWall[]): Joints {
  const points = walls.flatMap((wall) => [wall.from, wall.to]);
  const group = clusterPoints(points, TIE_TOLERANCE);
  const members = new Map<number, number[]>();
  group.forEach((first, end) => {
    const ends = members.get(first);
    if (ends === undefined) members.set(first, [end]);
    else ends.push(end);
  });
  const index = buildGridIndex(
    walls.map((wall) => [wall.from, wall.to]),
    CELL,
  );
  const joints: EndJoint[] = points.map(() => ({ kind: "square" }));
  const corners: MitredCorner[] = [];
  for (const ends of members.values()) {
    const passing = wallsPassing(walls, ends, (end) => index.near(points[end]!, points[end]!, TIE_TOLERANCE));
    if (passing.length > 0) {
      for (const end of ends) joints[end] = joinToBest(walls, end, passing);
    } else if (ends.length > 1) joinEnds(walls, ends, { joints, corners });
  }
  return { ends: joints, corners };
}

/** The direction in which the wall leaves its end. */
export function leaving(walls: readonly DrawnWall[], end: number): Point {
  const { ux, uy } = walls[end >> 1]!.line;
  return end % 2 === 0 ? [ux, uy] : [-ux, -uy];
}

/** The place of an end. */
export function endPoint(walls: readonly DrawnWall[], end: number): Point {
  const wall = walls[end >> 1]!;
  return end % 2 === 0 ? wall.from : wall.to;
}

// Walls whose drawn line passes one of the ends between its own ends.
function wallsPassing(
  walls: readonly DrawnWall[],
  ends: readonly number[],
  near: (end: number) => readonly number[],
): number[] {
  const own = new Set(ends.map((end) => end >> 1));
  const passing = new Set<number>();
  for (const end of ends) {
    const point = endPoint(walls, end);
    for (const other of near(end)) {
      const { line, length } = walls[other]!;
      const along = alongLine(line, point);
      if (own.has(other) || along <= TIE_TOLERANCE || along >= length - TIE_TOLERANCE) continue;
      if (Math.abs(asideOfLine(line, point)) <= TIE_TOLERANCE) passing.add(other);
    }
  }
  return [...passing].sort((a, b) => a - b);
}

// The end runs to the passing wall it meets most squarely, then the thickest, then the first in geometric order.
function joinToBest(walls: readonly DrawnWall[], end: number, passing: readonly number[]): EndJoint {
  const sine = (other: number) => Math.round(Math.abs(crossOf(walls, end >> 1, other)) * 1e6);
  const eligible = passing.filter((other) => sine(other) >= LEAST_SINE * 1e6);
  const best = eligible.sort(
    (a, b) => sine(b) - sine(a) || walls[b]!.thickness - walls[a]!.thickness || a - b,
  )[0];
  if (best === undefined) return { kind: "square" };
  return { kind: "line", line: walls[best]!.line, walls: eligible };
}

function joinEnds(
  walls: readonly DrawnWall[],
  ends: readonly number[],
  out: { readonly joints: EndJoint[]; readonly corners: MitredCorner[] },
): void {
  const through = straightPair(walls, ends);
  if (through === null) {
    const directions = new Map(ends.map((end) => [end, leaving(walls, end)] as const));
    const round = [...ends].sort(
      (a, b) => compareDirections(directions.get(a)!, directions.get(b)!) || a - b,
    );
    for (const end of ends) out.joints[end] = { kind: "corner", corner: out.corners.length };
    out.corners.push({ node: middleOf(ends.map((end) => endPoint(walls, end))), ends: round });
    return;
  }
  // Two halves of one straight wall are not carried; what else ends there runs to the line of the longer half.
  const [a, b] = through;
  const line = walls[a >> 1]!.length >= walls[b >> 1]!.length ? walls[a >> 1]!.line : walls[b >> 1]!.line;
  for (const end of ends) {
    const own = walls[end >> 1]!.line;
    const isCarried =
      end !== a && end !== b && Math.abs(cross(own.ux, own.uy, line.ux, line.uy)) >= LEAST_SINE;
    if (isCarried) out.joints[end] = { kind: "line", line, walls: [a >> 1, b >> 1] };
  }
}

// The straightest pair of ends in line, then the one with the most thickness, then the first in geometric order.
function straightPair(
  walls: readonly DrawnWall[],
  ends: readonly number[],
): readonly [number, number] | null {
  let best: { pair: readonly [number, number]; sine: number; thickness: number } | null = null;
  for (const [i, a] of ends.entries()) {
    for (const b of ends.slice(i + 1)) {
      if (!isStraight(walls, a, b)) continue;
      const sine = Math.round(Math.abs(crossOf(walls, a >> 1, b >> 1)) * 1e6);
      const thickness = walls[a >> 1]!.thickness + walls[b >> 1]!.thickness;
      const isBetter =
        best === null || sine < best.sine || (sine === best.sine && thickness > best.thickness);
      if (isBetter) best = { pair: [a, b], sine, thickness };
    }
  }
  return best === null ? null : best.pair;
}

// One straight wall drawn in two: opposite directions, and the shorter lies on the line of the longer, or the two bend so
// little that what a mitre would add or take is within the tolerance. Where their sides hardly meet, a mitre between them
// would lie metres away.
function isStraight(walls: readonly DrawnWall[], a: number, b: number): boolean {
  if (cosineOf(walls, a, b) > -STRAIGHT_COSINE) return false;
  const [one, other] = [walls[a >> 1]!, walls[b >> 1]!];
  const bend = Math.abs(crossOf(walls, a >> 1, b >> 1)) * Math.max(one.thickness, other.thickness);
  return bend <= HAIR_BEND || isOneLine(one, other);
}

/** Whether two walls that meet run the same way on one line, so that the shorter lies on the longer. */
export function isDoubled(walls: readonly DrawnWall[], a: number, b: number): boolean {
  return cosineOf(walls, a, b) >= STRAIGHT_COSINE && isOneLine(walls[a >> 1]!, walls[b >> 1]!);
}

function isOneLine(a: DrawnWall, b: DrawnWall): boolean {
  const [long, short] = a.length >= b.length ? [a, b] : [b, a];
  return [short.from, short.to].every((point) => Math.abs(asideOfLine(long.line, point)) <= TIE_TOLERANCE);
}

function cosineOf(walls: readonly DrawnWall[], a: number, b: number): number {
  const [u, v] = [leaving(walls, a), leaving(walls, b)];
  return u[0] * v[0] + u[1] * v[1];
}

function crossOf(walls: readonly DrawnWall[], a: number, b: number): number {
  const [u, v] = [walls[a]!.line, walls[b]!.line];
  return cross(u.ux, u.uy, v.ux, v.uy);
}

function middleOf(points: readonly Point[]): Point {
  const xs = points.map((point) => point[0]);
  const ys = points.map((point) => point[1]);
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}
