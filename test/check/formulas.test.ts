// What must hold of the formulas whatever the figures: continuous, monotone, and refused outside their ranges.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aci347SlabLoad } from "../../src/check/aci347SlabLoad.ts";
import { aci347SlabLoadPsf } from "../../src/check/aci347SlabLoadPsf.ts";
import { aci347Striking } from "../../src/check/aci347Striking.ts";
import { adequacy } from "../../src/check/adequacy.ts";
import { loadToCompare, propLimit } from "../../src/check/en1065Limit.ts";
import { en1065Strength, type PropClass } from "../../src/check/en1065Strength.ts";
import { en12812Heaping } from "../../src/check/en12812Heaping.ts";
import { en12812Horizontal } from "../../src/check/en12812Horizontal.ts";
import { en12812SlabLoad } from "../../src/check/en12812SlabLoad.ts";
import { gridLoadPounds } from "../../src/check/gridLoadPounds.ts";
import { is456Striking } from "../../src/check/is456Striking.ts";
import { propLoad } from "../../src/check/propLoad.ts";
import type { Answer } from "../../src/check/range.ts";
import { timberBucklingPsi } from "../../src/check/timberBuckling.ts";
import { timberStability } from "../../src/check/timberStability.ts";
import { tributaryArea } from "../../src/check/tributaryArea.ts";
import { value } from "../support/answers.ts";

const thickness = fc.double({ min: 20, max: 2000, noNaN: true });
const density = fc.double({ min: 8, max: 40, noNaN: true });
const formwork = fc.double({ min: 0, max: 5, noNaN: true });
const slab = fc.record({ thickness, density, formwork });

describe("the heaping allowance", () => {
  it.each([7.5, 17.5])("has no step at its kink of %d kPa", (kink) => {
    const [before, at, after] = [kink - 1e-9, kink, kink + 1e-9].map((load) => value(en12812Heaping(load)));
    expect(Math.abs(before! - at!)).toBeLessThan(1e-8);
    expect(Math.abs(after! - at!)).toBeLessThan(1e-8);
  });

  it("is a tenth of the self-weight, give it back and you have the slab, between the kinks alone", () => {
    fc.assert(
      fc.property(fc.double({ min: 7.5, max: 17.5, noNaN: true }), (load) => {
        expect(value(en12812Heaping(load)) * 10).toBeCloseTo(load, 9);
      }),
      { seed: 652 },
    );
    expect(value(en12812Heaping(0))).toBe(0.75);
    expect(value(en12812Heaping(80))).toBe(1.75);
  });
});

describe("a thicker slab, a heavier concrete or a heavier form", () => {
  const models = {
    "EN 12812": (input: typeof slab extends fc.Arbitrary<infer T> ? T : never) =>
      value(en12812SlabLoad(input)).total,
    "ACI 347": (input: typeof slab extends fc.Arbitrary<infer T> ? T : never) =>
      value(aci347SlabLoad(input, false)).total,
    "ACI 347 with carts": (input: typeof slab extends fc.Arbitrary<infer T> ? T : never) =>
      value(aci347SlabLoad(input, true)).total,
  };

  it.each(Object.entries(models))("never weighs less by %s", (_name, total) => {
    fc.assert(
      fc.property(slab, slab, (a, b) => {
        const less = {
          thickness: Math.min(a.thickness, b.thickness),
          density: Math.min(a.density, b.density),
          formwork: Math.min(a.formwork, b.formwork),
        };
        const more = {
          thickness: Math.max(a.thickness, b.thickness),
          density: Math.max(a.density, b.density),
          formwork: Math.max(a.formwork, b.formwork),
        };
        expect(total(more)).toBeGreaterThanOrEqual(total(less));
      }),
      { seed: 653 },
    );
  });

  it("weighs the sum of its parts, and no less than the floor of ACI 347", () => {
    fc.assert(
      fc.property(slab, fc.boolean(), (input, carts) => {
        const en = value(en12812SlabLoad(input));
        expect(en.total).toBeCloseTo(en.selfWeight + en.formwork + en.construction + en.heaping, 9);
        const aci = value(aci347SlabLoad(input, carts));
        expect(aci.total).toBeGreaterThanOrEqual(carts ? 6 : 4.8);
        expect(aci.total).toBeGreaterThanOrEqual(aci.selfWeight + aci.formwork + aci.live);
      }),
      { seed: 654 },
    );
  });

  it("is told alike in metres and in inches but for what the guide rounds", () => {
    // 2.4 kPa is 50.13 psf: the two forms of the guide differ by a few parts in a thousand, no more.
    fc.assert(
      fc.property(fc.double({ min: 2, max: 40, noNaN: true }), fc.boolean(), (inches, carts) => {
        const metric = value(
          aci347SlabLoad({ thickness: inches * 25.4, density: 23.563, formwork: 0.2394 }, carts),
        ).total;
        const psf = value(
          aci347SlabLoadPsf({ thicknessInches: inches, densityPcf: 150, formworkPsf: 5 }, carts),
        ).totalPsf;
        expect(Math.abs(metric / (psf * 0.0478803) - 1)).toBeLessThan(0.004);
      }),
      { seed: 655 },
    );
  });
});

