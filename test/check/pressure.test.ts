// What must hold of the pressure methods whatever the figures: inverse and forward agree, monotone, continuous where the
// standard is, refused outside the range.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aci347Weight, aci347WeightPcf, type Cement } from "../../src/check/aci347Coefficients.ts";
import { type Aci347Input, aci347Pressure, aci347Rate } from "../../src/check/aci347Pressure.ts";
import { aci347PressurePsf } from "../../src/check/aci347PressurePsf.ts";
import { type CiriaInput, ciria108, ciria108Rate } from "../../src/check/ciria108.ts";
import { type Consistence, type DinInput, din18218, din18218Rate } from "../../src/check/din18218.ts";
import { envelopeOf, pressureAt, thrustBetween, wallThrust } from "../../src/check/envelope.ts";
import { hydrostatic } from "../../src/check/hydrostatic.ts";
import type { Answer } from "../../src/check/range.ts";
import type { RateLimit } from "../../src/check/rateLimit.ts";
import { value } from "../support/answers.ts";

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const cement = fc.constantFrom<Cement>("portland", "blend", "slow-blend");
const shared = { density: double(20, 28), height: double(500, 9000), cement, isRetarded: fc.boolean() };

interface Method {
  readonly arbitrary: fc.Arbitrary<{ readonly rate: number }>;
  readonly pressure: (given: object, rate: number) => number;
  readonly rate: (given: object, allowable: number) => RateLimit;
}

function method<I extends { readonly rate: number }>(
  arbitrary: fc.Arbitrary<I>,
  forward: (input: I) => Answer<{ readonly greatest: number }>,
  inverse: (input: I, allowable: number) => Answer<RateLimit>,
): Method {
  return {
    arbitrary,
    pressure: (given, rate) => value(forward({ ...(given as I), rate })).greatest,
    rate: (given, allowable) => value(inverse(given as I, allowable)),
  };
}

const enveloped = <V extends { readonly envelope: { readonly greatest: number } }>(answer: Answer<V>) =>
  answer.status === "refused" ? answer : ({ status: "computed", value: answer.value.envelope } as const);

const METHODS: Readonly<Record<string, Method>> = {
  "ACI 347": method<Aci347Input>(
    fc.record({
      ...shared,
      temperature: double(5, 32),
      rate: double(0.05, 6),
      slump: fc.constant(100),
      vibrationDepth: fc.constant(1000),
      isColumn: fc.boolean(),
    }),
    (input) => enveloped(aci347Pressure(input)),
    aci347Rate,
  ),
  "CIRIA 108": method<CiriaInput>(
    fc
      .record({ ...shared, temperature: double(5, 35), rate: double(0.05, 12), isColumn: fc.boolean() })
      .map((input) => ({ ...input, formHeight: input.height })),
    (input) => enveloped(ciria108(input)),
    ciria108Rate,
  ),
  "DIN 18218": method<DinInput>(
    fc.record({
      density: double(20, 28),
      height: double(500, 9000),
      rate: double(0.05, 7),
      consistence: fc.constantFrom<Consistence>("F1", "F2", "F3", "F4", "F5", "F6", "SCC"),
      settingEnd: double(5, 20),
    }),
    din18218,
    din18218Rate,
  ),
};

