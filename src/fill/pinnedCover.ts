// Covers a stretch round the sequences pinned to it: these stay, and what is left before, between and behind them is covered
// as usual.

import type { FillerPlace } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { ClosingEnd } from "./closingEnd.ts";
import { coverInterval } from "./cover.ts";
import type { CoverTable } from "./coverTable.ts";
import { type OrderedPiece, orderFromClosingEnd } from "./order.ts";
import type { PlacedPin } from "./pins.ts";
import type { Stretch } from "./stretches.ts";

export interface PinnedOptions {
  readonly table: CoverTable;
  readonly closing: ClosingEnd;
  readonly fillers: FillerPlace;
}

export interface PinnedCover {
  /** From low to high. */
  readonly pieces: readonly OrderedPiece[];
  /** The pins that are kept, by place; the others cannot be kept beside these. */
  readonly kept: readonly PlacedPin[];
}

/**
 * The stretch with all of its pins, or where they cannot stand together with as many as can, taken from low to high.
 *
 * @param pins - on the stretch, by place
 * @returns null where none can be kept
 */
export function coverPinned(
  stretch: Stretch,
  pins: readonly PlacedPin[],
  options: PinnedOptions,
): PinnedCover | null {
  const together = coverRound(stretch, pins, options);
  if (together !== null) return { pieces: together, kept: pins };
  let found: PinnedCover | null = null;
  for (const pin of pins) {
    const kept: readonly PlacedPin[] = [...(found?.kept ?? []), pin];
    const pieces = coverRound(stretch, kept, options);
    if (pieces !== null) found = { pieces, kept };
  }
  return found;
}

// Null where a width is not on offer, a rest has no cover, two pins overlap, or there is more than one closure in all.
function coverRound(
  stretch: Stretch,
  pins: readonly PlacedPin[],
  options: PinnedOptions,
): readonly OrderedPiece[] | null {
  const all: OrderedPiece[] = [];
  let reached = stretch.low;
  for (const { low, high, widths, closure } of pins) {
    const before = rest(stretch, { low: reached, high: low }, options);
    const own = widths
      .map((width, k) => pinnedPiece(width, closure === null ? null : closure === k, options.table))
      .filter((piece) => piece !== null);
    if (before === null || own.length < widths.length) return null;
    all.push(...before, ...own);
    reached = high;
  }
  const behind = rest(stretch, { low: reached, high: stretch.high }, options);
  if (behind === null) return null;
  all.push(...behind);
  return all.filter(({ kind }) => kind === "closure").length <= 1 ? all : null;
}

// What the pin does not say to be the closure is a panel where there is one of this width.
function pinnedPiece(width: Mm, isClosure: boolean | null, table: CoverTable): OrderedPiece | null {
  const isPanel = table.widths.some((offer) => offer.width === width);
  if (isClosure !== true && isPanel) return { width, kind: "panel" };
  const { closure } = table;
  const isStrip = closure !== null && width >= closure.least && width <= closure.greatest;
  return isClosure !== false && isStrip ? { width, kind: "closure" } : null;
}

function rest(
  stretch: Stretch,
  { low, high }: { readonly low: Mm; readonly high: Mm },
  { table, closing, fillers }: PinnedOptions,
): readonly OrderedPiece[] | null {
  if (high < low) return null;
  const cover = coverInterval(high - low, table);
  if (cover.status !== "covered") return null;
  const isAtEnd = closing.side === "low" ? low === stretch.low : high === stretch.high;
  // A closure beside a pinned piece is behind a panel already.
  const options = { cornerAtClosingEnd: closing.hasCorner || !isAtEnd, fillers };
  const sequence = orderFromClosingEnd(cover, table.isStandard, options);
  return closing.side === "low" ? sequence : [...sequence].reverse();
}
