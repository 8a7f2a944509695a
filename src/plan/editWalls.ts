// Edits of single walls: draw, thicken, turn round; and what happens to the openings and pins measured along a wall
// whose ends move.
//
//   from ●────[ door ]──────────● to        the door is `at` from `from`
//        ● stretched ●──[ door ]──────● to  `from` pulled out: `at` grows, the door stays where it is in the plan

import { isNear } from "../geom/point.ts";
import type { Mm } from "../units.ts";
import { type Entry, find, freshId, ID_PREFIX, nextRank, put, type UnitDraft } from "./document.ts";
import {
  LEAST_WALL,
  otherJustify,
  spanLength,
  tidy,
  tidyPosition,
  wallLength,
  wallLine,
} from "./editAxis.ts";
import { done, type EditOutcome, madeOne, refused } from "./editOutcome.ts";
import type { Opening, Pinned, Position, Wall } from "./project.ts";

/** Draws a wall; a column is a short one. */
export interface AddWall {
  readonly kind: "add-wall";
  readonly unit: string;
  readonly wall: Omit<Wall, "id">;
}

/** Sets thickness or justification of several walls; the drawn lines stay. */
export interface ChangeWalls {
  readonly kind: "change-walls";
  readonly unit: string;
  readonly walls: readonly string[];
  readonly set: Partial<Pick<Wall, "thickness" | "justify">>;
}

/** Draws one wall from other ends; nothing else goes along. */
export interface RedrawWall {
  readonly kind: "redraw-wall";
  readonly unit: string;
  readonly wall: string;
  readonly from: Position;
  readonly to: Position;
}

/** Draws walls from their other end. The concrete and everything in it stays; twice is the identity. */
export interface FlipWalls {
  readonly kind: "flip-walls";
  readonly unit: string;
  readonly walls: readonly string[];
}

export interface WallEnds {
  readonly from: Position;
  readonly to: Position;
}

const SAME_PLACE = 1e-6; // rounding noise of a translation

export function addWall(unit: UnitDraft, edit: AddWall): EditOutcome {
  const { from, to, thickness } = edit.wall;
  if (!(spanLength(from, to) >= LEAST_WALL)) return refused("wall-vanishes");
  if (!(thickness > 0)) return refused("bad-size");
  const id = freshId(unit.walls, ID_PREFIX.walls);
  put(unit.walls, { ...edit.wall, id, rank: nextRank(unit.walls) });
  return madeOne("walls", id);
}

export function changeWalls(unit: UnitDraft, edit: ChangeWalls): EditOutcome {
  const missing = edit.walls.find((id) => find(unit.walls, id) === undefined);
  if (missing !== undefined) return refused("no-such-item", missing);
  if (edit.set.thickness !== undefined && !(edit.set.thickness > 0)) return refused("bad-size");
  for (const id of edit.walls) {
    const wall = find(unit.walls, id);
    if (wall !== undefined) put(unit.walls, { ...wall, ...edit.set });
  }
  return done();
}

export function redrawWall(unit: UnitDraft, edit: RedrawWall): EditOutcome {
  const wall = find(unit.walls, edit.wall);
  if (wall === undefined) return refused("no-such-item", edit.wall);
  if (!(spanLength(edit.from, edit.to) >= LEAST_WALL)) return refused("wall-vanishes", wall.id);
  setWallEnds(unit, wall, { from: tidyPosition(edit.from), to: tidyPosition(edit.to) });
  return done();
}

export function flipWalls(unit: UnitDraft, edit: FlipWalls): EditOutcome {
  const missing = edit.walls.find((id) => find(unit.walls, id) === undefined);
  if (missing !== undefined) return refused("no-such-item", missing);
  for (const id of new Set(edit.walls)) flipWall(unit, id);
  return done();
}

/** Draws one wall from its other end. */
export function flipWall(unit: UnitDraft, id: string): void {
  const wall = find(unit.walls, id);
  if (wall === undefined) return;
  const length = wallLength(wall);
  put(unit.walls, { ...wall, from: wall.to, to: wall.from, justify: otherJustify(wall.justify) });
  for (const opening of openingsOf(unit, id)) {
    put(unit.openings, { ...opening, at: tidy(length - opening.at - opening.width) });
  }
  for (const pin of pinsOf(unit, id)) {
    const from = tidy(length - pin.from - pinLength(pin));
    const closure = pin.closure === undefined ? {} : { closure: pin.widths.length - 1 - pin.closure };
    put(unit.pinned, { ...pin, from, widths: [...pin.widths].reverse(), ...closure });
  }
}

/**
 * Gives a wall other ends. A wall carried as a whole takes its openings and pins along; one whose `from` alone is
 * pulled keeps them in their place in the plan; an opening beyond the new end is pushed back inside.
 */
export function setWallEnds(unit: UnitDraft, wall: Entry<Wall>, ends: WallEnds): void {
  const shift = measureShift(wall, ends);
  put(unit.walls, { ...wall, ...ends });
  for (const opening of openingsOf(unit, wall.id)) {
    put(unit.openings, { ...opening, at: keptAt(ends, opening.at + shift, opening.width) });
  }
  if (shift === 0) return;
  for (const pin of pinsOf(unit, wall.id)) {
    put(unit.pinned, { ...pin, from: Math.max(0, tidy(pin.from + shift)) });
  }
}

/** The place along the wall nearest to `at` at which an opening of this width lies inside it; 0 where none does. */
export function keptAt(wall: WallEnds, at: Mm, width: Mm): Mm {
  return tidy(Math.max(0, Math.min(at, wallLength(wall) - width)));
}

/** Openings in one wall. */
export function openingsOf(unit: UnitDraft, wall: string): Entry<Opening>[] {
  return Object.values(unit.openings).filter((opening) => opening.wall === wall);
}

/** Pins on one wall. */
export function pinsOf(unit: UnitDraft, wall: string): Entry<Pinned>[] {
  return Object.values(unit.pinned).filter((pin) => pin.wall === wall);
}

/** How far along its wall a pin reaches. */
export function pinLength(pin: Pick<Pinned, "widths">): Mm {
  return pin.widths.reduce((sum, width) => sum + width, 0);
}

function measureShift(old: WallEnds, ends: WallEnds): Mm {
  const moved: Position = [ends.to[0] - old.to[0] + old.from[0], ends.to[1] - old.to[1] + old.from[1]];
  if (isNear(moved, ends.from, SAME_PLACE) || isNear(old.from, ends.from, SAME_PLACE)) return 0;
  if (isNear(old.to, ends.to, SAME_PLACE)) return wallLength(ends) - wallLength(old);
  const { ux, uy } = wallLine(ends);
  return (old.from[0] - ends.from[0]) * ux + (old.from[1] - ends.from[1]) * uy;
}
