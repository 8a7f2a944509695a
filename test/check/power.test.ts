// Powers of our own against a table of forty digits, made with a library for arbitrary precision and cut to seventeen.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decimalLogarithm, exponential, logarithm, power } from "../../src/check/power.ts";
import { within } from "../support/tolerance.ts";

// A few units in the fifteenth digit; large exponents carry the rounding of their argument.
const NEAR = 2e-15;

describe("powers", () => {
  it.each([
    [0.0, 1.0],
    [1e-12, 1.000000000001],
    [-1e-12, 0.999999999999],
    [0.3, 1.3498588075760032],
    [-0.3, 0.7408182206817179],
    [0.5, 1.6487212707001282],
    [1.0, Math.E],
    [-1.0, 0.36787944117144233],
    [2.0, 7.38905609893065],
    [5.5, 244.69193226422038],
    [-7.25, 0.000710174388842549],
    [13.65, 847460.9156956177],
    [-13.65, 1.179995421003191e-6],
    [23.0, 9744803446.248903],
    [-40.7, 2.1096702884774952e-18],
    [100.0, 2.6881171418161356e43],
    [-100.0, 3.720075976020836e-44],
    [300.5, 3.202519714603633e130],
    [700.0, 1.0142320547350045e304],
    [-700.0, 9.85967654375977e-305],
  ])("e to the power %d", (x, expected) => {
    expect(exponential(x)).toSatisfy(within(expected, NEAR));
  });

  it.each([
    [1e-300, -690.7755278982137],
    [1e-10, -23.025850929940457],
    [0.05, -2.995732273553991],
    [0.5, -Math.LN2],
    [0.70703125, -0.3466804132137367],
    [0.999999, -1.000000500029089e-6],
    [1.0, 0.0],
    [1.000001, 9.999994999180668e-7],
    [1.4140625, 0.34646676734620857],
    [1.5, 0.4054651081081644],
    [2.0, Math.LN2],
    [Math.E, 1.0],
    [10.0, Math.LN10],
    [19.8, 2.9856819377004897],
    [273.15, 5.610021094841726],
    [1000.0, 6.907755278982137],
    [123456.789, 11.723646487185881],
    [1e300, 690.7755278982137],
  ])("the logarithm of %d", (x, expected) => {
    expect(Math.abs(logarithm(x) - expected)).toBeLessThanOrEqual(NEAR * Math.max(Math.abs(expected), 0.05));
  });

  it.each([
    [0.5, 1.6666666666666667, 0.3149802624737183],
    [0.6, 1.6666666666666667, 0.4268271965388075],
    [0.7, 1.6666666666666667, 0.5518614614173669],
    [0.9, 1.6666666666666667, 0.838952776607542],
    [2.0, 0.5, Math.SQRT2],
    [12.0, 0.3333333333333333, 2.2894284851066637],
    [37.4, 0.25, 2.472964605603619],
    [28.0, -0.5, 0.18898223650461363],
    [1.0, 123.0, 1.0],
    [0.001, 3.3, 1.2589254117941687e-10],
  ])("%d to the power %d", (base, exponent, expected) => {
    expect(power(base, exponent)).toSatisfy(within(expected, 3e-15));
  });

  it("are what they are named for: logarithm and exponential undo each other, and powers add up", () => {
    const positive = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(positive, fc.double({ min: -5, max: 5, noNaN: true }), (x, exponent) => {
        expect(exponential(logarithm(x))).toSatisfy(within(x, 1e-14));
        expect(power(x, exponent) * power(x, 2 - exponent)).toSatisfy(within(x * x, 1e-12));
        expect(decimalLogarithm(10 * x)).toBeCloseTo(1 + decimalLogarithm(x), 13);
      }),
      { seed: 701 },
    );
  });

  it("are none of what has none", () => {
    expect(power(0, 2)).toBe(0);
    expect(power(1, 5)).toBe(1);
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => logarithm(bad)).toThrow(RangeError);
    for (const bad of [701, -701, Number.NaN]) expect(() => exponential(bad)).toThrow(RangeError);
    expect(() => power(-1, 2)).toThrow(RangeError);
  });
});
