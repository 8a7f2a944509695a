// Which faces follow each other round a room, a column or a building.
//
// A fill lists faces; where one ends, the next begins. Concrete lies on the left of each, so a room's ring turns right
// at its inside corners, and where two rings touch in one point the next face is the one that turns right most.

import type { FilledFace } from "../fill/result.ts";
import { comparePoints, distance } from "../geom/point.ts";

/** Ends nearer than this are one corner, mm: `from` and `to` are written to 0.001. */
const SAME_POINT = 0.01;

export interface FaceRing {
  /** In the order of the walk: left to right as the assembler sees them. */
  readonly faces: readonly FilledFace[];
  /** False where faces are missing, so that the last does not lead to the first. */
  readonly isClosed: boolean;
}

/**
 * The rings that the faces make, each from its face of least `from`. Rings that run clockwise round a room come
 * first, the largest area leading; then the others by their least corner.
 */
export function ringsOf(faces: readonly FilledFace[]): readonly FaceRing[] {
  const left = new Set([...faces].sort((a, b) => comparePoints(a.from, b.from) || comparePoints(a.to, b.to)));
  const rings: FaceRing[] = [];
  while (left.size > 0) rings.push(takeRing(left));
  return rings.sort(
    (a, b) =>
      Math.min(area(a), 0) - Math.min(area(b), 0) || comparePoints(a.faces[0]!.from, b.faces[0]!.from),
  );
}

function takeRing(left: Set<FilledFace>): FaceRing {
  const first = chainStart(left);
  const ring = [first];
  left.delete(first);
  for (let last = first; ; ) {
    const isBack = distance(last.to, first.from) < SAME_POINT;
    const next = follower(last, isBack ? [...left, first] : [...left]);
    if (next === null || next === first) return { faces: ring, isClosed: isBack };
    left.delete(next);
    ring.push(next);
    last = next;
  }
}

/** The first face that none leads to, so that an open chain is read from its start; else the first of all. */
function chainStart(left: ReadonlySet<FilledFace>): FilledFace {
  const faces = [...left];
  const isStart = (face: FilledFace) => !faces.some((other) => distance(other.to, face.from) < SAME_POINT);
  return faces.find(isStart) ?? faces[0]!;
}

function follower(face: FilledFace, candidates: readonly FilledFace[]): FilledFace | null {
  let best: FilledFace | null = null;
  for (const next of candidates) {
    if (distance(face.to, next.from) >= SAME_POINT) continue;
    if (best === null || turnsFurtherRight(face, next, best)) best = next;
  }
  return best;
}

function turnsFurtherRight(face: FilledFace, a: FilledFace, b: FilledFace): boolean {
  return rightTurn(face, a) > rightTurn(face, b);
}

/** Grows with the turn to the right, from −2 (all the way round to the left) to 2; 0 is straight on. */
function rightTurn(face: FilledFace, next: FilledFace): number {
  const [ax, ay] = [face.to[0] - face.from[0], face.to[1] - face.from[1]];
  const [bx, by] = [next.to[0] - next.from[0], next.to[1] - next.from[1]];
  const size = Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by));
  const cosine = size === 0 ? 1 : (ax * bx + ay * by) / size;
  return turnAt(face, next) === "inside" ? 1 - cosine : cosine - 1;
}

/** How the concrete turns from one face to the next, as the person before it sees it. */
export function turnAt(face: FilledFace, next: FilledFace): "inside" | "outside" {
  const cross =
    (face.to[0] - face.from[0]) * (next.to[1] - next.from[1]) -
    (face.to[1] - face.from[1]) * (next.to[0] - next.from[0]);
  return cross < 0 ? "inside" : "outside";
}

/** Twice the area enclosed, negative for a ring that runs clockwise. */
function area(ring: FaceRing): number {
  return ring.faces.reduce((sum, { from, to }) => sum + from[0] * to[1] - from[1] * to[0], 0);
}
