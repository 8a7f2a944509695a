// What does a slab weigh on its forms while it is cast? ACI 347, inch-pound: inches, pounds per cubic and square foot.

import { type Answer, computed, refusalOf } from "./range.ts";

const LIVE_PSF = 50;
const LIVE_WITH_CARTS_PSF = 75;
const LEAST_PSF = 100;
const LEAST_WITH_CARTS_PSF = 125;
const INCHES_PER_FOOT = 12;

export interface SlabLoadPsfInput {
  readonly thicknessInches: number;
  readonly densityPcf: number;
  readonly formworkPsf: number;
}

export interface Aci347SlabLoadPsf {
  /** Concrete alone. */
  readonly selfWeightPsf: number;
  readonly totalPsf: number;
}

/**
 * Vertical load on slab forms, psf, without a load factor.
 *
 * @param input - thickness 1 to 80 in, density 50 to 250 pcf (150 is usual), forms 0 to 100 psf; outside these the input
 *   is refused
 * @see ACI 347, vertical loads, as quoted by zhclg.com/concrete-formwork/vertical-loads.htm and design-loads-2.htm
 */
export function aci347SlabLoadPsf(
  { thicknessInches, densityPcf, formworkPsf }: SlabLoadPsfInput,
  motorisedCarts: boolean,
): Answer<Aci347SlabLoadPsf> {
  const refusal = refusalOf(
    [thicknessInches, { input: "slab thickness", least: 1, greatest: 80, unit: "in" }],
    [densityPcf, { input: "density of the concrete", least: 50, greatest: 250, unit: "pcf" }],
    [formworkPsf, { input: "weight of the formwork", least: 0, greatest: 100, unit: "psf" }],
  );
  if (refusal !== null) return refusal;
  const selfWeightPsf = (densityPcf * thicknessInches) / INCHES_PER_FOOT;
  const live = motorisedCarts ? LIVE_WITH_CARTS_PSF : LIVE_PSF;
  const least = motorisedCarts ? LEAST_WITH_CARTS_PSF : LEAST_PSF;
  return computed({ selfWeightPsf, totalPsf: Math.max(selfWeightPsf + formworkPsf + live, least) });
}
