// Closed rings of points, first and last point different: area, direction, and what lies inside.

import { comparePoints, type Point } from "./point.ts";

/** A closed polygon; counter-clockwise encloses a positive area. */
export type Ring = readonly Point[];

/** Area enclosed, mm², negative for a clockwise ring. */
export function ringArea(ring: Ring): number {
  const origin = ring[0];
  if (origin === undefined) return 0;
  let sum = 0;
  // Measured from the ring's own first point: far from the origin of the plan the products would lose digits.
  for (let i = 1; i + 1 < ring.length; i++) {
    const a = ring[i]!;
    const b = ring[i + 1]!;
    sum += (a[0] - origin[0]) * (b[1] - origin[1]) - (a[1] - origin[1]) * (b[0] - origin[0]);
  }
  return sum / 2;
}

/** Position in the ring of its point of least x, then least y; −1 in an empty ring. */
export function leastCorner(ring: Ring): number {
  let least = -1;
  ring.forEach((point, i) => {
    if (least < 0 || comparePoints(point, ring[least]!) < 0) least = i;
  });
  return least;
}

/** The same ring begun at position `first`. */
export function beginRing(ring: Ring, first: number): Ring {
  return [...ring.slice(first), ...ring.slice(0, first)];
}

/** Whether `point` lies inside the ring, whichever way it runs. A point on the ring itself may be told either way. */
export function isInside(ring: Ring, point: Point): boolean {
  let inside = false;
  let a = ring[ring.length - 1];
  for (const b of ring) {
    if (a !== undefined && a[1] > point[1] !== b[1] > point[1]) {
      const x = a[0] + ((point[1] - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
      if (x > point[0]) inside = !inside;
    }
    a = b;
  }
  return inside;
}

/** The rectangle along the axes round a ring. */
export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Bounding box of a ring; an empty ring gives an empty box (min above max). */
export function ringBox(ring: Ring): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of ring) {
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/** Whether the point lies in the box, its edges included. */
export function isInBox(box: Box, [x, y]: Point): boolean {
  return x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY;
}
