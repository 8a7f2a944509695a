// The widths on offer for one set of intervals, with the price of each piece in the order of what is "best".
//
// The cost of a cover is one whole number with four digits of a large base, most important first:
//
//   pieces under `narrowUnder` | pieces not standard | pieces | distinct widths
//
// so comparing two numbers compares the four counts lexicographically. Closures are not in it: there is none
// or one, and none is always better (see cover.ts).

import type { Mm } from "../units.ts";
import { createWidthTable, type PricedWidth, type WidthTable } from "./widthTable.ts";

/** A panel width on offer at every height of the stack. A panel that is not standard is a filler. */
export interface Width {
  readonly width: Mm;
  readonly standard: boolean;
}

/** Whole widths a closure strip may be made to, mm, both ends included; null: the kit has no closure strip. */
export type ClosureRange = { readonly least: Mm; readonly greatest: Mm } | null;

/** Everything the cover of a length depends on besides the length itself. */
export interface CoverTable {
  /** Widest first. */
  readonly widths: readonly Width[];
  readonly closure: ClosureRange;
  /** A panel narrower than this is to be avoided, mm. */
  readonly narrowUnder: Mm;
  /** Longest length it answers for, mm. */
  readonly longest: Mm;
  /** Least costs without closure. */
  readonly plain: WidthTable;
  readonly isStandard: (width: Mm) => boolean;
}

/** The greatest number of pieces of one cover, plus one, that leaves room for the other digits below 2^53. */
const PIECES_BASE = 2 ** 15;

/**
 * A table for one set of widths; keep it and ask it for many lengths.
 *
 * The result depends on the set of widths only, not on their order. Answers for lengths up to `longest`: at
 * most 32,767 of the narrowest piece (1,638 m of 50), and no more than 64 MB for each of the two arrays
 * behind it (3,195 m for 20 widths without a common divisor). With more than 255 widths the number of pieces
 * shrinks.
 *
 * @param widths - a width that comes twice counts as standard if either is
 * @throws {RangeError} if a width or an end of the closure range is not a positive whole number
 */
export function createCoverTable(
  widths: readonly Width[],
  closure: ClosureRange,
  narrowUnder: Mm,
): CoverTable {
  if (closure !== null && !(isLength(closure.least) && isLength(closure.greatest))) {
    throw new RangeError("a closure range must be given in positive whole millimetres");
  }
  const standard = new Set(widths.filter((width) => width.standard).map(({ width }) => width));
  const distinct = [...new Set(widths.map(({ width }) => width))].sort((a, b) => b - a);

  const { priced, mostPieces } = priceWidths(
    distinct.map((width) => ({
      width,
      narrow: width < narrowUnder ? 1 : 0,
      fillers: standard.has(width) ? 0 : 1,
      pieces: 1,
    })),
  );
  const plain = createWidthTable(priced, 1);
  const narrowest = distinct.at(-1) ?? Number.POSITIVE_INFINITY;

  return {
    widths: distinct.map((width) => ({ width, standard: standard.has(width) })),
    closure,
    narrowUnder,
    longest: Math.min(plain.longest, mostPieces * narrowest),
    plain,
    isStandard: (width) => standard.has(width),
  };
}

/** What one column of a width counts for. */
export interface WidthCounts {
  readonly width: Mm;
  readonly narrow: number;
  readonly fillers: number;
  readonly pieces: number;
}

/**
 * Packs the counts of each width into one whole cost, for a table in which the first use of a width costs 1.
 *
 * @returns the costs, and how many pieces a cover may have before they would run into each other
 */
export function priceWidths(counts: readonly WidthCounts[]): {
  readonly priced: readonly PricedWidth[];
  readonly mostPieces: number;
} {
  const distinctBase = counts.length + 1;
  let base = PIECES_BASE;
  while (base * base * base * distinctBase > Number.MAX_SAFE_INTEGER) base /= 2;
  const priced = counts.map(({ width, narrow, fillers, pieces }) => ({
    width,
    cost: ((narrow * base + fillers) * base + pieces) * distinctBase,
  }));
  return { priced, mostPieces: base - 1 };
}

function isLength(value: number): boolean {
  return Number.isInteger(value) && value > 0;
}
