import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { roundSignificant } from "../src/units.ts";

describe("six significant digits", () => {
  it.each([
    { why: "a figure that is short already", value: 8.28, comes: 8.28 },
    { why: "more digits", value: 19.428571428571427, comes: 19.4286 },
    { why: "half goes away from zero", value: 1.234565, comes: 1.23457 },
    { why: "below zero as well", value: -1.234565, comes: -1.23457 },
    { why: "truly under the half", value: 1.0000049999, comes: 1 },
    { why: "a half blurred in the sixteenth digit", value: 1.000005 - Number.EPSILON, comes: 1.00001 },
    { why: "nines run over into one digit more", value: 9.9999996, comes: 10 },
    { why: "large", value: 123456789, comes: 123457000 },
    { why: "small", value: 0.000123456789, comes: 0.000123457 },
    { why: "no −0", value: -0, comes: 0 },
    { why: "nothing", value: 0, comes: 0 },
  ])("$why: $value", ({ value, comes }) => {
    expect(Object.is(roundSignificant(value), comes)).toBe(true);
  });

  it("moves a figure by less than half a unit of the sixth digit, and a second time not at all", () => {
    fc.assert(
      fc.property(fc.double({ min: -1e12, max: 1e12, noNaN: true }), (value) => {
        const rounded = roundSignificant(value);
        expect(Math.abs(rounded - value)).toBeLessThanOrEqual(Math.abs(value) * 5.0000001e-6);
        expect(Object.is(roundSignificant(rounded), rounded)).toBe(true);
      }),
      { seed: 651, numRuns: 500 },
    );
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %s", (value) => {
    expect(() => roundSignificant(value)).toThrow(RangeError);
  });
});
