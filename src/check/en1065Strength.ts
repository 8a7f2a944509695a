// What does an adjustable telescopic steel prop bear, by class and extension? EN 1065.

import type { KiloNewton, Mm } from "../units.ts";
import { type Answer, type Bounds, computed, refusalOf } from "./range.ts";

/** Class of EN 1065, as marked on the prop. */
export type PropClass = "A" | "B" | "C" | "D" | "E";

export interface PropInput {
  readonly class: PropClass;
  /** Least and greatest extension of the prop. */
  readonly least: Mm;
  readonly greatest: Mm;
  /** Extension at which it is used. */
  readonly extension: Mm;
}

/** A to C: `factor` kN·m times greatest extension over the square of the used one, at most `cap`. D and E: `cap`. */
const CLASSES: Readonly<
  Record<PropClass, { readonly factor: number | null; readonly cap: KiloNewton; readonly longest: Mm }>
> = {
  A: { factor: 51, cap: 44, longest: 4000 },
  B: { factor: 68, cap: 51, longest: 5500 },
  C: { factor: 102, cap: 59.5, longest: 5500 },
  D: { factor: null, cap: 34, longest: 5500 },
  E: { factor: null, cap: 51, longest: 5500 },
};
const SHORTEST: Mm = 2500;

export const EN1065_SOURCE = "from memory of EN 1065:1999";

/** The formula of a class, l_max and l in metres. */
export function en1065Formula(name: PropClass): string {
  const { factor, cap } = CLASSES[name];
  return factor === null ? `R_k = ${cap} kN at any extension` : `R_k = min(${factor}·l_max/l², ${cap}) kN`;
}

/**
 * Nominal characteristic strength R_k, kN, of a straight, undamaged prop with its own pin, plumb within 1.5° and loaded
 * within 25 mm of its axis.
 *
 * @param prop - greatest extension 2500 to 4000 mm (class A) or 2500 to 5500 mm (B to E), the lengths that the standard
 *   names; extension from the prop's least to its greatest; outside these the input is refused: a prop pulled out too
 *   far bears nothing
 * @see from memory of EN 1065:1999, nominal characteristic strength of classes A to E
 */
export function en1065Strength(prop: PropInput): Answer<KiloNewton> {
  const { factor, cap, longest } = CLASSES[prop.class];
  const greatest: Bounds = {
    input: `greatest extension of a prop of class ${prop.class}`,
    least: SHORTEST,
    greatest: longest,
    unit: "mm",
  };
  const least: Bounds = {
    input: `least extension of a prop of class ${prop.class}`,
    least: 0,
    greatest: longest,
    unit: "mm",
  };
  const extension: Bounds = {
    input: "extension of the prop",
    least: Math.max(prop.least, 1),
    greatest: prop.greatest,
    unit: "mm",
  };
  const refusal = refusalOf([prop.greatest, greatest], [prop.least, least], [prop.extension, extension]);
  if (refusal !== null) return refusal;
  if (factor === null) return computed(cap);
  // Lengths in mm: l_max/l² in 1/m is a thousand times that in 1/mm.
  return computed(Math.min((factor * prop.greatest * 1000) / (prop.extension * prop.extension), cap));
}
