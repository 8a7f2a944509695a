// By which factors does ACI 347 allow for the weight of the concrete and for what sets it slowly?

import type { Bounds } from "./range.ts";

/**
 * "portland": Portland cement alone (types I, II, III). "blend": any other cement or blend with less than 70 % slag and
 * less than 40 % fly ash. "slow-blend": 70 % slag, 40 % fly ash or more.
 */
export type Cement = "portland" | "blend" | "slow-blend";

/** C_c. A retarder is any admixture that delays setting, plasticisers that do so among them. */
const CHEMISTRY: Readonly<Record<Cement, readonly [plain: number, retarded: number]>> = {
  portland: [1.0, 1.2],
  blend: [1.2, 1.4],
  "slow-blend": [1.4, 1.4],
};

export const ACI347_COEFFICIENTS_SOURCE = "C_w and C_c from memory of ACI 347-04 / 347R-14";

/** C_c, 1.0 to 1.4. */
export function aci347Chemistry(cement: Cement, isRetarded: boolean): number {
  return CHEMISTRY[cement][isRetarded ? 1 : 0];
}

export const DENSITY_KG: Bounds = {
  input: "density of the concrete",
  least: 800,
  greatest: 4100,
  unit: "kg/m³",
};
export const DENSITY_PCF: Bounds = {
  input: "density of the concrete",
  least: 50,
  greatest: 255,
  unit: "pcf",
};

/** C_w of the metric form, from a density in kg/m³. */
export function aci347Weight(density: number): number {
  return weightOf(density, { from: 2240, to: 2400, normal: 2320 });
}

/** C_w of the inch-pound form, from a density in lb/ft³. */
export function aci347WeightPcf(density: number): number {
  return weightOf(density, { from: 140, to: 150, normal: 145 });
}

const LIGHTEST = 0.8;

function weightOf(density: number, band: { from: number; to: number; normal: number }): number {
  if (density < band.from) return Math.max((1 + density / band.normal) / 2, LIGHTEST);
  return density <= band.to ? 1 : density / band.normal;
}
