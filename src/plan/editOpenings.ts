// Doors and windows: dropped on a wall, moved along it or to another, resized. An opening that an edit places always
// lies inside its wall.

import { usualForming } from "./defaults.ts";
import { find, freshId, ID_PREFIX, nextRank, put, type UnitDraft } from "./document.ts";
import { wallLength } from "./editAxis.ts";
import { done, type EditOutcome, madeOne, refused } from "./editOutcome.ts";
import { keptAt } from "./editWalls.ts";
import type { Forming, Opening } from "./project.ts";

/** Cuts an opening. Without `formed` it is boxed out or banded as a file that does not say would have it. */
export interface AddOpening {
  readonly kind: "add-opening";
  readonly unit: string;
  readonly opening: Omit<Opening, "id" | "formed"> & { readonly formed?: Forming };
}

/** Moves or resizes an opening; `wall` carries it to another wall. */
export interface ChangeOpening {
  readonly kind: "change-opening";
  readonly unit: string;
  readonly opening: string;
  readonly set: Partial<Omit<Opening, "id">>;
}

export function addOpening(unit: UnitDraft, edit: AddOpening): EditOutcome {
  const { width, sill, head } = edit.opening;
  const formed = edit.opening.formed ?? usualForming({ width, sill, head });
  const id = freshId(unit.openings, ID_PREFIX.openings);
  const rank = nextRank(unit.openings);
  return place(unit, { ...edit.opening, formed, id, rank }) ?? madeOne("openings", id);
}

export function changeOpening(unit: UnitDraft, edit: ChangeOpening): EditOutcome {
  const old = find(unit.openings, edit.opening);
  if (old === undefined) return refused("no-such-item", edit.opening);
  return place(unit, { ...old, ...edit.set, id: old.id }) ?? done();
}

// Files the opening inside its wall, or says why it cannot stand there.
function place(unit: UnitDraft, opening: Opening & { readonly rank: number }): EditOutcome | null {
  const wall = find(unit.walls, opening.wall);
  if (wall === undefined) return refused("no-such-item", opening.wall);
  const { width, sill, head } = opening;
  if (!(width > 0 && sill >= 0 && head > sill)) return refused("bad-size", opening.id);
  if (width > wallLength(wall)) return refused("opening-too-wide", opening.id);
  put(unit.openings, { ...opening, at: keptAt(wall, opening.at, width) });
  return null;
}
