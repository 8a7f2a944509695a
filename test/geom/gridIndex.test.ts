import fc from "fast-check";
import { expect, it } from "vitest";
import { clusterPoints } from "../../src/geom/cluster.ts";
import { buildGridIndex } from "../../src/geom/gridIndex.ts";
import type { Point } from "../../src/geom/point.ts";

const place = fc.tuple(fc.integer({ min: -900, max: 900 }), fc.integer({ min: -900, max: 900 }));

/** Least distance from a point to a segment, by trying many places on it. */
function distanceTo([px, py]: Point, [a, b]: readonly [Point, Point]): number {
  const tries = Array.from({ length: 201 }, (_, i) => i / 200);
  return Math.min(
    ...tries.map((t) => Math.hypot(a[0] + (b[0] - a[0]) * t - px, a[1] + (b[1] - a[1]) * t - py)),
  );
}

it("misses no segment within reach of any place on the one asked about", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(place, place), { minLength: 1, maxLength: 12 }),
      fc.tuple(place, place),
      fc.integer({ min: 0, max: 120 }),
      (segments, asked, reach) => {
        const found = buildGridIndex(segments, 100).near(asked[0], asked[1], reach);
        const near = segments.flatMap((segment, i) => {
          const places = Array.from({ length: 41 }, (_, k): Point => {
            const t = k / 40;
            return [
              asked[0][0] + (asked[1][0] - asked[0][0]) * t,
              asked[0][1] + (asked[1][1] - asked[0][1]) * t,
            ];
          });
          return places.some((point) => distanceTo(point, segment) <= reach) ? [i] : [];
        });
        expect(found).toEqual(expect.arrayContaining(near));
        expect([...new Set(found)].sort((a, b) => a - b)).toEqual(found);
      },
    ),
    { seed: 51, numRuns: 60 },
  );
});

it("leaves out what lies far off", () => {
  const row = Array.from({ length: 50 }, (_, i): readonly [Point, Point] => [
    [i * 1000, 0],
    [i * 1000 + 500, 300],
  ]);
  expect(buildGridIndex(row, 500).near([20050, 0], [20450, 300], 10)).toEqual([20]);
});

it("groups points in chains within reach, in any order", () => {
  const spots = fc.array(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 60 })), {
    maxLength: 30,
  });
  fc.assert(
    fc.property(spots, fc.integer({ min: 1, max: 6 }), (points, reach) => {
      const group = clusterPoints(points, reach);
      // Label spreading until nothing changes.
      const label = points.map((_, i) => i);
      for (let isChanged = true; isChanged; ) {
        isChanged = false;
        for (const [i, a] of points.entries()) {
          for (const [k, b] of points.entries()) {
            if (Math.hypot(a[0] - b[0], a[1] - b[1]) > reach || label[k]! >= label[i]!) continue;
            label[i] = label[k]!;
            isChanged = true;
          }
        }
      }
      expect([...group]).toEqual(label);
    }),
    { seed: 52 },
  );
});
