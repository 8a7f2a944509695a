// What is said of a room and its soffit, as edits. A room without a label gets one: it is called what it was called.

import type { Soffit } from "../../fill/result.ts";
import { isInside } from "../../geom/ring.ts";
import { type Entry, listed, type UnitDocument } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import type { Room } from "../../plan/face.ts";
import type { Position, RoomLabel } from "../../plan/project.ts";
import { boxAround } from "../box.ts";
import type { LiveFill } from "../live/liveFill.ts";
import { middleOf } from "../scene/soffitPieces.ts";

/** The room a place lies in; null outside all rooms. */
export function roomAt({ outline }: Pick<LiveFill, "outline">, at: Position): Room | null {
  return outline.rooms.find(({ ring }) => isInside(ringOf(outline, ring), at)) ?? null;
}

/** The soffit over a place of a room; null where there is none, or not yet. */
export function soffitOver({ fill }: Pick<LiveFill, "fill">, at: Position): Soffit | null {
  return fill.soffits.find(({ outline, isSlab }) => isSlab !== true && isInside(outline, at)) ?? null;
}

function ringOf({ faces, rings }: LiveFill["outline"], ring: number): readonly Position[] {
  return (rings[ring]?.faces ?? []).map((index): Position => faces[index]?.from ?? [0, 0]);
}

/** The label that names a room; null where it has none. */
export function labelOf(
  unit: UnitDocument,
  { outline }: Pick<LiveFill, "outline">,
  room: Room,
): Entry<RoomLabel> | null {
  const ring = ringOf(outline, room.ring);
  return listed(unit.rooms).find(({ name, at }) => name === room.name && isInside(ring, at)) ?? null;
}

/** Lays the slab panels of the room at a place along an axis, or again the better way; null where nothing changes. */
export function alongEdit(
  unit: UnitDocument,
  live: Pick<LiveFill, "outline">,
  { at, along }: { readonly at: Position; readonly along: "x" | "y" | null },
): Edit | null {
  const room = roomAt(live, at);
  if (room === null || room.soffitAlong === along) return null;
  const label = labelOf(unit, live, room);
  if (label !== null) {
    return { kind: "change-room", unit: unit.id, room: label.id, set: { soffitAlong: along } };
  }
  if (along === null) return null;
  // Where its name stands already: in the middle, if the middle is the room's own.
  const middle = middleOf(boxAround(ringOf(live.outline, room.ring)));
  const [x, y] = roomAt(live, middle) === room ? middle : at;
  const place: Position = [Math.round(x), Math.round(y)];
  const { name, kind, soffitDrop } = room;
  return { kind: "add-room", unit: unit.id, room: { name, at: place, kind, soffitDrop, soffitAlong: along } };
}
