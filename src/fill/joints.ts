// The vertical joints of a face: where a piece ends and another begins, and at which tie rows both are there.
//
// Rows are kept as bits, one for each tie row: a joint of two faces is tied where all four bits are set. That asks one
// comparison of a joint, where a walk over heights would ask dozens.

import type { Mm } from "../units.ts";
import type { FaceDraft } from "./faceDraft.ts";

/** Most rows that fit the bits of a whole number. */
export const MOST_ROWS = 30;

/** Rows, as bits, at which a piece ends at a place, and at which one begins there, going up the line. */
export interface FaceJoints {
  readonly ends: ReadonlyMap<Mm, number>;
  readonly begins: ReadonlyMap<Mm, number>;
}

/** The rows strictly inside a height, as bits. */
export function rowBits(rows: readonly Mm[], low: Mm, high: Mm): number {
  let bits = 0;
  rows.forEach((z, k) => {
    if (low < z && z < high) bits |= 1 << k;
  });
  return bits;
}

/** Joints of a face by place. Connectors and caps are left out: none of their joints need match. */
export function jointsOf(face: FaceDraft, rows: readonly Mm[]): FaceJoints {
  const ends = new Map<Mm, number>();
  const begins = new Map<Mm, number>();
  const { isReversed, low, high } = face.settled;
  let lastZ = -1;
  let lastHeight = -1;
  let bits = 0;
  for (const { x, z, width, height } of face.pieces) {
    if (z >= face.profile.top) continue;
    if (z !== lastZ || height !== lastHeight) {
      bits = rowBits(rows, z, z + height);
      lastZ = z;
      lastHeight = height;
    }
    if (bits === 0) continue;
    const from = isReversed ? high - x - width : low + x;
    begins.set(from, (begins.get(from) ?? 0) | bits);
    ends.set(from + width, (ends.get(from + width) ?? 0) | bits);
  }
  return { ends, begins };
}

/** Rows at which the face has a piece on both sides of a place, as bits. */
export function rowsAt(joints: FaceJoints, place: Mm): number {
  return (joints.ends.get(place) ?? 0) & (joints.begins.get(place) ?? 0);
}
