// Which horizontal load must the shoring of a slab resist at least? ACI 347.

import type { KiloNewton, Mm } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

const KILONEWTON_PER_METRE_OF_EDGE = 1.5;
const SHARE = 50; // 1/50 = 2 %
const DEAD = { input: "dead load of the floor", least: 0, greatest: 1e6, unit: "kN" } as const;
const EDGE = { input: "floor edge", least: 0, greatest: 1e6, unit: "mm" } as const;

/**
 * Horizontal load, kN, in each direction: the greater of 1.5 kN for each metre of the floor's edge and 2 % of the
 * floor's dead load.
 *
 * @param dead - concrete and forms of the floor poured at once, 0 to 1 000 000 kN
 * @param edge - length of the floor's edge on which the load acts, 0 to 1 000 000 mm; outside these the input is refused
 * @see from memory of ACI 347, horizontal loads; the same two figures stand in California Construction Safety Orders
 *   s. 1717, quoted at seaintarchive.org/mailarchive/2000b/msg01218.html
 */
export function aci347Horizontal(dead: KiloNewton, edge: Mm): Answer<KiloNewton> {
  const refusal = refusalOf([dead, DEAD], [edge, EDGE]);
  return refusal ?? computed(Math.max((KILONEWTON_PER_METRE_OF_EDGE * edge) / 1000, dead / SHARE));
}
