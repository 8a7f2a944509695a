// The table of pieces and what is said of a set.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chartLines } from "../../../src/editor/set/chart.ts";
import { claimOf } from "../../../src/editor/set/claim.ts";
import { dearerBy, plotted } from "../../../src/editor/set/curvePlot.ts";
import type { Told } from "../../../src/editor/set/optimiser.ts";
import {
  changeOf,
  costOf,
  type PieceRow,
  panelCount,
  pieceRows,
  shownRows,
  sortedRows,
  sumsOf,
} from "../../../src/editor/set/pieceRows.ts";
import type { NeededPiece } from "../../../src/fill/optimise/pourAdds.ts";
import type { CurvePoint } from "../../../src/fill/optimise/tradeOff.ts";
import type { PanelSet, SetPiece } from "../../../src/fill/result.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import { percentUp } from "../../../src/units.ts";

const need = (code: string, needed: number, family: NeededPiece["family"] = "wall-panel"): NeededPiece => ({
  code,
  family,
  needed,
  owned: 0,
  price: null,
});

function rowsOf(
  needed: readonly NeededPiece[],
  chosen: readonly NeededPiece[] | null = null,
  stock: Readonly<Record<string, number>> = {},
): readonly PieceRow[] {
  const set: readonly SetPiece[] | null =
    chosen === null ? null : chosen.map((piece) => ({ ...piece, toBuy: 0 }));
  return pieceRows({ needed, chosen: set, stock, kit: demoKit });
}

const row = (rows: readonly PieceRow[], code: string) => rows.find((each) => each.code === code);

describe("the table of pieces", () => {
  it("counts what is to buy from the set that was chosen, else from wall by wall", () => {
    const before = [need("W600x2250", 100), need("W100x2250", 8)];
    const stock = { W600x2250: 30 };
    expect(row(rowsOf(before, null, stock), "W600x2250")).toMatchObject({
      owned: 30,
      toBuy: 70,
      chosen: null,
    });
    const rows = rowsOf(before, [need("W600x2250", 80)], stock);
    expect(row(rows, "W600x2250")).toMatchObject({ wallByWall: 100, chosen: 80, toBuy: 50 });
    expect(row(rows, "W100x2250")).toMatchObject({ wallByWall: 8, chosen: 0, toBuy: 0 });
    expect(rows.map(changeOf).filter((change) => change !== 0)).toEqual([-8, -20]);
  });

  it("shows panels in use, everything in use, or the whole kit", () => {
    const rows = rowsOf([need("W600x2250", 1), need("Prop2000-3500", 4, "prop")], null, { W300x2250: 5 });
    expect(shownRows(rows, "panels").map(({ code }) => code)).toEqual(["W300x2250", "W600x2250"]);
    expect(shownRows(rows, "used")).toHaveLength(3);
    expect(shownRows(rows, "kit")).toHaveLength(demoKit.pieces.length);
  });

  it("lists what is needed or owned and in no kit", () => {
    expect(row(rowsOf([need("Cut/75", 2, "closure-strip")]), "Cut/75")).toMatchObject({
      toBuy: 2,
      price: null,
    });
  });

  it("says that a kind without a price is in no sum", () => {
    const rows = rowsOf([need("Cut/75", 2, "closure-strip"), need("W600x2250", 2)]);
    const panel = row(rows, "W600x2250")!;
    expect(sumsOf(rows)).toMatchObject({ toBuy: 4, cost: 2 * panel.price!, unpriced: 1, chosen: null });
    expect(costOf({ ...panel, toBuy: 0, price: null })).toBe(0);
  });

  it("sorts figures from the greatest, either way, and keeps every row", () => {
    const counts = fc.array(fc.nat(40), { minLength: 3, maxLength: 3 });
    const by = fc.constantFrom("owned", "wallByWall", "chosen", "change", "toBuy");
    const codes = ["W600x2250", "W300x2250", "W100x2250"];
    fc.assert(
      fc.property(counts, counts, by, fc.boolean(), (before, after, column, isTurned) => {
        const needs = (all: readonly number[]) => codes.map((code, k) => need(code, all[k]!));
        const rows = shownRows(rowsOf(needs(before), needs(after), { W300x2250: 7 }), "panels");
        const sorted = sortedRows(rows, { by: column, isTurned });
        const figures = sorted.map((each) => (column === "change" ? changeOf(each) : each[column]) ?? 0);
        const way = isTurned ? 1 : -1;
        expect(figures).toEqual([...figures].sort((a, b) => way * (a - b)));
        expect(new Set(sorted)).toEqual(new Set(rows));
      }),
      { seed: 8 },
    );
    const kit = rowsOf([]);
    expect(sortedRows(kit, { by: "piece", isTurned: false })).toEqual(kit);
    expect(sortedRows(kit, { by: "piece", isTurned: true })).toEqual([...kit].reverse());
  });

  it("counts panels and their sizes", () => {
    expect(panelCount([need("A", 3), need("B", 0), need("C", 4), need("D", 9, "prop")])).toEqual({
      panels: 7,
      sizes: 2,
    });
  });
});

const SET: PanelSet = {
  status: "optimal",
  countedBy: "price",
  pieces: [],
  cost: 1000,
  parts: { set: 1000, handling: 0, closures: 0, distinctSizes: 0, fixed: 0 },
  lowerBound: 1000,
  proof: "certificate",
  wallByWall: 1100,
  chosen: { widths: 4, fillers: 0 },
};

