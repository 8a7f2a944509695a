// Long intervals against HiGHS 1.15, a general-purpose solver of mixed-integer programmes
// (https://highs.dev): equal counts, or one of the two is wrong. Widths of a cover may differ where several
// have equal counts, so counts are compared.

import { describe, expect, it } from "vitest";
import { coverInterval } from "../../src/fill/cover.ts";
import { type ClosureRange, createCoverTable, type Width } from "../../src/fill/coverTable.ts";
import { loadSolver, solveByMip } from "../support/coverMip.ts";

const widths = (standard: number[], fillers: number[]): Width[] => [
  ...standard.map((width) => ({ width, standard: true })),
  ...fillers.map((width) => ({ width, standard: false })),
];
const GRID = widths([600], [550, 500, 450, 400, 350, 300, 250, 200, 150, 100, 50]);
const THREE = widths([600, 450, 300], [550, 500, 400, 350, 250, 200, 150, 100, 50]);
const ODD = widths([610, 457], [381, 305, 229, 152, 76]);
const SPARSE = widths([900, 750], [500, 450, 400, 300]);
const STRIP: ClosureRange = { least: 10, greatest: 59 };

const highs = await loadSolver();

describe("coverInterval and a general-purpose solver", () => {
  it.each([
    { why: "on the grid", length: 11_850, on: GRID, strip: STRIP },
    { why: "on the grid, one step short of standard panels", length: 11_950, on: GRID, strip: STRIP },
    { why: "off the grid", length: 12_035, on: GRID, strip: STRIP },
    { why: "a residue under the least closure", length: 12_003, on: GRID, strip: STRIP },
    { why: "several standard widths", length: 9_800, on: THREE, strip: STRIP },
    { why: "several standard widths, off the grid", length: 9_817, on: THREE, strip: STRIP },
    { why: "a narrow panel could be had", length: 6_050, on: widths([600], [50]), strip: STRIP },
    { why: "no common divisor", length: 8_119, on: ODD, strip: null },
    { why: "no common divisor, with closures", length: 8_120, on: ODD, strip: STRIP },
    { why: "widest first would fail", length: 5_650, on: SPARSE, strip: null },
    { why: "widest first would fail, longer", length: 23_650, on: SPARSE, strip: null },
    { why: "sparse widths, off the grid", length: 23_672, on: SPARSE, strip: STRIP },
    { why: "no cover: below what two panels reach", length: 550, on: widths([600], [300]), strip: STRIP },
    { why: "no cover: an odd length of even widths", length: 7_001, on: widths([600], [250]), strip: null },
  ])("agree: $why ($length)", ({ length, on, strip }) => {
    const cover = coverInterval(length, createCoverTable(on, strip, 100));
    const counts = solveByMip(highs, length, { widths: on, closure: strip, narrowUnder: 100 });
    if (cover.status !== "covered") {
      expect(counts).toBeNull();
      return;
    }
    const { closures, narrow, fillers, pieces, distinct } = cover.key;
    expect([closures, narrow, fillers, pieces, distinct, cover.closure ?? 0]).toEqual(counts);
  });
});
