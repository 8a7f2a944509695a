// Which walls, and which of their sides, does each face belong to?
//
//   ──────────────────────────────●   one face: w1 left, then w2 left
//        w1         │     w2      │
//   ──────────────┐ │             │   a side hides the ends that lie on it
//                 └───────────────●

import { type Interval, overlap, subtractIntervals } from "../geom/intervals.ts";
import { alongLine, asideOfLine, type Line, pointAt } from "../geom/line.ts";
import type { Point } from "../geom/point.ts";
import type { BodyEdge } from "./body.ts";
import { type DrawnWall, namedSide } from "./drawnWall.ts";
import type { FaceWall, WallSide } from "./face.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { keepPlace } from "./keep.ts";
import { ROUNDING, TIE_TOLERANCE } from "./tolerance.ts";
import type { TracedOutline } from "./traceOutline.ts";

/** The part of a face, along the face, that lies on one side of one body. `edge` is that side's position in the traced edges. */
export interface FaceEdge extends Interval {
  readonly wall: number;
  readonly side: WallSide;
  readonly edge: number;
}

const LEAST_COSINE = 0.99;

/** The body sides of each face, by start, then end, then wall. Ends stand only where no side does. */
export function attributeFaces(faces: readonly FaceDraft[], traced: TracedOutline): FaceEdge[][] {
  return faces.map((face) => {
    const near = traced.index.near(face.from, face.to, TIE_TOLERANCE + ROUNDING);
    const found: FaceEdge[] = [];
    for (const edge of near) {
      const stretch = stretchOnFace(face, traced.edges[edge]!);
      if (stretch === null) continue;
      const { wall, side } = traced.edges[edge]!;
      found.push({ ...stretch, wall, side, edge });
    }
    const sides = found.filter(isLengthwise);
    const ends = found.filter((part) => !isLengthwise(part));
    const least = Math.min(TIE_TOLERANCE, face.length / 2);
    const open = ends.flatMap((end) =>
      subtractIntervals(end, sides, least).map((rest) => ({ ...end, ...rest })),
    );
    return [...sides, ...open].sort((a, b) => a.start - b.start || a.end - b.end || a.edge - b.edge);
  });
}

/** The parts by the names of the walls. */
export function nameParts(parts: readonly FaceEdge[], walls: readonly DrawnWall[]): FaceWall[] {
  return parts.flatMap(({ wall, side, start, end }) =>
    walls[wall]!.names.map((name) => ({ wall: name.id, side: namedSide(side, name), start, end })),
  );
}

/** Whether the face is the end of a wall in its whole width, or of walls side by side. */
export function isWallEnd(face: FaceDraft, parts: readonly FaceEdge[], walls: readonly DrawnWall[]): boolean {
  if (parts.some(isLengthwise)) return false;
  const whole = parts.filter(
    ({ wall, start, end }) => end - start >= walls[wall]!.thickness - TIE_TOLERANCE - ROUNDING,
  );
  return subtractIntervals({ start: 0, end: face.length }, whole, TIE_TOLERANCE + ROUNDING).length === 0;
}

/** Whether a part is one of the two long sides of its wall. */
export function isLengthwise(part: { readonly side: WallSide }): boolean {
  return part.side === "left" || part.side === "right";
}

function stretchOnFace(face: FaceDraft, { line, from, to }: BodyEdge): Interval | null {
  if (line.ux * face.line.ux + line.uy * face.line.uy < LEAST_COSINE) return null;
  const edge = { start: alongLine(face.line, from), end: alongLine(face.line, to) };
  const shared = overlap({ start: 0, end: face.length }, edge, Math.min(TIE_TOLERANCE, face.length / 2));
  if (shared === null) return null;
  for (const along of [shared.start, shared.end]) {
    if (Math.abs(asideOfLine(line, onLine(face.line, along))) > TIE_TOLERANCE + ROUNDING) return null;
  }
  return { start: keepPlace(shared.start, face.length), end: keepPlace(shared.end, face.length) };
}

function onLine(line: Line, along: number): Point {
  return pointAt(line, along, 0);
}
