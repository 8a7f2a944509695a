import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverInterval, nearestLengths } from "../../src/fill/cover.ts";
import { type ClosureRange, createCoverTable, type Width } from "../../src/fill/coverTable.ts";
import { countsOf, everyCover } from "../support/coverOracle.ts";

/** Widths 50 to 600 on a 50 grid, only the 600 standard (common practice, no source). */
const GRID: readonly Width[] = [600, 550, 500, 450, 400, 350, 300, 250, 200, 150, 100, 50].map((width) => ({
  width,
  standard: width === 600,
}));
const STRIP: ClosureRange = { least: 10, greatest: 59 };

function widthsOn(standard: readonly number[], fillers: readonly number[] = []): Width[] {
  return [
    ...standard.map((width) => ({ width, standard: true })),
    ...fillers.map((width) => ({ width, standard: false })),
  ];
}

describe("coverInterval", () => {
  const only = widthsOn;
  it.each<{
    why: string;
    length: number;
    on: readonly Width[];
    strip: ClosureRange;
    widths: number[];
    closure: number | null;
  }>([
    { why: "nothing covers nothing", length: 0, on: GRID, strip: STRIP, widths: [], closure: null },
    {
      why: "standard panels alone",
      length: 1800,
      on: GRID,
      strip: STRIP,
      widths: [600, 600, 600],
      closure: null,
    },
    {
      why: "one filler beats two",
      length: 2700,
      on: GRID,
      strip: STRIP,
      widths: [600, 600, 600, 600, 300],
      closure: null,
    },
    {
      why: "beside a door: one panel of the set",
      length: 450,
      on: GRID,
      strip: STRIP,
      widths: [450],
      closure: null,
    },
    {
      why: "one filler at the end",
      length: 1350,
      on: GRID,
      strip: STRIP,
      widths: [600, 600, 150],
      closure: null,
    },
    {
      why: "a 50 panel is worse than one more filler",
      length: 1250,
      on: GRID,
      strip: STRIP,
      widths: [600, 550, 100],
      closure: null,
    },
    {
      why: "a residue off the grid takes one closure",
      length: 620,
      on: GRID,
      strip: STRIP,
      widths: [600],
      closure: 20,
    },
    {
      why: "a residue under the least closure gives up 50 of a filler",
      length: 1505,
      on: GRID,
      strip: STRIP,
      widths: [600, 600, 250],
      closure: 55,
    },
    {
      why: "a closure alone, where no panel fits",
      length: 30,
      on: GRID,
      strip: STRIP,
      widths: [],
      closure: 30,
    },
    {
      why: "no closure beats fewer pieces",
      length: 650,
      on: only([600], [130]),
      strip: { least: 10, greatest: 59 },
      widths: [130, 130, 130, 130, 130],
      closure: null,
    },
    {
      why: "fewer fillers beat fewer pieces",
      length: 1200,
      on: only([400], [600]),
      strip: null,
      widths: [400, 400, 400],
      closure: null,
    },
    {
      why: "fewest distinct widths on equal counts",
      length: 1000,
      on: only([600, 500, 400]),
      strip: null,
      widths: [500, 500],
      closure: null,
    },
    {
      why: "the widest piece on equal counts and equal distinct widths",
      length: 1000,
      on: only([700, 600, 400, 300]),
      strip: null,
      widths: [700, 300],
      closure: null,
    },
    {
      why: "fewest distinct widths before the narrowest closure",
      length: 1010,
      on: only([600, 495, 405]),
      strip: { least: 5, greatest: 20 },
      widths: [495, 495],
      closure: 20,
    },
    {
      why: "the narrowest closure before the widest piece",
      length: 1010,
      on: only([600, 510, 485, 390]),
      strip: { least: 10, greatest: 20 },
      widths: [510, 485],
      closure: 15,
    },
    {
      why: "the narrowest closure, as every width could take one",
      length: 315,
      on: only([300, 290, 280]),
      strip: { least: 10, greatest: 40 },
      widths: [300],
      closure: 15,
    },
    {
      // Four covers share closures, narrow pieces, fillers and pieces (600+600+200, 600+450+350, 600+500+300,
      // 500+450+450); only 600+600+200 and 500+450+450 use two widths, and the first holds the wider panel.
      why: "of four least covers of 1400 the one with two widths and the widest panels",
      length: 1400,
      on: only([600, 450, 300], [550, 500, 400, 350, 250, 200, 150, 100, 50]),
      strip: STRIP,
      widths: [600, 600, 200],
      closure: null,
    },
  ])("$why", ({ length, on, strip, widths, closure }) => {
    const cover = coverInterval(length, createCoverTable(on, strip, 100));
    expect(cover).toMatchObject({ status: "covered", widths, closure });
  });

  it.each([
    { why: "between two coverable lengths", length: 605, on: [600], strip: STRIP, below: 600, above: 610 },
    { why: "nothing above within reach", length: 690, on: [600], strip: STRIP, below: 659, above: null },
    { why: "nothing below but the empty length", length: 95, on: [600], strip: null, below: 0, above: null },
    { why: "far from every cover", length: 300, on: [600], strip: null, below: null, above: null },
    { why: "no panel on offer at all", length: 300, on: [], strip: null, below: null, above: null },
  ])("tells the nearest lengths: $why", ({ length, on, strip, below, above }) => {
    const cover = coverInterval(length, createCoverTable(widthsOn(on), strip, 100));
    expect(cover).toEqual({ status: "none", below, above });
  });

  it("tells the nearest lengths that need no closure", () => {
    const table = createCoverTable(GRID, STRIP, 100);
    expect(nearestLengths(2020, table, "plain")).toEqual({ below: 2000, above: 2050 });
    expect(nearestLengths(2020, table, "any")).toEqual({ below: 2019, above: 2021 });
  });

  it("leaves no length from 50 up uncovered with closures from 10 to 59 on a 50 grid", () => {
    const table = createCoverTable(GRID, STRIP, 100);
    for (let length = 50; length <= 1300; length++) {
      expect(coverInterval(length, table).status, `${length}`).toBe("covered");
    }
  });

  it("refuses a fractional or negative length", () => {
    const table = createCoverTable(GRID, null, 100);
    expect(() => coverInterval(600.5, table)).toThrow(RangeError);
    expect(() => coverInterval(-600, table)).toThrow(RangeError);
  });
});

