// By what is the strength of the slab estimated from the log of its temperature: tests of its own mix, or a standard's curve?
//
// Tests of the mix come first: they hold for the young concrete that is struck, for which no standard has a curve.

import type { Measure } from "../check/hourReached.ts";
import {
  EQUIVALENT_AGE_FORMULA,
  EQUIVALENT_AGE_SOURCE,
  equivalentAge,
  NURSE_SAUL_FORMULA,
  NURSE_SAUL_SOURCE,
  nurseSaul,
} from "../check/maturity.ts";
import { type Answer, computed } from "../check/range.ts";
import {
  daysOf,
  EUROCODE_FROM_DAYS,
  EUROCODE_GAIN_FORMULA,
  EUROCODE_GAIN_SOURCE,
  eurocodeAgeFor,
  eurocodeGain,
  MEAN_OVER_CHARACTERISTIC,
} from "../check/strengthGain.ts";
import {
  STRENGTH_TESTS_FORMULA,
  STRENGTH_TESTS_SOURCE,
  testedMaturity,
  testedStrength,
} from "../check/strengthTests.ts";
import { MATURITY_MARGIN, MATURITY_MARGIN_SOURCE } from "../check/strikingStrength.ts";
import type { Concrete } from "../plan/concrete.ts";
import type { MegaPascal } from "../units.ts";

export interface StrengthModel {
  /** What the log is summed up to: the model goes by this. */
  readonly measure: Measure;
  readonly strengthOf: (measured: number) => Answer<MegaPascal>;
  readonly measureFor: (strength: MegaPascal) => Answer<number>;
  /** The model was made for this much of the measure and more. */
  readonly holdsFrom: number;
  /** Said where there is less. */
  readonly younger: string;
  readonly formula: string;
  readonly source: string;
}

/** Cubes gain as cylinders do: what is asked of cubes is answered by cubes, where their strength is given. */
export function strengthAt28({ cubeStrength, cylinderStrength }: Concrete): MegaPascal | null {
  return cubeStrength ?? cylinderStrength;
}

const BY_CURVE = {
  formula: `${EQUIVALENT_AGE_FORMULA}; ${NURSE_SAUL_FORMULA}; ${EUROCODE_GAIN_FORMULA}; less ${MATURITY_MARGIN} MPa`,
  source: `${EQUIVALENT_AGE_SOURCE}; ${NURSE_SAUL_SOURCE}; ${EUROCODE_GAIN_SOURCE}; ${MATURITY_MARGIN_SOURCE}`,
};
const BY_TESTS = {
  formula: `${NURSE_SAUL_FORMULA}; ${STRENGTH_TESTS_FORMULA}; less ${MATURITY_MARGIN} MPa`,
  source: `${NURSE_SAUL_SOURCE}; ${STRENGTH_TESTS_SOURCE}; ${MATURITY_MARGIN_SOURCE}`,
};
/** What a check says it went by where it had nothing to go by. */
export const NO_MODEL = BY_CURVE;

/** null: the project gives neither tests of the mix nor class of cement and strength at 28 days. */
export function strengthModel(concrete: Concrete): StrengthModel | null {
  const { strengthTests, datum, cementClass } = concrete;
  const characteristic = strengthAt28(concrete);
  if (strengthTests.length > 0)
    return {
      ...BY_TESTS,
      measure: (intervals) => nurseSaul(intervals, datum),
      strengthOf: (maturity) => testedStrength(maturity, strengthTests),
      measureFor: (strength) => testedMaturity(strength, strengthTests),
      holdsFrom: strengthTests[0]![0],
      younger: "the slab is less mature than the first test of the mix (concrete.strengthTests): test it",
    };
  if (cementClass === null || characteristic === null) return null;
  const mean = characteristic + MEAN_OVER_CHARACTERISTIC;
  return {
    ...BY_CURVE,
    measure: (intervals) => equivalentAge(intervals, "variable"),
    strengthOf: (hours) => scaled(eurocodeGain(daysOf(hours), cementClass), mean),
    measureFor: (strength) => scaled(eurocodeAgeFor(strength / mean, cementClass), 24),
    holdsFrom: EUROCODE_FROM_DAYS * 24,
    younger: `the model of strength holds from ${EUROCODE_FROM_DAYS} days at 20 °C on and the slab is younger: test it`,
  };
}

function scaled(answer: Answer<number>, by: number): Answer<number> {
  return answer.status === "refused" ? answer : computed(answer.value * by);
}
