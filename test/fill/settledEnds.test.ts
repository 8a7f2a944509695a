// Ends of faces on whole millimetres, as they are marked out on the slab.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Wall } from "../../src/plan/project.ts";
import { fillOne } from "../support/filled.ts";
import { houseArbitrary } from "../support/housePlan.ts";
import { emptyUnit } from "../support/services.ts";

const RUNS = { seed: 20_260_304, numRuns: 25, endOnFailure: true };

function room(places: readonly (readonly [number, number])[]): readonly Wall[] {
  return places.map((from, k): Wall => {
    const to = places[(k + 1) % places.length]!;
    return { id: `w${k}`, from, to, thickness: 100, justify: "centre" };
  });
}

describe("settled ends", () => {
  it("are the drawn ends where the drawing is on whole millimetres", () => {
    fc.assert(
      fc.property(
        houseArbitrary({ columns: 2, rows: 2, thicknesses: [100, 200], isMixed: false }),
        (unit) => {
          for (const { from, to, settled } of fillOne(unit).faces) expect(settled).toEqual([from, to]);
        },
      ),
      RUNS,
    );
  });

  it.each([
    { why: "parts of a millimetre are rounded once, for both faces", by: 0.4, inner: 3000 },
    { why: "half a millimetre goes up", by: 0.5, inner: 3001 },
  ])("$why", ({ by, inner }) => {
    const walls = room([
      [0, 0],
      [3100 + by, 0],
      [3100 + by, 3000],
      [0, 3000],
    ]);
    const { faces } = fillOne({ ...emptyUnit, walls });
    const south = faces.find(
      (face) => face.room !== null && face.settled[0][1] === 50 && face.settled[1][1] === 50,
    )!;
    expect(Math.abs(south.settled[1][0] - south.settled[0][0])).toBe(inner);
    expect(south.length).toBe(inner);
    for (const { settled } of faces) expect(settled.flat().every(Number.isInteger)).toBe(true);
  });

  it("leave a face along an axis straight where its walls are drawn a hair off it", () => {
    const walls = room([
      [0, 0],
      [4000, 1],
      [4001, 3000],
      [1, 3000],
    ]);
    for (const { settled, length } of fillOne({ ...emptyUnit, walls }).faces) {
      const [[ax, ay], [bx, by]] = settled;
      expect(ax === bx || ay === by).toBe(true);
      expect(Math.abs(Math.abs(bx - ax) + Math.abs(by - ay) - length)).toBeLessThanOrEqual(2);
    }
  });

  it("let faces follow each other without a gap", () => {
    fc.assert(
      fc.property(
        houseArbitrary({ columns: 2, rows: 1, thicknesses: [99, 120.5], isMixed: false }),
        (unit) => {
          const { faces } = fillOne(unit);
          const starts = faces.map(({ settled }) => String(settled[0]));
          for (const { settled } of faces) expect(starts).toContain(String(settled[1]));
        },
      ),
      RUNS,
    );
  });
});
