// Nine walls with two faces, cut into free intervals and zones, against optima that were found without that
// cut.
//
//   a  |leg|══════ run ══════|leg| gap |leg|════ run ════|      forced joints of either face cut both
//   b  |leg|════════════════ run ══════════|═════════════|
//
// The instances are invented (see the note in the data). Where every joint can face a joint the cut loses
// nothing: the counts are equal. Where it cannot, the rule of matching joints costs something, and the row
// says what.

import { describe, expect, it } from "vitest";
import { type Cover, coverInterval } from "../../src/fill/cover.ts";
import { type CoverTable, createCoverTable } from "../../src/fill/coverTable.ts";
import { coverZone } from "../../src/fill/zoneCover.ts";
import data from "../data/pairs-named.json" with { type: "json" };
import { cut, type Element } from "../support/cutWall.ts";

/** Counts over both faces, or the lengths without cover. */
function countsOf(a: readonly Element[], b: readonly Element[], table: CoverTable) {
  const total = { closures: 0, pieces: 0, fillers: 0 };
  const uncovered: number[] = [];
  for (const { from, to, kind } of cut(a, b)) {
    const cover: Cover = kind === "interval" ? coverInterval(to - from, table) : coverZone(to - from, table);
    if (cover.status !== "covered") {
      uncovered.push(to - from);
      continue;
    }
    const faces = kind === "interval" ? 2 : 1;
    total.closures += faces * cover.key.closures;
    total.pieces += faces * cover.key.pieces;
    total.fillers += faces * cover.key.fillers;
  }
  return { ...total, uncovered };
}

const WIDTHS = data.widths.map((width) => ({ width, standard: width === data.standard }));
const EQUAL = ["same", "innerOuter", "innerOuter250", "tJunctionB", "twoT", "openings", "short610"];
const wallNamed = (name: string) => data.walls.find((wall) => wall.name === name)!;

describe("named walls with two faces", () => {
  it.each(EQUAL)("%s: matching joints cost nothing", (name) => {
    const { a, b, optimum } = wallNamed(name);
    // The source has no rule against narrow panels.
    const counts = countsOf(a, b, createCoverTable(WIDTHS, data.closure, 0));
    const { unmatched, ...least } = optimum;
    expect(unmatched).toBe(0);
    expect(counts).toEqual({ ...least, uncovered: [] });
  });

  it.each([
    {
      name: "tJunctionB_10mm",
      why: "the source leaves 2 joints unmatched; matched, the through face takes its 2 closures too",
      strict: { closures: 4, uncovered: [] as number[] },
    },
    {
      name: "offset30",
      why: "legs 30 apart leave zones of 30 that no panel fills; the source matches no joint at all",
      strict: { closures: 2, uncovered: [30, 30] },
    },
  ])("$name: $why", ({ name, strict }) => {
    const { a, b, optimum } = wallNamed(name);
    expect(optimum.unmatched).toBeGreaterThan(0);
    expect(countsOf(a, b, createCoverTable(WIDTHS, data.closure, 0))).toMatchObject(strict);
  });

  it("twoT: without narrow panels the interval of 3650 takes one filler more on each face", () => {
    const { a, b, optimum } = wallNamed("twoT");
    const counts = countsOf(a, b, createCoverTable(WIDTHS, data.closure, 100));
    expect(counts).toEqual({
      closures: 0,
      pieces: optimum.pieces,
      fillers: optimum.fillers + 2,
      uncovered: [],
    });
  });

  it("looks at every wall of the data", () => {
    expect(data.walls.map(({ name }) => name).sort()).toEqual(
      [...EQUAL, "tJunctionB_10mm", "offset30"].sort(),
    );
  });
});
