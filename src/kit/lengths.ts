// How a line is made up from pieces of fixed lengths: connectors, caps, outside corners, reveal closures.
//
//   |    1200    |    1200    |  300 |            2700 exactly
//   |    1200    |    1200    |  300 | 160 |      2860: no sum, so one piece is made to measure
//
// All lengths are whole millimetres: the search is exact and has no tolerance. Where along the line a piece stands is
// settled by the caller.

import type { Mm } from "../units.ts";
import { commonDivisor } from "./divisor.ts";

/** What makes up a line. */
export interface LengthCover {
  /** Longest first. */
  readonly pieces: readonly Mm[];
  /** Length of the one piece cut or ordered for this place, or null. */
  readonly madeToMeasure: Mm | null;
}

/** A piece shorter than this is hard to pin: common practice, no source. */
const SHORTEST_MADE: Mm = 100;
/** Ten kilometres: no line of a building is longer, and the table stays below 40 MB. */
const LONGEST_LINE: Mm = 10_000_000;
const UNREACHABLE = 0x7ffffffe; // one below the Int32 limit, so that +1 cannot wrap

/**
 * Makes up `length` with the fewest pieces; of several such ways the one whose lengths, longest first, are
 * lexicographically greatest.
 *
 * Where the lengths have no sum of exactly `length`, one piece is made to measure, no longer than the longest of
 * `lengths`: the fewest pieces in all, then the shortest made piece of at least 100 mm, or else the longest one. Time
 * grows with `length × lengths.length` over the greatest common divisor of the lengths: 50 m on a 50 mm grid takes
 * some microseconds.
 *
 * @param length - whole mm, 0 to 10 km
 * @param lengths - on offer, whole mm, positive, in any order
 * @returns null if there is something to make up and nothing to make it up from
 * @throws {RangeError} if a length is not a whole number in its range
 * @see S. Martello, P. Toth, Knapsack Problems, Wiley 1990, ch. 5 (change-making)
 */
export function coverLength(length: Mm, lengths: readonly Mm[]): LengthCover | null {
  if (!Number.isInteger(length) || length < 0 || length > LONGEST_LINE) {
    throw new RangeError(`a line must be a whole number of mm from 0 to ${LONGEST_LINE}, not ${length}`);
  }
  if (lengths.some((each) => !Number.isInteger(each) || each <= 0)) {
    throw new RangeError("the lengths on offer must be whole and positive");
  }
  const offered = [...new Set(lengths)].sort((a, b) => b - a);
  const longest = offered[0];
  if (length === 0) return { pieces: [], madeToMeasure: null };
  if (longest === undefined) return null;

  const step = offered.reduce(commonDivisor);
  const steps = offered.map((each) => each / step);
  const fewest = fewestPieces(Math.floor(length / step), steps);
  const made =
    length % step === 0 && isReached(fewest, length / step) ? 0 : madePiece(length, longest, step, fewest);
  const pieces = walkBack((length - made) / step, steps, fewest).map((each) => each * step);
  return { pieces, madeToMeasure: made === 0 ? null : made };
}

// fewest[x] is the least number of pieces that make up exactly x steps.
function fewestPieces(end: number, steps: readonly number[]): Int32Array {
  const fewest = new Int32Array(end + 1).fill(UNREACHABLE);
  fewest[0] = 0;
  for (const each of steps) {
    for (let x = each; x <= end; x++) {
      const count = fewest[x - each]! + 1;
      if (count < fewest[x]!) fewest[x] = count;
    }
  }
  return fewest;
}

function isReached(fewest: Int32Array, x: number): boolean {
  return fewest[x]! < UNREACHABLE;
}

// Some place within the longest length of the end is always reached: by as many of the longest as fit.
function madePiece(length: Mm, longest: Mm, step: Mm, fewest: Int32Array): Mm {
  let best = 0;
  let count = UNREACHABLE;
  for (let x = Math.max(0, Math.ceil((length - longest) / step)); x * step < length; x++) {
    const made = length - x * step;
    const pieces = fewest[x]!;
    if (pieces < count || (pieces === count && isBetterMade(made, best))) {
      best = made;
      count = pieces;
    }
  }
  return best;
}

function isBetterMade(made: Mm, other: Mm): boolean {
  if (made >= SHORTEST_MADE && other >= SHORTEST_MADE) return made < other;
  return made > other;
}

// Any piece of a shortest way may come first, so taking the longest that keeps the count is lexicographically greatest.
function walkBack(from: number, steps: readonly number[], fewest: Int32Array): number[] {
  const pieces: number[] = [];
  for (let left = from; left > 0; ) {
    const next = steps.find((each) => each <= left && fewest[left - each] === fewest[left]! - 1);
    if (next === undefined) throw new RangeError("walking back from a length that no pieces make up");
    pieces.push(next);
    left -= next;
  }
  return pieces;
}
