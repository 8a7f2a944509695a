// From millimetres to pixels and back, zooming at the pointer, and showing the whole plan.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { visibleShare } from "../../../src/editor/scene/clip.ts";
import { detailAt, type Level } from "../../../src/editor/scene/detail.ts";
import { gridStep } from "../../../src/editor/scene/ground.ts";
import {
  fitted,
  GREATEST_SCALE,
  LEAST_SCALE,
  panned,
  toPixel,
  toPlan,
  toScreen,
  type Viewport,
  visibleBox,
  zoomedAt,
} from "../../../src/editor/scene/viewport.ts";
import type { Position } from "../../../src/plan/project.ts";

const place = fc.tuple(fc.integer({ min: -50_000, max: 50_000 }), fc.integer({ min: -50_000, max: 50_000 }));
const viewport: fc.Arbitrary<Viewport> = fc.record({
  centre: place,
  scale: fc.double({ min: LEAST_SCALE, max: GREATEST_SCALE, noNaN: true }),
  width: fc.integer({ min: 200, max: 2000 }),
  height: fc.integer({ min: 200, max: 2000 }),
});
const SEED = 3101;

describe("the viewport", () => {
  it("draws north up and east to the right", () => {
    const view: Viewport = { centre: [1000, 1000], scale: 0.1, width: 800, height: 600 };
    expect(toScreen(view, [1000, 1000])).toEqual([400, 300]);
    expect(toScreen(view, [2000, 1000])).toEqual([500, 300]);
    expect(toScreen(view, [1000, 2000])).toEqual([400, 200]);
  });

  it("goes there and back", () => {
    fc.assert(
      fc.property(viewport, place, (view, at) => {
        const [x, y] = toPlan(view, toScreen(view, at));
        expect(x).toBeCloseTo(at[0], 4);
        expect(y).toBeCloseTo(at[1], 4);
      }),
      { seed: SEED },
    );
  });

  it("keeps the place under the pointer where it is while zooming", () => {
    fc.assert(
      fc.property(viewport, fc.double({ min: 0.2, max: 5, noNaN: true }), (view, factor) => {
        const pointer = [view.width / 3, view.height / 5] as const;
        const before = toPlan(view, pointer);
        const after = toPlan({ ...view, ...zoomedAt(view, factor, pointer) }, pointer);
        expect(after[0]).toBeCloseTo(before[0], 3);
        expect(after[1]).toBeCloseTo(before[1], 3);
      }),
      { seed: SEED },
    );
  });

  it("stops at the furthest and the nearest", () => {
    const view: Viewport = { centre: [0, 0], scale: 1, width: 100, height: 100 };
    expect(zoomedAt(view, 1000, [0, 0]).scale).toBe(GREATEST_SCALE);
    expect(zoomedAt(view, 0.0001, [0, 0]).scale).toBe(LEAST_SCALE);
  });

  it("moves with the hand", () => {
    fc.assert(
      fc.property(viewport, place, (view, at) => {
        const moved = { ...view, ...panned(view, 30, -20) };
        const [a, b] = [toScreen(view, at), toScreen(moved, at)];
        expect(b[0] - a[0]).toBeCloseTo(30, 5);
        expect(b[1] - a[1]).toBeCloseTo(-20, 5);
      }),
      { seed: SEED },
    );
  });

  it("shows all of a box within its insets, touching two of them", () => {
    const insets = { top: 20, right: 100, bottom: 30, left: 50 };
    const box = { minX: 0, minY: 0, maxX: 11_000, maxY: 7600 };
    const size = { width: 1440, height: 676 };
    const view = fitted(box, size, insets);
    const shown = { ...size, ...(view ?? { centre: [0, 0] as const, scale: 0 }) };
    const [left, bottom] = toScreen(shown, [0, 0]);
    const [right, top] = toScreen(shown, [11_000, 7600]);
    expect(top).toBeCloseTo(20, 6);
    expect(bottom).toBeCloseTo(646, 6);
    expect(left).toBeGreaterThanOrEqual(50);
    expect(right).toBeLessThanOrEqual(1340);
    expect((left + right) / 2).toBeCloseTo((50 + 1340) / 2, 6);
  });

  it("has nothing to show of a box that is inside out, or in no room", () => {
    const none = { minX: 1, minY: 1, maxX: -1, maxY: -1 };
    const insets = { top: 0, right: 0, bottom: 0, left: 0 };
    expect(fitted(none, { width: 100, height: 100 }, insets)).toBeNull();
    const box = { minX: 0, minY: 0, maxX: 1, maxY: 1 };
    expect(fitted(box, { width: 10, height: 10 }, { ...insets, left: 10 })).toBeNull();
  });

  it("takes places to the middle of a pixel", () => {
    fc.assert(
      fc.property(viewport, place, (view, at) => {
        const [x, y] = toPixel(view, at);
        const [a, b] = toScreen(view, at);
        expect([Math.abs(x % 1), Math.abs(y % 1)]).toEqual([0.5, 0.5]);
        expect(Math.abs(x - a)).toBeLessThanOrEqual(0.5);
        expect(Math.abs(y - b)).toBeLessThanOrEqual(0.5);
      }),
      { seed: SEED },
    );
  });

  it("sees the box whose corners are its own corners", () => {
    const view: Viewport = { centre: [0, 0], scale: 0.1, width: 200, height: 100 };
    expect(visibleBox(view)).toEqual({ minX: -1000, minY: -500, maxX: 1000, maxY: 500 });
    expect(visibleBox(view, 10)).toEqual({ minX: -1100, minY: -600, maxX: 1100, maxY: 600 });
  });
});

