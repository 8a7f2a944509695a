// Drawings that bend or tilt by a hair: what was meant is one straight wall, parallel to its axis.

import { describe, expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import { fillOne } from "../support/filled.ts";
import { unitOf } from "../support/walls.ts";

const union = await loadUnion();

describe("a straight wall drawn in two pieces", () => {
  it.each([
    { why: "that slip past each other by 1.8 mm and bend by 0.05°", at: 0.9 },
    { why: "that slip by 1 mm", at: 0.5 },
    { why: "that meet exactly", at: 0 },
  ])("$why, is one wall of four faces", ({ at }) => {
    const unit = unitOf([
      [at, 5200, 0, 2800, 100],
      [-at, 2800, 0, 0, 100],
    ]);
    const outline = buildOutline(unit, union);
    expect(outline.findings.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(outline.faces.map(({ length }) => Math.round(length)).sort((a, b) => a - b)).toEqual([
      100, 100, 5200, 5200,
    ]);
  });
});

describe("a stub tilted by a hair", () => {
  it("is as long as it was meant: 400 less half the through wall's 100", () => {
    const unit = unitOf([
      [0, 700, 399.8, 700.31, 100],
      [0, 0, 0, 1800, 100],
      [0, 750, -400, 750, 100],
    ]);
    const fill = fillOne(unit);
    expect(fill.faces.filter(({ length }) => length === 350).length).toBeGreaterThanOrEqual(2);
    expect(fill.faces.map(({ length }) => length)).not.toContain(349);
  });
});
