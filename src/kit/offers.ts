// Which widths of wall panel a kit offers at a height.
//
//   upright    laid on its side
//   +---+      +---------+
//   |   |      |         |   width = the panel's height,
//   |   |      +---------+   height = the panel's width
//   +---+

import type { Kg, Mm } from "../units.ts";
import { familyOf } from "./byFamily.ts";
import type { Kit, WallPanel } from "./kit.ts";
import { comparePreference } from "./preference.ts";

/** A width that one wall panel covers at some height. */
export interface Offer {
  readonly width: Mm;
  readonly code: string;
  readonly standard: boolean;
  readonly mass: Kg;
  readonly isLaid: boolean;
}

/** A width on offer at every height of a stack. */
export interface CommonWidth {
  readonly width: Mm;
  /** Every piece of the column is standard. */
  readonly standard: boolean;
  /** Of the whole column, kg. */
  readonly mass: Kg;
  /** One piece for each height, in the order in which the heights were given. */
  readonly offers: readonly Offer[];
}

interface Offers {
  readonly heights: readonly Mm[];
  readonly byHeight: ReadonlyMap<Mm, readonly Offer[]>;
}

const remembered = new WeakMap<Kit, Offers>();

/**
 * The widths on offer at exactly this height, each once, widest first.
 *
 * Of several panels for one width an upright one is taken before a laid one, then a standard one, the lighter one, the
 * one whose code comes first. Remembered for each kit object.
 *
 * @param height - whole mm
 */
export function offersAt(kit: Kit, height: Mm): readonly Offer[] {
  return offersOf(kit).byHeight.get(height) ?? [];
}

/** Heights of the wall panels standing upright, each once, tallest first, mm. */
export function panelHeights(kit: Kit): readonly Mm[] {
  return offersOf(kit).heights;
}

/**
 * The widths on offer at every one of the heights, widest first; none if `heights` is empty.
 *
 * @param heights - of the panels of one stack, whole mm, in any order
 */
export function commonWidths(kit: Kit, heights: readonly Mm[]): readonly CommonWidth[] {
  const [first, ...others] = heights.map((height) => offersAt(kit, height));
  if (first === undefined) return [];
  const tables = others.map((offers) => new Map(offers.map((offer) => [offer.width, offer])));
  const common: CommonWidth[] = [];
  for (const offer of first) {
    const column = [offer];
    for (const table of tables) {
      const above = table.get(offer.width);
      if (above !== undefined) column.push(above);
    }
    if (column.length === heights.length) common.push(columnOf(offer.width, column));
  }
  return common;
}

function columnOf(width: Mm, offers: readonly Offer[]): CommonWidth {
  return {
    width,
    standard: offers.every((offer) => offer.standard),
    mass: offers.reduce((sum, offer) => sum + offer.mass, 0),
    offers,
  };
}

function offersOf(kit: Kit): Offers {
  const known = remembered.get(kit);
  if (known !== undefined) return known;
  const panels = familyOf(kit, "wall-panel");
  const best = new Map<Mm, Map<Mm, Offer>>();
  for (const panel of panels) {
    consider(best, panel.height, offerOf(panel, false));
    consider(best, panel.width, offerOf(panel, true));
  }
  const byHeight = new Map<Mm, readonly Offer[]>();
  for (const [height, widths] of best) {
    byHeight.set(
      height,
      [...widths.values()].sort((a, b) => b.width - a.width),
    );
  }
  const heights = [...new Set(panels.map((panel) => panel.height))].sort((a, b) => b - a);
  const offers = { heights, byHeight };
  remembered.set(kit, offers);
  return offers;
}

function offerOf(panel: WallPanel, isLaid: boolean): Offer {
  const width = isLaid ? panel.height : panel.width;
  return { width, code: panel.code, standard: panel.standard, mass: panel.mass, isLaid };
}

function consider(best: Map<Mm, Map<Mm, Offer>>, height: Mm, offer: Offer): void {
  const widths = best.get(height) ?? new Map<Mm, Offer>();
  best.set(height, widths);
  const held = widths.get(offer.width);
  if (held === undefined || compareOffers(offer, held) < 0) widths.set(offer.width, offer);
}

function compareOffers(a: Offer, b: Offer): number {
  if (a.isLaid !== b.isLaid) return a.isLaid ? 1 : -1;
  return comparePreference(a, b);
}