const CLASSES: readonly PropClass[] = ["A", "B", "C", "D", "E"];
const props = fc
  .record({
    class: fc.constantFrom(...CLASSES),
    greatest: fc.integer({ min: 2500, max: 4000 }),
    parts: fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
  })
  .map(({ class: name, greatest, parts }) => {
    const at = (part: number) => 1000 + part * (greatest - 1000);
    return {
      class: name,
      least: 1000,
      greatest,
      short: at(Math.min(...parts)),
      long: at(Math.max(...parts)),
    };
  });

describe("a steel prop", () => {
  it("never bears more the farther it is pulled out", () => {
    fc.assert(
      fc.property(props, ({ short, long, ...prop }) => {
        const at = (extension: number) => value(en1065Strength({ ...prop, extension }));
        expect(at(long)).toBeLessThanOrEqual(at(short));
      }),
      { seed: 656 },
    );
  });

  it("bears what its class says, times its extension squared over its length, below the cap", () => {
    const factor = { A: 51, B: 68, C: 102 } as const;
    fc.assert(
      fc.property(props, fc.constantFrom("A", "B", "C"), ({ greatest, long }, name) => {
        const strength = value(en1065Strength({ class: name, least: 1000, greatest, extension: long }));
        const back = (strength * (long / 1000) ** 2) / (greatest / 1000);
        expect(back).toBeLessThanOrEqual(factor[name] + 1e-9);
        if (long > 2200) expect(back).toBeCloseTo(factor[name], 9);
      }),
      { seed: 657 },
    );
  });

  it("is as much used by its design strength as by its permissible load", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 1, max: 60, noNaN: true }),
        (load, strength) => {
          const used = (["design", "permissible"] as const).map((by) =>
            adequacy(loadToCompare(load, by), value(propLimit(strength, by))),
          );
          expect(used[0]!.utilisation).toBeCloseTo(used[1]!.utilisation, 12);
          expect(used[0]!.utilisation).toBeCloseTo((load * 1.65) / strength, 9);
        },
      ),
      { seed: 658 },
    );
  });
});

describe("adequacy", () => {
  it.each([
    { why: "under the limit", load: 9, utilisation: 0.9, status: "within" },
    { why: "at the limit", load: 10, utilisation: 1, status: "within" },
    {
      why: "over in the seventh digit, which nobody prints: all of the limit and no more",
      load: 10.000004,
      utilisation: 1,
      status: "within",
    },
    { why: "over in the sixth", load: 10.0001, utilisation: 10.0001 / 10, status: "over" },
  ])("$why", ({ load, utilisation, status }) => {
    expect(adequacy(load, 10)).toEqual({ utilisation, status });
  });

  it.each([0, -1, Number.NaN])("has no limit of %d", (limit) => {
    expect(() => adequacy(1, limit)).toThrow(RangeError);
  });
});

