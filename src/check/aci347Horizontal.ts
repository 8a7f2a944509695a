// Which horizontal load must the bracing of a slab form and of a wall form resist at least? ACI 347.

import type { KiloNewton, Metre, Mm } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

const DEAD = { input: "dead load of the slab and its forms", least: 0, greatest: 1e6, unit: "kN" } as const;
const EDGE = { input: "length of the floor's edge", least: 0.1, greatest: 1000, unit: "m" } as const;
const HEIGHT = { input: "height of the wall form", least: 2400, greatest: 10_000, unit: "mm" } as const;
const SPACING = { input: "spacing of braces", least: 1, greatest: 10_000, unit: "mm" } as const;

/** 100 lb/ft of edge and 2 % of the dead load, each way. */
const PER_METRE = 1.5;
const SHARE = 50;

export const ACI347_HORIZONTAL_FORMULA = "H = max(1.5 kN/m·L, 2 %·D)";
export const ACI347_HORIZONTAL_SOURCE =
  "ACI 347, from memory; the same figures in California Construction Safety Orders 1717, seaintarchive.org/mailarchive/2000b/msg01218.html";
export const ACI347_BRACE_FORMULA = "N = 1.5 kN/m·s at the top of the form";
export const ACI347_BRACE_SOURCE =
  "ACI 347, wall forms of 2.4 m and more, 100 lb/ft: formwork textbook extract, zhclg.com/concrete-formwork/horizontal-loads.htm";

/** Horizontal load on a slab form each way, kN. @param edge - of the floor across the direction, 0.1 to 1000 m */
export function aci347Horizontal(dead: KiloNewton, edge: Metre): Answer<KiloNewton> {
  return refusalOf([dead, DEAD], [edge, EDGE]) ?? computed(Math.max(PER_METRE * edge, dead / SHARE));
}

/** What each brace of a wall form takes at its top, kN, across the wall. @param height - 2400 to 10 000 mm: lower forms have no rule */
export function aci347WallBrace(height: Mm, spacing: Mm): Answer<KiloNewton> {
  return refusalOf([height, HEIGHT], [spacing, SPACING]) ?? computed((PER_METRE * spacing) / 1000);
}