describe("coverInterval against the search over every cover", () => {
  const range = fc
    .record({ least: fc.integer({ min: 1, max: 30 }), more: fc.integer({ min: 0, max: 40 }) })
    .map(({ least, more }): ClosureRange => ({ least, greatest: least + more }));
  const small = fc.record({
    widths: fc.uniqueArray(fc.record({ width: fc.integer({ min: 3, max: 40 }), standard: fc.boolean() }), {
      selector: ({ width }) => width,
      maxLength: 5,
    }),
    closure: fc.option(range, { nil: null }),
    narrowUnder: fc.integer({ min: 0, max: 20 }),
    length: fc.integer({ min: 0, max: 75 }),
  });

  it("gives the first of all covers, or none where there is none", () => {
    fc.assert(
      fc.property(small, ({ length, ...rules }) => {
        const table = createCoverTable(rules.widths, rules.closure, rules.narrowUnder);
        const [best] = everyCover(length, rules);
        const cover = coverInterval(length, table);
        if (best === undefined) {
          expect(cover.status).toBe("none");
          return;
        }
        const [closures, narrow, fillers, pieces, distinct] = countsOf(best, rules);
        expect(cover).toEqual({
          status: "covered",
          ...best,
          key: { closures, narrow, fillers, pieces, distinct },
        });
      }),
      { seed: 41, numRuns: 1500 },
    );
  });

  it("does not depend on the order of the widths, nor on the length asked before", () => {
    fc.assert(
      fc.property(small, fc.integer({ min: 0, max: 200 }), ({ length, ...rules }, before) => {
        const fresh = createCoverTable(rules.widths, rules.closure, rules.narrowUnder);
        const used = createCoverTable([...rules.widths].reverse(), rules.closure, rules.narrowUnder);
        coverInterval(before, used);
        expect(coverInterval(length, used)).toEqual(coverInterval(length, fresh));
      }),
      { seed: 42, numRuns: 300 },
    );
  });
});

describe("long intervals", () => {
  const primes = widthsOn(
    [599, 541],
    [499, 467, 433, 401, 367, 331, 293, 263, 229, 199, 167, 139, 109, 83, 61, 53],
  );

  it("covers a kilometre of odd widths exactly", () => {
    const table = createCoverTable(primes, STRIP, 100);
    const cover = coverInterval(1_000_000, table);
    expect(cover.status).toBe("covered");
    if (cover.status !== "covered") return;
    expect(cover.widths.reduce((sum, width) => sum + width, 0)).toBe(1_000_000);
    // 599a + 541b = 1,000,000 has a solution in whole numbers not negative, and more 599s mean fewer pieces.
    expect(cover.key).toMatchObject({ closures: 0, narrow: 0, fillers: 0, distinct: 2 });
    let most = 0;
    for (let wide = 0; wide * 599 <= 1_000_000; wide++) if ((1_000_000 - wide * 599) % 541 === 0) most = wide;
    expect(cover.widths.filter((width) => width === 599)).toHaveLength(most);
  });

  it("refuses what would not fit into its table, and says where that begins", () => {
    const table = createCoverTable(primes, STRIP, 100);
    expect(coverInterval(table.longest + 1, table)).toEqual({ status: "too-long", longest: table.longest });
    expect(table.longest).toBeGreaterThan(1_500_000);
  });

  it("keeps the number of pieces inside the cost's digits", () => {
    const table = createCoverTable(widthsOn([1]), null, 100);
    const cover = coverInterval(table.longest, table);
    expect(cover).toMatchObject({ key: { narrow: table.longest, fillers: 0, pieces: table.longest } });
  });
});

describe("createCoverTable", () => {
  it("takes a width that comes twice as standard if either is", () => {
    const table = createCoverTable([...widthsOn([], [600]), ...widthsOn([600], [300])], null, 100);
    expect(table.widths).toEqual([
      { width: 600, standard: true },
      { width: 300, standard: false },
    ]);
  });

  it.each([
    { why: "a width of 0", widths: [0], strip: STRIP },
    { why: "a fractional width", widths: [99.5], strip: STRIP },
    { why: "a closure of 0", widths: [600], strip: { least: 0, greatest: 59 } },
    { why: "a fractional closure", widths: [600], strip: { least: 10, greatest: 59.5 } },
  ])("refuses $why", ({ widths, strip }) => {
    expect(() => createCoverTable(widthsOn(widths), strip, 100)).toThrow(RangeError);
  });
});
