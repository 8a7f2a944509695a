import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BandCover, type BandInput, coverBand } from "../../src/fill/bandCover.ts";
import { everyMultiset } from "../support/coverOracle.ts";

/** A kit as a list of [width, height, standard]. */
type Panels = readonly (readonly [width: number, height: number, standard: boolean])[];

function band(width: number, height: number, panels: Panels, closure: BandInput["closure"]): BandInput {
  return {
    width,
    height,
    closure,
    heights: panels.map((panel) => panel[1]),
    offersAt: (at) =>
      panels.filter((panel) => panel[1] === at).map((panel) => ({ width: panel[0], standard: panel[2] })),
    narrowUnder: 100,
  };
}

/** Rows from the bottom, the widths of each, and the closure. */
function text(cover: BandCover): string {
  if (cover.status === "none") return "none";
  const closure = cover.closure === null ? "" : ` + ${cover.closure.size} ${cover.closure.lies}`;
  return `${cover.rows.join("/")} x ${cover.widths.join(" ")}${closure}`;
}

const STRIP = { least: 10, greatest: 59 };
const LINTEL: Panels = [[900, 150, true]];
const SMALL: Panels = [
  [600, 150, true],
  [300, 150, false],
  [600, 300, true],
  [300, 300, false],
];

describe("coverBand", () => {
  it.each<{ why: string; width: number; height: number; panels: Panels; expected: string }>([
    { why: "one lintel panel", width: 900, height: 150, panels: LINTEL, expected: "150 x 900" },
    { why: "two panels side by side", width: 900, height: 150, panels: SMALL, expected: "150 x 600 300" },
    { why: "one row before two", width: 600, height: 300, panels: SMALL, expected: "300 x 600" },
    { why: "two rows, the taller below", width: 600, height: 450, panels: SMALL, expected: "300/150 x 600" },
    {
      why: "one closure upright",
      width: 920,
      height: 150,
      panels: LINTEL,
      expected: "150 x 900 + 20 upright",
    },
    { why: "one closure across", width: 900, height: 180, panels: LINTEL, expected: "150 x 900 + 30 across" },
    { why: "never two closures", width: 920, height: 180, panels: LINTEL, expected: "none" },
    {
      why: "a closure alone across the opening",
      width: 900,
      height: 50,
      panels: LINTEL,
      expected: " x  + 50 across",
    },
    {
      why: "never strips side by side",
      width: 900,
      height: 150,
      panels: [[600, 2250, true]],
      expected: "none",
    },
    { why: "never more than four rows", width: 900, height: 750, panels: LINTEL, expected: "none" },
    { why: "four rows", width: 900, height: 600, panels: LINTEL, expected: "150/150/150/150 x 900" },
    { why: "no height, nothing to cover", width: 900, height: 0, panels: LINTEL, expected: " x " },
    {
      why: "rows must share their widths",
      width: 900,
      height: 400,
      panels: [...LINTEL, [600, 250, true], [300, 250, true]],
      expected: "none",
    },
    {
      why: "two rows of standard panels before one row with a filler",
      width: 600,
      height: 300,
      panels: [
        [600, 300, false],
        [600, 200, true],
        [600, 100, true],
      ],
      expected: "200/100 x 600",
    },
    {
      why: "a panel that is a filler in one of two rows counts once",
      width: 600,
      height: 400,
      panels: [
        [600, 300, true],
        [600, 100, false],
        [600, 200, false],
      ],
      expected: "300/100 x 600",
    },
    {
      why: "no narrow panel, for one more row",
      width: 350,
      height: 400,
      panels: [
        [300, 400, true],
        [50, 400, true],
        [350, 200, false],
      ],
      expected: "200/200 x 350",
    },
  ])("$why", ({ width, height, panels, expected }) => {
    expect(text(coverBand(band(width, height, panels, STRIP)))).toBe(expected);
  });

  it("counts every row", () => {
    expect(coverBand(band(900, 450, SMALL, STRIP))).toMatchObject({
      key: { closures: 0, narrow: 0, fillers: 2, pieces: 4, distinct: 2 },
    });
  });

  it("has the least counts of all bands of equal rows with one closure at most", () => {
    const size = fc.tuple(fc.integer({ min: 3, max: 14 }), fc.integer({ min: 3, max: 9 }), fc.boolean());
    const input = fc.record({
      width: fc.integer({ min: 1, max: 30 }),
      height: fc.integer({ min: 1, max: 20 }),
      panels: fc.uniqueArray(size, { selector: ([width, height]) => width * 100 + height, maxLength: 8 }),
      closure: fc.constantFrom(null, { least: 1, greatest: 2 }, { least: 2, greatest: 5 }),
    });
    fc.assert(
      fc.property(input, ({ width, height, panels, closure }) => {
        const one = { ...band(width, height, panels, closure), narrowUnder: 6 };
        const cover = coverBand(one);
        const least = everyBand(one, panels).sort(compareCounts)[0];
        expect(cover.status).toBe(least === undefined ? "none" : "covered");
        if (cover.status === "none") return;
        const { closures, narrow, fillers, pieces } = cover.key;
        expect([closures, narrow, fillers, pieces]).toEqual(least);
        const across = cover.closure?.lies === "across" ? cover.closure.size : 0;
        const upright = cover.closure?.lies === "upright" ? cover.closure.size : 0;
        if (cover.widths.length > 0) {
          expect(cover.rows.reduce((sum, row) => sum + row, across)).toBe(height);
          expect(cover.widths.reduce((sum, one) => sum + one, upright)).toBe(width);
        }
        expect(coverBand({ ...one, heights: [...one.heights].reverse() })).toEqual(cover);
      }),
      { seed: 71, numRuns: 600 },
    );
  });
});

/** Closures, narrow, fillers and pieces of every band there is. */
function everyBand({ width, height, closure, narrowUnder }: BandInput, panels: Panels): number[][] {
  const heights = [...new Set(panels.map((panel) => panel[1]))].sort((a, b) => b - a);
  const widths = [...new Set(panels.map((panel) => panel[0]))].sort((a, b) => b - a);
  const strips: { across: number; upright: number }[] = [{ across: 0, upright: 0 }];
  for (let strip = closure?.least ?? 1; strip <= (closure?.greatest ?? 0); strip++) {
    strips.push({ across: strip, upright: 0 }, { across: 0, upright: strip });
  }
  const found: number[][] = [];
  for (const { across, upright } of strips) {
    const closures = across + upright > 0 ? 1 : 0;
    if (closures > 0 && (across === height || upright === width)) found.push([1, 0, 0, 0]);
    for (const rows of everyMultiset(height - across, heights)) {
      if (rows.length === 0 || rows.length > 4) continue;
      for (const columns of everyMultiset(width - upright, widths)) {
        if (columns.length === 0) continue;
        const pieces = rows.flatMap((row) =>
          columns.map((column) => panels.find(([wide, high]) => wide === column && high === row)),
        );
        if (pieces.includes(undefined)) continue;
        const narrow = pieces.filter((piece) => (piece?.[0] ?? 0) < narrowUnder).length;
        found.push([closures, narrow, pieces.filter((piece) => !piece?.[2]).length, pieces.length]);
      }
    }
  }
  return found;
}

function compareCounts(a: number[], b: number[]): number {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at < 0 ? 0 : a[at]! - b[at]!;
}
