// Which walls, and which of their sides, does each face belong to?
//
//   ──────────────────────────────●   one face: w1 left, then w2 left
//        w1         │     w2      │
//   ──────────────┐ │             │   a side hides the ends that lie on it
//                 └───────────────●

import { type Interval, overlap, subtractIntervals } from "../geom/intervals.ts";
import { alongLine, asideOfLine, pointAt } from "../geom/line.ts";
import type { Mm } from "../units.ts";
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
const LEAST_SLOPE = 1e-9; // below this an edge is parallel to the face

/** The body sides of each face, by start, then end, then wall. Ends stand only where no side does. */
export function attributeFaces(faces: readonly FaceDraft[], traced: TracedOutline): FaceEdge[][] {
  return faces.map((face) => {
    const near = traced.index.near(face.from, face.to, TIE_TOLERANCE + ROUNDING);
    const found: FaceEdge[] = [];
    const partly: FaceEdge[] = [];
    for (const edge of near) {
      const stretch = stretchOnFace(face, traced.edges[edge]!);
      if (stretch === null) continue;
      const { wall, side } = traced.edges[edge]!;
      const start = keepPlace(stretch.start, face.length);
      const end = keepPlace(stretch.end, face.length);
      (stretch.isWhole ? found : partly).push({ start, end, wall, side, edge });
    }
    if (partly.length === 0 && found.every(isLengthwise)) return found.sort(compareParts);
    const sides = found.filter(isLengthwise);
    const ends = uncovered(
      found.filter((part) => !isLengthwise(part)),
      sides,
      face,
    );
    // A side that leaves the face at a slant counts only where nothing else accounts for the face.
    const slanting = uncovered(partly, [...sides, ...ends], face);
    return [...sides, ...ends, ...slanting].sort(compareParts);
  });
}

function compareParts(a: FaceEdge, b: FaceEdge): number {
  return a.start - b.start || a.end - b.end || a.edge - b.edge;
}

function uncovered(parts: readonly FaceEdge[], covering: readonly FaceEdge[], face: FaceDraft): FaceEdge[] {
  if (parts.length === 0) return [];
  const least = leastStretch(face);
  return parts.flatMap((part) =>
    subtractIntervals(part, covering, least).map((rest) => ({ ...part, ...rest })),
  );
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
function isLengthwise(part: { readonly side: WallSide }): boolean {
  return part.side === "left" || part.side === "right";
}

// Where the edge lies on the face within the tolerance, and whether that is all of it that lies along the face.
function stretchOnFace(
  face: FaceDraft,
  { line, from, to }: BodyEdge,
): (Interval & { isWhole: boolean }) | null {
  if (line.ux * face.line.ux + line.uy * face.line.uy < LEAST_COSINE) return null;
  const edge = { start: alongLine(face.line, from), end: alongLine(face.line, to) };
  const shared = overlap({ start: 0, end: face.length }, edge, leastStretch(face));
  if (shared === null) return null;
  const [before, after] = [shared.start, shared.end].map((along) =>
    asideOfLine(line, pointAt(face.line, along, 0)),
  );
  const reach = TIE_TOLERANCE + ROUNDING;
  if (Math.abs(before!) <= reach && Math.abs(after!) <= reach) return { ...shared, isWhole: true };
  const slope = (after! - before!) / (shared.end - shared.start);
  if (Math.abs(slope) < LEAST_SLOPE) return null;
  const [p, q] = [-reach, reach].map((aside) => shared.start + (aside - before!) / slope);
  const close = overlap(shared, { start: Math.min(p!, q!), end: Math.max(p!, q!) }, leastStretch(face));
  return close === null ? null : { ...close, isWhole: false };
}

function leastStretch(face: FaceDraft): Mm {
  return Math.min(TIE_TOLERANCE, face.length / 2);
}
