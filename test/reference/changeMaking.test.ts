// Facts about sums of given numbers that were known long before this program.

import { describe, expect, it } from "vitest";
import { coversOf } from "../../src/fill/alternatives.ts";
import { coverInterval } from "../../src/fill/cover.ts";
import { createCoverTable } from "../../src/fill/coverTable.ts";

const tableOf = (widths: readonly number[]) =>
  createCoverTable(
    widths.map((width) => ({ width, standard: true })),
    null,
    0,
  );

/** Always the widest that fits; null where it gets stuck. */
function widestFirst(length: number, widths: readonly number[]): number[] | null {
  const taken: number[] = [];
  let left = length;
  for (const width of [...widths].sort((a, b) => b - a)) {
    for (; left >= width; left -= width) taken.push(width);
  }
  return left === 0 ? taken : null;
}

describe("change-making", () => {
  // The classical counterexamples to taking the largest first; the coins are facts of history, the sums
  // arithmetic.
  it.each([
    { why: "1, 3, 4", widths: [1, 3, 4], length: 6, fewest: 2, greedy: 3 },
    { why: "coins of 1, 10, 25", widths: [1, 10, 25], length: 30, fewest: 3, greedy: 6 },
    { why: "coins of 1, 5, 10, 20, 25", widths: [1, 5, 10, 20, 25], length: 40, fewest: 2, greedy: 3 },
    {
      why: "half-crown, florin, shilling, sixpence",
      widths: [30, 24, 12, 6],
      length: 48,
      fewest: 2,
      greedy: 3,
    },
    {
      why: "panels, the widest first gets stuck",
      widths: [300, 400, 450, 500, 750, 900],
      length: 5650,
      fewest: 7,
      greedy: null,
    },
  ])("fewest pieces: $why", ({ widths, length, fewest, greedy }) => {
    const cover = coverInterval(length, tableOf(widths));
    expect(cover).toMatchObject({ key: { pieces: fewest } });
    expect(widestFirst(length, widths)?.length ?? null).toBe(greedy);
  });

  // J. J. Sylvester, Educational Times 41 (1884) 21: of two numbers without common divisor, (a - 1)(b - 1) /
  // 2 lengths are no sum, and the longest of them is ab - a - b.
  it.each([
    [3, 5],
    [4, 9],
    [7, 11],
    [53, 59],
    [600, 457],
  ])("lengths that %i and %i cannot cover", (a, b) => {
    const table = tableOf([a, b]);
    const uncovered: number[] = [];
    for (let length = 0; length <= a * b; length++) {
      if (!Number.isFinite(table.plain.costOf(length))) uncovered.push(length);
    }
    expect(uncovered).toHaveLength(((a - 1) * (b - 1)) / 2);
    expect(uncovered.at(-1)).toBe(a * b - a - b);
  });

  it("43 is the longest length that 6, 9 and 20 cannot cover", () => {
    const table = tableOf([6, 9, 20]);
    expect(coverInterval(43, table).status).toBe("none");
    for (let length = 44; length < 200; length++) expect(coverInterval(length, table).status).toBe("covered");
  });

  // G. Pólya, "On picture-writing", American Mathematical Monthly 63 (1956) 689-697.
  it("a dollar can be changed into 1, 5, 10, 25 and 50 cents in 292 ways", () => {
    const covers = coversOf(100, tableOf([1, 5, 10, 25, 50]), 1000);
    expect(covers).toHaveLength(292);
    expect(new Set(covers.map(({ widths }) => widths.join(" "))).size).toBe(292);
  });
});
