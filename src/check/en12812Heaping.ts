// How much more than the slab may lie on the form while concrete is placed in heaps? EN 12812.

import type { KiloPascal } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

const LEAST: KiloPascal = 0.75;
const GREATEST: KiloPascal = 1.75;
const SELF_WEIGHT = { input: "self-weight of the slab", least: 0, greatest: 80, unit: "kPa" } as const;

export const EN12812_HEAPING_FORMULA = "q_heap = 0.10·q_sw, at least 0.75 and at most 1.75 kPa";

/**
 * Allowance for in-situ placing on a patch of 3 m × 3 m, kPa: a tenth of the slab's self-weight, not under 0.75 and not
 * over 1.75. A support that carries up to 9 m² takes it in full.
 *
 * @param selfWeight - of the slab, 0 to 80 kPa; outside it the input is refused
 * @see from memory of EN 12812:2008, variable transient loads; EN 1991-1-6 Table 4.2 stops at 1.5 kPa instead
 */
export function en12812Heaping(selfWeight: KiloPascal): Answer<KiloPascal> {
  const refusal = refusalOf([selfWeight, SELF_WEIGHT]);
  return refusal ?? computed(Math.min(Math.max(selfWeight / 10, LEAST), GREATEST));
}
