// Which of several pieces that would do equally well is taken.

import type { Piece } from "./kit.ts";

type Candidate = Pick<Piece, "code" | "standard" | "mass">;

/**
 * Orders codes by code point, so that the order is the same in every language and on every machine.
 *
 * @returns negative if `a` comes first, 0 if they are the same
 */
export function compareCodes(a: string, b: string): number {
  if (a === b) return 0;
  const left = [...a];
  const right = [...b];
  const shared = Math.min(left.length, right.length);
  for (let i = 0; i < shared; i++) {
    const difference = left[i]!.codePointAt(0)! - right[i]!.codePointAt(0)!;
    if (difference !== 0) return difference;
  }
  return left.length - right.length;
}

/** Orders pieces that would do equally well: standard, then lighter, then by code. */
export function comparePreference(a: Candidate, b: Candidate): number {
  if (a.standard !== b.standard) return a.standard ? -1 : 1;
  return a.mass - b.mass || compareCodes(a.code, b.code);
}

/** The piece to take, or null where there is none. Does not depend on the order of `pieces`. */
export function preferred<P extends Candidate>(pieces: readonly P[]): P | null {
  let best: P | null = null;
  for (const piece of pieces) {
    if (best === null || comparePreference(piece, best) < 0) best = piece;
  }
  return best;
}
