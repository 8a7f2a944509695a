// The pin that says a sequence on a stretch: measured along the drawn line of one of the walls there.

import type { Pinned, Unit } from "../plan/project.ts";
import { type Mm, roundTo } from "../units.ts";
import type { FilledUnit } from "./fillWalls.ts";
import { placeOf, roundHalfUp } from "./lines.ts";
import type { Stretch } from "./stretches.ts";

/** Pieces on a line of wall, from low to high. */
export interface PlacedWidths {
  readonly low: Mm;
  readonly high: Mm;
  readonly widths: readonly Mm[];
}

/**
 * On the wall of the stretch's face whose drawn line is nearest to the middle of what is pinned.
 *
 * @returns null where no wall of the face has its drawn line there
 */
export function pinOnWall(
  { low, high, widths }: PlacedWidths,
  stretch: Stretch,
  given: { readonly filled: Pick<FilledUnit, "drafts">; readonly unit: Unit },
): Pinned | null {
  const { settled } = given.filled.drafts[stretch.face]!;
  const { direction } = settled;
  const sides = settled.formed.outlineFace.walls.filter(({ side }) => side === "left" || side === "right");
  let best: Pinned | null = null;
  let nearest = Number.POSITIVE_INFINITY;
  for (const { wall: id } of sides) {
    const wall = given.unit.walls.find((each) => each.id === id);
    if (wall === undefined) continue;
    const dx = wall.to[0] - wall.from[0];
    const dy = wall.to[1] - wall.from[1];
    const along = (direction[0] * dx + direction[1] * dy) / Math.sqrt(dx * dx + dy * dy);
    const start = placeOf(direction, wall.from);
    const end = placeOf(direction, wall.to);
    const middle = (low + high) / 2;
    const off = Math.max(0, Math.min(start, end) - middle, middle - Math.max(start, end));
    const first = along > 0 ? low : high;
    const from = roundTo((first - start) / along, 3);
    if (off >= nearest || roundHalfUp(start + along * from) !== first) continue;
    nearest = off;
    best = { wall: id, from, widths: along > 0 ? widths : [...widths].reverse() };
  }
  return best;
}
