// How far may sheathing, studs and wales span over three or more equal bays? Inch-pound: inches, psi, lb/ft.
//
// Bending M = w·L²/10 and shear 0.6·w·L of a beam over three spans, turned about for L; the two deflection limits stand
// as the source gives them.

import { power } from "./power.ts";
import { type Answer, type Bounds, computed, refusalOf } from "./range.ts";

export interface SpanInput {
  /** Load along the member, lb/ft. */
  readonly load: number;
  /** Adjusted bending stress, psi, and section modulus, in³. */
  readonly bendingStress: number;
  readonly sectionModulus: number;
  /** Modulus of elasticity, psi, and second moment of area, in⁴. */
  readonly modulus: number;
  readonly inertia: number;
}

const positive = (input: string, unit: string, greatest: number): Bounds => ({
  input,
  least: 1e-3,
  greatest,
  unit,
});
const LOAD = positive("load along the member", "lb/ft", 1e5);
const STRESS = positive("stress", "psi", 1e5);
const SECTION = positive("section modulus", "in³", 1e4);
const MODULUS = positive("modulus of elasticity", "psi", 1e8);
const INERTIA = positive("second moment of area", "in⁴", 1e5);
const ROLLING = positive("rolling shear constant", "in²", 1e3);
const SIDE = positive("side of the section", "in", 100);

export interface Spans {
  readonly bending: number;
  /** To a deflection of a 360th of the span. */
  readonly by360: number;
  /** To a deflection of a sixteenth of an inch. */
  readonly bySixteenth: number;
}

/**
 * Greatest spans in bending and deflection, in.
 *
 * @see Univ. of Florida BCN4423C, Week 7; CM 420 Temporary Structures, Lecture 5, studylib.net/doc/9394732
 */
export function memberSpans({
  load,
  bendingStress,
  sectionModulus,
  modulus,
  inertia,
}: SpanInput): Answer<Spans> {
  const refusal = refusalOf(
    [load, LOAD],
    [bendingStress, STRESS],
    [sectionModulus, SECTION],
    [modulus, MODULUS],
    [inertia, INERTIA],
  );
  if (refusal !== null) return refusal;
  const stiffness = (modulus * inertia) / load;
  return computed({
    bending: 10.95 * Math.sqrt((bendingStress * sectionModulus) / load),
    by360: 1.69 * power(stiffness, 1 / 3),
    bySixteenth: 3.23 * Math.sqrt(Math.sqrt(stiffness)),
  });
}

/** Greatest span of sheathing in rolling shear, in: 20·F_s·(Ib/Q)/w. */
export function rollingShearSpan(stress: number, constant: number, load: number): Answer<number> {
  const refusal = refusalOf([stress, STRESS], [constant, ROLLING], [load, LOAD]);
  return refusal ?? computed((20 * stress * constant) / load);
}

/** Greatest span of lumber in shear, in: 13.33·F_v·b·d/w + 2d. */
export function shearSpan(
  stress: number,
  { width, depth }: { readonly width: number; readonly depth: number },
  load: number,
): Answer<number> {
  const refusal = refusalOf([stress, STRESS], [width, SIDE], [depth, SIDE], [load, LOAD]);
  return refusal ?? computed((13.33 * stress * width * depth) / load + 2 * depth);
}
