// What does a slab weigh on its forms while it is cast? ACI 347, metric.
//
// The inch-pound figures of the same guide are not exact multiples of these; they are in `aci347SlabLoadPsf.ts`.

import type { KiloPascal } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";
import { DENSITY, FORMWORK, type SlabLoadInput, selfWeightOf, THICKNESS } from "./slabBounds.ts";

const LIVE: KiloPascal = 2.4;
const LIVE_WITH_CARTS: KiloPascal = 3.6;
const LEAST: KiloPascal = 4.8;
const LEAST_WITH_CARTS: KiloPascal = 6.0;

export const ACI347_SLAB_FORMULA =
  "q = γ·h + g + live, at least q_min; live 2.4 and q_min 4.8 kPa, with motorised carts 3.6 and 6.0 kPa";
export const ACI347_SLAB_SOURCE =
  "ACI 347 as quoted in a formwork textbook extract (zhclg.com, vertical loads and design loads)";

export interface Aci347SlabLoad {
  readonly selfWeight: KiloPascal;
  readonly formwork: KiloPascal;
  readonly live: KiloPascal;
  /** What dead and live load together are at least taken as. */
  readonly least: KiloPascal;
  readonly total: KiloPascal;
}

/**
 * Vertical load on slab forms, kPa, without a load factor.
 *
 * @param input - thickness 20 to 2000 mm, density 8 to 40 kN/m³ (150 pcf is 23.6; 24 is usual), forms 0 to 5 kPa;
 *   outside these the input is refused
 * @param motorisedCarts - whether concrete is brought by motorised carts
 * @see ACI 347, vertical loads: 50 psf (2.4 kPa) live, 100 psf (4.8 kPa) in all; with motorised carts 75 and 125 psf.
 *   Read as quoted by zhclg.com/concrete-formwork/vertical-loads.htm and design-loads-2.htm
 */
export function aci347SlabLoad(input: SlabLoadInput, motorisedCarts: boolean): Answer<Aci347SlabLoad> {
  const { thickness, density, formwork } = input;
  const refusal = refusalOf([thickness, THICKNESS], [density, DENSITY], [formwork, FORMWORK]);
  if (refusal !== null) return refusal;
  const selfWeight = selfWeightOf(input);
  const live = aci347Live(motorisedCarts);
  const least = motorisedCarts ? LEAST_WITH_CARTS : LEAST;
  return computed({
    selfWeight,
    formwork,
    live,
    least,
    total: Math.max(selfWeight + formwork + live, least),
  });
}

/** Live load while concrete is placed, kPa; the same source. */
export function aci347Live(motorisedCarts: boolean): KiloPascal {
  return motorisedCarts ? LIVE_WITH_CARTS : LIVE;
}
