// Full liquid head: what flowing concrete placed in one go presses with. The one method that asks for no rate.

import type { KiloNewtonPerCubicMetre, Mm } from "../units.ts";
import { type Envelope, envelopeOf, refusedSize } from "./envelope.ts";
import { type Answer, computed } from "./range.ts";

export const HYDROSTATIC_FORMULA = "p = w·h";
export const HYDROSTATIC_SOURCE =
  'full liquid head: M. K. Hurd, "Use updated wall pressure formulas", concreteconstruction.net, for concrete that flows';

/**
 * Pressure at full liquid head, kPa. Concrete that flows (a slump over 175 mm, self-compacting), external or deep
 * vibration and fast placing leave nothing to take off.
 *
 * @param density - of the fresh concrete, 8 to 40 kN/m³
 * @param height - of one placing, 50 to 10 000 mm; outside these the input is refused
 */
export function hydrostatic(density: KiloNewtonPerCubicMetre, height: Mm): Answer<Envelope> {
  return refusedSize(density, height) ?? computed(envelopeOf(density, height));
}
