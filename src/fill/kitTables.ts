// The cover tables of a kit, one for each set of panel heights, kept as long as the kit object lives: an editor fills
// the same kit again and again.

import { closureRanges } from "../kit/closures.ts";
import { insideCornerAt } from "../kit/corners.ts";
import { type InsideCorner, type Kit, ruleValue } from "../kit/kit.ts";
import { commonWidths, offersAt } from "../kit/offers.ts";
import type { Mm } from "../units.ts";
import { type ClosureRange, type CoverTable, createCoverTable } from "./coverTable.ts";

/** Pieces narrower than this are narrow where the kit gives no rule `narrowUnder`, mm. */
const NARROW_UNDER = 100;

const remembered = new WeakMap<Kit, Map<string, CoverTable>>();

/** The table for columns that are made of panels of all these heights. */
export function tableOf(kit: Kit, heights: readonly Mm[]): CoverTable {
  const tables = remembered.get(kit) ?? new Map<string, CoverTable>();
  remembered.set(kit, tables);
  const distinct = [...new Set(heights)].sort((a, b) => b - a);
  const key = distinct.join(" ");
  const known = tables.get(key);
  if (known !== undefined) return known;
  const table = createCoverTable(commonWidths(kit, distinct), closureRange(kit), narrowUnder(kit));
  tables.set(key, table);
  return table;
}

const rememberedCodes = new WeakMap<Kit, Map<Mm, ReadonlyMap<Mm, string>>>();

/** The code of the panel of this size, upright or laid; undefined where the kit has none. */
export function panelCodeAt(kit: Kit, height: Mm, width: Mm): string | undefined {
  const heights = rememberedCodes.get(kit) ?? new Map<Mm, ReadonlyMap<Mm, string>>();
  rememberedCodes.set(kit, heights);
  let codes = heights.get(height);
  if (codes === undefined) {
    codes = new Map(offersAt(kit, height).map((offer) => [offer.width, offer.code]));
    heights.set(height, codes);
  }
  return codes.get(width);
}

const rememberedCorners = new WeakMap<Kit, Map<string, InsideCorner | null>>();

/** The square inside corner with legs of `leg` for one row of panels; null where the kit has none. */
export function squareCornerAt(kit: Kit, leg: Mm, height: Mm): InsideCorner | null {
  const corners = rememberedCorners.get(kit) ?? new Map<string, InsideCorner | null>();
  rememberedCorners.set(kit, corners);
  const key = `${leg} ${height}`;
  const known = corners.get(key);
  if (known !== undefined) return known;
  const corner = insideCornerAt(kit, [leg, leg], height);
  corners.set(key, corner);
  return corner;
}

/**
 * The widths a closure may have: the widest of the kit's ranges, the narrower of equals.
 *
 * Kits with several strips that leave a gap between them use one of them only.
 */
export function closureRange(kit: Kit): ClosureRange {
  let best: ClosureRange = null;
  for (const range of closureRanges(kit)) {
    if (best === null || range.greatest - range.least > best.greatest - best.least) best = range;
  }
  return best;
}

export function narrowUnder(kit: Kit): Mm {
  return ruleValue(kit, "narrowUnder") ?? NARROW_UNDER;
}
