// How does a load added above divide between a slab and those it is propped from, with props that give? A UK rule.

import type { KiloPascal } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

/** Slab by slab downward; unlike the simplified method the shares are not equal, for props are not rigid. */
const SHARES: readonly (readonly number[])[] = [[1], [0.7, 0.3], [0.65, 0.23, 0.12]];
const LOAD = { input: "load added above", least: 0, greatest: 200, unit: "kPa" } as const;
const LEVELS = { input: "levels of backprops", least: 0, greatest: 2, unit: "" } as const;

/**
 * What each slab takes of a load, kPa, the one the forms stand on first.
 *
 * @param load - 0 to 200 kPa
 * @param levels - of backprops below that slab, 0, 1 or 2; outside these the input is refused
 * @see from memory of the UK guide to early striking and improved backpropping
 */
export function backpropped(load: KiloPascal, levels: number): Answer<readonly KiloPascal[]> {
  const refusal = refusalOf([load, LOAD], [levels, LEVELS]);
  if (refusal !== null) return refusal;
  const shares = SHARES[levels];
  if (shares === undefined) return { status: "refused", value: levels, ...LEVELS };
  return computed(shares.map((share) => share * load));
}
