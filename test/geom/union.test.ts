import { expect, it } from "vitest";
import type { Point } from "../../src/geom/point.ts";
import { beginRing, leastCorner, type Ring, ringArea } from "../../src/geom/ring.ts";
import { loadUnion } from "../../src/geom/union.ts";

const union = await loadUnion();

function box(x1: number, y1: number, x2: number, y2: number): Ring {
  return [
    [x1, y1],
    [x2, y1],
    [x2, y2],
    [x1, y2],
  ];
}

/** The rings of the union, each begun at its least corner, by area. */
function united(...rings: Ring[]): Ring[] {
  return union(rings)
    .map((ring) => beginRing(ring, leastCorner(ring)))
    .sort((a, b) => ringArea(b) - ringArea(a));
}

it.each<{ why: string; rings: Ring[]; outline: Ring[] }>([
  {
    why: "pieces that overlap are one",
    rings: [box(0, 0, 100, 100), box(50, 0, 200, 100)],
    outline: [box(0, 0, 200, 100)],
  },
  {
    why: "a gap of 2 mm is closed",
    rings: [box(0, 0, 100, 100), box(102, 0, 200, 100)],
    outline: [box(0, 0, 200, 100)],
  },
  {
    why: "a gap of 3 mm is not",
    rings: [box(0, 0, 100, 100), box(103, 0, 200, 101)],
    outline: [box(0, 0, 100, 100), box(103, 0, 200, 101)].sort((a, b) => ringArea(b) - ringArea(a)),
  },
  {
    why: "a hole runs clockwise",
    rings: [box(0, 0, 90, 10), box(80, 0, 90, 90), box(0, 80, 90, 90), box(0, 0, 10, 90)],
    outline: [
      box(0, 0, 90, 90),
      [
        [10, 10],
        [10, 80],
        [80, 80],
        [80, 10],
      ],
    ],
  },
  {
    why: "a clockwise ring takes away",
    rings: [box(0, 0, 100, 100), [...box(60, 50, 100, 100)].reverse()],
    outline: [
      [
        [0, 0],
        [100, 0],
        [100, 50],
        [60, 50],
        [60, 100],
        [0, 100],
      ],
    ],
  },
  {
    why: "a clockwise ring in the open counts for nothing",
    rings: [box(0, 0, 100, 100), [...box(500, 0, 600, 100)].reverse()],
    outline: [box(0, 0, 100, 100)],
  },
  { why: "nothing gives nothing", rings: [], outline: [] },
  { why: "slivers are dropped", rings: [box(0, 0, 0.5, 1.5)], outline: [] },
])("$why", ({ rings, outline }) => {
  expect(united(...rings)).toEqual(outline);
});

it("keeps the corners of turned pieces within 0.001 mm", () => {
  const turn = ([x, y]: Point): Point => [0.8 * x - 0.6 * y + 12345.6789, 0.6 * x + 0.8 * y - 9876.54321];
  const cross = [box(-500, -50, 500, 50), box(-50, -500, 50, 500)];
  const turned = union(cross.map((ring) => ring.map(turn)));
  const corners = union(cross).flat().map(turn);
  expect(turned.flat()).toHaveLength(12);
  for (const [x, y] of turned.flat()) {
    expect(Math.min(...corners.map(([cx, cy]) => Math.hypot(cx - x, cy - y)))).toBeLessThan(1e-3);
  }
});

it("keeps acute inside corners sharp", () => {
  // Two strips that meet at about 6°: the inside corner between them lies 1000 from the tip.
  const strips: Ring[] = [
    [
      [0, 0],
      [3000, 0],
      [3000, 100],
      [0, 100],
    ],
    [
      [0, 0],
      [3000, 300],
      [3000, 400],
      [0, 100],
    ],
  ];
  const corner = union(strips)
    .flat()
    .filter(([x, y]) => Math.hypot(x - 1000, y - 100) < 0.01);
  expect(corner).toHaveLength(1);
});

it("refuses what is not a number", () => {
  expect(() => union([box(0, 0, Number.NaN, 1)])).toThrow(RangeError);
});
