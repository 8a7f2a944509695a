// The clear width and depth of the room round a label, each measured through the label square to the wall nearest to
// it, so that a room that stands askew is measured along its own sides.

import { listed, type UnitDocument } from "../plan/document.ts";
import { bodySpan, placeOnWall, tidy, tidyPosition, wallLength, wallLine } from "../plan/editAxis.ts";
import { clearBetween } from "../plan/editClear.ts";
import type { Position, Wall } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import { distanceToBody } from "./box.ts";
import type { LiveDimension } from "./liveDimension.ts";
import { faceBeyond, type SeenFace } from "./rays.ts";

/** Width across, then upright; a direction in which no two parallel walls face each other has none. */
export function roomDimensions(unit: UnitDocument, at: Position): readonly LiveDimension[] {
  const axis = axisNear(unit, at);
  if (axis === null) return [];
  const [ux, uy] = axis;
  return [
    ...acrossRoom(unit, at, { ux, uy, key: "across" }),
    ...acrossRoom(unit, at, { ux: 0 - uy, uy: ux, key: "upright" }),
  ];
}

function acrossRoom(
  unit: UnitDocument,
  at: Position,
  way: { readonly ux: number; readonly uy: number; readonly key: "across" | "upright" },
): readonly LiveDimension[] {
  const ahead = faceBeyond(unit, { from: at, ux: way.ux, uy: way.uy }, null);
  const behind = faceBeyond(unit, { from: at, ux: 0 - way.ux, uy: 0 - way.uy }, null);
  if (ahead === null || behind === null || clearBetween(behind.wall, ahead.wall) === null) return [];
  if (ahead.wall.id === behind.wall.id) return [];
  const [moved, fixed] = isInner(unit, behind) && !isInner(unit, ahead) ? [behind, ahead] : [ahead, behind];
  return [
    {
      key: way.key,
      name: way.key === "across" ? "dimension.across" : "dimension.upright",
      value: tidy(ahead.distance + behind.distance),
      line: [behind.at, ahead.at],
      edit: (distance) => ({
        kind: "set-clear",
        unit: unit.id,
        wall: moved.wall.id,
        from: fixed.wall.id,
        distance,
      }),
    },
  ];
}

// A wall with another wall behind it parts two rooms; it gives way before a wall of the outside.
function isInner(unit: UnitDocument, seen: SeenFace): boolean {
  const line = wallLine(seen.wall);
  const [right, left] = bodySpan(seen.wall);
  const sides = [left, right].map((aside, index) => {
    const sign = index === 0 ? 1 : -1;
    const place = placeOnWall(seen.wall, alongOf(seen));
    const from = tidyPosition([place[0] - line.uy * aside, place[1] + line.ux * aside]);
    return faceBeyond(unit, { from, ux: 0 - line.uy * sign, uy: line.ux * sign }, seen.wall.id);
  });
  return sides.every((side) => side !== null);
}

function alongOf(seen: SeenFace): Mm {
  const { x, y, ux, uy } = wallLine(seen.wall);
  const along = (seen.at[0] - x) * ux + (seen.at[1] - y) * uy;
  return Math.max(0, Math.min(along, wallLength(seen.wall)));
}

// The direction square to or along the nearest wall, whichever is nearer to east.
function axisNear(unit: UnitDocument, at: Position): readonly [number, number] | null {
  let nearest: { readonly wall: Wall; readonly gap: Mm } | null = null;
  for (const wall of listed(unit.walls)) {
    const gap = distanceToBody(wall, at);
    if (nearest === null || gap < nearest.gap) nearest = { wall, gap };
  }
  if (nearest === null) return null;
  const { ux, uy } = wallLine(nearest.wall);
  const [x, y] = Math.abs(ux) >= Math.abs(uy) ? [ux, uy] : [0 - uy, ux];
  return x < 0 ? [0 - x, 0 - y] : [x + 0, y + 0];
}
