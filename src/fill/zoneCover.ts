// The best cover of a zone: the stretch opposite a corner (ta + c) or a joining wall (2c + t).
//
//        joining wall
//            | t |
//   ____|leg |   | leg|____
//   ________________________
//       |<-- 2c + t -->|        no joint can face it: one panel, or one panel and one closure
//
// A closure alone is no cover: nothing would hold it where no tie can stand.

import type { Mm } from "../units.ts";
import { type Cover, type Covered, keyOf, NEAREST_WITHIN, requireLength } from "./cover.ts";
import type { CoverTable } from "./coverTable.ts";

/**
 * The best cover of a zone, judged as an interval is: closures, narrow, fillers; then the narrowest closure.
 *
 * @param length - whole mm, not negative; a zone of length 0 is covered by nothing
 * @throws {RangeError} if `length` is not a whole number or is negative
 */
export function coverZone(length: Mm, table: CoverTable): Cover {
  requireLength(length);
  const covered = bestZone(length, table);
  if (covered !== null) return covered;
  const found = (direction: 1 | -1): Mm | null => {
    for (let by = 1; by <= NEAREST_WITHIN; by++) {
      if (bestZone(length + direction * by, table) !== null) return length + direction * by;
    }
    return null;
  };
  return { status: "none", below: found(-1), above: found(1) };
}

function bestZone(length: Mm, table: CoverTable): Covered | null {
  if (length < 0) return null;
  if (length === 0) return coveredBy([], null, table);
  if (table.widths.some(({ width }) => width === length)) return coveredBy([length], null, table);
  const { closure } = table;
  if (closure === null) return null;
  let best: Covered | null = null;
  // Widest panel, and so narrowest closure, first: on equal counts it stays.
  for (const { width } of table.widths) {
    const rest = length - width;
    if (rest < closure.least || rest > closure.greatest) continue;
    const covered = coveredBy([width], rest, table);
    if (best === null || isBetter(covered, best)) best = covered;
  }
  return best;
}

function coveredBy(widths: readonly Mm[], closure: Mm | null, table: CoverTable): Covered {
  return { status: "covered", widths, closure, key: keyOf(widths, closure, table) };
}

function isBetter({ key: a }: Covered, { key: b }: Covered): boolean {
  return a.narrow !== b.narrow ? a.narrow < b.narrow : a.fillers < b.fillers;
}
