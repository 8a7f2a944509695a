// From the bands of each cell to rectangles: slab panels, closures and lines of strips, in u and v.

import type { Mm } from "../../units.ts";
import { orderFromClosingEnd } from "../order.ts";
import type { BandTables } from "./bandTables.ts";
import type { Rect } from "./cells.ts";
import type { CellPlan } from "./layout.ts";

export type End = "low" | "high";

/** Where narrow pieces go: the end that is closed last, along the bands' lengths and across them. */
export interface ClosingEnds {
  readonly along: End;
  readonly across: End;
}

export interface PanelTile extends Rect {
  readonly kind: "panel";
  readonly code: string;
  readonly standard: boolean;
}

/** Made to its width: in a band it closes the row of panels; a plank runs along v, between a band and what carries it. */
export interface ClosureTile extends Rect {
  readonly kind: "closure" | "plank";
  readonly width: Mm;
}

/** A line of strips from edge to edge of its cell. */
export type StripLine = Rect;

export interface Tiles {
  /** Cell by cell, band by band from the closing end's other side. */
  readonly tiles: readonly (PanelTile | ClosureTile)[];
  readonly strips: readonly StripLine[];
}

export function tilesOf(cells: readonly CellPlan[], tables: BandTables, closing: ClosingEnds): Tiles {
  const tiles: (PanelTile | ClosureTile)[] = [];
  const strips: StripLine[] = [];
  const width = tables.stripWidth ?? 0;
  for (const { rect, lowStrip, highStrip, bands } of cells) {
    if (bands === null) continue;
    const { v0, v1 } = rect;
    let u = rect.u0;
    const strip = () => {
      strips.push({ u0: u, u1: u + width, v0, v1 });
      u += width;
    };
    const closure = () => {
      if (bands.closure === null) return;
      tiles.push({ kind: "plank", u0: u, u1: u + bands.closure, v0, v1, width: bands.closure });
      u += bands.closure;
    };
    if (lowStrip) strip();
    if (closing.along === "low") closure();
    const lengths = closing.along === "low" ? [...bands.lengths].reverse() : bands.lengths;
    lengths.forEach((length, k) => {
      if (k > 0) strip();
      tiles.push(...bandTiles({ u0: u, u1: u + length, v0, v1 }, tables, closing.across));
      u += length;
    });
    if (closing.along === "high") closure();
    if (highStrip) strip();
  }
  return { tiles, strips };
}

function bandTiles(
  { u0, u1, v0, v1 }: Rect,
  tables: BandTables,
  closingEnd: End,
): readonly (PanelTile | ClosureTile)[] {
  const length = u1 - u0;
  const cover = tables.across(length, v1 - v0);
  if (cover === null) return [];
  const offers = new Map(tables.offers(length).map((offer) => [offer.width, offer]));
  const isStandard = (width: Mm) => offers.get(width)?.standard === true;
  const ordered = orderFromClosingEnd(cover, isStandard, { cornerAtClosingEnd: true });
  let from = closingEnd === "low" ? v0 : v1;
  const tiles = ordered.map(({ width, kind }): PanelTile | ClosureTile => {
    const to = closingEnd === "low" ? from + width : from - width;
    const rect = { u0, u1, v0: Math.min(from, to), v1: Math.max(from, to) };
    from = to;
    const offer = kind === "panel" ? offers.get(width) : undefined;
    return offer === undefined
      ? { kind: "closure", ...rect, width }
      : { kind: "panel", ...rect, code: offer.code, standard: offer.standard };
  });
  // Laid towards the closing end, which comes last.
  return tiles.reverse();
}
