// The inverse of summing up a log, and of the tests of a mix: there and back gives what was asked for.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hourReached } from "../../src/check/hourReached.ts";
import { equivalentAge, type Interval, intervalsUpTo, nurseSaul } from "../../src/check/maturity.ts";
import { type StrengthTest, testedMaturity, testedStrength } from "../../src/check/strengthTests.ts";
import { value } from "../support/answers.ts";

const step = fc.tuple(
  fc.double({ min: 0.25, max: 12, noNaN: true }),
  fc.double({ min: 1, max: 60, noNaN: true }),
);
const logs = fc.array(step, { minLength: 2, maxLength: 12 }).map((steps) => {
  let hour = 0;
  return steps.map(([hours, temperature]) => {
    hour += hours;
    return [hour, temperature] as const;
  });
});

describe.each([
  ["maturity", (given: readonly Interval[]) => nurseSaul(given, 0)],
  ["equivalent age", (given: readonly Interval[]) => equivalentAge(given, "variable")],
])("the hour of a %s", (_name, measure) => {
  it("is the hour up to which the log sums up to it", () => {
    fc.assert(
      fc.property(logs, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (log, part) => {
        const end = log[log.length - 1]![0];
        const needed = part * value(measure(intervalsUpTo(log, end)!));
        const reached = value(hourReached(log, needed, measure))!;
        expect(reached.isLogged).toBe(true);
        const then = value(measure(intervalsUpTo(log, reached.hour)!));
        expect(Math.abs(then - needed)).toBeLessThan(1e-6 * (1 + needed));
      }),
      { seed: 743 },
    );
  });

  it("comes later where more is needed, past the end of the log too", () => {
    fc.assert(
      fc.property(logs, fc.double({ min: 0.1, max: 3, noNaN: true }), (log, part) => {
        const whole = value(measure(intervalsUpTo(log, log[log.length - 1]![0])!));
        const at = (needed: number) => value(hourReached(log, needed, measure))!.hour;
        expect(at(part * whole * 1.1)).toBeGreaterThan(at(part * whole));
      }),
      { seed: 744 },
    );
  });
});

it("there is no hour without a log, and none is needed for nothing", () => {
  const measure = (given: readonly Interval[]) => nurseSaul(given, 0);
  expect(value(hourReached([], 10, measure))).toBeNull();
  expect(value(hourReached([[3, 20]], 0, measure))).toEqual({ hour: 0, isLogged: true });
});

describe("tests of a mix", () => {
  const TESTS: readonly StrengthTest[] = [
    [200, 4],
    [400, 11],
    [900, 20],
  ];

  it.each([
    { maturity: 200, strength: 4 },
    { maturity: 300, strength: 7.5 },
    { maturity: 400, strength: 11 },
    { maturity: 650, strength: 15.5 },
    { maturity: 900, strength: 20 },
  ])("$maturity °C·h is $strength MPa, and back", ({ maturity, strength }) => {
    expect(value(testedStrength(maturity, TESTS))).toBeCloseTo(strength, 9);
    expect(value(testedMaturity(strength, TESTS))).toBeCloseTo(maturity, 9);
  });

  it.each([199, 901, -1, Number.NaN])("nothing is said at %d °C·h, outside the tests", (maturity) => {
    expect(testedStrength(maturity, TESTS)).toMatchObject({ status: "refused", least: 200, greatest: 900 });
  });

  it("nothing is said where there are no tests", () => {
    expect(testedStrength(300, []).status).toBe("refused");
  });
});
