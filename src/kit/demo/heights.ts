// Heights and thicknesses the demo kit is made for.
//
//   panels       2400 · 2250 · 2200 · 2100 · 2000       with a connector of 100 to 300: clear heights 2100 to 2700
//   sills        1500 · 1200 · 1100 · 1000 · 900        under windows
//   extensions   600 · 500 · 450 … 200 · 150            over panels in higher storeys, over heads of openings
//
// There is no 2300: with a 100 connector it would make 2400 in two pieces as well, and the higher panel would be taken.

import type { Mm } from "../../units.ts";

const PANEL_HEIGHTS: readonly Mm[] = [2400, 2250, 2200, 2100, 2000];
const SILL_HEIGHTS: readonly Mm[] = [1500, 1200, 1100, 1000, 900];
/** Also the bands over openings. */
const EXTENSION_HEIGHTS: readonly Mm[] = [600, 500, 450, 400, 350, 300, 250, 200, 150];

/** Heights of wall panels and of inside corners, tallest first. */
export const WALL_HEIGHTS: readonly Mm[] = [...PANEL_HEIGHTS, ...SILL_HEIGHTS, ...EXTENSION_HEIGHTS];

/** Heights a jamb or an edge may need besides: a head at 2050, and the last 100 of a sum. */
export const EDGE_HEIGHTS: readonly Mm[] = [...WALL_HEIGHTS, 2050, 100].sort((a, b) => b - a);

/** Wall thicknesses for which there are stop-ends, reveal closures, ties and sleeves. */
export const THICKNESSES: readonly Mm[] = [80, 100, 120, 150, 200];

/** Vertical legs of the wall-to-slab connector. Common practice, no source. */
export const CONNECTOR_HEIGHTS: readonly Mm[] = [100, 150, 200, 300];

const SLABS: readonly Mm[] = [100, 120, 150];

/** A cap covers a connector and the slab, or, over an opening of full height, the slab alone. */
export const CAP_HEIGHTS: readonly Mm[] = capHeights();

function capHeights(): readonly Mm[] {
  const heights = new Set<Mm>(SLABS);
  for (const slab of SLABS) for (const connector of CONNECTOR_HEIGHTS) heights.add(connector + slab);
  return [...heights].sort((a, b) => a - b);
}
