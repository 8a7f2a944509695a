// What a fill asks of the set: its free intervals, gathered by what may cover them, and everything that stands beside them.

import type { Kit } from "../../kit/kit.ts";
import type { Mm } from "../../units.ts";
import { type Covered, coverInterval } from "../cover.ts";
import { type CoverTable, createCoverTable } from "../coverTable.ts";
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
  /** Free intervals that nothing allowed covers: they stay as they are filled, and stand. */
  readonly held: readonly FreeInterval[];
  /** Wall panels that no choice touches. */
  readonly standing: Codes;
  /** Widths of the full-height closures that no choice touches, once for each face. */
  readonly closures: readonly Mm[];
}

/**
 * @param free - the intervals of the fill that no pin holds, in the order of its faces
 * @param isAllowed - whether a panel of this code may be chosen
 */
export function demandOf(
  { drafts, fill }: FilledUnit,
  free: readonly FreeInterval[],
  kit: Kit,
  isAllowed: (code: string) => boolean = () => true,
): Demand {
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
  const held: FreeInterval[] = [];
  const found = [...groups.values()].map(({ heights, table, intervals }): IntervalGroup => {
    const all = table.widths.map(({ width }) => widthOffer(width, heights, kit));
    const widths = all.filter(({ codes }) => [...codes.keys()].every(isAllowed));
    const kept: FreeInterval[] = [];
    const allowed = widths.length === all.length ? table : narrowedTable(table, widths);
    for (const interval of intervals) {
      const cover = allowed === table ? interval.cover : coverWithin(interval, allowed);
      if (cover === null) held.push(interval);
      else {
        takeAway(interval.cover, all, standing, closures);
        // The same object where nothing is ruled out, so that it can be looked up.
        kept.push(cover === interval.cover ? interval : { ...interval, cover });
      }
    }
    return { table: allowed, widths, intervals: kept };
  });
  return { groups: found, held, standing, closures };
}

function narrowedTable(table: CoverTable, widths: readonly WidthOffer[]): CoverTable {
  const allowed = widths.map(({ width }) => ({ width, standard: table.isStandard(width) }));
  return createCoverTable(allowed, table.closure, table.narrowUnder);
}

function coverWithin({ stretch }: FreeInterval, table: CoverTable): Covered | null {
  const cover = coverInterval(stretch.high - stretch.low, table);
  return cover.status === "covered" ? cover : null;
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
