// Room labels, slabs, services, control lines and pins: what is drawn beside the walls. Add, change, delete, move.

import type { Mm } from "../units.ts";
import {
  type Bucket,
  drop,
  find,
  freshId,
  ID_PREFIX,
  type ItemRef,
  nextRank,
  put,
  type UnitDraft,
} from "./document.ts";
import { done, type EditOutcome, madeOne, refused } from "./editOutcome.ts";
import { openingsOf, pinLength, pinsOf } from "./editWalls.ts";
import type { ControlLine, Pinned, Position, RoomLabel, Service, SlabOutline } from "./project.ts";

interface InUnit {
  readonly unit: string;
}
export interface AddRoom extends InUnit {
  readonly kind: "add-room";
  readonly room: RoomLabel;
}
export interface AddSlab extends InUnit {
  readonly kind: "add-slab";
  readonly bucket: "slabs" | "slabOpenings";
  readonly outline: readonly Position[];
}
export interface AddService extends InUnit {
  readonly kind: "add-service";
  readonly path: readonly Position[];
  readonly clearance: Mm;
}
export interface AddControlLine extends InUnit {
  readonly kind: "add-control-line";
  readonly from: Position;
  readonly to: Position;
}
/** Pins a sequence of widths on a wall; pins of the wall that it overlaps give way. */
export interface Pin extends InUnit {
  readonly kind: "pin";
  readonly pinned: Pinned;
}
export interface ChangeRoom extends InUnit {
  readonly kind: "change-room";
  readonly room: string;
  /** `soffitAlong` null: the better of the two ways again. */
  readonly set: Partial<Omit<RoomLabel, "soffitAlong">> & { readonly soffitAlong?: "x" | "y" | null };
}
export interface ChangeSlab extends InUnit {
  readonly kind: "change-slab";
  readonly bucket: "slabs" | "slabOpenings";
  readonly slab: string;
  readonly set: Partial<Omit<SlabOutline, "id">>;
}
export interface ChangeService extends InUnit {
  readonly kind: "change-service";
  readonly service: string;
  readonly set: Partial<Omit<Service, "id">>;
}
export interface ChangeControlLine extends InUnit {
  readonly kind: "change-control-line";
  readonly controlLine: string;
  readonly set: Partial<Omit<ControlLine, "id">>;
}
/** Deletes things; a wall takes its openings and pins with it. */
export interface Delete extends InUnit {
  readonly kind: "delete";
  readonly items: readonly ItemRef[];
}

export type AddLoose = AddRoom | AddSlab | AddService | AddControlLine | Pin;
export type ChangeLoose = ChangeRoom | ChangeSlab | ChangeService | ChangeControlLine;

export function addLoose(unit: UnitDraft, edit: AddLoose): EditOutcome {
  const slot = (bucket: Bucket) => ({
    id: freshId(unit[bucket], ID_PREFIX[bucket]),
    rank: nextRank(unit[bucket]),
  });
  switch (edit.kind) {
    case "add-room": {
      const entry = { ...edit.room, ...slot("rooms") };
      put(unit.rooms, entry);
      return madeOne("rooms", entry.id);
    }
    case "add-slab": {
      if (edit.outline.length < 3) return refused("bad-size");
      const entry = { outline: edit.outline, ...slot(edit.bucket) };
      put(unit[edit.bucket], entry);
      return madeOne(edit.bucket, entry.id);
    }
    case "add-service": {
      if (edit.path.length < 2 || !(edit.clearance >= 0)) return refused("bad-size");
      const entry = { path: edit.path, clearance: edit.clearance, ...slot("services") };
      put(unit.services, entry);
      return madeOne("services", entry.id);
    }
    case "add-control-line": {
      if (isSamePlace(edit.from, edit.to)) return refused("bad-size");
      const entry = { from: edit.from, to: edit.to, ...slot("controlLines") };
      put(unit.controlLines, entry);
      return madeOne("controlLines", entry.id);
    }
    case "pin":
      return pin(unit, edit.pinned, slot("pinned"));
    default:
      return edit satisfies never;
  }
}

