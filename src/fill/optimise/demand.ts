// What a fill asks of the set: its free intervals, gathered by what may cover them, and everything that stands beside them.

import type { Kit } from "../../kit/kit.ts";
import type { Mm } from "../../units.ts";
import type { CoverTable } from "../coverTable.ts";
import type { FilledUnit } from "../fillWalls.ts";
import { panelCodeAt } from "../kitTables.ts";
import type { FreeInterval } from "../solve.ts";

/** Counts by code. */
export type Codes = ReadonlyMap<string, number>;

/** A width on offer, with the pieces of one column of it on both faces. */
export interface WidthOffer {
  readonly width: Mm;
  readonly codes: Codes;
  readonly pieces: number;
}

/** Intervals that may be covered with the same widths, made of the same pieces. */
export interface IntervalGroup {
  readonly table: CoverTable;
  /** Widest first. */
  readonly widths: readonly WidthOffer[];
  readonly intervals: readonly FreeInterval[];
}

export interface Demand {
  readonly groups: readonly IntervalGroup[];
  /** Wall panels that no choice touches. */
  readonly standing: Codes;
  /** Widths of the full-height closures that no choice touches, once for each face. */
  readonly closures: readonly Mm[];
}

/** @param free - the intervals of the fill that no pin holds, in the order of its faces */
export function demandOf({ drafts, fill }: FilledUnit, free: readonly FreeInterval[], kit: Kit): Demand {
  const groups = new Map<string, { heights: readonly Mm[]; table: CoverTable; intervals: FreeInterval[] }>();
  for (const interval of free) {
    const { face, opposite } = interval.stretch;
    const heights = [face, opposite ?? face].flatMap((each) => drafts[each]!.profile.heights);
    heights.sort((a, b) => b - a);
    const key = heights.join(" ");
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { heights, table: interval.table, intervals: [interval] });
    else known.intervals.push(interval);
  }
  const standing = new Map<string, number>();
  for (const { family, code, quantity } of fill.bill) {
    if (family === "wall-panel") standing.set(code, quantity);
  }
  const closures = drafts.flatMap(({ parts }) =>
    parts.flatMap((part) => (part.kind === "closure" ? [part.high - part.low] : [])),
  );
  const found = [...groups.values()].map(({ heights, table, intervals }): IntervalGroup => {
    const widths = table.widths.map(({ width }) => widthOffer(width, heights, kit));
    for (const { cover } of intervals) takeAway(cover, widths, standing, closures);
    return { table, widths, intervals };
  });
  return { groups: found, standing, closures };
}

function widthOffer(width: Mm, heights: readonly Mm[], kit: Kit): WidthOffer {
  const codes = new Map<string, number>();
  for (const height of heights) {
    const code = panelCodeAt(kit, height, width);
    if (code !== undefined) codes.set(code, (codes.get(code) ?? 0) + 1);
  }
  return { width, codes, pieces: heights.length };
}

function takeAway(
  cover: FreeInterval["cover"],
  widths: readonly WidthOffer[],
  standing: Map<string, number>,
  closures: Mm[],
): void {
  const offers = new Map(widths.map((offer) => [offer.width, offer]));
  for (const width of cover.widths) {
    for (const [code, count] of offers.get(width)?.codes ?? []) {
      standing.set(code, (standing.get(code) ?? 0) - count);
    }
  }
  if (cover.closure === null) return;
  for (let face = 0; face < 2; face++) closures.splice(closures.indexOf(cover.closure), 1);
}