describe("what is drawn at which zoom", () => {
  const TABLE: readonly (readonly [scale: number, level: Level, shown: string])[] = [
    [0.029, "unit", ""],
    [0.03, "plan", "pieces"],
    [0.054, "plan", "pieces"],
    [0.055, "room", "pieces joints fillerWidths jambs"],
    [0.249, "room", "pieces joints fillerWidths jambs"],
    [0.25, "wall", "pieces joints fillerWidths jambs standardWidths ties hatch"],
    [0.5, "joint", "pieces joints fillerWidths jambs standardWidths ties hatch frames"],
    [4, "joint", "pieces joints fillerWidths jambs standardWidths ties hatch frames"],
  ];
  it.each(TABLE)("at %f px/mm: %s, with %s", (scale, level, shown) => {
    const { level: found, edge, ...flags } = detailAt(scale);
    expect(found).toBe(level);
    const on = Object.entries(flags).flatMap(([name, isOn]) => (isOn ? [name] : []));
    expect(on.sort()).toEqual(shown.split(" ").filter(Boolean).sort());
    expect(edge).toBeGreaterThan(0);
  });

  it("never takes anything away that was there further off", () => {
    const flags = TABLE.map(
      ([scale]) => Object.values(detailAt(scale)).filter((value) => value === true).length,
    );
    expect(flags).toEqual([...flags].sort((a, b) => a - b));
  });

  it.each([0.004, 0.03, 0.075, 0.2, 0.5, 2, 4])("keeps the dots of the grid apart at %f px/mm", (scale) => {
    expect(gridStep(scale) * scale).toBeGreaterThanOrEqual(30);
  });
});

describe("the part of a line in view", () => {
  const size = { width: 100, height: 100 };
  type Row = readonly [from: Position, to: Position, share: readonly [number, number] | null, why: string];
  const ROWS: readonly Row[] = [
    [[-100, 50], [200, 50], [110 / 300, 190 / 300], "crosses both sides"],
    [[20, 20], [80, 80], [0, 1], "lies within"],
    [[-50, -50], [-10, 50], null, "is off to the left"],
    [[0, 50], [0, 80], null, "runs along the margin, outside"],
  ];
  it.each(ROWS)("from %j to %j: %j, for it %s", (from, to, expected) => {
    const share = visibleShare([from, to], size, 10);
    if (expected === null) expect(share).toBeNull();
    else expect(share?.map((value) => value.toFixed(6))).toEqual(expected.map((value) => value.toFixed(6)));
  });
});
