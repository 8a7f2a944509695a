// What it costs to cover a length exactly with widths that may repeat, for every length up to the longest
// asked.
//
//   widths, widest first:   600 … 300 … 250 … 50
//   a cover is read down that list: so many of the first, so many of the second …
//
// A dynamic program over (width, length left, whether this width was taken before). Because a cover is read
// in one fixed order, "a width taken for the first time" costs a fixed sum too, so the number of distinct
// widths adds up like any other count. Whole numbers throughout: the least cost is proven, not approximated.

import type { Mm } from "../units.ts";

/** One width on offer and what one piece of it costs, a whole number. */
export interface PricedWidth {
  readonly width: Mm;
  readonly cost: number;
}

/** Least costs of exact covers, grown on demand. */
export interface WidthTable {
  /** The widths, widest first. */
  readonly widths: readonly Mm[];
  /** What one piece of each of the widths costs, and what any width costs once when it is used. */
  readonly costs: readonly number[];
  readonly firstUse: number;
  /** Every length that can be covered is a multiple of this, mm. */
  readonly step: Mm;
  /** Longest length it may be asked for, mm. */
  readonly longest: Mm;
  /** Least cost of a cover of exactly `length`; Infinity where there is none or it is over `longest`. */
  readonly costOf: (length: Mm) => number;
  /** Of the covers of that cost the lexicographically greatest, widest first; empty where there is none. */
  readonly widthsOf: (length: Mm) => readonly Mm[];
}

/** One byte for each width and each step of length: 64 MB at most. */
const MAX_CELLS = 2 ** 26;
/** Two 8-byte costs for each step of length: 64 MB at most. */
const MAX_STEPS = 2 ** 22;

const TAKE_FIRST = 2;
const TAKE_AGAIN = 1;

interface Grown {
  readonly steps: number;
  readonly best: Float64Array;
  readonly choices: Uint8Array;
}

/**
 * A table for one set of widths.
 *
 * The caller answers for the size of the costs: the dearest cover within `longest` must stay below 2^53.
 * Building up to a length takes about 5 ns for each width and each step of length; a look-up takes none.
 *
 * @param priced - each width once, in any order; widths whole and positive, costs whole and not negative
 * @param firstUse - what a width costs once, beside its pieces, when it is used at all
 * @throws {RangeError} if a width is not a positive whole number or comes twice
 * @see S. Martello, P. Toth, Knapsack Problems, Wiley 1990, ch. 5 (change-making)
 */
export function createWidthTable(priced: readonly PricedWidth[], firstUse: number): WidthTable {
  const sorted = [...priced].sort((a, b) => b.width - a.width);
  const widths = sorted.map(({ width }) => width);
  if (widths.some((width) => !Number.isInteger(width) || width <= 0)) {
    throw new RangeError("a width must be a positive whole number of millimetres");
  }
  if (new Set(widths).size !== widths.length) throw new RangeError("each width may be on offer once");

  const step = widths.reduce(greatestCommonDivisor, 0) || 1;
  const maxSteps = Math.min(MAX_STEPS, Math.floor(MAX_CELLS / (widths.length + 1)));
  const inSteps = sorted.map(({ width, cost }) => ({ width: width / step, cost }));
  let grown = grow(inSteps, firstUse, 0);

  function stepsOf(length: Mm): number | null {
    const steps = length / step;
    if (!Number.isInteger(steps) || steps < 0 || steps > maxSteps) return null;
    // Doubling keeps the sum of all rebuilds within twice the last one.
    if (steps > grown.steps)
      grown = grow(inSteps, firstUse, Math.min(maxSteps, Math.max(steps, 2 * grown.steps)));
    return steps;
  }

  return {
    widths,
    costs: sorted.map(({ cost }) => cost),
    firstUse,
    step,
    longest: maxSteps * step,
    costOf: (length) => {
      const steps = stepsOf(length);
      return steps === null ? Number.POSITIVE_INFINITY : grown.best[steps]!;
    },
    widthsOf: (length) => {
      const steps = stepsOf(length);
      return steps === null ? [] : readCover(inSteps, grown, steps).map((index) => widths[index]!);
    },
  };
}

/** From the narrowest width to the widest: `best` after width i is the least cost with widths i, i + 1 … */
function grow(widths: readonly PricedWidth[], firstUse: number, steps: number): Grown {
  const best = new Float64Array(steps + 1).fill(Number.POSITIVE_INFINITY);
  // The same, where the width at hand was taken before and its first use is paid for.
  const again = new Float64Array(steps + 1);
  const choices = new Uint8Array(widths.length * (steps + 1));
  best[0] = 0;
  for (let index = widths.length - 1; index >= 0; index--) {
    const { width, cost } = widths[index]!;
    const row = choices.subarray(index * (steps + 1), (index + 1) * (steps + 1));
    again.set(best.subarray(0, Math.min(width, steps + 1)));
    for (let left = width; left <= steps; left++) {
      const without = best[left]!;
      const withAnother = cost + again[left - width]!;
      again[left] = without;
      if (withAnother === Number.POSITIVE_INFINITY) continue;
      // On equal cost the wider piece is taken: that makes the widths lexicographically greatest.
      if (withAnother <= without) {
        again[left] = withAnother;
        row[left] = TAKE_AGAIN;
      }
      if (withAnother + firstUse <= without) {
        best[left] = withAnother + firstUse;
        row[left] = TAKE_AGAIN | TAKE_FIRST;
      }
    }
  }
  return { steps, best, choices };
}

/** Indices of the widths of the best cover, widest first. */
function readCover(widths: readonly PricedWidth[], grown: Grown, steps: number): number[] {
  const taken: number[] = [];
  if (grown.best[steps] === Number.POSITIVE_INFINITY) return taken;
  let left = steps;
  for (let index = 0; index < widths.length; index++) {
    const row = index * (grown.steps + 1);
    for (let flag = TAKE_FIRST; (grown.choices[row + left]! & flag) !== 0; flag = TAKE_AGAIN) {
      taken.push(index);
      left -= widths[index]!.width;
    }
  }
  return taken;
}

function greatestCommonDivisor(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b];
  return a;
}
