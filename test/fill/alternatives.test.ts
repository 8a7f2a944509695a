import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coversOf } from "../../src/fill/alternatives.ts";
import { coverInterval } from "../../src/fill/cover.ts";
import { type ClosureRange, createCoverTable } from "../../src/fill/coverTable.ts";
import { everyCover } from "../support/coverOracle.ts";

const STRIP: ClosureRange = { least: 10, greatest: 59 };

describe("coversOf", () => {
  it("lists the four covers of 1400 with equal counts before all others", () => {
    // Standard 600, 450 and 300: four covers have no closure, one filler and three pieces.
    const widths = [600, 550, 500, 450, 400, 350, 300, 250, 200, 150, 100, 50].map((width) => ({
      width,
      standard: [600, 450, 300].includes(width),
    }));
    const covers = coversOf(1400, createCoverTable(widths, STRIP, 100), 5);
    expect(covers.map((cover) => cover.widths)).toEqual([
      [600, 600, 200],
      [500, 450, 450],
      [600, 500, 300],
      [600, 450, 350],
      expect.anything(),
    ]);
    expect(covers[4]?.key).not.toMatchObject({ fillers: 1, pieces: 3 });
  });

  it.each([
    { why: "a length without cover", length: 700, limit: 5, covers: [] },
    { why: "no covers asked for", length: 1200, limit: 0, covers: [] },
    { why: "the empty interval has one", length: 0, limit: 5, covers: [[]] },
    { why: "fewer than asked for", length: 1200, limit: 9, covers: [[600, 600]] },
  ])("$why", ({ length, limit, covers }) => {
    const table = createCoverTable([{ width: 600, standard: true }], STRIP, 100);
    expect(coversOf(length, table, limit).map((cover) => cover.widths)).toEqual(covers);
  });

  it("lists the first of all covers in their order, each once", () => {
    const input = fc.record({
      widths: fc.uniqueArray(fc.record({ width: fc.integer({ min: 3, max: 30 }), standard: fc.boolean() }), {
        selector: ({ width }) => width,
        maxLength: 5,
      }),
      closure: fc.constantFrom<ClosureRange>(null, { least: 1, greatest: 4 }, { least: 5, greatest: 20 }),
      narrowUnder: fc.integer({ min: 0, max: 15 }),
      length: fc.integer({ min: 0, max: 60 }),
      limit: fc.integer({ min: 1, max: 25 }),
    });
    fc.assert(
      fc.property(input, ({ length, limit, ...rules }) => {
        const table = createCoverTable(rules.widths, rules.closure, rules.narrowUnder);
        const covers = coversOf(length, table, limit);
        const expected = everyCover(length, rules).slice(0, limit);
        expect(covers.map(({ widths, closure }) => ({ widths, closure }))).toEqual(expected);
        if (covers[0] !== undefined) expect(covers[0]).toEqual(coverInterval(length, table));
      }),
      { seed: 81, numRuns: 500 },
    );
  });

  it("gives nothing where its tables would not fit", () => {
    const widths = [53, 59, 61].map((width) => ({ width, standard: true }));
    const table = createCoverTable(widths, null, 100);
    expect(coverInterval(1_200_000, table).status).toBe("covered");
    expect(coversOf(1_200_000, table, 3)).toEqual([]);
  });
});
