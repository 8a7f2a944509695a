// The other exact covers of an interval, best first, for an engineer who wants a choice.
//
//   1400:   600 600 200      one filler, three pieces, two widths
//           500 450 450      the same counts, narrower pieces
//           600 500 300      one width more
//           …
//
// A search down the list of widths that never enters a dead end: for every remainder the least cost to finish
// is known exactly. It is run once for each cost that occurs, from the least up, so covers come out in their
// order.

import type { Mm } from "../units.ts";
import { type Covered, keyOf, requireLength } from "./cover.ts";
import type { CoverTable } from "./coverTable.ts";
import type { WidthTable } from "./widthTable.ts";

/** 8 bytes each, for both tables: 64 MB at most. */
const MAX_CELLS = 2 ** 22;
/** The search goes as deep as a cover has pieces. */
const MAX_PIECES = 2000;

/**
 * The first `limit` exact covers of an interval, in the order of what is best: closures, narrow, fillers,
 * pieces, distinct widths, width of the closure, then widths lexicographically greatest. The first is that of
 * `coverInterval`. Each multiset of widths comes once. Time grows with the square of `limit`; a hundred take
 * milliseconds.
 *
 * @param length - whole mm, not negative; too long a table (100 m of 20 odd widths) gives no covers
 * @throws {RangeError} if `length` is not a whole number or is negative
 */
export function coversOf(length: Mm, table: CoverTable, limit: number): readonly Covered[] {
  requireLength(length);
  const { plain, closure } = table;
  const steps = Math.floor(length / plain.step);
  const narrowest = plain.widths.at(-1) ?? Number.POSITIVE_INFINITY;
  const isTooLong = (plain.widths.length + 1) * (steps + 1) > MAX_CELLS || length / narrowest > MAX_PIECES;
  if (isTooLong || length > table.longest) return [];

  const search: Search = { table, finish: costsToFinish(plain, steps), found: [], limit };
  inOrderOfCost(length, [null], search);
  const strips: Mm[] = [];
  for (let strip = closure?.least ?? 1; strip <= Math.min(closure?.greatest ?? 0, length); strip++) {
    strips.push(strip);
  }
  inOrderOfCost(length, strips, search);
  return search.found;
}

/** Least cost to finish from width `index` on with `left` steps to go. */
interface CostsToFinish {
  readonly steps: number;
  /** Row by row: before any piece of the width is taken … */
  readonly fresh: Float64Array;
  /** … and once one is taken, so that its first use is paid. */
  readonly again: Float64Array;
}

interface Search {
  readonly table: CoverTable;
  readonly finish: CostsToFinish;
  readonly found: Covered[];
  readonly limit: number;
}

function costsToFinish({ widths, costs, firstUse, step }: WidthTable, steps: number): CostsToFinish {
  const size = steps + 1;
  const fresh = new Float64Array((widths.length + 1) * size).fill(Number.POSITIVE_INFINITY);
  const again = new Float64Array(fresh.length).fill(Number.POSITIVE_INFINITY);
  fresh[widths.length * size] = 0;
  for (let index = widths.length - 1; index >= 0; index--) {
    const width = widths[index]! / step;
    const cost = costs[index]!;
    for (let left = 0; left <= steps; left++) {
      const at = index * size + left;
      const without = fresh[at + size]!;
      const withAnother = left < width ? Number.POSITIVE_INFINITY : cost + again[at - width]!;
      again[at] = Math.min(without, withAnother);
      fresh[at] = Math.min(without, withAnother + firstUse);
    }
  }
  return { steps, fresh, again };
}

/** Adds the covers with one of these closures, from the least cost up, until the limit. */
function inOrderOfCost(length: Mm, closures: readonly (Mm | null)[], search: Search): void {
  const { step } = search.table.plain;
  const roots = closures.filter((closure) => (length - (closure ?? 0)) % step === 0);
  let cost = Number.NEGATIVE_INFINITY;
  while (search.found.length < search.limit) {
    let next = Number.POSITIVE_INFINITY;
    for (const closure of roots) {
      const left = (length - (closure ?? 0)) / step;
      next = Math.min(next, addCoversOf(cost, { closure, left }, search));
    }
    if (next === Number.POSITIVE_INFINITY) return;
    cost = next;
  }
}

/**
 * Adds every cover of exactly this cost, widest pieces first.
 *
 * @returns the least cost above it that occurs
 */
function addCoversOf(target: number, root: { closure: Mm | null; left: number }, search: Search): number {
  const { table, finish, found, limit } = search;
  const { widths, costs, firstUse, step } = table.plain;
  const size = finish.steps + 1;
  const taken: Mm[] = [];
  let above = Number.POSITIVE_INFINITY;

  // `paid` is the cost so far; `isUsed` tells whether the width at hand has been taken.
  function visit(index: number, left: number, isUsed: boolean, paid: number): void {
    if (found.length >= limit) return;
    const total = paid + (isUsed ? finish.again : finish.fresh)[index * size + left]!;
    if (total > target) {
      above = Math.min(above, total);
      return;
    }
    const width = widths[index];
    if (width === undefined) {
      if (paid !== target) return; // cheaper: it came out before
      const cover = [...taken];
      found.push({
        status: "covered",
        widths: cover,
        closure: root.closure,
        key: keyOf(cover, root.closure, table),
      });
      return;
    }
    if (left >= width / step) {
      taken.push(width);
      visit(index, left - width / step, true, paid + costs[index]! + (isUsed ? 0 : firstUse));
      taken.pop();
    }
    visit(index + 1, left, false, paid);
  }

  visit(0, root.left, false, 0);
  return above;
}
