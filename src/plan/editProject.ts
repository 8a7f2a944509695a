// Edits above the plan: units, pours, storey and the other settings of a project.

import type { Mm } from "../units.ts";
import {
  BUCKETS,
  drop,
  type Entry,
  find,
  freshId,
  listed,
  nextRank,
  type PlanDraft,
  put,
  type UnitDraft,
} from "./document.ts";
import { emptyUnit } from "./documentProject.ts";
import { moveLoose } from "./editLoose.ts";
import { done, type EditOutcome, refused } from "./editOutcome.ts";
import { mirroringAcross, type Placement, placeWall } from "./editTransform.ts";
import type { Position, Pour, Project } from "./project.ts";

/** Everything of a project beside its units and pours. */
export type ProjectSettings = Omit<Project, "units" | "pours">;

export interface ChangeProject {
  readonly kind: "change-project";
  readonly set: Partial<ProjectSettings>;
}
/** Adds an empty unit. `id` null: the next free letter-and-number. */
export interface AddUnit {
  readonly kind: "add-unit";
  readonly id: string | null;
  readonly name: string;
}
export interface ChangeUnit {
  readonly kind: "change-unit";
  readonly unit: string;
  readonly name: string;
}
/** Copies a unit whole, its ids included; mirrored left for right within the same box if asked. */
export interface DuplicateUnit {
  readonly kind: "duplicate-unit";
  readonly unit: string;
  readonly id: string | null;
  readonly name: string;
  readonly mirror: boolean;
}
/** Deletes a unit and its pours. The last unit stays. */
export interface DeleteUnit {
  readonly kind: "delete-unit";
  readonly unit: string;
}
export interface AddPour {
  readonly kind: "add-pour";
  readonly pour: Omit<Pour, "id">;
}
export interface ChangePour {
  readonly kind: "change-pour";
  readonly pour: string;
  readonly set: Partial<Omit<Pour, "id">>;
}
export interface DeletePour {
  readonly kind: "delete-pour";
  readonly pour: string;
}
/** Puts a pour before another in the working order; null = last. */
export interface MovePour {
  readonly kind: "move-pour";
  readonly pour: string;
  readonly before: string | null;
}

export type ProjectEdit =
  | ChangeProject
  | AddUnit
  | ChangeUnit
  | DuplicateUnit
  | DeleteUnit
  | AddPour
  | ChangePour
  | DeletePour
  | MovePour;

const UNIT_PREFIX = "U";
/** First letter of the ids given to pours that are added. */
export const POUR_PREFIX = "p";

export function applyProjectEdit(draft: PlanDraft, edit: ProjectEdit): EditOutcome {
  switch (edit.kind) {
    case "change-project":
      Object.assign(draft, edit.set);
      return done();
    case "add-unit":
      return fileUnit(draft, edit.id, (id, rank) => emptyUnit(id, edit.name, rank));
    case "change-unit": {
      const unit = find(draft.units, edit.unit);
      if (unit === undefined) return refused("no-such-unit", edit.unit);
      unit.name = edit.name;
      return done();
    }
    case "duplicate-unit":
      return duplicateUnit(draft, edit);
    case "delete-unit":
      return deleteUnit(draft, edit.unit);
    case "add-pour": {
      if (find(draft.units, edit.pour.unit) === undefined) return refused("no-such-unit", edit.pour.unit);
      const id = freshId(draft.pours, POUR_PREFIX);
      put(draft.pours, { ...edit.pour, id, rank: nextRank(draft.pours) });
      return done();
    }
    case "change-pour": {
      const pour = find(draft.pours, edit.pour);
      if (pour === undefined) return refused("no-such-item", edit.pour);
      const unit = edit.set.unit ?? pour.unit;
      if (find(draft.units, unit) === undefined) return refused("no-such-unit", unit);
      put(draft.pours, { ...pour, ...edit.set, id: pour.id });
      return done();
    }
    case "delete-pour":
      if (find(draft.pours, edit.pour) === undefined) return refused("no-such-item", edit.pour);
      drop(draft.pours, edit.pour);
      return done();
    case "move-pour":
      return movePour(draft, edit);
    default:
      return edit satisfies never;
  }
}

// A unit of its own gets the id asked for, or the next free one.
function fileUnit(
  draft: PlanDraft,
  wanted: string | null,
  make: (id: string, rank: number) => UnitDraft,
): EditOutcome {
  const id = wanted ?? freshId(draft.units, UNIT_PREFIX);
  if (find(draft.units, id) !== undefined) return refused("id-in-use", id);
  put(draft.units, make(id, nextRank(draft.units)));
  return done();
}

function duplicateUnit(draft: PlanDraft, edit: DuplicateUnit): EditOutcome {
  const source = find(draft.units, edit.unit);
  if (source === undefined) return refused("no-such-unit", edit.unit);
  return fileUnit(draft, edit.id, (id, rank) => {
    const copy: UnitDraft = { ...source, id, rank, name: edit.name };
    for (const bucket of BUCKETS) Object.assign(copy, { [bucket]: { ...source[bucket] } });
    if (edit.mirror) placeUnit(copy, mirroringAcross(leastAndGreatestX(source)));
    return copy;
  });
}

function placeUnit(unit: UnitDraft, placement: Placement): void {
  for (const wall of Object.values(unit.walls)) put(unit.walls, placeWall(wall, placement));
  for (const bucket of BUCKETS) {
    for (const { id } of Object.values(unit[bucket])) moveLoose(unit, { bucket, id }, placement.map);
  }
}

// The sum of the least and the greatest x of the walls, so that the mirrored unit stands in the same box.
function leastAndGreatestX(unit: UnitDraft): Mm {
  const ends: Position[] = Object.values(unit.walls).flatMap(({ from, to }) => [from, to]);
  if (ends.length === 0) return 0;
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  for (const [x] of ends) {
    least = Math.min(least, x);
    greatest = Math.max(greatest, x);
  }
  return least + greatest;
}

function deleteUnit(draft: PlanDraft, id: string): EditOutcome {
  if (find(draft.units, id) === undefined) return refused("no-such-unit", id);
  if (Object.keys(draft.units).length === 1) return refused("last-unit", id);
  drop(draft.units, id);
  for (const pour of Object.values(draft.pours)) if (pour.unit === id) drop(draft.pours, pour.id);
  return done();
}

function movePour(draft: PlanDraft, edit: MovePour): EditOutcome {
  const moved = find(draft.pours, edit.pour);
  if (moved === undefined) return refused("no-such-item", edit.pour);
  if (edit.before === edit.pour) return done();
  const order: Entry<Pour>[] = listed(draft.pours).filter((pour) => pour.id !== edit.pour);
  const index = edit.before === null ? order.length : order.findIndex((pour) => pour.id === edit.before);
  if (index < 0) return refused("no-such-item", edit.before);
  order.splice(index, 0, moved);
  for (const [rank, pour] of order.entries()) put(draft.pours, { ...pour, rank });
  return done();
}
