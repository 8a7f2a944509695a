// What does one prop carry of the slab over it?

import type { KiloNewton, KiloPascal, SquareMetre } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

export const PROP_LOAD_FORMULA = "N = q·A·k";

/**
 * How much more than its share an inner support of a continuous bearer takes: 1 under panels that end on every line;
 * under bearers over two or three equal spans the reactions of beam statics (5/4 and 11/10 of the load of one span).
 */
export const CONTINUITY = { simple: 1, threeSpan: 1.1, twoSpan: 1.25 } as const;

const LOAD = { input: "load on the slab form", least: 0, greatest: 200, unit: "kPa" } as const;
const AREA = { input: "area carried by the prop", least: 0, greatest: 100, unit: "m²" } as const;
const FACTOR = { input: "factor for continuous bearers", least: 1, greatest: 1.5, unit: "" } as const;

/**
 * Load of one prop, kN, from one slab cast over it; of storeys above it knows nothing.
 *
 * @param load - on the form, 0 to 200 kPa
 * @param area - tributary to the prop, 0 to 100 m²
 * @param continuity - 1 to 1.5, see {@link CONTINUITY}; outside these the input is refused
 * @see statics of beams on equal spans; no standard needed
 */
export function propLoad(load: KiloPascal, area: SquareMetre, continuity: number): Answer<KiloNewton> {
  const refusal = refusalOf([load, LOAD], [area, AREA], [continuity, FACTOR]);
  return refusal ?? computed(load * area * continuity);
}