describe.each(Object.entries(METHODS))("%s", (_name, { arbitrary, pressure, rate }) => {
  it("presses no less the faster it is placed, and never more than full head", () => {
    fc.assert(
      fc.property(arbitrary, double(0.05, 7), (given, other) => {
        const [slow, fast] = [Math.min(given.rate, other), Math.max(given.rate, other)];
        const { density, height } = given as unknown as { density: number; height: number };
        expect(pressure(given, fast)).toBeGreaterThanOrEqual(pressure(given, slow) - 1e-9);
        expect(pressure(given, fast)).toBeLessThanOrEqual(value(hydrostatic(density, height)).greatest);
      }),
      { seed: 711 },
    );
  });

  it("gives the rate back from the pressure, or a rate that presses no more than allowed", () => {
    fc.assert(
      fc.property(arbitrary, double(5, 200), (given, allowable) => {
        const limit = rate(given, allowable);
        if (limit.kind === "any") expect(pressure(given, 7)).toBeLessThanOrEqual(allowable + 1e-9);
        if (limit.kind === "upTo" && limit.rate >= 0.01) {
          expect(pressure(given, limit.rate)).toBeLessThanOrEqual(allowable * (1 + 1e-9) + 1e-9);
          if (limit.rate < 6.9)
            expect(pressure(given, limit.rate * 1.0001)).toBeGreaterThan(allowable * (1 - 1e-9));
        }
        if (limit.kind === "none")
          expect(pressure(given, 0.01)).toBeGreaterThan(allowable * (1 - 1e-9) - 0.5);
        const back = rate(given, pressure(given, given.rate));
        // Under a floor or at full head many rates press alike; the greatest of them comes back.
        if (back.kind === "upTo") expect(back.rate).toBeGreaterThanOrEqual(given.rate * (1 - 1e-6));
      }),
      { seed: 712, numRuns: 300 },
    );
  });

  it("presses no less the higher the placing is", () => {
    fc.assert(
      fc.property(arbitrary, double(500, 9000), (given, other) => {
        const { height } = given as unknown as { height: number };
        const at = (each: number) => pressure({ ...given, height: each, formHeight: each }, given.rate);
        expect(at(Math.max(height, other))).toBeGreaterThanOrEqual(at(Math.min(height, other)) - 1e-9);
      }),
      { seed: 713 },
    );
  });
});

describe.each(["ACI 347", "CIRIA 108"])("%s", (name) => {
  it("presses no more the warmer the concrete is", () => {
    const { arbitrary, pressure } = METHODS[name]!;
    fc.assert(
      fc.property(arbitrary, double(5, 32), double(5, 32), (given, a, b) => {
        const at = (temperature: number) => pressure({ ...given, temperature }, given.rate);
        expect(at(Math.max(a, b))).toBeLessThanOrEqual(at(Math.min(a, b)) + 1e-9);
      }),
      { seed: 714 },
    );
  });
});

const psf = {
  densityPcf: 150,
  heightFeet: 14,
  temperatureF: 60,
  cement: "portland",
  isRetarded: false,
  slumpInches: 4,
  vibrationFeet: 4,
  isColumn: false,
} as const;

describe("continuity", () => {
  it("ACI 347 in inches has no step where its first equation hands over to its second", () => {
    for (const temperatureF of [40, 55, 70, 90]) {
      const at = (rateFeet: number) =>
        value(aci347PressurePsf({ ...psf, temperatureF, rateFeet })).greatestPsf;
      expect(at(7) - at(7 - 1e-9)).toBeCloseTo(0, 5);
    }
  });

  it("ACI 347 in metres has the step its rounded figures make: 1 % at 20 °C", () => {
    const input: Aci347Input = { ...(METRIC as Aci347Input) };
    const at = (rate: number) => value(aci347Pressure({ ...input, rate })).envelope.greatest;
    const step = at(2.1) / at(2.1 - 1e-9) - 1;
    expect(step).toBeGreaterThan(0.008);
    expect(step).toBeLessThan(0.012);
  });

  it("the two forms of ACI 347 tell the same concrete alike to 5 %", () => {
    for (const rate of [0.5, 1, 2, 3, 4]) {
      const metric = value(aci347Pressure({ ...METRIC, rate })).envelope.greatest;
      const inch = value(
        aci347PressurePsf({
          ...psf,
          heightFeet: 4 / 0.3048,
          temperatureF: 68,
          rateFeet: rate / 0.3048,
        }),
      ).greatestPsf;
      expect(Math.abs((inch * 0.0478803) / metric - 1)).toBeLessThan(0.05);
    }
  });

  it("CIRIA 108 has no step where the whole placing becomes liquid", () => {
    const at = (rate: number) =>
      value(ciria108({ ...METRIC, formHeight: 2000, height: 2000, rate })).envelope.greatest;
    expect(at(4) - at(4 + 1e-9)).toBeCloseTo(0, 6);
  });

  it("DIN 18218 has no step at its floor", () => {
    const at = (rate: number) =>
      value(din18218({ density: 25, height: 5000, rate, consistence: "F1", settingEnd: 5 })).greatest;
    expect(at(0.8 + 1e-9) - at(0.8 - 1e-9)).toBeCloseTo(0, 6);
  });

  it("only C_w steps, where the guide has it step", () => {
    expect(aci347Weight(2320)).toBe(1);
    expect([aci347Weight(800), aci347Weight(1800)]).toEqual([0.8, (1 + 1800 / 2320) / 2]);
    expect([aci347Weight(2240), aci347Weight(2400)]).toEqual([1, 1]);
    expect(aci347Weight(2900)).toBe(1.25);
    expect([aci347WeightPcf(139), aci347WeightPcf(145), aci347WeightPcf(174)]).toEqual([
      (1 + 139 / 145) / 2,
      1,
      1.2,
    ]);
  });
});

