// How is a prop's characteristic strength set against its load?
//
//   "permissible"   N        ≤  R_k / (1.1 · 1.5)     loads as they are
//   "design"        1.5 · N  ≤  R_k / 1.1             loads with their factor
//
// Both say the same of one prop; some sheets and kits state the one figure, some the other. A load without its factor is
// never set against the design strength.

import type { KiloNewton } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

export type PropStrength = "design" | "permissible";

/** γ_M of steel. */
const MATERIAL = 1.1;
/** γ_F of loads while building; taken on all of the load, though its permanent part asks for 1.35 only. */
const LOAD = 1.5;

const STRENGTH = { input: "characteristic strength", least: 0, greatest: 1000, unit: "kN" } as const;

export const PROP_LIMIT_FORMULA: Readonly<Record<PropStrength, string>> = {
  design: "1.5·N ≤ R_d = R_k/1.1",
  permissible: "N ≤ R_perm = R_k/(1.1·1.5)",
};
export const PROP_LIMIT_SOURCE = "factors 1.1 on strength and 1.5 on load from memory of EN 12812:2008";

/**
 * The strength a load is compared with, kN: the design strength R_k/1.1 or the permissible load R_k/1.65.
 *
 * @param characteristic - R_k, 0 to 1000 kN; outside it the input is refused
 * @see from memory of EN 12812:2008 (partial factors)
 */
export function propLimit(characteristic: KiloNewton, strength: PropStrength): Answer<KiloNewton> {
  const refusal = refusalOf([characteristic, STRENGTH]);
  return refusal ?? computed(characteristic / (strength === "design" ? MATERIAL : MATERIAL * LOAD));
}

/** What a load counts as beside that strength, kN: 1.5 times itself or itself. */
export function loadToCompare(load: KiloNewton, strength: PropStrength): KiloNewton {
  return strength === "design" ? load * LOAD : load;
}
