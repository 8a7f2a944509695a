// Covers a stretch round a pinned sequence: the pinned pieces stay, what is left on either side is covered as usual.

import type { Mm } from "../units.ts";
import { coverInterval } from "./cover.ts";
import type { CoverTable } from "./coverTable.ts";
import { type OrderedPiece, orderFromClosingEnd } from "./order.ts";
import type { PlacedPin } from "./pins.ts";
import type { Stretch } from "./stretches.ts";

/**
 * The pieces of the stretch from low to high, or null where the pin cannot be kept: a width that is not on offer, a
 * rest without a cover, or more than one closure in all.
 */
export function coverPinned(
  stretch: Stretch,
  pin: PlacedPin,
  table: CoverTable,
  closingSide: "low" | "high",
): readonly OrderedPiece[] | null {
  const own = pin.widths.map((width) => pinnedPiece(width, table));
  if (own.some((piece) => piece === null)) return null;
  const before = rest(pin.low - stretch.low, table, closingSide);
  const after = rest(stretch.high - pin.high, table, closingSide);
  if (before === null || after === null) return null;
  const all = [...before, ...own.filter((piece) => piece !== null), ...after];
  return all.filter(({ kind }) => kind === "closure").length <= 1 ? all : null;
}

function pinnedPiece(width: Mm, table: CoverTable): OrderedPiece | null {
  if (table.widths.some((offer) => offer.width === width)) return { width, kind: "panel" };
  const { closure } = table;
  if (closure !== null && width >= closure.least && width <= closure.greatest)
    return { width, kind: "closure" };
  return null;
}

function rest(length: Mm, table: CoverTable, closingSide: "low" | "high"): readonly OrderedPiece[] | null {
  const cover = coverInterval(length, table);
  if (cover.status !== "covered") return null;
  const sequence = orderFromClosingEnd(cover, table.isStandard, { cornerAtClosingEnd: true });
  return closingSide === "low" ? sequence : [...sequence].reverse();
}
