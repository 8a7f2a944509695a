// What a move does to the rooms: the lengths of their walls from corner to corner, before and after.

import type { BeforeAfter } from "../setChanges.ts";
import type { Refilled } from "./refill.ts";

/** A room with the clear sizes of it that a move changes. */
export interface RoomChange {
  readonly room: string;
  /** m². */
  readonly area: BeforeAfter;
  /** Lengths of its faces from corner to corner, mm, each pair once, longest first. */
  readonly sizes: readonly BeforeAfter[];
}

/** The rooms whose faces have another length after the move, in the order of the fill; two may have one name. */
export function roomChanges(before: Refilled, after: Refilled): readonly RoomChange[] {
  const roomBefore = roomsByFace(before);
  const roomAfter = roomsByFace(after);
  const found = before.filled.fill.rooms.map(() => new Map<string, BeforeAfter>());
  const areas = before.filled.fill.rooms.map(({ area }) => area);
  for (const [key, face] of before.faces) {
    const other = after.faces.get(key);
    const was = before.filled.drafts[face]!;
    const room = roomBefore.get(was.id);
    if (room === undefined || other === undefined) continue;
    const is = after.filled.drafts[other]!;
    const roomIs = roomAfter.get(is.id);
    if (roomIs !== undefined) areas[room] = after.filled.fill.rooms[roomIs]!.area;
    const size = { before: was.settled.length, after: is.settled.length };
    if (size.before !== size.after) found[room]!.set(`${size.before} ${size.after}`, size);
  }
  return before.filled.fill.rooms.flatMap(({ name, area }, room) => {
    const sizes = [...found[room]!.values()];
    const other = areas[room]!;
    if (sizes.length === 0 && other === area) return [];
    sizes.sort((a, b) => b.before - a.before || b.after - a.after);
    return [{ room: name, area: { before: area, after: other }, sizes }];
  });
}

/** By the id of a face: the place of its room. */
function roomsByFace({ filled }: Refilled): ReadonlyMap<string, number> {
  return new Map(filled.fill.rooms.flatMap(({ faces }, room) => faces.map((id) => [id, room] as const)));
}
