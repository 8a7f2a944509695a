// Flatness and deflection as published.

import { describe, expect, it } from "vitest";
import { deflectionLimit } from "../../src/check/deflectionLimit.ts";
import { din18202Flatness, type FlatnessLine } from "../../src/check/din18202Flatness.ts";
import { value } from "../support/answers.ts";

describe("DIN 18202, table 3, as a trade handbook prints it (deploy.doczz.net/doc/5839552)", () => {
  // 0.1, 1, 4, 10, 15 m as printed; 2 and 3 m as interpolated there.
  it.each<{ line: FlatnessLine; limits: readonly number[] }>([
    { line: 5, limits: [5, 10, 15, 25, 30, 12, 13] },
    { line: 6, limits: [3, 5, 10, 20, 25, 7, 8] },
    { line: 7, limits: [2, 3, 8, 15, 20, 5, 6] },
  ])("line $line", ({ line, limits }) => {
    [100, 1000, 4000, 10_000, 15_000, 2000, 3000].forEach((distance, k) => {
      expect(value(din18202Flatness(line, distance))).toBe(limits[k]);
    });
  });

  it.each([99, 15_001, Number.NaN])("has no line for %d mm", (distance) => {
    expect(din18202Flatness(5, distance)).toMatchObject({ status: "refused", least: 100, greatest: 15_000 });
  });
});

it("T45: 1.2 m bend 4.4 mm at most by L/270 (CSA S269.3, 6.3.5, at fwhb.ca)", () => {
  expect(Math.abs(value(deflectionLimit(1200, 270)) - 4.4)).toBeLessThan(0.1);
  expect(deflectionLimit(0, 270)).toMatchObject({ status: "refused" });
});
