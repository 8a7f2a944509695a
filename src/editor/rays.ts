// Looking from a place in a direction: which wall face comes first, and how far off it is.

import { alongLine, intersectLines, type Line } from "../geom/line.ts";
import { cross } from "../geom/point.ts";
import { listed, type UnitDocument } from "../plan/document.ts";
import { bodySpan, tidyPosition, wallLength, wallLine } from "../plan/editAxis.ts";
import type { Position, Wall } from "../plan/project.ts";
import type { Mm } from "../units.ts";

/** A ray: (ux, uy) has length 1. */
export interface Ray {
  readonly from: Position;
  readonly ux: number;
  readonly uy: number;
}

export interface SeenFace {
  readonly wall: Wall;
  readonly at: Position;
  readonly distance: Mm;
}

const ON_FACE = 0.5; // mm a face may lie behind the start and still be the face the start stands on

/** The nearest face before a ray, or null. Openings hide nothing: a room goes on behind no door. */
export function faceBeyond(unit: UnitDocument, ray: Ray, except: string | null): SeenFace | null {
  const sight: Line = { x: ray.from[0], y: ray.from[1], ux: ray.ux, uy: ray.uy };
  let best: SeenFace | null = null;
  for (const wall of listed(unit.walls)) {
    if (wall.id === except) continue;
    const distance = distanceAlong(sight, wall);
    if (distance === null || (best !== null && distance >= best.distance)) continue;
    const at = tidyPosition([ray.from[0] + ray.ux * distance, ray.from[1] + ray.uy * distance]);
    best = { wall, at, distance };
  }
  return best;
}

// How far along the ray the near side of a wall's body is met. Bodies are carried on by half their thickness, as they
// are at a corner.
function distanceAlong(sight: Line, wall: Wall): Mm | null {
  const line = wallLine(wall);
  const crossing = intersectLines(sight, line);
  if (crossing === null) return null;
  const place = alongLine(line, crossing);
  const beyond = wall.thickness / 2;
  if (place < -beyond || place > wallLength(wall) + beyond) return null;
  const sine = cross(line.ux, line.uy, sight.ux, sight.uy);
  const [right, left] = bodySpan(wall);
  // Seen from the right of the wall the right side is the near one.
  const distance = alongLine(sight, crossing) + (sine > 0 ? right / sine : left / sine);
  return distance < -ON_FACE ? null : Math.max(0, distance);
}
