import { expect, it } from "vitest";
import { isInside, leastCorner, type Ring, ringArea, ringBox } from "../../src/geom/ring.ts";

// An L: a square of 10 less its upper right quarter.
const bent: Ring = [
  [0, 0],
  [10, 0],
  [10, 5],
  [5, 5],
  [5, 10],
  [0, 10],
];

it("measures a ring; clockwise is negative", () => {
  expect(ringArea(bent)).toBe(75);
  expect(ringArea([...bent].reverse())).toBe(-75);
  expect(ringArea([])).toBe(0);
});

it("keeps its digits far from the origin", () => {
  const far = bent.map(([x, y]): [number, number] => [x + 5e8, y - 3e8]);
  expect(ringArea(far)).toBe(75);
});

it.each([
  { why: "in the foot", point: [7, 2], inside: true },
  { why: "in the stem", point: [2, 8], inside: true },
  { why: "in the missing quarter", point: [7, 7], inside: false },
  { why: "left of it, level with a corner", point: [-1, 5], inside: false },
  { why: "right of it, level with an edge", point: [12, 0], inside: false },
])("tells a place $why", ({ point, inside }) => {
  expect(isInside(bent, [point[0]!, point[1]!])).toBe(inside);
  expect(isInside([...bent].reverse(), [point[0]!, point[1]!])).toBe(inside);
});

it("finds the least corner and the box", () => {
  expect(leastCorner([...bent.slice(2), ...bent.slice(0, 2)])).toBe(4);
  expect(ringBox(bent)).toEqual({ minX: 0, minY: 0, maxX: 10, maxY: 10 });
});
