// Points and directions of the plan: x right, y up, counter-clockwise positive.

/** A place, mm. */
export type Point = readonly [x: number, y: number];

/** z part of the cross product of two directions: positive where `b` turns left of `a`. */
export function cross(ax: number, ay: number, bx: number, by: number): number {
  return ax * by - ay * bx;
}

/** Distance between two points. */
export function distance(a: Point, b: Point): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  return Math.sqrt(dx * dx + dy * dy);
}

/** Whether two points lie within `reach` of each other, the reach itself included. */
export function isNear(a: Point, b: Point, reach: number): boolean {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  return dx * dx + dy * dy <= reach * reach;
}

/** Order by x, then by y. */
export function comparePoints(a: Point, b: Point): number {
  return a[0] - b[0] || a[1] - b[1];
}

/**
 * Order of directions counter-clockwise from the positive x axis, found without an angle: first the half plane,
 * then the side. Directions need not be of unit length; the zero direction has no place in the order.
 */
export function compareDirections(a: Point, b: Point): number {
  const half = halfPlane(a) - halfPlane(b);
  if (half !== 0) return half;
  const turn = cross(a[0], a[1], b[0], b[1]);
  return turn > 0 ? -1 : turn < 0 ? 1 : 0;
}

function halfPlane(direction: Point): 0 | 1 {
  return direction[1] > 0 || (direction[1] === 0 && direction[0] > 0) ? 0 : 1;
}