function pin(
  unit: UnitDraft,
  pinned: Pinned,
  slot: { readonly id: string; readonly rank: number },
): EditOutcome {
  if (find(unit.walls, pinned.wall) === undefined) return refused("no-such-item", pinned.wall);
  if (pinned.widths.length === 0 || pinned.widths.some((width) => !(width > 0))) return refused("bad-size");
  const end = pinned.from + pinLength(pinned);
  for (const old of pinsOf(unit, pinned.wall)) {
    if (old.from < end && pinned.from < old.from + pinLength(old)) drop(unit.pinned, old.id);
  }
  put(unit.pinned, { ...pinned, ...slot });
  return madeOne("pinned", slot.id);
}

export function changeLoose(unit: UnitDraft, edit: ChangeLoose): EditOutcome {
  switch (edit.kind) {
    case "change-room":
      return changeRoom(unit, edit);
    case "change-slab":
      if (edit.set.outline !== undefined && edit.set.outline.length < 3)
        return refused("bad-size", edit.slab);
      return change(unit[edit.bucket], edit.slab, edit.set);
    case "change-service":
      if (edit.set.path !== undefined && edit.set.path.length < 2) return refused("bad-size", edit.service);
      if (edit.set.clearance !== undefined && !(edit.set.clearance >= 0)) {
        return refused("bad-size", edit.service);
      }
      return change(unit.services, edit.service, edit.set);
    case "change-control-line":
      return change(unit.controlLines, edit.controlLine, edit.set);
    default:
      return edit satisfies never;
  }
}

function changeRoom(unit: UnitDraft, { room, set: { soffitAlong, ...set } }: ChangeRoom): EditOutcome {
  const outcome = change(unit.rooms, room, set);
  const entry = find(unit.rooms, room);
  if (entry === undefined || soffitAlong === undefined) return outcome;
  const { soffitAlong: _, ...rest } = entry;
  put(unit.rooms, soffitAlong === null ? rest : { ...rest, soffitAlong });
  return outcome;
}

function change<T extends { readonly id: string }>(
  records: { [key: string]: T },
  id: string,
  set: object,
): EditOutcome {
  const entry = find(records, id);
  if (entry === undefined) return refused("no-such-item", id);
  put(records, { ...entry, ...set, id });
  return done();
}

/** Deletes things; what is not there (a door gone with its wall) is passed over. */
export function deleteItems(unit: UnitDraft, edit: Delete): EditOutcome {
  for (const { bucket, id } of edit.items) {
    if (bucket === "walls") {
      for (const opening of openingsOf(unit, id)) drop(unit.openings, opening.id);
      for (const pinned of pinsOf(unit, id)) drop(unit.pinned, pinned.id);
    }
    drop(unit[bucket], id);
  }
  return done();
}

/** Carries a thing that stands by itself through `map`. Walls and what is measured along them are not touched. */
export function moveLoose(unit: UnitDraft, item: ItemRef, map: (place: Position) => Position): void {
  switch (item.bucket) {
    case "rooms": {
      const room = find(unit.rooms, item.id);
      if (room !== undefined) put(unit.rooms, { ...room, at: map(room.at) });
      return;
    }
    case "slabs":
    case "slabOpenings": {
      const slab = find(unit[item.bucket], item.id);
      if (slab !== undefined) put(unit[item.bucket], { ...slab, outline: slab.outline.map(map) });
      return;
    }
    case "services": {
      const service = find(unit.services, item.id);
      if (service !== undefined) put(unit.services, { ...service, path: service.path.map(map) });
      return;
    }
    case "controlLines": {
      const line = find(unit.controlLines, item.id);
      if (line !== undefined) put(unit.controlLines, { ...line, from: map(line.from), to: map(line.to) });
      return;
    }
    case "walls":
    case "openings":
    case "pinned":
      return;
    default: {
      const unknown: never = item.bucket;
      throw new RangeError(`no such bucket: ${unknown}`);
    }
  }
}

function isSamePlace(a: Position, b: Position): boolean {
  return a[0] === b[0] && a[1] === b[1];
}
