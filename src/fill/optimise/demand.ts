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

/** What may not be chosen. Where nothing else covers an interval, it keeps what is best for it alone. */
export interface SetLimits {
  /** Codes of wall panels. */
  readonly forbidden: ReadonlySet<string>;
  /** Of one piece, kg; null: any. */
  readonly greatestMass: number | null;
}

export const NO_LIMITS: SetLimits = { forbidden: new Set(), greatestMass: null };

/** @param free - the intervals of the fill that no pin holds, in the order of its faces */
export function demandOf(
  { drafts, fill }: FilledUnit,
  free: readonly FreeInterval[],
  kit: Kit,
  limits: SetLimits = NO_LIMITS,
): Demand {
  const barred = barredCodes(kit, limits);
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
    const all = table.widths.map(({ width }) => widthOffer(width, heights, kit));
    const widths = all.filter(({ codes }) => [...codes.keys()].every((code) => !barred.has(code)));
    const canCover = coverable(widths, table, intervals);
    const chosen = intervals.filter(({ stretch }) => canCover(stretch.high - stretch.low));
    for (const { cover } of chosen) takeAway(cover, all, standing, closures);
    return { table, widths, intervals: chosen };
  });
  return { groups: found.filter(({ intervals }) => intervals.length > 0), standing, closures };
}

function barredCodes(kit: Kit, { forbidden, greatestMass }: SetLimits): ReadonlySet<string> {
  const heavy = kit.pieces.filter(({ mass }) => greatestMass !== null && mass > greatestMass);
  return new Set([...forbidden, ...heavy.map(({ code }) => code)]);
}

function widthOffer(width: Mm, heights: readonly Mm[], kit: Kit): WidthOffer {
  const codes = new Map<string, number>();
  for (const height of heights) {
    const code = panelCodeAt(kit, height, width);
    if (code !== undefined) codes.set(code, (codes.get(code) ?? 0) + 1);
  }
  return { width, codes, pieces: heights.length };
}

// Which lengths the permitted widths cover, and whether what covers an interval now is known by its pieces.
function coverable(
  widths: readonly WidthOffer[],
  table: CoverTable,
  intervals: readonly FreeInterval[],
): (length: Mm) => boolean {
  if (widths.length === table.widths.length) return () => true;
  const longest = intervals.reduce((most, { stretch }) => Math.max(most, stretch.high - stretch.low), 0);
  const isSum = new Uint8Array(longest + 1);
  isSum[0] = 1;
  for (let at = 1; at <= longest; at++) {
    if (widths.some(({ width }) => width <= at && isSum[at - width] === 1)) isSum[at] = 1;
  }
  const { closure } = table;
  return (length) => {
    if (isSum[length] === 1) return true;
    for (let strip = closure?.least ?? 1; strip <= Math.min(closure?.greatest ?? 0, length); strip++) {
      if (isSum[length - strip] === 1) return true;
    }
    return false;
  };
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
