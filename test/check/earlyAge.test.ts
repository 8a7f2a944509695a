// What must hold of maturity and strength gain whatever the figures.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Bs8110Member, bs8110Striking } from "../../src/check/bs8110Striking.ts";
import {
  equivalentAge,
  eurocodeAge,
  type Interval,
  intervalsUpTo,
  nurseSaul,
  sadgroveAge,
} from "../../src/check/maturity.ts";
import { aci209Gain, eurocodeAgeFor, eurocodeGain, plowmanGain } from "../../src/check/strengthGain.ts";
import { ciria136Strength, proppedSlab } from "../../src/check/strikingStrength.ts";
import { value } from "../support/answers.ts";

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const cement = fc.constantFrom("S", "N", "R" as const);

describe.each([
  ["Nurse-Saul", (given: readonly Interval[]) => value(nurseSaul(given, 0))],
  ["equivalent age", (given: readonly Interval[]) => value(equivalentAge(given, "constant"))],
  ["equivalent age in the cold", (given: readonly Interval[]) => value(equivalentAge(given, "variable"))],
  ["Eurocode 2", (given: readonly Interval[]) => value(eurocodeAge(given))],
  ["Sadgrove", (given: readonly Interval[]) => value(sadgroveAge(given))],
])("%s", (_name, of) => {
  it("never goes down with time or temperature, and adds up over intervals", () => {
    fc.assert(
      fc.property(double(0, 60), double(0, 60), double(0, 100), double(0, 100), (a, b, h, k) => {
        const [cold, warm] = [Math.min(a, b), Math.max(a, b)];
        const at = (hours: number, temperature: number) => of([{ hours, temperature }]);
        expect(at(h, warm)).toBeGreaterThanOrEqual(at(h, cold) - 1e-9);
        const both = of([
          { hours: h, temperature: a },
          { hours: k, temperature: b },
        ]);
        expect(Math.abs(both - at(h, a) - at(k, b))).toBeLessThan(1e-9 * (1 + both));
      }),
      { seed: 741 },
    );
  });
});

it("the equivalent ages are the hours themselves at 20 °C, and the two energies meet there", () => {
  const at = (temperature: number) => [{ hours: 24, temperature }];
  expect(value(equivalentAge(at(20), "constant"))).toBe(24);
  expect(value(sadgroveAge(at(20)))).toBe(24);
  expect(value(eurocodeAge(at(20)))).toBeCloseTo(24, 1);
  const under = value(equivalentAge(at(20 - 1e-7), "variable"));
  expect(under).toBeCloseTo(24, 6);
});

describe("a log", () => {
  const log = [
    [2, 20],
    [6, 30],
    [12, 24],
  ] as const;

  it("is cut at the hour asked for, its means on the straight line between readings", () => {
    expect(intervalsUpTo(log, 9)).toEqual([
      { hours: 2, temperature: 20 },
      { hours: 4, temperature: 25 },
      { hours: 3, temperature: 28.5 },
    ]);
    expect(intervalsUpTo(log, 1)).toEqual([{ hours: 1, temperature: 20 }]);
    expect(intervalsUpTo(log, 12)?.reduce((sum, { hours }) => sum + hours, 0)).toBe(12);
  });

  it("that ends too early, or is empty, gives nothing", () => {
    expect(intervalsUpTo(log, 12.1)).toBeNull();
    expect(intervalsUpTo([], 1)).toBeNull();
  });
});

describe("strength gain", () => {
  it("grows with age, and the age for a part is the inverse", () => {
    fc.assert(
      fc.property(double(0.25, 365), double(0.25, 365), double(0.3, 1), cement, (a, b, part, kind) => {
        const [young, old] = [Math.min(a, b), Math.max(a, b)];
        const of = (days: number) => value(eurocodeGain(days, kind as "S"));
        expect(of(old)).toBeGreaterThanOrEqual(of(young) - 1e-14); // the last bits of a power
        expect(value(aci209Gain(old, "I"))).toBeGreaterThanOrEqual(value(aci209Gain(young, "I")) - 1e-14);
        expect(of(value(eurocodeAgeFor(part, kind as "S")))).toBeCloseTo(part, 9);
      }),
      { seed: 742 },
    );
  });

  it("gives the load back from the strength: w/w_s = (f_c/f_cu)^0.6", () => {
    fc.assert(
      fc.property(double(0.5, 10), double(10, 60), (load, strength) => {
        const needed = value(ciria136Strength(strength, load, 10));
        expect(10 * (needed / strength) ** 0.6).toBeCloseTo(load, 9);
      }),
      { seed: 745 },
    );
  });

  it("grows with maturity by Plowman, and the table of BS 8110 is no longer the warmer it is", () => {
    const member = fc.constantFrom<Bs8110Member>(
      "vertical",
      "slab-soffit",
      "slab-props",
      "beam-soffit",
      "beam-props",
    );
    fc.assert(
      fc.property(double(0, 1), double(0, 1), double(5, 69), member, (a, b, strength, of) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const part = (at: number) => value(plowmanGain(1000 + at * 29_000, strength));
        expect(part(high)).toBeGreaterThanOrEqual(part(low) - 1e-12);
        const hours = (at: number) => value(bs8110Striking(of, at * 25));
        expect(hours(high)).toBeLessThanOrEqual(hours(low));
      }),
      { seed: 746 },
    );
  });

  it("needs more the more is on the slab, and never less for a weaker design", () => {
    fc.assert(
      fc.property(double(1, 10), double(1, 10), (a, b) => {
        const of = (load: number) => value(ciria136Strength(30, load, 10));
        expect(of(Math.max(a, b))).toBeGreaterThanOrEqual(of(Math.min(a, b)));
      }),
      { seed: 743 },
    );
  });
});

it.each([
  { why: "a surface of 26 °C", answer: bs8110Striking("vertical", 26), greatest: 25 },
  { why: "frost", answer: equivalentAge([{ hours: 1, temperature: -1 }], "constant"), greatest: 60 },
  { why: "a datum of −20 °C", answer: nurseSaul([], -20), greatest: 5 },
  { why: "an age of an hour", answer: eurocodeGain(1 / 24, "N"), greatest: 365 },
  { why: "a maturity of a day", answer: plowmanGain(500, 30), greatest: 30_000 },
  { why: "a strength Plowman has no class for", answer: plowmanGain(5000, 70), greatest: 69.9 },
  { why: "a slab of nothing", answer: proppedSlab(4.5, 1200, 0), greatest: 2000 },
])("$why is refused with the range", ({ answer, greatest }) => {
  expect(answer).toMatchObject({ status: "refused", greatest });
});
