// The best exact cover of one free interval by panels and at most one closure.
//
//   |<--------------------- length --------------------->|
//   |    600    |    600    |    600    |   450   | 20   |
//                                          filler   closure
//
// Best means, least first: closures, pieces under `narrowUnder`, panels not standard, panels; then the fewest
// distinct widths, the narrowest closure, and the widths, widest first, lexicographically greatest. All
// lengths are whole millimetres, so there is no tolerance in this file. The order along the wall is settled
// in order.ts.

import type { Mm } from "../units.ts";
import type { ClosureRange, CoverTable } from "./coverTable.ts";
import type { WidthTable } from "./widthTable.ts";

/** The counts a cover is judged by. Neither `pieces` nor `distinct` counts the closure. */
export interface CoverKey {
  readonly closures: number;
  readonly narrow: number;
  readonly fillers: number;
  readonly pieces: number;
  readonly distinct: number;
}

/** An exact cover: panels widest first, and the width of its closure, null without one. */
export interface Covered {
  readonly status: "covered";
  readonly widths: readonly Mm[];
  readonly closure: Mm | null;
  readonly key: CoverKey;
}

/** The nearest lengths that could be covered, mm, null where there is none within {@link NEAREST_WITHIN}. */
export interface Nearest {
  readonly below: Mm | null;
  readonly above: Mm | null;
}

/** "none" is an answer, not an error. "too-long" gives the longest length that would have been looked at. */
export type Cover =
  | Covered
  | ({ readonly status: "none" } & Nearest)
  | { readonly status: "too-long"; readonly longest: Mm };

/** How far a neighbouring length is looked for, mm: further than this a wall is not moved for its panels. */
export const NEAREST_WITHIN = 100;

/**
 * The best cover of an interval of `length`.
 *
 * Nothing covers the length 0. A closure alone may cover a short interval. After the table has grown to the
 * length, the time is a look-up per piece and per width the closure may have.
 *
 * @param length - whole mm, not negative
 * @throws {RangeError} if `length` is not a whole number or is negative
 */
export function coverInterval(length: Mm, table: CoverTable): Cover {
  requireLength(length);
  if (length > table.longest) return { status: "too-long", longest: table.longest };
  const closure = bestClosure(length, table.plain, table.closure);
  if (closure === undefined) return { status: "none", ...nearestLengths(length, table, "any") };
  const widths = table.plain.widthsOf(length - (closure ?? 0));
  return { status: "covered", widths, closure, key: keyOf(widths, closure, table) };
}

/**
 * The nearest lengths below and above `length`, not itself, that an interval can have: with at most one
 * closure ("any") or without closure ("plain").
 */
export function nearestLengths(length: Mm, table: CoverTable, kind: "any" | "plain"): Nearest {
  const isCovered = (other: Mm): boolean =>
    other >= 0 &&
    other <= table.longest &&
    (kind === "any"
      ? bestClosure(other, table.plain, table.closure) !== undefined
      : Number.isFinite(table.plain.costOf(other)));
  const found = (direction: 1 | -1): Mm | null => {
    for (let by = 1; by <= NEAREST_WITHIN; by++) {
      if (isCovered(length + direction * by)) return length + direction * by;
    }
    return null;
  };
  return { below: found(-1), above: found(1) };
}

/** The counts of a cover, found by counting. */
export function keyOf(widths: readonly Mm[], closure: Mm | null, table: CoverTable): CoverKey {
  return {
    closures: closure === null ? 0 : 1,
    narrow: widths.filter((width) => width < table.narrowUnder).length,
    fillers: widths.filter((width) => !table.isStandard(width)).length,
    pieces: widths.length,
    distinct: new Set(widths).size,
  };
}

/** @throws {RangeError} if `length` is not a whole number of millimetres or is negative */
export function requireLength(length: Mm): void {
  if (!Number.isInteger(length) || length < 0)
    throw new RangeError("a length must be whole and not negative");
}

/**
 * The closure of the best cover: the one that leaves the least cost, the narrowest of equals.
 *
 * @returns null where none is needed, undefined where no closure helps
 */
export function bestClosure(length: Mm, plain: WidthTable, range: ClosureRange): Mm | null | undefined {
  if (Number.isFinite(plain.costOf(length))) return null;
  if (range === null) return undefined;
  let best: Mm | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (let closure = range.least; closure <= Math.min(range.greatest, length); closure++) {
    const cost = plain.costOf(length - closure);
    // Strictly less: on equal counts the narrower closure, found first, stays.
    if (cost < least) {
      least = cost;
      best = closure;
    }
  }
  return best;
}