const METRIC = {
  density: 23.5,
  height: 4000,
  temperature: 20,
  rate: 2,
  cement: "portland",
  isRetarded: false,
  slump: 100,
  vibrationDepth: 1000,
  isColumn: false,
} as const;

describe("the envelope", () => {
  it("adds up: thrust of the parts is the area under the pressure, whatever the cut", () => {
    fc.assert(
      fc.property(
        double(8, 40),
        double(100, 9000),
        double(5, 200),
        double(0, 1),
        (density, height, limit, cut) => {
          const envelope = envelopeOf(density, height, limit);
          const { flat, hydrostatic: head, flatLever, hydrostaticLever } = wallThrust(envelope);
          const whole = thrustBetween(envelope, 0, height);
          expect(flat + head).toBeCloseTo(whole, 6);
          const at = cut * height;
          expect(thrustBetween(envelope, 0, at) + thrustBetween(envelope, at, height)).toBeCloseTo(whole, 6);
          // Moment about the foot by a thousand strips.
          let moment = 0;
          for (let k = 0; k < 1000; k++) {
            const depth = ((k + 0.5) / 1000) * height;
            moment += ((pressureAt(envelope, depth) * height) / 1e6) * ((height - depth) / 1000);
          }
          expect(Math.abs(flat * flatLever + head * hydrostaticLever - moment)).toBeLessThan(
            0.002 * moment + 1e-6,
          );
        },
      ),
      { seed: 715 },
    );
  });

  it("presses with nothing above the surface", () => {
    expect(pressureAt(envelopeOf(25, 2500), -1)).toBe(0);
  });
});

describe("outside its range a method gives the range and no figure", () => {
  const aci = (change: Partial<Aci347Input>) => aci347Pressure({ ...METRIC, ...change });
  const ciria = (change: Partial<CiriaInput>) => ciria108({ ...METRIC, formHeight: 4000, ...change });
  const din = (change: Partial<DinInput>) =>
    din18218({ density: 25, height: 4000, rate: 2, consistence: "F3", settingEnd: 5, ...change });
  it.each<{ why: string; of: (bad: number) => Answer<unknown>; least: number; greatest: number }>([
    { why: "ACI 347, temperature", of: (bad) => aci({ temperature: bad }), least: 5, greatest: 32 },
    { why: "ACI 347, rate", of: (bad) => aci({ rate: bad }), least: 0.01, greatest: 50 },
    { why: "ACI 347, height", of: (bad) => aci({ height: bad }), least: 50, greatest: 10_000 },
    { why: "ACI 347, slump", of: (bad) => aci({ slump: bad }), least: 0, greatest: 300 },
    { why: "ACI 347, inverse", of: (bad) => aci347Rate(METRIC, bad), least: 1, greatest: 500 },
    { why: "CIRIA 108, temperature", of: (bad) => ciria({ temperature: bad }), least: 5, greatest: 35 },
    { why: "CIRIA 108, rate", of: (bad) => ciria({ rate: bad }), least: 0.01, greatest: 50 },
    { why: "CIRIA 108, form", of: (bad) => ciria({ formHeight: bad }), least: 4000, greatest: 10_000 },
    { why: "DIN 18218, rate", of: (bad) => din({ rate: bad }), least: 0.01, greatest: 7 },
    { why: "DIN 18218, setting", of: (bad) => din({ settingEnd: bad }), least: 5, greatest: 20 },
    { why: "full head, density", of: (bad) => hydrostatic(bad, 2500), least: 8, greatest: 40 },
    {
      why: "ACI 347 in feet, temperature",
      of: (bad) => aci347PressurePsf({ ...psf, rateFeet: 3, temperatureF: bad }),
      least: 40,
      greatest: 90,
    },
  ])("$why", ({ of, least, greatest }) => {
    for (const fine of [least, greatest]) expect(of(fine).status).toBe("computed");
    for (const bad of [least - 1e-6, greatest * (1 + 1e-6), Number.NaN, -1e9])
      expect(of(bad)).toMatchObject({ status: "refused", least, greatest, value: bad });
  });
});
