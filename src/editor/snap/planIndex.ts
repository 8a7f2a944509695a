// The spatial index of a unit: which walls and things lie near a place. Rebuilt from the document whenever the unit is
// another object; a thousand boxes take well under a millisecond.

import RBush from "rbush";
import { type Entry, type ItemRef, listed, type UnitDocument } from "../../plan/document.ts";
import type { Position, Wall } from "../../plan/project.ts";
import { type Box, boxAround, grownBox, placesOf } from "../box.ts";
import { allItems } from "../selection.ts";

interface WallBox extends Box {
  readonly wall: Entry<Wall>;
}

interface ItemBox extends Box {
  readonly item: ItemRef;
  /** Place in the order of all things, by bucket, then as in the file. */
  readonly order: number;
}

export interface PlanIndex {
  readonly unit: UnitDocument;
  /** In the order of the file. */
  readonly walls: readonly Entry<Wall>[];
  readonly lines: RBush<WallBox>;
  readonly items: RBush<ItemBox>;
}

/** Builds the index of a unit. */
export function buildPlanIndex(unit: UnitDocument): PlanIndex {
  const walls = listed(unit.walls);
  const lines = new RBush<WallBox>();
  lines.load(walls.map((wall) => ({ ...boxAround([wall.from, wall.to]), wall })));
  const items = new RBush<ItemBox>();
  items.load(allItems(unit).map((item, order) => ({ ...boxAround(placesOf(unit, item)), item, order })));
  return { unit, walls, lines, items };
}

const indexes = new WeakMap<UnitDocument, PlanIndex>();

/** The index of a unit, built once for each state of it. */
export function planIndexOf(unit: UnitDocument): PlanIndex {
  const known = indexes.get(unit);
  if (known !== undefined) return known;
  const index = buildPlanIndex(unit);
  indexes.set(unit, index);
  return index;
}

/** Walls whose drawn line passes the box within `reach` of a place, in the order of the file. */
export function wallsNear(index: PlanIndex, [x, y]: Position, reach: number): readonly Entry<Wall>[] {
  const box = grownBox({ minX: x, minY: y, maxX: x, maxY: y }, reach);
  return index.lines
    .search(box)
    .map(({ wall }) => wall)
    .sort((a, b) => a.rank - b.rank);
}

/** Things whose box meets a box, by bucket, then in the order of the file. */
export function itemsMeeting(index: PlanIndex, box: Box): readonly ItemRef[] {
  return index.items
    .search(box)
    .sort((a, b) => a.order - b.order)
    .map(({ item }) => item);
}
