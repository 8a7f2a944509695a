// How strong must a slab be before its panels come down, props staying, or before it stands alone?

import type { KiloPascal, MegaPascal, Mm } from "../units.ts";
import { power } from "./power.ts";
import { type Answer, computed, refusalOf } from "./range.ts";
import { THICKNESS } from "./slabBounds.ts";
import { STRENGTH } from "./strengthGain.ts";

const LOAD = { input: "load at striking", least: 0.1, greatest: 100, unit: "kPa" } as const;
const SERVICE = { input: "service load", least: 0.1, greatest: 100, unit: "kPa" } as const;

export const CIRIA136_FORMULA = "f_c ≥ f_cu·(w/w_s)^(1/0.6)";
export const CIRIA136_SOURCE = "CIRIA Report 136 after Sadgrove, from memory of it; cube strengths";

/**
 * Strength at which a slab or beam governed by bending may carry `load`, MPa, of the kind of `strength`. Not for flat
 * slabs of 350 mm and more.
 *
 * @param strength - at 28 days, 5 to 130 MPa
 * @param load - self-weight and what lies on it when it is struck, 0.1 to 100 kPa, no factor
 * @param service - what it is designed for in all, no factor; a load over it is refused
 */
export function ciria136Strength(
  strength: MegaPascal,
  load: KiloPascal,
  service: KiloPascal,
): Answer<MegaPascal> {
  const refusal =
    refusalOf([strength, STRENGTH], [service, SERVICE]) ??
    refusalOf([load, { ...LOAD, greatest: Math.min(LOAD.greatest, service) }]);
  return refusal ?? computed(strength * power(load / service, 1 / 0.6));
}

const LEAST_SOFFIT: MegaPascal = 10;
const STRESS = { input: "stress at striking", least: 0, greatest: 60, unit: "MPa" } as const;

export const BS8110_SOFFIT_FORMULA = "f_c ≥ 10 MPa and ≥ twice the stress it will carry";
export const BS8110_SOFFIT_SOURCE = "BS 8110-1:1997, 6.2.6.3, from memory of it";

/** Strength before a soffit is struck, MPa: 10, and twice the stress it then carries (0 to 60 MPa). */
export function bs8110SoffitStrength(stress: MegaPascal): Answer<MegaPascal> {
  return refusalOf([stress, STRESS]) ?? computed(Math.max(LEAST_SOFFIT, 2 * stress));
}

export interface NeededStrength {
  readonly byCiria: MegaPascal;
  /** The greater of the two criteria. */
  readonly needed: MegaPascal;
}

/** What a slab needs, MPa, by CIRIA 136 and BS 8110 6.2.6.3 together; ranges as of `ciria136Strength`. */
export function strengthNeeded(
  strength: MegaPascal,
  load: KiloPascal,
  service: KiloPascal,
): Answer<NeededStrength> {
  const byCiria = ciria136Strength(strength, load, service);
  if (byCiria.status === "refused") return byCiria;
  const bySoffit = bs8110SoffitStrength(0);
  if (bySoffit.status === "refused") return bySoffit;
  return computed({ byCiria: byCiria.value, needed: Math.max(byCiria.value, bySoffit.value) });
}

/** Strength, MPa, by which an estimate from maturity must be over the one required: 500 psi. */
export const MATURITY_MARGIN: MegaPascal = 3.45;
export const MATURITY_MARGIN_SOURCE =
  "an estimate by maturity (ASTM C1074) is over the strength required by 500 psi: NYC Building Code 3305.3.5.1.3";

const SPAN = { input: "span from prop to prop", least: 1, greatest: 10_000, unit: "mm" } as const;

export interface ProppedSlab {
  /** kN·m on a metre. */
  readonly moment: number;
  /** Bending tension, uncracked. */
  readonly tension: MegaPascal;
}

export const PROPPED_SLAB_FORMULA = "M = w·s²/10, σ = 6·M/h²";

/** A slab that spans from prop to prop after its panels are down: moment and tension of an uncracked strip. */
export function proppedSlab(load: KiloPascal, span: Mm, thickness: Mm): Answer<ProppedSlab> {
  const refusal = refusalOf([load, LOAD], [span, SPAN], [thickness, THICKNESS]);
  if (refusal !== null) return refusal;
  const moment = (load * (span / 1000) * (span / 1000)) / 10;
  const depth = thickness / 1000;
  return computed({ moment, tension: (6 * moment) / (depth * depth) / 1000 });
}
