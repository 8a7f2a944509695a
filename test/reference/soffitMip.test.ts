// Rectangles of soffit against HiGHS 1.15, a general-purpose solver of mixed-integer programmes (https://highs.dev):
// equal counts, or one of the two is wrong.

import { describe, expect, it } from "vitest";
import { planSoffit } from "../../src/fill/soffit/planSoffit.ts";
import { loadSolver } from "../support/coverMip.ts";
import { fieldOf, rectangle, type Size, type SmallKit, slabKit } from "../support/soffitField.ts";
import { solveSoffitByMip } from "../support/soffitMip.ts";

const highs = await loadSolver();
const DEPTH = 150;

function sizesOf(lengths: readonly number[], widths: readonly number[]): Size[] {
  return lengths.flatMap((length) =>
    widths
      .filter((width) => width <= length)
      .map((width) => ({ width, length, standard: width === widths[0] && length === lengths[0] })),
  );
}

const STRIP = { least: 10, greatest: 59 };
const GRID: SmallKit = { sizes: sizesOf([1200, 600], [600, 300, 150]), strip: 150, closure: STRIP };
const ODD: SmallKit = { sizes: sizesOf([1170, 610], [430, 290]), strip: 130, closure: STRIP };
const PRIMES: SmallKit = { sizes: sizesOf([1201, 601], [307, 211]), strip: 151, closure: null };

describe("planSoffit and a general-purpose solver", () => {
  it.each([
    { why: "the worked room, lengths along its longer side", on: GRID, along: 3300, across: 2700 },
    { why: "the worked room, lengths across it", on: GRID, along: 2700, across: 3300 },
    { why: "a residue along", on: GRID, along: 3320, across: 2700 },
    { why: "a residue across, one closure in each band", on: GRID, along: 2550, across: 2420 },
    { why: "a residue both ways", on: GRID, along: 2570, across: 1240 },
    { why: "one band from connector to connector", on: GRID, along: 1200, across: 2400 },
    { why: "no common divisor", on: ODD, along: 2470, across: 1440 },
    { why: "no common divisor, a residue", on: ODD, along: 3100, across: 1475 },
    { why: "primes and no closures: a cover", on: PRIMES, along: 1953, across: 518 },
    { why: "primes and no closures: none", on: PRIMES, along: 1954, across: 518 },
    { why: "a plank alone", on: GRID, along: 40, across: 1200 },
  ])("agree: $why ($along × $across)", ({ on, along, across }) => {
    const outline = rectangle(along + 2 * DEPTH, across + 2 * DEPTH);
    const plan = planSoffit(fieldOf(outline, DEPTH, slabKit(on), { direction: "u" }));
    const counts = solveSoffitByMip(highs, { along, across }, on);
    if (plan === null || plan.unbuilt.length > 0) {
      expect(counts).toBeNull();
      return;
    }
    const { closures, fillers, pieces, strips } = plan.cost;
    expect([closures, fillers, pieces, strips]).toEqual(counts);
  });
});
