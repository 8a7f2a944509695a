// What does a slab weigh on its forms while it is cast? EN 12812.

import type { KiloPascal } from "../units.ts";
import { EN12812_HEAPING_FORMULA, en12812Heaping } from "./en12812Heaping.ts";
import { type Answer, computed, refusalOf } from "./range.ts";
import { DENSITY, FORMWORK, type SlabLoadInput, selfWeightOf, THICKNESS } from "./slabBounds.ts";

/** Construction operations over the whole area, kPa. */
export const CONSTRUCTION: KiloPascal = 0.75;

export const EN12812_SLAB_FORMULA = `q = q_sw + g + 0.75 + q_heap, q_sw = γ·h; ${EN12812_HEAPING_FORMULA}`;
export const EN12812_SLAB_SOURCE = "from memory of EN 12812:2008";

export interface En12812SlabLoad {
  readonly selfWeight: KiloPascal;
  readonly formwork: KiloPascal;
  readonly construction: KiloPascal;
  readonly heaping: KiloPascal;
  readonly total: KiloPascal;
}

/**
 * Vertical load on slab forms, kPa, characteristic (without a load factor): self-weight, forms, 0.75 for the people at
 * work, and the heaping allowance.
 *
 * @param input - thickness 20 to 2000 mm, density 8 to 40 kN/m³ (EN 12812 takes 25), forms 0 to 5 kPa; outside these
 *   the input is refused
 * @see from memory of EN 12812:2008, actions; construction operations are service class 1 of EN 12811-1
 */
export function en12812SlabLoad(input: SlabLoadInput): Answer<En12812SlabLoad> {
  const { thickness, density, formwork } = input;
  const refusal = refusalOf([thickness, THICKNESS], [density, DENSITY], [formwork, FORMWORK]);
  if (refusal !== null) return refusal;
  const selfWeight = selfWeightOf(input);
  const heaping = en12812Heaping(selfWeight);
  if (heaping.status === "refused") return heaping;
  const total = selfWeight + formwork + CONSTRUCTION + heaping.value;
  return computed({ selfWeight, formwork, construction: CONSTRUCTION, heaping: heaping.value, total });
}
