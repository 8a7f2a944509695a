// Set problems at random, small enough to be enumerated.

import fc from "fast-check";
import type { SetProblem } from "../../src/fill/optimise/setProblem.ts";
import { type Instance, instanceProblem } from "./setInstance.ts";

/** One pour of one run. */
export const TINY: Omit<Instance, "name" | "optimum"> = {
  widths: [600, 300, 200, 150],
  standard: 600,
  price: { 600: 14580, 300: 9540, 200: 7860, 150: 7020 },
  handling: 60,
  closure: { min: 20, max: 90, cost: 50040, perMm: 30 },
  pours: [{ id: "P1", runs: [[1050, 1]] }],
};

/** Up to three pours of up to four runs, with stock or without; a unit poured twice among them. */
export const smallProblem: fc.Arbitrary<SetProblem> = fc
  .record({
    widths: fc.uniqueArray(fc.constantFrom(100, 150, 200, 250, 300, 450, 600), {
      minLength: 2,
      maxLength: 4,
    }),
    pours: fc.array(
      fc.array(fc.tuple(fc.integer({ min: 4, max: 26 }), fc.integer({ min: 1, max: 2 })), {
        minLength: 1,
        maxLength: 2,
      }),
      {
        minLength: 1,
        maxLength: 3,
      },
    ),
    base: fc.integer({ min: 0, max: 9000 }),
    perWidth: fc.integer({ min: 1, max: 30 }),
    stock: fc.constantFrom("none", "owned", "limit"),
    pieces: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 4, maxLength: 4 }),
    kindCharge: fc.constantFrom(0, 3000),
    shared: fc.boolean(),
  })
  .map(({ widths, pours, base, perWidth, stock, pieces, kindCharge, shared }): SetProblem => {
    const table = (counts: readonly number[]) =>
      Object.fromEntries(widths.map((width, k) => [width, counts[k]!]));
    const problem = instanceProblem({
      ...TINY,
      widths,
      price: table(widths.map((width) => base + perWidth * width)),
      closure: { min: 20, max: 90, cost: 5000, perMm: 3 },
      pours: pours.map((runs, k) => ({
        id: `P${k}`,
        runs: runs.map(([length, count]) => [length * 50 + (length % 3 === 0 ? 10 : 0), count] as const),
      })),
      ...(stock !== "none" && { owned: table(pieces) }),
      ...(stock === "limit" && { most: table(pieces) }),
    });
    if (!shared) return { ...problem, kindCharge };
    // The first unit is poured again with each other one, on the same day.
    const offers = problem.offers.map((offer, k) =>
      k > 0
        ? offer
        : {
            ...offer,
            columns: offer.columns.map((column, kind) => ({
              ...column,
              uses: problem.offers.map((_, day) => ({ day, kind, count: 1 })),
            })),
          },
    );
    return { ...problem, offers, kindCharge };
  })
  .filter((problem) => problem.runs.every(({ offer, length }) => canCover(problem, offer, length)));

function canCover(problem: SetProblem, offer: number, length: number): boolean {
  const { columns, closures } = problem.offers[offer]!;
  const sums = new Set([0]);
  for (let at = 1; at <= length; at++) if (columns.some(({ width }) => sums.has(at - width))) sums.add(at);
  return sums.has(length) || closures.some(({ width }) => sums.has(length - width));
}
