// Distances to paths: points joined by straight stretches.

import { distance, type Point } from "./point.ts";

/** Distance from a point to the nearest place of a path, mm; Infinity to a path without points. */
export function distanceToPath(point: Point, path: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  path.forEach((start, k) => {
    const [dx, dy] = difference(start, path[Math.min(k + 1, path.length - 1)]!);
    const square = dx * dx + dy * dy;
    const along = square === 0 ? 0 : ((point[0] - start[0]) * dx + (point[1] - start[1]) * dy) / square;
    const share = Math.max(0, Math.min(1, along));
    least = Math.min(least, distance(point, [start[0] + dx * share, start[1] + dy * share]));
  });
  return least;
}

function difference(a: Point, b: Point): Point {
  return [b[0] - a[0], b[1] - a[1]];
}
