// How near faces stand to one another across the air, which decides whether a person can work between them.

import { buildGridIndex } from "../geom/gridIndex.ts";
import type { Position } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { SettledFace } from "./settled.ts";

const PARALLEL = 0.02; // sine of the angle up to which two faces count as facing each other
const GRID_CELL = 1000; // mm: about the length of a short face
const LEAST_OVERLAP = 20; // mm: a shorter stretch face to face is a corner meeting a corner

/**
 * The least clear distance between two faces of a ring that look at each other, mm; null where none do.
 *
 * Cost: the square of the number of faces, which in one room is small.
 */
export function narrowestAcross(ring: readonly SettledFace[]): Mm | null {
  return nearestPair(ring)?.distance ?? null;
}

export interface NearPair {
  readonly distance: Mm;
  readonly faces: readonly [SettledFace, SettledFace];
}

/** The pair of faces of a ring that look at each other from nearest. */
export function nearestPair(ring: readonly SettledFace[]): NearPair | null {
  let best: NearPair | null = null;
  for (const [k, a] of ring.entries()) {
    for (const b of ring.slice(k + 1)) {
      const distance = clearBetween(a, b);
      if (distance !== null && (best === null || distance < best.distance))
        best = { distance, faces: [a, b] };
    }
  }
  return best;
}

export interface NearFace {
  readonly distance: Mm;
  readonly face: SettledFace;
}

/** The face that a given face looks at from nearest, if from nearer than a reach; of equals the first in the list. */
export type LookAcross = (face: SettledFace) => NearFace | null;

/**
 * Prepares the question which face of the same room, or of the outside, a face looks at from nearer than `reach`.
 *
 * Cost: about linear in the number of faces; each answer looks at the faces near by.
 */
export function lookAcross(faces: readonly SettledFace[], reach: Mm): LookAcross {
  const index = buildGridIndex(
    faces.map(({ formed: { from, to } }) => [from, to] as const),
    GRID_CELL,
  );
  // Faces not quite parallel are judged by their nearer end, which may be nearer than what lies across.
  const longest = faces.reduce((most, { length }) => Math.max(most, length), 0);
  const around = reach + 2 * PARALLEL * longest;
  return (face) => {
    let nearest: NearFace | null = null;
    for (const k of index.near(face.formed.from, face.formed.to, around)) {
      const other = faces[k]!;
      if (other === face || other.formed.room !== face.formed.room) continue;
      const distance = clearBetween(face, other);
      if (distance === null || distance >= reach) continue;
      if (nearest === null || distance < nearest.distance) nearest = { distance, face: other };
    }
    return nearest;
  };
}

/** Clear distance between two faces that look at each other over some length, mm; null where they do not. */
export function clearBetween(a: SettledFace, b: SettledFace): Mm | null {
  const u = unitOf(a.formed.from, a.formed.to);
  const v = unitOf(b.formed.from, b.formed.to);
  if (u === null || v === null) return null;
  if (u[0] * v[0] + u[1] * v[1] >= 0 || Math.abs(u[0] * v[1] - u[1] * v[0]) > PARALLEL) return null;
  const along = (p: Position) => u[0] * (p[0] - a.formed.from[0]) + u[1] * (p[1] - a.formed.from[1]);
  // The person stands on the right of a face: the air before it is on the right.
  const across = (p: Position) => u[1] * (p[0] - a.formed.from[0]) - u[0] * (p[1] - a.formed.from[1]);
  const low = Math.max(0, along(b.formed.to));
  const high = Math.min(along(a.formed.to), along(b.formed.from));
  if (high - low < LEAST_OVERLAP) return null;
  const distance = Math.min(across(b.formed.from), across(b.formed.to));
  return distance > 0 ? distance : null;
}

function unitOf(from: Position, to: Position): Position | null {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const length = Math.sqrt(dx * dx + dy * dy);
  return length === 0 ? null : [dx / length, dy / length];
}