describe("what is said of a set", () => {
  it.each<{ why: string; set: Partial<PanelSet>; says: string }>([
    { why: "proven by its bound", set: {}, says: "status.optimal why.certificate 0" },
    { why: "proven by trying", set: { proof: "enumeration" }, says: "status.optimal why.enumeration 0" },
    {
      why: "work ran out",
      set: { status: "gap", proof: null, lowerBound: 998 },
      says: "status.gap why.gap 0.2",
    },
    {
      why: "searched",
      set: { status: "gap", proof: "search", lowerBound: 998 },
      says: "status.gap why.search 0.2",
    },
    {
      why: "stopped",
      set: { status: "stopped", proof: null, lowerBound: 900 },
      says: "status.stopped why.stopped 10",
    },
    {
      why: "nothing found yet that does with the stock",
      set: { status: "stopped", proof: null, missing: [{ code: "A", quantity: 1, pours: [], units: [] }] },
      says: "status.stopped why.short 0",
    },
    {
      why: "nothing does with so few widths",
      set: { status: "infeasible", lacks: "widths" },
      says: "status.widths why.widths 0",
    },
    {
      why: "nothing found yet with so few widths",
      set: { status: "gap", proof: null, lacks: "widths", lowerBound: 990 },
      says: "status.gap why.widths-yet 1",
    },
    {
      why: "nothing does with the stock",
      set: { status: "infeasible", missing: [{ code: "A", quantity: 1, pours: [], units: [] }] },
      says: "status.infeasible why.infeasible 0",
    },
  ])("$why", ({ set, says }) => {
    const { status, why, percent } = claimOf({ ...SET, ...set });
    expect(`${status} ${why} ${percent}`).toBe(says);
  });

  it.each([
    { why: "exact", part: 2, whole: 1000, percent: 0.2 },
    { why: "a little over is the next thousandth", part: 0.20001, whole: 100, percent: 0.201 },
    { why: "never rounded to nothing", part: 0.01, whole: 1e6, percent: 0.001 },
    { why: "nothing", part: 0, whole: 1000, percent: 0 },
    { why: "of nothing", part: 1, whole: 0, percent: 0 },
  ])("is within so many percent, rounded up: $why", ({ part, whole, percent }) => {
    expect(percentUp(part, whole)).toBe(percent);
  });
});

describe("the chart of a search", () => {
  const told = (at: number, best: number, bound: number): Told => ({ at, stage: "plan", best, bound });
  const BOX = { width: 100, height: 50 };
  const places = (path: string) =>
    [...path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);

  it("is drawn of no news, of one and of many", () => {
    expect(chartLines([], BOX)).toBeNull();
    expect(places(chartLines([told(5, 10, 8)], BOX)!.best).at(-1)?.[0]).toBe(100);
  });

  it("stays in its box, goes on in time, and never lets best and bound cross", () => {
    const news = fc.record({
      at: fc.nat(1000),
      best: fc.integer({ min: 500, max: 900 }),
      bound: fc.nat(500),
    });
    fc.assert(
      fc.property(fc.array(news, { minLength: 1, maxLength: 20 }), (all) => {
        const sorted = [...all]
          .sort((a, b) => a.at - b.at)
          .map(({ at, best, bound }) => told(at, best, bound));
        const lines = chartLines(sorted, BOX)!;
        for (const path of [lines.best, lines.bound]) {
          let last = 0;
          for (const [x, y] of places(path)) {
            expect(x).toBeGreaterThanOrEqual(last);
            expect(x).toBeLessThanOrEqual(100);
            expect(y).toBeGreaterThanOrEqual(0);
            expect(y).toBeLessThanOrEqual(50);
            last = x;
          }
        }
        expect(lines.ends.best).toBeLessThanOrEqual(lines.ends.bound);
      }),
      { seed: 2 },
    );
  });

  it("ends in one place where the bound meets the best", () => {
    const { ends } = chartLines([told(0, 10, 2), told(9, 9, 9)], BOX)!;
    expect(ends.best).toBe(ends.bound);
  });
});

describe("the picture of a curve", () => {
  const point = (widths: number, cost: number, lowerBound = cost): CurvePoint => ({
    mostWidths: widths,
    filler: 0,
    widths,
    fillers: 0,
    cost,
    lowerBound,
    status: "optimal",
    proof: "certificate",
  });
  const BOX = { width: 100, height: 50 };

  it("puts few at the left and dear at the top, each over what is proven of it", () => {
    const all = [point(9, 100), point(7, 110, 105), point(4, 150)];
    expect(plotted(all, "widths", BOX)).toEqual([
      { x: 100, y: 50, boundY: 50 },
      { x: 60, y: 40, boundY: 45 },
      { x: 0, y: 0, boundY: 0 },
    ]);
    expect(dearerBy(all)).toEqual([0, 10, 50]);
  });

  it("stands in the middle where there is one point, or all are alike", () => {
    expect(plotted([point(9, 100)], "widths", BOX)).toEqual([{ x: 50, y: 25, boundY: 25 }]);
    expect(dearerBy([point(3, 0)])).toEqual([0]);
  });
});
