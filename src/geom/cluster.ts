// Groups of points that are meant as one.

import { buildGridIndex } from "./gridIndex.ts";
import { isNear, type Point } from "./point.ts";

const CELL = 200; // mm; ends of walls are seldom closer unless they coincide

/**
 * Groups points that lie within `reach` of each other, directly or through others. Gives for each point the position
 * of the first point of its group. The groups do not depend on the order of the points.
 */
export function clusterPoints(points: readonly Point[], reach: number): Int32Array {
  const group = Int32Array.from(points, (_, i) => i);
  const rootOf = (i: number): number => {
    let root = i;
    while (group[root] !== root) root = group[root]!;
    return root;
  };
  const index = buildGridIndex(
    points.map((point) => [point, point]),
    CELL,
  );
  points.forEach((point, i) => {
    for (const j of index.near(point, point, reach)) {
      if (j >= i || !isNear(point, points[j]!, reach)) continue;
      const [a, b] = [rootOf(i), rootOf(j)];
      group[Math.max(a, b)] = Math.min(a, b);
    }
  });
  return group.map((_, i) => rootOf(i));
}
