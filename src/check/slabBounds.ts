// For which slabs, concretes and forms do the load models of this folder give a figure?
//
// The standards give no such bounds for their sums; these keep slips of the pen (centimetres for millimetres, kilograms
// for kilonewtons) from passing for loads.

import type { KiloNewtonPerCubicMetre, KiloPascal, Mm } from "../units.ts";
import type { Bounds } from "./range.ts";

/** What a slab model needs to know. */
export interface SlabLoadInput {
  readonly thickness: Mm;
  /** Fresh reinforced concrete. */
  readonly density: KiloNewtonPerCubicMetre;
  /** Weight of the forms on a square metre. */
  readonly formwork: KiloPascal;
}

export const THICKNESS: Bounds = { input: "slab thickness", least: 20, greatest: 2000, unit: "mm" };

/** From the lightest structural concrete to heavy concrete (800 to 4000 kg/m³, from memory of EN 206). */
export const DENSITY: Bounds = { input: "density of the concrete", least: 8, greatest: 40, unit: "kN/m³" };

export const FORMWORK: Bounds = { input: "weight of the formwork", least: 0, greatest: 5, unit: "kPa" };

/** Self-weight of the slab, kPa: density × thickness. */
export function selfWeightOf({ thickness, density }: Omit<SlabLoadInput, "formwork">): KiloPascal {
  return (density * thickness) / 1000;
}
