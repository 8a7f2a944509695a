// What lies under the pointer: an end of a wall, an opening, a label, a wall. Small things before large ones, so that
// a door can be taken out of its wall and a label off a slab.

import { distance } from "../../geom/point.ts";
import { isInside } from "../../geom/ring.ts";
import { find, type ItemRef, type UnitDocument } from "../../plan/document.ts";
import { spanLength, type WallEnd } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import {
  type Box,
  boxAround,
  distanceToBody,
  grownBox,
  isBoxWithin,
  pathMeetsBox,
  placesOf,
} from "../box.ts";
import { itemsMeeting, type PlanIndex } from "./planIndex.ts";

/** What the pointer is on. Ends are offered only of walls that are selected: their handles are in view. */
export type Hit =
  | { readonly kind: "item"; readonly item: ItemRef }
  | { readonly kind: "end"; readonly wall: string; readonly end: WallEnd }
  | { readonly kind: "dimension"; readonly key: string };

const ORDER: readonly ItemRef["bucket"][] = [
  "rooms",
  "openings",
  "services",
  "controlLines",
  "walls",
  "slabOpenings",
  "slabs",
];

const CLOSED: readonly ItemRef["bucket"][] = ["walls", "openings", "slabs", "slabOpenings", "pinned"];

/**
 * The thing under a place, or null.
 *
 * @param reach - how near counts as on, mm
 */
export function hitAt(index: PlanIndex, at: Position, reach: Mm, selection: readonly ItemRef[]): Hit | null {
  const end = endHit(index.unit, at, reach, selection);
  if (end !== null) return end;
  const [x, y] = at;
  const near = itemsMeeting(index, grownBox({ minX: x, minY: y, maxX: x, maxY: y }, reach));
  let best: { readonly item: ItemRef; readonly rank: number; readonly gap: Mm } | null = null;
  for (const item of near) {
    const gap = gapTo(index.unit, item, at);
    const rank = ORDER.indexOf(item.bucket);
    if (rank < 0 || gap > reach) continue;
    if (best === null || rank < best.rank || (rank === best.rank && gap < best.gap))
      best = { item, rank, gap };
  }
  return best === null ? null : { kind: "item", item: best.item };
}

/**
 * Things in a window: wholly within it, or for `touching` with an edge that meets it. Openings come with their wall
 * and are left out when that is taken too.
 */
export function itemsInWindow(index: PlanIndex, window: Box, touching: boolean): readonly ItemRef[] {
  const met = itemsMeeting(index, window).filter((item) => {
    const places = placesOf(index.unit, item);
    if (!touching) return isBoxWithin(window, boxAround(places));
    return pathMeetsBox(CLOSED.includes(item.bucket) ? [...places, ...places.slice(0, 1)] : places, window);
  });
  const walls = new Set(met.filter(({ bucket }) => bucket === "walls").map(({ id }) => id));
  return met.filter(({ bucket, id }) => {
    const opening = bucket === "openings" ? find(index.unit.openings, id) : undefined;
    return opening === undefined || !walls.has(opening.wall);
  });
}

/** The wall whose body is nearest to a place within reach, or null. */
export function wallAt(index: PlanIndex, at: Position, reach: Mm): string | null {
  const [x, y] = at;
  let best: string | null = null;
  let nearest = reach;
  for (const { bucket, id } of itemsMeeting(index, grownBox({ minX: x, minY: y, maxX: x, maxY: y }, reach))) {
    const wall = bucket === "walls" ? find(index.unit.walls, id) : undefined;
    const gap = wall === undefined ? Number.POSITIVE_INFINITY : distanceToBody(wall, at);
    if (gap > nearest || (gap === nearest && best !== null)) continue;
    nearest = gap;
    best = id;
  }
  return best;
}

function endHit(unit: UnitDocument, at: Position, reach: Mm, selection: readonly ItemRef[]): Hit | null {
  for (const { bucket, id } of selection) {
    const wall = bucket === "walls" ? find(unit.walls, id) : undefined;
    if (wall === undefined) continue;
    for (const end of ["from", "to"] as const) {
      // On a wall shorter than its handles the middle stays free to take the wall itself.
      const span = Math.min(reach, spanLength(wall.from, wall.to) / 4);
      if (distance(wall[end], at) <= span) return { kind: "end", wall: id, end };
    }
  }
  return null;
}

function gapTo(unit: UnitDocument, item: ItemRef, at: Position): Mm {
  const places = placesOf(unit, item);
  switch (item.bucket) {
    case "walls": {
      const wall = find(unit.walls, item.id);
      return wall === undefined ? Number.POSITIVE_INFINITY : distanceToBody(wall, at);
    }
    case "openings":
    case "slabs":
    case "slabOpenings":
      return isInside(places, at) ? 0 : gapToPath([...places, ...places.slice(0, 1)], at);
    case "rooms":
    case "services":
    case "controlLines":
    case "pinned":
      return gapToPath(places, at);
    default:
      return item.bucket satisfies never;
  }
}

function gapToPath(path: readonly Position[], at: Position): Mm {
  let nearest = path[0] === undefined ? Number.POSITIVE_INFINITY : distance(path[0], at);
  for (let i = 1; i < path.length; i++) {
    const [a, b] = [path[i - 1]!, path[i]!];
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const square = dx * dx + dy * dy;
    const share = square === 0 ? 0 : ((at[0] - a[0]) * dx + (at[1] - a[1]) * dy) / square;
    const inside = Math.max(0, Math.min(share, 1));
    nearest = Math.min(nearest, distance([a[0] + dx * inside, a[1] + dy * inside], at));
  }
  return nearest;
}
