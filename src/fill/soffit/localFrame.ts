// Axes of a room of its own, so that a room that stands askew in the plan is filled as one that stands square.
//
//   plan y ↑        v  ↖   ↗ u      whole millimetres along u and v
//          └──→ x      (room)

import type { Point } from "../../geom/point.ts";
import type { Ring } from "../../geom/ring.ts";
import type { Position } from "../../plan/project.ts";
import { roundTo } from "../../units.ts";

/** Two axes at right angles and where they cross in the plan. */
export interface LocalFrame {
  readonly toLocal: (point: Position) => Point;
  /** Coordinates to 0.001 mm. */
  readonly toPlan: (point: Point) => Position;
  /** Whether u lies nearer to x than to y. */
  readonly isUAlongX: boolean;
}

const PLAN_AXES: LocalFrame = {
  toLocal: ([x, y]) => [Math.round(x), Math.round(y)],
  toPlan: ([u, v]) => [roundTo(u, 3), roundTo(v, 3)],
  isUAlongX: true,
};

/** Off its axis by less than this over its whole length a wall counts as drawn along it, mm. */
const ASKEW = 2;

/**
 * The plan's own axes where the longest edge of the ring runs along one of them; else axes along that edge, crossing in
 * its first point. Local coordinates are rounded to whole millimetres.
 */
export function frameOf(ring: readonly Position[]): LocalFrame {
  let longest = 0;
  let best: readonly [Position, Position] | null = null;
  for (const [k, from] of ring.entries()) {
    const to = ring[(k + 1) % ring.length]!;
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const square = dx * dx + dy * dy;
    // A hair longer is not longer: of equal edges the first one leads.
    if (square <= longest * (1 + 1e-9)) continue;
    longest = square;
    best = [from, to];
  }
  if (best === null) return PLAN_AXES;
  const [from, to] = best;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  if (Math.abs(dx) < ASKEW || Math.abs(dy) < ASKEW) return PLAN_AXES;
  const length = Math.sqrt(longest);
  const [cos, sin] = [dx / length, dy / length];
  return {
    toLocal: ([x, y]) => {
      const [px, py] = [x - from[0], y - from[1]];
      return [Math.round(px * cos + py * sin), Math.round(py * cos - px * sin)];
    },
    toPlan: ([u, v]) => [roundTo(from[0] + u * cos - v * sin, 3), roundTo(from[1] + u * sin + v * cos, 3)],
    isUAlongX: Math.abs(cos) >= Math.abs(sin),
  };
}

/** The same place with u and v exchanged; done twice it is itself again. */
export function turned([u, v]: Point): Point {
  return [v, u];
}

/** A ring with u and v exchanged, run the other way so that it still encloses the same side. */
export function turnedRing(ring: Ring): Ring {
  return ring.map(turned).reverse();
}
