// Every change of a project as a piece of data, and the one function that carries it out.
//
// The function writes into the document it is given: the command line hands it a clone, the editor the draft of its
// undo history. The same document and the same edit always give the same result, ids of things made included. An
// edit that is refused has written nothing.

import { find, type PlanDraft, type UnitDraft } from "./document.ts";
import { type SetClear, setClear } from "./editClear.ts";
import {
  type AddLoose,
  addLoose,
  type ChangeLoose,
  changeLoose,
  type Delete,
  deleteItems,
} from "./editLoose.ts";
import { type Move, type MoveJoint, move, moveJoint } from "./editMove.ts";
import { type OffsetWalls, offsetWalls } from "./editOffset.ts";
import { type AddOpening, addOpening, type ChangeOpening, changeOpening } from "./editOpenings.ts";
import { type EditOutcome, refused } from "./editOutcome.ts";
import { applyProjectEdit, type ProjectEdit } from "./editProject.ts";
import { type SetPins, setPins } from "./editSetPins.ts";
import { type JoinWalls, joinWalls, type SplitWall, splitWall } from "./editSplit.ts";
import { type Mirror, mirror, type Paste, paste, type Turn, turn } from "./editTransform.ts";
import { type SetUnderlay, setUnderlay } from "./editUnderlay.ts";
import {
  type AddWall,
  addWall,
  type ChangeWalls,
  changeWalls,
  type FlipWalls,
  flipWalls,
  type RedrawWall,
  redrawWall,
} from "./editWalls.ts";

/** A change inside one unit. */
export type UnitEdit =
  | AddWall
  | ChangeWalls
  | RedrawWall
  | FlipWalls
  | SplitWall
  | JoinWalls
  | OffsetWalls
  | SetClear
  | Move
  | MoveJoint
  | Mirror
  | Turn
  | AddOpening
  | ChangeOpening
  | AddLoose
  | ChangeLoose
  | Delete
  | Paste
  | SetPins
  | SetUnderlay;

export type Edit = UnitEdit | ProjectEdit;

/**
 * Carries out an edit on `draft`. Cost grows with the number of things in the unit, for `move` with that number times
 * the number of walls moved.
 */
export function applyEdit(draft: PlanDraft, edit: Edit): EditOutcome {
  if (!isUnitEdit(edit)) return applyProjectEdit(draft, edit);
  const unit = find(draft.units, edit.unit);
  return unit === undefined ? refused("no-such-unit", edit.unit) : applyUnitEdit(unit, edit);
}

/**
 * Carries out several edits, each on what the one before has left. Stops at the first that is refused: the caller
 * must then throw the draft away.
 */
export function applyEdits(draft: PlanDraft, edits: readonly Edit[]): EditOutcome {
  const made = [];
  for (const edit of edits) {
    const outcome = applyEdit(draft, edit);
    if (outcome.status === "refused") return outcome;
    made.push(...outcome.made);
  }
  return { status: "done", made };
}

function isUnitEdit(edit: Edit): edit is UnitEdit {
  switch (edit.kind) {
    case "change-project":
    case "add-unit":
    case "change-unit":
    case "duplicate-unit":
    case "delete-unit":
    case "add-pour":
    case "change-pour":
    case "delete-pour":
    case "move-pour":
      return false;
    default:
      return true;
  }
}

function applyUnitEdit(unit: UnitDraft, edit: UnitEdit): EditOutcome {
  switch (edit.kind) {
    case "add-wall":
      return addWall(unit, edit);
    case "change-walls":
      return changeWalls(unit, edit);
    case "redraw-wall":
      return redrawWall(unit, edit);
    case "flip-walls":
      return flipWalls(unit, edit);
    case "split-wall":
      return splitWall(unit, edit);
    case "join-walls":
      return joinWalls(unit, edit);
    case "offset-walls":
      return offsetWalls(unit, edit);
    case "set-clear":
      return setClear(unit, edit);
    case "move":
      return move(unit, edit);
    case "move-joint":
      return moveJoint(unit, edit);
    case "mirror":
      return mirror(unit, edit);
    case "turn":
      return turn(unit, edit);
    case "add-opening":
      return addOpening(unit, edit);
    case "change-opening":
      return changeOpening(unit, edit);
    case "add-room":
    case "add-slab":
    case "add-service":
    case "add-control-line":
    case "pin":
      return addLoose(unit, edit);
    case "change-room":
    case "change-slab":
    case "change-service":
    case "change-control-line":
      return changeLoose(unit, edit);
    case "delete":
      return deleteItems(unit, edit);
    case "paste":
      return paste(unit, edit);
    case "set-pins":
      return setPins(unit, edit);
    case "set-underlay":
      return setUnderlay(unit, edit);
    default:
      return edit satisfies never;
  }
}
