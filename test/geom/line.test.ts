import fc from "fast-check";
import { expect, it } from "vitest";
import {
  alongLine,
  asideOfLine,
  intersectLines,
  lineThrough,
  offsetLine,
  pointAt,
} from "../../src/geom/line.ts";
import { compareDirections, type Point } from "../../src/geom/point.ts";

it("gives back the coordinates of lines along the axes", () => {
  const across = lineThrough([0.1, 0.3], [1e6, 0.3]);
  const upright = lineThrough([0.7, -5], [0.7, -9]);
  expect(intersectLines(across, upright)).toEqual([0.7, 0.3]);
  expect(intersectLines(upright, across)).toEqual([0.7, 0.3]);
});

it("finds no crossing of parallel lines", () => {
  const line = lineThrough([3, 1], [6, 5]);
  expect(intersectLines(line, offsetLine(line, 100))).toBeNull();
});

it("needs two points", () => {
  expect(() => lineThrough([1, 2], [1, 2])).toThrow(RangeError);
});

it("puts a crossing on both lines", () => {
  const point = fc.tuple(fc.integer({ min: -50000, max: 50000 }), fc.integer({ min: -50000, max: 50000 }));
  fc.assert(
    fc.property(point, point, point, point, (a, b, c, d) => {
      const sine = (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0]);
      fc.pre(
        Math.abs(sine) > 0.05 * Math.hypot(b[0] - a[0], b[1] - a[1]) * Math.hypot(d[0] - c[0], d[1] - c[1]),
      );
      const [p, q] = [lineThrough(a, b), lineThrough(c, d)];
      const crossing = intersectLines(p, q)!;
      expect(Math.abs(asideOfLine(p, crossing))).toBeLessThan(1e-6);
      expect(Math.abs(asideOfLine(q, crossing))).toBeLessThan(1e-6);
    }),
    { seed: 32 },
  );
});

it("measures along and aside of the line what was set off from it", () => {
  const line = lineThrough([10, 20], [40, 60]);
  const point = pointAt(line, 25, -7);
  expect(alongLine(line, point)).toBeCloseTo(25, 10);
  expect(asideOfLine(line, point)).toBeCloseTo(-7, 10);
  // Left of a line to the upper right lies towards the upper left: (10, 20) + 5 × (−0.8, 0.6).
  expect(pointAt(line, 0, 5)[0]).toBeCloseTo(6, 10);
  expect(pointAt(line, 0, 5)[1]).toBeCloseTo(23, 10);
});

it("sorts directions counter-clockwise from the x axis", () => {
  const round: Point[] = [
    [2, 0],
    [5, 1],
    [0, 3],
    [-1, 1],
    [-4, 0],
    [-1, -8],
    [0, -1],
    [9, -1],
  ];
  const mixed = [5, 2, 7, 0, 3, 6, 1, 4].map((i) => round[i]!);
  expect(mixed.sort(compareDirections)).toEqual(round);
});
