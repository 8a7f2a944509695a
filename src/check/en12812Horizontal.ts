// Which horizontal load must falsework under a slab resist at least? EN 12812.

import type { KiloNewton } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

const SHARE = 40; // 1/40 = 2.5 %
const VERTICAL = { input: "vertical load", least: 0, greatest: 1e6, unit: "kN" } as const;

export const EN12812_HORIZONTAL_FORMULA = "H = 2.5 %·V";
export const EN12812_HORIZONTAL_SOURCE = "from memory of EN 12812:2008, variable persistent horizontal loads";

/**
 * Horizontal load, kN, acting where the vertical load does, in any direction: 2.5 % of it.
 *
 * @param vertical - all of it, 0 to 1 000 000 kN; outside it the input is refused
 * @see EN12812_HORIZONTAL_SOURCE
 */
export function en12812Horizontal(vertical: KiloNewton): Answer<KiloNewton> {
  return refusalOf([vertical, VERTICAL]) ?? computed(vertical / SHARE);
}
