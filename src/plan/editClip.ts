// Copy and paste. A clip is plain data out of one unit that can be put into any unit, of this project or another:
// everything gets ids of its own there, and what hung together in the clip hangs together again.

import { alongLine } from "../geom/line.ts";
import { distance } from "../geom/point.ts";
import type { Mm } from "../units.ts";
import {
  type Bucket,
  type Entry,
  find,
  freshId,
  ID_PREFIX,
  type ItemRef,
  listed,
  nextRank,
  put,
  type UnitDocument,
  type UnitDraft,
} from "./document.ts";
import { placeOnWall, wallLength, wallLine } from "./editAxis.ts";
import { done, type EditOutcome, refused } from "./editOutcome.ts";
import { keptAt } from "./editWalls.ts";
import type {
  ControlLine,
  Opening,
  Pinned,
  Position,
  RoomLabel,
  Service,
  SlabOutline,
  Wall,
} from "./project.ts";

/** An opening copied without its wall, with the middle of its foot in the plan. */
export interface LooseOpening {
  readonly opening: Opening;
  readonly centre: Position;
}

/** What was copied, in the order of the file. Ids are those it was copied from; they tie openings and pins to walls. */
export interface Clip {
  readonly walls: readonly Wall[];
  readonly openings: readonly Opening[];
  readonly pinned: readonly Pinned[];
  readonly loose: readonly LooseOpening[];
  readonly rooms: readonly RoomLabel[];
  readonly slabs: readonly SlabOutline[];
  readonly slabOpenings: readonly SlabOutline[];
  readonly services: readonly Service[];
  readonly controlLines: readonly ControlLine[];
}

const LANDING_REACH = 500; // mm from its place to a wall's drawn line within which a pasted opening finds the wall

/** Copies things out of a unit. A wall brings its openings and pins. */
export function copyItems(unit: UnitDocument | UnitDraft, items: readonly ItemRef[]): Clip {
  const wanted = new Set(items.map(({ bucket, id }) => `${bucket} ${id}`));
  const chosen = <T extends { readonly id: string; readonly rank: number }>(
    records: { readonly [key: string]: T },
    bucket: Bucket,
  ) => listed(records).filter(({ id }) => wanted.has(`${bucket} ${id}`));
  const walls = chosen(unit.walls, "walls");
  const isCopied = (wall: string) => wanted.has(`walls ${wall}`) && find(unit.walls, wall) !== undefined;
  return {
    walls,
    openings: listed(unit.openings).filter((opening) => isCopied(opening.wall)),
    pinned: listed(unit.pinned).filter((pin) => isCopied(pin.wall)),
    loose: chosen(unit.openings, "openings")
      .filter((opening) => !isCopied(opening.wall))
      .flatMap((opening) => {
        const wall = find(unit.walls, opening.wall);
        return wall === undefined
          ? []
          : [{ opening, centre: placeOnWall(wall, opening.at + opening.width / 2) }];
      }),
    rooms: chosen(unit.rooms, "rooms"),
    slabs: chosen(unit.slabs, "slabs"),
    slabOpenings: chosen(unit.slabOpenings, "slabOpenings"),
    services: chosen(unit.services, "services"),
    controlLines: chosen(unit.controlLines, "controlLines"),
  };
}

/** Puts a clip into a unit where it stands. Refused where an opening without a wall finds none; then nothing is put. */
export function pasteClip(unit: UnitDraft, clip: Clip): EditOutcome {
  const landings = clip.loose.map(({ opening, centre }) => ({ opening, ...landing(unit, opening, centre) }));
  const lost = landings.find(({ wall }) => wall === null);
  if (lost !== undefined) return refused("no-wall-here", lost.opening.id);

  const made: ItemRef[] = [];
  const add = <T extends object>(bucket: Bucket, records: { [key: string]: Entry<T> }, item: T): string => {
    const entry: Entry<T> = { ...item, id: freshId(records, ID_PREFIX[bucket]), rank: nextRank(records) };
    put(records, entry);
    made.push({ bucket, id: entry.id });
    return entry.id;
  };
  const wallIds = new Map(clip.walls.map((wall) => [wall.id, add("walls", unit.walls, wall)]));
  for (const opening of clip.openings) {
    add("openings", unit.openings, { ...opening, wall: wallIds.get(opening.wall) ?? opening.wall });
  }
  for (const pin of clip.pinned)
    add("pinned", unit.pinned, { ...pin, wall: wallIds.get(pin.wall) ?? pin.wall });
  for (const { opening, wall, at } of landings) {
    if (wall !== null) add("openings", unit.openings, { ...opening, wall, at });
  }
  for (const room of clip.rooms) add("rooms", unit.rooms, room);
  for (const slab of clip.slabs) add("slabs", unit.slabs, slab);
  for (const hole of clip.slabOpenings) add("slabOpenings", unit.slabOpenings, hole);
  for (const service of clip.services) add("services", unit.services, service);
  for (const line of clip.controlLines) add("controlLines", unit.controlLines, line);
  return done(made);
}

// The wall nearest to where a copied opening lands, among those long enough for it.
function landing(
  unit: UnitDraft,
  opening: Opening,
  centre: Position,
): { readonly wall: string | null; readonly at: Mm } {
  let wall: string | null = null;
  let at: Mm = 0;
  let nearest: Mm = LANDING_REACH;
  for (const candidate of listed(unit.walls)) {
    const length = wallLength(candidate);
    if (length < opening.width) continue;
    const along = Math.max(0, Math.min(alongLine(wallLine(candidate), centre), length));
    const gap = distance(placeOnWall(candidate, along), centre);
    if (gap >= nearest) continue;
    nearest = gap;
    wall = candidate.id;
    at = keptAt(candidate, along - opening.width / 2, opening.width);
  }
  return { wall, at };
}
