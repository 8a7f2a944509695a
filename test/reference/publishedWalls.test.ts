// Eight walls of a published layout problem, one by one, with rent as the criterion.
//
// Source: Biruk, Jaskowski, "Optimization of Vertical Formwork Layout Plans Using Mixed Integer Linear
// Programming", International Journal of Civil Engineering 15 (2017) 125-133; inputs as transcribed in a
// public notebook (github.com/inigmat/exupery, LP_formwork.ipynb, commit
// 1286788b517922212e2c632816ac80599ebf8efe). The optima per wall were found by an independent enumeration of
// all patterns.
//
// A wall with a free end may overrun its length by 0 to 250 (its stop-end is clamped between the faces); the
// wall between two corners must be met exactly, or takes one made-to-measure piece of at most 250 at 5000.
// Both faces are equal.

import { describe, expect, it } from "vitest";
import { createWidthTable } from "../../src/fill/widthTable.ts";
import { everyMultiset } from "../support/coverOracle.ts";

const RENT: Readonly<Record<number, number>> = {
  300: 1550,
  400: 1700,
  450: 1775,
  500: 1850,
  750: 2250,
  900: 2450,
};
const WIDTHS = [900, 750, 500, 450, 400, 300];
const MADE_TO_MEASURE = { greatest: 250, cost: 5000 };
const OVERRUN = 250;

const table = createWidthTable(
  WIDTHS.map((width) => ({ width, cost: RENT[width]! })),
  0,
);
const rentOf = (widths: readonly number[]): number => widths.reduce((sum, width) => sum + RENT[width]!, 0);

/** Every sum that closes the wall. */
function sumsFor(length: number, isFreeEnded: boolean): number[] {
  const sums: number[] = [];
  for (let slack = 0; slack <= (isFreeEnded ? OVERRUN : 0); slack++) sums.push(length + slack);
  return sums;
}

const WALLS = [
  {
    zone: "A",
    length: 5650,
    free: true,
    best: [900, 900, 900, 900, 900, 750, 400],
    rent: 32_400,
    slack: 0,
    patterns: 3008,
  },
  {
    zone: "A",
    length: 3800,
    free: false,
    best: [900, 900, 750, 750, 500],
    rent: 22_500,
    slack: 0,
    patterns: 104,
  },
  {
    zone: "A",
    length: 5800,
    free: true,
    best: [900, 900, 900, 900, 900, 900, 400],
    rent: 32_800,
    slack: 0,
    patterns: 3320,
  },
  {
    zone: "A",
    length: 4450,
    free: true,
    best: [900, 900, 900, 900, 900],
    rent: 24_500,
    slack: 50,
    patterns: 1227,
  },
  {
    zone: "B",
    length: 5200,
    free: true,
    best: [900, 900, 900, 900, 900, 750],
    rent: 29_000,
    slack: 50,
    patterns: 2191,
  },
  {
    zone: "B",
    length: 4600,
    free: true,
    best: [900, 900, 900, 900, 500, 500],
    rent: 27_000,
    slack: 0,
    patterns: 1383,
  },
  {
    zone: "B",
    length: 4400,
    free: true,
    best: [900, 900, 900, 900, 900],
    rent: 24_500,
    slack: 100,
    patterns: 1179,
  },
  {
    zone: "B",
    length: 5800,
    free: true,
    best: [900, 900, 900, 900, 900, 900, 400],
    rent: 32_800,
    slack: 0,
    patterns: 3320,
  },
];

describe("published walls at least rent", () => {
  it.each(WALLS)("zone $zone, $length: $rent for both faces", ({ length, free, best, rent, slack }) => {
    const sums = sumsFor(length, free);
    const least = Math.min(...sums.map((sum) => table.costOf(sum)));
    expect(2 * least).toBe(rent);
    const at = sums.find((sum) => table.costOf(sum) === least)!;
    expect(at - length).toBe(slack);
    expect(table.widthsOf(at)).toEqual(best);
  });

  it.each(WALLS)("zone $zone, $length: $patterns patterns, one of them the cheapest", (wall) => {
    const patterns = sumsFor(wall.length, wall.free).flatMap((sum) => everyMultiset(sum, WIDTHS));
    expect(patterns).toHaveLength(wall.patterns);
    const rents = patterns.map(rentOf);
    const least = Math.min(...rents);
    expect(2 * least).toBe(wall.rent);
    expect(rents.filter((rent) => rent === least)).toHaveLength(1);
  });

  it("a piece made to measure does not pay in the wall between two corners", () => {
    const withPiece: number[] = [];
    for (let piece = 1; piece <= MADE_TO_MEASURE.greatest; piece++) {
      withPiece.push(table.costOf(3800 - piece) + MADE_TO_MEASURE.cost);
    }
    expect(Math.min(...withPiece)).toBeGreaterThan(table.costOf(3800));
  });

  it("the cheapest walls one by one need a set of 125,700 for both zones in turn", () => {
    const need = (zone: string, width: number): number =>
      WALLS.filter((wall) => wall.zone === zone)
        .flatMap(({ length, free }) => {
          const sums = sumsFor(length, free);
          const least = Math.min(...sums.map((sum) => table.costOf(sum)));
          return table.widthsOf(sums.find((sum) => table.costOf(sum) === least)!);
        })
        .filter((taken) => taken === width).length * 2;
    const set = WIDTHS.map((width) => Math.max(need("A", width), need("B", width)));
    expect(set).toEqual([40, 6, 4, 0, 4, 0]);
    expect(set.reduce((sum, count, index) => sum + count * RENT[WIDTHS[index]!]!, 0)).toBe(125_700);
  });
});
