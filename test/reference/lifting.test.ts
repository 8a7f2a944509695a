// The lifting equation of NIOSH against its own published constants and rows worked out apart.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Lift, nioshLimit } from "../../src/check/nioshLift.ts";
import { teamLift } from "../../src/check/teamLift.ts";
import { value } from "../support/answers.ts";

const IDEAL: Lift = { reach: 250, height: 750, travel: 250, twist: 0, frequency: 1, coupling: 1 };

describe("the recommended weight", () => {
  it("is 23 kg for the ideal lift (load constant, what-when-how.com ergonomics tutorial)", () => {
    expect(value(nioshLimit(IDEAL))).toBeCloseTo(23, 9);
  });

  // FM 0.85, CM 0.95; the formula worked out apart.
  it.each([
    { why: "from a stack", lift: { reach: 350, height: 400, travel: 500, twist: 0 }, expected: 10.8 },
    {
      why: "to a wall with a twist of 30°",
      lift: { reach: 350, height: 750, travel: 250, twist: 30 },
      expected: 12,
    },
    { why: "overhead", lift: { reach: 300, height: 1750, travel: 950, twist: 0 }, expected: 9.4 },
  ])("$why is $expected kg", ({ lift, expected }) => {
    expect(value(nioshLimit({ ...lift, frequency: 0.85, coupling: 0.95 }))).toBeCloseTo(expected, 1);
  });

  it("never grows with reach, travel or twist, nor with a height farther from the knuckles", () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, part, fc.constantFrom("reach", "travel", "twist", "height"), (a, b, name) => {
        const greatest = { reach: 630, travel: 1750, twist: 135, height: 1000 }[name];
        const from = name === "height" ? 750 : 0;
        const at = (share: number) => value(nioshLimit({ ...IDEAL, [name]: from + share * greatest }));
        expect(at(Math.max(a, b))).toBeLessThanOrEqual(at(Math.min(a, b)) + 1e-12);
      }),
      { seed: 731 },
    );
  });

  it.each([
    { name: "reach", bad: 631, greatest: 630 },
    { name: "height", bad: 1751, greatest: 1750 },
    { name: "travel", bad: -1, greatest: 1750 },
    { name: "twist", bad: 136, greatest: 135 },
  ])("is none for a $name of $bad", ({ name, bad, greatest }) => {
    expect(nioshLimit({ ...IDEAL, [name]: bad })).toMatchObject({ status: "refused", greatest, value: bad });
  });
});

it("two people may lift two thirds of what each may alone (from memory of HSE L23)", () => {
  expect(value(teamLift(25))).toBeCloseTo(33.3333, 4);
  expect(teamLift(0)).toMatchObject({ status: "refused" });
});
