// The plan of a field by itself: any outline along the axes, any kit, connectors on some sides only, columns anywhere.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planSoffit } from "../../../src/fill/soffit/planSoffit.ts";
import type { Ring } from "../../../src/geom/ring.ts";
import { readSoffit } from "../../support/audit/soffitShapes.ts";
import { headFaults, supportFaults, tributaryFaults } from "../../support/audit/soffitShoring.ts";
import { soffitTilingFaults } from "../../support/audit/soffitTiling.ts";
import { plannedSoffit } from "../../support/plannedSoffit.ts";
import { ell, fieldOf, rectangle, slabKit, smallKits, squareLegs } from "../../support/soffitField.ts";

const SCALE = 50;
const OPEN = [{ severity: "error" as const, kind: "no-exact-cover", message: "", where: {} }];

const scaled = smallKits.map(({ sizes, strip, closure }) => ({
  sizes: sizes.map(({ width, length, standard }) => ({
    width: width * SCALE,
    length: length * SCALE,
    standard,
  })),
  strip: strip === null ? null : strip * SCALE,
  closure: closure === null ? null : { least: 10, greatest: closure.greatest * SCALE },
}));
const side = fc.integer({ min: 3, max: 60 }).map((n) => n * SCALE);
const outlines: fc.Arbitrary<Ring> = fc.oneof(
  fc.tuple(side, side).map(([w, h]) => rectangle(w + 300, h + 300)),
  fc.tuple(side, side, side, side).map(([a, b, c, d]) => ell(a + b + 300, c + d + 300, a + 300, c + 300)),
);
const column = fc.record({
  u: fc.integer({ min: 0, max: 40 }),
  v: fc.integer({ min: 0, max: 40 }),
  wide: fc.integer({ min: 1, max: 12 }),
  high: fc.integer({ min: 1, max: 12 }),
});

/** Clear of the legs and within the lower left square that every outline has. */
function columnRing({ u, v, wide, high }: { u: number; v: number; wide: number; high: number }): Ring {
  const [u0, v0] = [200 + u * 10, 200 + v * 10];
  return [
    [u0, v0],
    [u0 + wide * 10, v0],
    [u0 + wide * 10, v0 + high * 10],
    [u0, v0 + high * 10],
  ];
}

describe("the plan of any field", () => {
  it("is tiled, carried at both ends of every panel, and stands on heads by the rules", () => {
    fc.assert(
      fc.property(
        scaled,
        outlines,
        fc.option(column),
        fc.integer({ min: 0, max: 63 }),
        fc.constantFrom(300, 700, 1200),
        fc.constantFrom([1200], [600, 300], [250], [1171]),
        fc.constantFrom(null, "u" as const, "v" as const),
        (kit, outline, at, missing, pitch, lengths, direction) => {
          const whole = slabKit(kit, lengths);
          const field = fieldOf(outline, 150, whole, { propPitch: pitch, direction });
          const box = outline.map(([u, v]) => Math.max(u, v));
          const holes =
            at === null || Math.min(...box.filter((one) => one > 0)) < 900 ? [] : [columnRing(at)];
          const { corners, straights } = squareLegs(outline, 150);
          const legs = [...corners, ...straights.filter((_, k) => ((missing >> k) & 1) === 0)];
          const input = { ...field, holes, legs };
          const read = readSoffit(plannedSoffit(input, planSoffit(input)));
          const ruled = { ...whole, rules: { propPitch: { value: pitch, unit: "mm", origin: "" } } };
          expect(soffitTilingFaults(read, OPEN)).toEqual([]);
          expect(supportFaults(read, OPEN)).toEqual([]);
          expect(headFaults(read, ruled)).toEqual([]);
          expect(tributaryFaults(read)).toEqual([]);
        },
      ),
      { seed: 31, numRuns: 600 },
    );
  }, 60_000);
});