describe("a timber post", () => {
  it("solves the equation its factor comes from, and keeps less of its strength the slenderer it is", () => {
    // C_P is the lesser root of c·x² − (1 + α)·x + α = 0.
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 20_000, noNaN: true }),
        fc.double({ min: 100, max: 5000, noNaN: true }),
        fc.constantFrom(0.8, 0.85, 0.9),
        (buckling, reference, kind) => {
          const factor = value(timberStability(buckling, reference, kind));
          const ratio = buckling / reference;
          expect(kind * factor * factor - (1 + ratio) * factor + ratio).toBeCloseTo(0, 6);
          expect(factor).toBeGreaterThan(0);
          expect(factor).toBeLessThanOrEqual(Math.min(1, ratio) + 1e-9);
        },
      ),
      { seed: 659 },
    );
    expect(value(timberBucklingPsi(522_000, 168, 3.5))).toBeLessThan(
      value(timberBucklingPsi(522_000, 120, 3.5)),
    );
  });
});

describe("outside its range a formula gives the range and no figure", () => {
  const beam = { member: "beam-soffit", isLiveGreater: false, shoresUndisturbed: false } as const;
  const sound = { thickness: 150, density: 25, formwork: 0.5 };
  const prop = { class: "B", least: 2000, greatest: 3500, extension: 2400 } as const;
  const sides = (of: (bad: number) => Answer<unknown>, least: number, greatest: number) => ({
    of,
    least,
    greatest,
  });
  it.each([
    { why: "a slab", ...sides((bad) => en12812SlabLoad({ ...sound, thickness: bad }), 20, 2000) },
    { why: "a concrete", ...sides((bad) => aci347SlabLoad({ ...sound, density: bad }, true), 8, 40) },
    { why: "a form", ...sides((bad) => en12812SlabLoad({ ...sound, formwork: bad }), 0, 5) },
    { why: "a self-weight", ...sides(en12812Heaping, 0, 80) },
    {
      why: "a slab in inches",
      ...sides(
        (bad) => aci347SlabLoadPsf({ thicknessInches: bad, densityPcf: 150, formworkPsf: 5 }, false),
        1,
        80,
      ),
    },
    { why: "a spacing in inches", ...sides((bad) => gridLoadPounds(100, bad, 48), 0.1, 400) },
    { why: "a prop spacing", ...sides((bad) => tributaryArea(bad, 1000, "edge"), 1, 10_000) },
    { why: "a carried area", ...sides((bad) => propLoad(5, bad, 1), 0, 100) },
    { why: "a continuity", ...sides((bad) => propLoad(5, 1, bad), 1, 1.5) },
    { why: "an extension", ...sides((bad) => en1065Strength({ ...prop, extension: bad }), 2000, 3500) },
    {
      why: "a length of class A",
      ...sides((bad) => en1065Strength({ class: "A", least: 1, greatest: bad, extension: bad }), 2500, 4000),
    },
    {
      why: "a length of class D, whose strength is the same at any",
      ...sides((bad) => en1065Strength({ class: "D", least: 1, greatest: bad, extension: bad }), 2500, 5500),
    },
    { why: "a strength", ...sides((bad) => propLimit(bad, "design"), 0, 1000) },
    { why: "a vertical load", ...sides(en12812Horizontal, 0, 1e6) },
    { why: "a slenderness", ...sides((bad) => timberBucklingPsi(500_000, bad, 1), 1, 50) },
    { why: "a kind of timber", ...sides((bad) => timberStability(200, 1600, bad), 0.8, 0.9) },
    { why: "a span in the table of IS 456", ...sides((bad) => is456Striking("slab-props", bad), 1, 30_000) },
    {
      why: "a span in the table of ACI 347",
      ...sides((bad) => aci347Striking({ ...beam, span: bad }), 1, 30_000),
    },
  ])("$why", ({ of, least, greatest }) => {
    for (const fine of [least, greatest]) expect(of(fine).status).toBe("computed");
    const hair = 1e-6;
    for (const bad of [least - hair, greatest * (1 + hair), Number.NaN, Number.POSITIVE_INFINITY, -1e9]) {
      expect(of(bad)).toMatchObject({ status: "refused", least, greatest, value: bad });
    }
  });
});
