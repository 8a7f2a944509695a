// How strong is the mix at a maturity, by tests made of that mix beforehand, and at which maturity has it a strength?
//
// Straight from test to test: the curve of the mix bulges over these lines, so they give a little less than it. Before the
// first test and after the last there is no figure.

import type { MegaPascal } from "../units.ts";
import { type Answer, type Bounds, computed, refusalOf } from "./range.ts";

/** Cylinders or cubes of the mix, broken at a maturity, °C·h over the datum of the job. */
export type StrengthTest = readonly [maturity: number, strength: MegaPascal];

export const STRENGTH_TESTS_FORMULA = "f_c from test to test of the mix, straight over M";
export const STRENGTH_TESTS_SOURCE =
  "tests of the mix by maturity, the way of ASTM C1074, from memory of it; the project's own figures";

/** Mean strength, MPa, at a maturity from the first test to the last. @param tests - two at least, both rising */
export function testedStrength(maturity: number, tests: readonly StrengthTest[]): Answer<MegaPascal> {
  return between(tests, maturity, { input: "maturity", unit: "°C·h" });
}

/** Maturity, °C·h, at which the mix has a strength from that of the first test to that of the last. */
export function testedMaturity(strength: MegaPascal, tests: readonly StrengthTest[]): Answer<number> {
  const turned = tests.map(([maturity, tested]) => [tested, maturity] as const);
  return between(turned, strength, { input: "strength asked for", unit: "MPa" });
}

function between(
  points: readonly (readonly [x: number, y: number])[],
  x: number,
  of: Pick<Bounds, "input" | "unit">,
): Answer<number> {
  const least = points[0]?.[0] ?? Number.POSITIVE_INFINITY;
  const greatest = points[points.length - 1]?.[0] ?? Number.NEGATIVE_INFINITY;
  const refusal = refusalOf([x, { ...of, least, greatest }]);
  if (refusal !== null) return refusal;
  const at = points.findIndex(([end]) => x <= end);
  const [end, high] = points[at]!;
  if (x === end) return computed(high);
  const [start, low] = points[at - 1]!;
  return computed(low + ((high - low) * (x - start)) / (end - start));
}
