// The move of a nudge as the edit that makes it.

import type { SchemeNudge } from "../../fill/nudge/nudgeList.ts";
import { find, type PlanDocument } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";

type Moved = Pick<SchemeNudge, "unit" | "kind" | "walls" | "end" | "move">;

/** Null where the unit or the wall is gone. */
export function nudgeEdit(document: PlanDocument, { unit, kind, walls, end, move }: Moved): Edit | null {
  const own = find(document.units, unit);
  const [first] = walls;
  const wall = own === undefined || first === undefined ? undefined : find(own.walls, first);
  if (wall === undefined) return null;
  const [dx, dy] = move;
  if (kind === "wall") {
    const items = walls.map((id) => ({ bucket: "walls", id }) as const);
    return { kind: "move", unit, items, dx, dy, stretch: true };
  }
  if (end === null) return null;
  const at = wall[end];
  return { kind: "move-joint", unit, at, to: [at[0] + dx, at[1] + dy] };
}
