// Panels over and under an opening: intervals of their own, as wide as the opening, alike on both faces.
//
//   ┌──────┬──────┐ top        lintel band, from the head to the top of the panels
//   ├──────┴──────┤ head
//   │   opening   │
//   ├──────┬──────┤ sill       sill band, from the floor
//   └──────┴──────┘ 0

import { familyOf } from "../kit/byFamily.ts";
import type { Family, Kit } from "../kit/kit.ts";
import { offersAt } from "../kit/offers.ts";
import type { Mm } from "../units.ts";
import { type BandCover, coverBand } from "./bandCover.ts";
import { closureRange, narrowUnder } from "./kitTables.ts";
import { orderFromClosingEnd } from "./order.ts";

/** A piece of a band, places from the band's lower left corner, low to high along the line of wall. */
export interface BandPiece {
  readonly at: Mm;
  readonly z: Mm;
  readonly width: Mm;
  readonly height: Mm;
  readonly code: string | null;
  readonly family: Family;
  readonly isStandard: boolean;
}

const remembered = new WeakMap<Kit, Map<string, readonly BandPiece[] | null>>();

/** The pieces of a band, or null where the kit cannot form it. The code of a closure is left to the caller. */
export function bandPieces(kit: Kit, width: Mm, height: Mm): readonly BandPiece[] | null {
  const bands = remembered.get(kit) ?? new Map<string, readonly BandPiece[] | null>();
  remembered.set(kit, bands);
  const key = `${width} ${height}`;
  const known = bands.get(key);
  if (known !== undefined) return known;
  const cover = coverBand({
    width,
    height,
    heights: rowHeights(kit),
    offersAt: (rowHeight) => offersAt(kit, rowHeight),
    closure: closureRange(kit),
    narrowUnder: narrowUnder(kit),
  });
  const pieces = cover.status === "covered" ? standIn(kit, { width, height }, cover) : null;
  bands.set(key, pieces);
  return pieces;
}

// Heights a row can have: panels upright, and panels laid on their side.
function rowHeights(kit: Kit): readonly Mm[] {
  const heights = new Set<Mm>();
  for (const panel of familyOf(kit, "wall-panel")) {
    heights.add(panel.height);
    heights.add(panel.width);
  }
  return [...heights];
}

// Bands have no inside corner at either end: the closing end is the one of greater place, the closure behind a panel.
function standIn(
  kit: Kit,
  band: { width: Mm; height: Mm },
  { rows, widths, closure }: Extract<BandCover, { status: "covered" }>,
): readonly BandPiece[] {
  const upright = closure?.lies === "upright" ? closure.size : null;
  const isStandard = (width: Mm) =>
    rows.every((row) => offersAt(kit, row).find((offer) => offer.width === width)?.standard === true);
  const sequence = orderFromClosingEnd({ widths, closure: upright }, isStandard, {
    cornerAtClosingEnd: false,
  });
  const pieces: BandPiece[] = [];
  let at = 0;
  for (const { width, kind } of [...sequence].reverse()) {
    if (kind === "closure") pieces.push(strip({ at, z: 0, width, height: band.height }));
    else pieces.push(...columnOf(kit, { at, width }, rows));
    at += width;
  }
  if (closure?.lies === "across") {
    const z = rows.reduce((sum, row) => sum + row, 0);
    pieces.push(strip({ at: 0, z, width: band.width, height: closure.size }));
  }
  return pieces;
}

function strip(place: { at: Mm; z: Mm; width: Mm; height: Mm }): BandPiece {
  return { ...place, code: null, family: "closure-strip", isStandard: false };
}

function columnOf(kit: Kit, { at, width }: { at: Mm; width: Mm }, rows: readonly Mm[]): readonly BandPiece[] {
  let z = 0;
  return rows.map((height) => {
    const offer = offersAt(kit, height).find((each) => each.width === width);
    const piece: BandPiece = {
      at,
      z,
      width,
      height,
      code: offer?.code ?? null,
      family: "wall-panel",
      isStandard: offer?.standard ?? false,
    };
    z += height;
    return piece;
  });
}
