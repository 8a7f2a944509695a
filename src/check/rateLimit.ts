// How fast may concrete be placed for a pressure that panels or ties bear? What the inverse of a method answers.

import type { Bounds } from "./range.ts";

/**
 * "any": the pressure bears the full liquid head, whatever the rate. "none": no rate of the method keeps it, the form
 * is too weak or too high.
 */
export type RateLimit =
  | { readonly kind: "any" }
  | { readonly kind: "upTo"; readonly rate: number }
  | { readonly kind: "none" };

export const ANY_RATE: RateLimit = { kind: "any" };
export const NO_RATE: RateLimit = { kind: "none" };

export function upTo(rate: number): RateLimit {
  return { kind: "upTo", rate };
}

/** The pressures, kPa, an inverse takes. */
export const ALLOWABLE: Bounds = { input: "allowable pressure", least: 1, greatest: 500, unit: "kPa" };
