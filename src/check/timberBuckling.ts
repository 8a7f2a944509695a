// At which stress does a timber post buckle? Inch-pound: inches, pounds per square inch.

import { type Answer, computed, refusalOf } from "./range.ts";

const MODULUS = {
  input: "adjusted least modulus E'min",
  least: 100_000,
  greatest: 2_000_000,
  unit: "psi",
} as const;
/** 50 for posts in use; up to 75 is allowed while building, which is not used here. */
const SLENDERNESS = { input: "slenderness l_e/d", least: 1, greatest: 50, unit: "" } as const;

/**
 * Critical buckling stress F_cE of a rectangular post, psi: 0.822·E'min/(l_e/d)².
 *
 * @param modulusPsi - E'min, 100 000 to 2 000 000 psi
 * @param lengthInches - effective length between braces
 * @param depthInches - side of the post in the direction in which it buckles; length/side 1 to 50, outside it refused
 * @see from memory of the National Design Specification for Wood Construction 2005, 3.7.1.5
 */
export function timberBucklingPsi(
  modulusPsi: number,
  lengthInches: number,
  depthInches: number,
): Answer<number> {
  const slenderness = lengthInches / depthInches;
  const refusal = refusalOf([modulusPsi, MODULUS], [slenderness, SLENDERNESS]);
  return refusal ?? computed((0.822 * modulusPsi) / (slenderness * slenderness));
}
