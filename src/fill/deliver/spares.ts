// How many more of a piece go out than a pour needs.

import type { Family } from "../../kit/kit.ts";

/**
 * Spares in percent of the need, and how many panels of a size must be needed before it has any. Common practice, no
 * source.
 */
export const SPARES = { pin: 5, wedge: 8, tie: 5, panel: 1, leastPanels: 20 } as const;

/** Families that are not listed have no spares. */
export const SPARE_PERCENT: { readonly [F in Family]?: number } = {
  pin: SPARES.pin,
  wedge: SPARES.wedge,
  tie: SPARES.tie,
  "tie-sleeve": SPARES.tie,
  "wall-panel": SPARES.panel,
  "slab-panel": SPARES.panel,
};

/** Spares of one code, whole pieces; panels of a size that is rare have none. */
export function sparesOf(family: Family, needed: number): number {
  const isPanel = family === "wall-panel" || family === "slab-panel";
  if (isPanel && needed < SPARES.leastPanels) return 0;
  return Math.ceil((needed * (SPARE_PERCENT[family] ?? 0)) / 100);
}
