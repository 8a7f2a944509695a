// Which rows of panels, and at most one closure above them, reach a height exactly.
//
// Rows are of use only if some width is on offer at the height of each of them, so heights are looked at in
// groups: the heights of one width at a time.

import type { Mm } from "../units.ts";
import type { ClosureRange } from "./coverTable.ts";
import { createWidthTable, type WidthTable } from "./widthTable.ts";

/** Heights of the panels, tallest first, and of the closure above them, null without one. */
export interface Rows {
  readonly panels: readonly Mm[];
  readonly closure: Mm | null;
}

/**
 * One table for each group of heights that share a width, smaller groups inside larger ones left out.
 *
 * @param heights - of the panels, in any order
 * @param heightsByWidth - for each width the heights it is on offer at; undefined: every width at every
 *   height
 * @param base - heights that stand below already and must share the width too
 */
export function rowTables(
  heights: readonly Mm[],
  heightsByWidth: readonly (readonly Mm[])[] | undefined,
  base: readonly Mm[],
): readonly WidthTable[] {
  const usable = new Set(heights);
  const groups = (heightsByWidth ?? [heights])
    .map((group) => new Set(group.filter((height) => usable.has(height))))
    .filter((group) => base.every((height) => group.has(height)));
  const largest = groups.filter(
    (group, index) =>
      !groups.some(
        (other, at) => at !== index && isInside(group, other) && (other.size > group.size || at < index),
      ),
  );
  return largest.map((group) =>
    createWidthTable(
      [...group].map((width) => ({ width, cost: 1 })),
      0,
    ),
  );
}

/**
 * The best rows of exactly this height: least closures, then panels, then tallest from the bottom up, then
 * the narrowest closure. null where there are none.
 *
 * @param height - whole mm; below 0 there are no rows, at 0 no row is needed
 */
export function bestRows(height: Mm, tables: readonly WidthTable[], closure: ClosureRange): Rows | null {
  let best: Rows | null = null;
  for (const table of tables) {
    const rows = rowsOf(height, table, closure);
    if (rows !== null && (best === null || isBetter(rows, best))) best = rows;
  }
  return best;
}

/** The best rows without closure that reach as high as they can up to `limit`; no rows where none fits. */
export function highestRows(limit: Mm, tables: readonly WidthTable[]): Rows {
  let best: Rows = { panels: [], closure: null };
  let reached = 0;
  for (const table of tables) {
    const from = Math.min(table.longest, limit);
    for (let height = from - (from % table.step); height >= reached && height > 0; height -= table.step) {
      if (!Number.isFinite(table.costOf(height))) continue;
      const rows = { panels: table.widthsOf(height), closure: null };
      if (height > reached || isBetter(rows, best)) best = rows;
      reached = height;
      break;
    }
  }
  return best;
}

/** Whether `a` is strictly better than `b`. */
export function isBetter(a: Rows, b: Rows): boolean {
  const closures = Number(a.closure !== null) - Number(b.closure !== null);
  if (closures !== 0) return closures < 0;
  if (a.panels.length !== b.panels.length) return a.panels.length < b.panels.length;
  for (const [index, height] of a.panels.entries()) {
    const other = b.panels[index]!;
    if (height !== other) return height > other;
  }
  return (a.closure ?? 0) < (b.closure ?? 0);
}

function rowsOf(height: Mm, table: WidthTable, closure: ClosureRange): Rows | null {
  if (Number.isFinite(table.costOf(height))) return { panels: table.widthsOf(height), closure: null };
  if (closure === null) return null;
  let best: Rows | null = null;
  for (let strip = closure.least; strip <= Math.min(closure.greatest, height); strip++) {
    if (!Number.isFinite(table.costOf(height - strip))) continue;
    const rows = { panels: table.widthsOf(height - strip), closure: strip };
    if (best === null || isBetter(rows, best)) best = rows;
  }
  return best;
}

function isInside(inner: ReadonlySet<Mm>, outer: ReadonlySet<Mm>): boolean {
  return [...inner].every((height) => outer.has(height));
}
