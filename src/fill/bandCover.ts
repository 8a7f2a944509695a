// The best cover of a band over or under an opening: rows of panels, each row with the same sequence of
// widths.
//
//   jamb               jamb
//    |-----------------|
//    |   600   |  300  |   at most four rows, tallest lowest; at most one closure in the band,
//    |---------+-------|   upright beside the panels or lying across the opening above them
//    |   600   |  300  |
//    |-----------------|
//
// Judged as an interval is: closures, narrow panels, panels not standard, panels, over all rows together. All
// multisets of heights are tried, so the result is proven the best.

import type { Mm } from "../units.ts";
import { bestClosure, type CoverKey, requireLength } from "./cover.ts";
import { type ClosureRange, priceWidths, type Width, type WidthCounts } from "./coverTable.ts";
import { createWidthTable } from "./widthTable.ts";

export interface BandInput {
  /** Of the opening, whole mm. */
  readonly width: Mm;
  /** Of the band, whole mm. */
  readonly height: Mm;
  /** Heights at which the kit has panels, upright or laid on their side, in any order. */
  readonly heights: readonly Mm[];
  /** The widths on offer at one of these heights, each once. */
  readonly offersAt: (height: Mm) => readonly Width[];
  readonly closure: ClosureRange;
  readonly narrowUnder: Mm;
}

/** A closure across the opening is as long as the band is wide; an upright one as high as the band. */
export interface BandClosure {
  readonly size: Mm;
  readonly lies: "upright" | "across";
}

export type BandCover =
  | {
      readonly status: "covered";
      /** Heights of the rows of panels, from the bottom up. */
      readonly rows: readonly Mm[];
      /** Widths of the panels of every row, widest first. */
      readonly widths: readonly Mm[];
      readonly closure: BandClosure | null;
      /** `pieces`, `narrow` and `fillers` count all rows; `distinct` counts widths. */
      readonly key: CoverKey;
    }
  | { readonly status: "none" };

type Covered = Extract<BandCover, { status: "covered" }>;

/** More rows than this are no band: each of them is pinned to the next by hand, over a head. */
const MOST_ROWS = 4;

/**
 * The best cover of a band. Equals are settled by the fewest rows, the tallest lowest row, and the next; then
 * the fewest distinct widths, the smallest closure, an upright one first; then the widths, widest first,
 * lexicographically greatest.
 *
 * A closure alone may cover a band; nothing covers a band without width or height. Time grows with the number
 * of multisets of heights that add up, a few dozen in common kits.
 *
 * @throws {RangeError} if the width or height is not a whole number or is negative
 */
export function coverBand(input: BandInput): BandCover {
  const { width, height, closure } = input;
  requireLength(width);
  requireLength(height);
  if (width === 0 || height === 0) return coveredBy([], [], null, []);
  const exact = best(stacksOf(input, height, height).map((rows) => columnsOf(rows, input, null)));
  if (exact !== null) return exact;
  if (closure === null) return { status: "none" };

  const alone: Covered[] = [];
  if (isWithin(width, closure)) alone.push(coveredBy([], [], { size: width, lies: "upright" }, []));
  if (isWithin(height, closure)) alone.push(coveredBy([], [], { size: height, lies: "across" }, []));
  const upright = stacksOf(input, height, height).map((rows) => columnsOf(rows, input, closure));
  const across = stacksOf(input, height - closure.greatest, height - closure.least).map((rows) => {
    const size = height - rows.reduce((sum, row) => sum + row, 0);
    const covered = columnsOf(rows, input, null);
    return covered === null ? null : withClosure(covered, { size, lies: "across" });
  });
  return best([...alone, ...upright, ...across]) ?? { status: "none" };
}

/** Multisets of one to four heights whose sum lies between the two bounds, each tallest first. */
function stacksOf(input: BandInput, least: Mm, greatest: Mm): readonly (readonly Mm[])[] {
  const heights = [...new Set(input.heights)].sort((a, b) => b - a);
  const found: Mm[][] = [];
  const extend = (rows: readonly Mm[], sum: Mm, from: number): void => {
    if (rows.length > 0 && sum >= least) found.push([...rows]);
    if (rows.length === MOST_ROWS) return;
    for (let index = from; index < heights.length; index++) {
      const height = heights[index]!;
      if (sum + height <= greatest) extend([...rows, height], sum + height, index);
    }
  };
  extend([], 0, 0);
  return found;
}

/** The best widths on offer in every row, with an upright closure from `range` where one is needed. */
function columnsOf(rows: readonly Mm[], input: BandInput, range: ClosureRange): Covered | null {
  const counts = commonCounts(rows, input);
  const table = createWidthTable(priceWidths(counts).priced, 1);
  const size = bestClosure(input.width, table, range);
  if (size === undefined || size === input.width) return null;
  const widths = table.widthsOf(input.width - (size ?? 0));
  return coveredBy(rows, widths, size === null ? null : { size, lies: "upright" }, counts);
}

function commonCounts(rows: readonly Mm[], { offersAt, narrowUnder }: BandInput): readonly WidthCounts[] {
  const offers = rows.map(
    (height) => new Map(offersAt(height).map(({ width, standard }) => [width, standard])),
  );
  return [...(offers[0]?.keys() ?? [])]
    .filter((width) => offers.every((row) => row.has(width)))
    .map((width) => ({
      width,
      narrow: width < narrowUnder ? rows.length : 0,
      fillers: offers.filter((row) => row.get(width) === false).length,
      pieces: rows.length,
    }));
}

function coveredBy(
  rows: readonly Mm[],
  widths: readonly Mm[],
  closure: BandClosure | null,
  counts: readonly WidthCounts[],
): Covered {
  const columns = new Map(counts.map((count) => [count.width, count]));
  const sum = (name: "narrow" | "fillers" | "pieces"): number =>
    widths.reduce((total, width) => total + (columns.get(width)?.[name] ?? 0), 0);
  const key = {
    closures: closure === null ? 0 : 1,
    narrow: sum("narrow"),
    fillers: sum("fillers"),
    pieces: sum("pieces"),
    distinct: new Set(widths).size,
  };
  return { status: "covered", rows, widths, closure, key };
}

function withClosure(covered: Covered, closure: BandClosure): Covered {
  return { ...covered, closure, key: { ...covered.key, closures: 1 } };
}

function isWithin(size: Mm, range: NonNullable<ClosureRange>): boolean {
  return size >= range.least && size <= range.greatest;
}

function best(covers: readonly (Covered | null)[]): Covered | null {
  return covers.reduce(
    (held, cover) => (cover !== null && (held === null || compareBands(cover, held) < 0) ? cover : held),
    null,
  );
}

function compareBands(a: Covered, b: Covered): number {
  return (
    a.key.closures - b.key.closures ||
    a.key.narrow - b.key.narrow ||
    a.key.fillers - b.key.fillers ||
    a.key.pieces - b.key.pieces ||
    a.rows.length - b.rows.length ||
    greatestFirst(a.rows, b.rows) ||
    a.key.distinct - b.key.distinct ||
    (a.closure?.size ?? 0) - (b.closure?.size ?? 0) ||
    Number(a.closure?.lies === "across") - Number(b.closure?.lies === "across") ||
    greatestFirst(a.widths, b.widths)
  );
}

/** Negative if `a` is lexicographically greater. */
function greatestFirst(a: readonly Mm[], b: readonly Mm[]): number {
  for (const [index, value] of a.entries()) {
    if (value !== b[index]) return (b[index] ?? 0) - value;
  }
  return a.length - b.length;
}
