// Strength of adjustable steel props by class and extension, and of timber posts.
//
// EN 1065 was not at hand: its rows are plain arithmetic on the formulas remembered from it, but for the permissible
// loads of classes D and E, which a trade reference prints.

import { describe, expect, it } from "vitest";
import { propLimit } from "../../src/check/en1065Limit.ts";
import { en1065Strength, type PropClass } from "../../src/check/en1065Strength.ts";
import { timberBucklingPsi } from "../../src/check/timberBuckling.ts";
import { timberStability } from "../../src/check/timberStability.ts";
import { value } from "../support/answers.ts";
import { within } from "../support/tolerance.ts";

const EN1065 = "from memory of EN 1065:1999";
const TRADE = "German trade reference on props, geruest.net/baustuetzen";
const LECTURE_9 =
  'Construction lecture "Slab Forms" (D. Allen), github.com/damontallen/Construction-Lectures-Fall-2014, Week 9';
const PEURIFOY =
  "Peurifoy and Oberlender, Formwork for Concrete Structures, p. 132 (yumpu.com/en/document/view/67499197)";

const strengthOf = (name: PropClass, greatest: number, extension: number) =>
  value(en1065Strength({ class: name, least: 1000, greatest, extension }));

describe(`steel props (${EN1065})`, () => {
  it.each<{ id: string; name: PropClass; greatest: number; at: number; figures: readonly number[] }>([
    { id: "T14", name: "A", greatest: 3000, at: 2500, figures: [24.48, 22.25, 14.84] },
    { id: "T15", name: "A", greatest: 4000, at: 2100, figures: [44.0, 40.0, 26.67] },
    { id: "T16", name: "B", greatest: 3000, at: 2700, figures: [27.98, 25.44, 16.96] },
    { id: "T17", name: "B", greatest: 3500, at: 2700, figures: [32.65, 29.68, 19.79] },
    { id: "T17", name: "B", greatest: 3500, at: 3500, figures: [19.43, 17.66, 11.77] },
    { id: "T18", name: "B", greatest: 4000, at: 2200, figures: [51.0, 46.36, 30.91] },
    { id: "T19", name: "C", greatest: 3500, at: 2700, figures: [48.97, 44.52, 29.68] },
    { id: "T19", name: "C", greatest: 4000, at: 2500, figures: [59.5, 54.09, 36.06] },
  ])(
    "$id: $name of $greatest at $at: R_k, R_k/1.1, R_k/1.65 = $figures",
    ({ name, greatest, at, figures }) => {
      const strength = strengthOf(name, greatest, at);
      const found = [
        strength,
        value(propLimit(strength, "design")),
        value(propLimit(strength, "permissible")),
      ];
      for (const [index, figure] of figures.entries()) {
        expect(found[index]).toSatisfy(within(figure, 0.002));
      }
    },
  );

  it.each<{ name: PropClass; figures: Readonly<Record<number, number>> }>([
    { name: "A", figures: { 2500: 20.4, 3000: 17.0, 3500: 14.6, 4000: 12.8 } },
    {
      name: "B",
      figures: { 2500: 27.2, 3000: 22.7, 3500: 19.4, 4000: 17, 4500: 15.1, 5000: 13.6, 5500: 12.4 },
    },
    {
      name: "C",
      figures: { 2500: 40.8, 3000: 34, 3500: 29.1, 4000: 25.5, 4500: 22.7, 5000: 20.4, 5500: 18.5 },
    },
  ])("the rated strength of class $name at full extension", ({ name, figures }) => {
    for (const [greatest, figure] of Object.entries(figures)) {
      const strength = strengthOf(name, Number(greatest), Number(greatest));
      expect(Math.abs(strength - figure), greatest).toBeLessThanOrEqual(0.05 + 1e-9);
    }
  });
});

it.each<{ id: string; name: PropClass; printed: number }>([
  { id: "T20", name: "D", printed: 20 },
  { id: "T20", name: "E", printed: 30 },
])(`$id: class $name bears $printed kN, within 4 % (${TRADE})`, ({ name, printed }) => {
  const strength = strengthOf(name, 3500, 2900);
  expect(value(propLimit(strength, "permissible"))).toSatisfy(within(printed, 0.04));
});

describe("timber posts", () => {
  it(`T21: 3.5 × 5.5 in, 168 in long, F*c 1650, E'min 522 000 psi (${LECTURE_9})`, () => {
    const buckling = value(timberBucklingPsi(522_000, 168, 3.5));
    const factor = value(timberStability(buckling, 1650, 0.8));
    expect(buckling).toSatisfy(within(186.23, 0.002));
    expect(factor).toSatisfy(within(0.11, 0.002));
    expect(factor * 1650).toSatisfy(within(181.74, 0.002));
    // The stress there is the load of T02 on the post's area, and stays under it.
    expect(3369.33 / (3.5 * 5.5)).toSatisfy(within(175.03, 0.002));
    expect(3369.33 / (3.5 * 5.5)).toBeLessThan(factor * 1650);
  });

  it(`T22: F*c 1600 psi × (1.065 − 0.504) on 19.25 in² (${PEURIFOY})`, () => {
    // The book prints (1 + α)/2c = 1.065 with c = 0.8, from which α = F_cE/F*c = 0.704.
    const allowed = 1600 * value(timberStability(0.704 * 1600, 1600, 0.8));
    expect(allowed).toSatisfy(within(897.6, 0.001));
    expect(allowed * 19.25).toSatisfy(within(17_279, 0.001));
  });
});
