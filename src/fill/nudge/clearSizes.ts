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

/** The rooms whose faces have another length after the move, in the order of the fill. */
export function roomChanges(before: Refilled, after: Refilled): readonly RoomChange[] {
  const found = new Map<string, Map<string, BeforeAfter>>();
  for (const [key, face] of before.faces) {
    const other = after.faces.get(key);
    const was = before.filled.drafts[face]!;
    if (was.room === null || other === undefined) continue;
    const size = { before: was.settled.length, after: after.filled.drafts[other]!.settled.length };
    if (size.before === size.after) continue;
    const own = found.get(was.room) ?? new Map<string, BeforeAfter>();
    found.set(was.room, own);
    own.set(`${size.before} ${size.after}`, size);
  }
  const areas = new Map(after.filled.fill.rooms.map(({ name, area }) => [name, area]));
  return before.filled.fill.rooms.flatMap(({ name, area }) => {
    const sizes = [...(found.get(name)?.values() ?? [])];
    const other = areas.get(name) ?? area;
    if (sizes.length === 0 && other === area) return [];
    sizes.sort((a, b) => b.before - a.before || b.after - a.after);
    return [{ room: name, area: { before: area, after: other }, sizes }];
  });
}
