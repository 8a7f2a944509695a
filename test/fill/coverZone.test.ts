import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ClosureRange, createCoverTable } from "../../src/fill/coverTable.ts";
import { coverZone } from "../../src/fill/zoneCover.ts";
import { compareCovers, everyCover } from "../support/coverOracle.ts";

const GRID = [600, 550, 500, 450, 400, 350, 300, 250, 200, 150, 100, 50].map((width) => ({
  width,
  standard: width === 600,
}));
const STRIP: ClosureRange = { least: 10, greatest: 59 };

describe("coverZone", () => {
  // Lengths from wall thickness t and leg c: ta + c opposite a corner, 2c + t opposite a joining wall.
  it.each([
    { why: "t 100, c 150, corner", length: 250, widths: [250], closure: null },
    { why: "t 100, c 150, joining wall", length: 400, widths: [400], closure: null },
    { why: "t 120, c 150, corner: off the grid", length: 270, widths: [250], closure: 20 },
    { why: "t 120, c 150, joining wall: off the grid", length: 420, widths: [400], closure: 20 },
    { why: "a residue under the least closure", length: 255, widths: [200], closure: 55 },
    { why: "a zone of no length", length: 0, widths: [], closure: null },
  ])("$why", ({ length, widths, closure }) => {
    expect(coverZone(length, createCoverTable(GRID, STRIP, 100))).toMatchObject({
      status: "covered",
      widths,
      closure,
    });
  });

  it.each([
    { why: "two panels are not one", length: 700, on: [600, 500, 200], below: 659, above: null },
    { why: "a closure alone holds nothing", length: 40, on: [600, 100], below: 0, above: 100 },
    { why: "no panel on offer", length: 250, on: [], below: null, above: null },
  ])("none: $why", ({ length, on, below, above }) => {
    const widths = on.map((width) => ({ width, standard: true }));
    expect(coverZone(length, createCoverTable(widths, STRIP, 100))).toEqual({ status: "none", below, above });
  });

  it("takes a standard panel with a wider closure before a filler with a narrower one", () => {
    const widths = [
      { width: 300, standard: true },
      { width: 320, standard: false },
    ];
    const cover = coverZone(340, createCoverTable(widths, STRIP, 100));
    expect(cover).toMatchObject({ widths: [300], closure: 40 });
  });

  it("gives the best of all covers that are one panel, or one panel and one closure", () => {
    const input = fc.record({
      widths: fc.uniqueArray(fc.record({ width: fc.integer({ min: 5, max: 60 }), standard: fc.boolean() }), {
        selector: ({ width }) => width,
        maxLength: 6,
      }),
      closure: fc.constantFrom<ClosureRange>(null, { least: 1, greatest: 9 }, { least: 4, greatest: 30 }),
      narrowUnder: fc.integer({ min: 0, max: 40 }),
      length: fc.integer({ min: 1, max: 80 }),
    });
    fc.assert(
      fc.property(input, ({ length, ...rules }) => {
        const best = everyCover(length, rules).find(({ widths }) => widths.length === 1);
        const cover = coverZone(length, createCoverTable(rules.widths, rules.closure, rules.narrowUnder));
        expect(cover.status).toBe(best === undefined ? "none" : "covered");
        if (cover.status === "covered" && best !== undefined) {
          expect(compareCovers(cover, best, rules)).toBe(0);
        }
      }),
      { seed: 52, numRuns: 800 },
    );
  });
});
