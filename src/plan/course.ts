// Each body measured along its own drawn line: where its two sides run, and where they show on the outline.
//
//   left    ├────shown────┤      ├─shown─┤
//        ●────────────────────────────────▶ drawn line
//   right      ├──────────shown──────────┤

import type { Interval } from "../geom/intervals.ts";
import { alongLine, type Line, pointAt } from "../geom/line.ts";
import { cross, type Point } from "../geom/point.ts";
import type { FaceEdge } from "./attribution.ts";
import type { BodyEdge } from "./body.ts";
import type { DrawnWall } from "./drawnWall.ts";
import type { FaceDraft } from "./faceDraft.ts";

/** A stretch of a body's side that a face lies on. */
export interface ShownStretch extends Interval {
  readonly face: number;
}

/** One body along its drawn line. */
export interface Course {
  readonly wall: DrawnWall;
  /** Where both sides run; empty in a body that its joints cut away. */
  readonly full: Interval;
  readonly left: readonly ShownStretch[];
  readonly right: readonly ShownStretch[];
}

/** What the courses are measured from. */
export interface CourseInput {
  readonly walls: readonly DrawnWall[];
  readonly faces: readonly FaceDraft[];
  readonly parts: readonly (readonly FaceEdge[])[];
  readonly edges: readonly BodyEdge[];
}

/** The course of every wall, in the order of the walls. */
export function measureCourses({ walls, faces, parts, edges }: CourseInput): Course[] {
  const sides = walls.map(() => ({ left: EMPTY, right: EMPTY }));
  const shown = walls.map(() => ({ left: [] as ShownStretch[], right: [] as ShownStretch[] }));
  for (const { wall, side, from, to } of edges) {
    if (side === "left" || side === "right") sides[wall]![side] = stretchAlong(walls[wall]!.line, from, to);
  }
  parts.forEach((list, face) => {
    const { line } = faces[face]!;
    for (const { wall, side, start, end } of list) {
      if (side !== "left" && side !== "right") continue;
      if (!runsAlong(walls[wall]!.line, line)) continue;
      const along = stretchAlong(walls[wall]!.line, pointAt(line, start, 0), pointAt(line, end, 0));
      shown[wall]![side].push({ face, ...along });
    }
  });
  return walls.map((wall, i) => {
    const { left, right } = sides[i]!;
    const start = Math.max(left.start, right.start);
    return { wall, full: { start, end: Math.max(start, Math.min(left.end, right.end)) }, ...shown[i]! };
  });
}

const LEAST_SLOPE = 0.02; // beyond about 1° two things do not run along each other, however short they are

/** Whether two lines run along each other, the same way or the opposite way. */
export function runsAlong(a: Line, b: Line): boolean {
  return Math.abs(cross(a.ux, a.uy, b.ux, b.uy)) <= LEAST_SLOPE;
}

const EMPTY: Interval = { start: 0, end: 0 };

/** The stretch of a line between the feet of two points. */
export function stretchAlong(line: Line, a: Point, b: Point): Interval {
  const [p, q] = [alongLine(line, a), alongLine(line, b)];
  return { start: Math.min(p, q), end: Math.max(p, q) };
}
