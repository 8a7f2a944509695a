// What the commands of the list do that need no screen: each takes the state and gives the next.

import type { ItemRef } from "../../plan/document.ts";
import { find } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import { wallLength } from "../../plan/editAxis.ts";
import { copyItems } from "../../plan/editClip.ts";
import type { Position } from "../../plan/project.ts";
import { boxAround, placesOf } from "../box.ts";
import type { Command, CommandId, Condition } from "../keys.ts";
import { allItems } from "../selection.ts";
import { startTool, type ToolName } from "../tools/tool.ts";
import { type Words, words } from "../words/say.ts";
import {
  type EditorState,
  showUnit,
  takeStep,
  takeTool,
  unitInHand,
  walk,
  withSession,
} from "./editorState.ts";

const OFFSET = 1000; // mm a parallel wall stands off at first; its clear distance is selected and can be typed at once
const PASTE_STEP = 500; // mm a copy is put aside when pasted where it came from, so that it is seen

/** Whether a command can be called as things stand. `isFaceShown`: the pane shows a face of a wall. */
export function isAvailable({ when }: Command, state: EditorState, isFaceShown: boolean): boolean {
  return holds(when, state, isFaceShown);
}

function holds(when: Condition, { history, session }: EditorState, isFaceShown: boolean): boolean {
  const { items } = session.selection;
  const areWalls = items.length > 0 && items.every(({ bucket }) => bucket === "walls");
  switch (when) {
    case "always":
      return true;
    case "something-to-undo":
      return history.past.length > 0;
    case "something-to-redo":
      return history.future.length > 0;
    case "something-selected":
      return items.length > 0;
    case "nothing-selected":
      return items.length === 0;
    case "one-wall-selected":
      return areWalls && items.length === 1;
    case "walls-selected":
      return areWalls;
    case "something-copied":
      return session.clip !== null;
    case "face-shown":
      return isFaceShown;
    default:
      return when satisfies never;
  }
}

/** Carries out a command; null where it is the screen's to carry out (zoom, panes, files). */
export function runCommand(state: EditorState, id: CommandId): EditorState | null {
  const isTool = id.startsWith("tool.");
  if (isTool) return takeTool(state, toolNameOf(id) ?? "select");
  const { items } = state.session.selection;
  const unit = unitInHand(state);
  switch (id) {
    case "command.undo":
      return walk(state, "undo");
    case "command.redo":
      return walk(state, "redo");
    case "command.select-all":
      return withSession(takeTool(state, "select"), {
        selection: { unit: unit.id, items: allItems(unit) },
      });
    case "command.copy":
      return copied(state);
    case "command.cut":
      return deleted(copied(state));
    case "command.delete":
      return deleted(state);
    case "command.paste":
      return pasted(state);
    case "command.turn-left":
      return turned(state, 1);
    case "command.turn-right":
      return turned(state, -1);
    case "command.mirror-across":
      return mirrored(state, [0, 1]);
    case "command.mirror-upright":
      return mirrored(state, [1, 0]);
    case "command.split":
      return split(state);
    case "command.join":
      return step(state, words("step.join"), { kind: "join-walls", unit: unit.id, walls: idsOf(items) });
    case "command.flip":
      return step(state, words("step.flip"), { kind: "flip-walls", unit: unit.id, walls: idsOf(items) });
    case "command.offset-left":
      return offset(state, OFFSET);
    case "command.offset-right":
      return offset(state, -OFFSET);
    case "command.duplicate-unit":
      return duplicated(state, false);
    case "command.duplicate-mirrored":
      return duplicated(state, true);
    case "command.toggle-ortho":
      return withSettings(state, { ortho: !state.session.settings.ortho });
    case "command.toggle-snap":
      return withSettings(state, { snapping: !state.session.settings.snapping });
    default:
      return null;
  }
}

/** The state with other settings to draw with. */
export function withSettings(
  state: EditorState,
  change: Partial<EditorState["session"]["settings"]>,
): EditorState {
  return withSession(state, { settings: { ...state.session.settings, ...change } });
}

const TOOL_NAMES: readonly ToolName[] = [
  "select",
  "wall",
  "door",
  "window",
  "column",
  "room",
  "service",
  "slab",
  "slab-opening",
  "control-line",
  "measure",
  "calibrate",
];

function toolNameOf(id: CommandId): ToolName | null {
  return TOOL_NAMES.find((name) => `tool.${name}` === id) ?? null;
}

// A step that leaves the selection as it is, as far as it is still there.
function step(state: EditorState, label: Words, edit: Edit): EditorState {
  return takeStep(laidDown(state), label, [edit], state.session.selection.items);
}

function laidDown(state: EditorState): EditorState {
  return withSession(state, { tool: startTool(state.session.tool.name), preview: null });
}

function copied(state: EditorState): EditorState {
  const { unit, items } = state.session.selection;
  if (items.length === 0) return state;
  const clip = copyItems(unitInHand(state), items);
  const message = words("message.copied", { count: items.length });
  return withSession(state, { clip: { unit, clip }, message });
}

function deleted(state: EditorState): EditorState {
  const { unit, items } = state.session.selection;
  if (items.length === 0) return state;
  const label = words("step.delete", { count: items.length });
  return takeStep(laidDown(state), label, [{ kind: "delete", unit, items }], []);
}

function pasted(state: EditorState): EditorState {
  const { clip, selection } = state.session;
  if (clip === null) return withSession(state, { message: words("message.nothing-to-paste") });
  const aside = clip.unit === selection.unit ? PASTE_STEP : 0;
  const edit: Edit = { kind: "paste", unit: selection.unit, clip: clip.clip, dx: aside, dy: 0 - aside };
  const count = Object.values(clip.clip).reduce((sum, list) => sum + list.length, 0);
  return takeStep(takeTool(state, "select"), words("step.paste", { count }), [edit], null);
}

// About the middle of the box round the selection, to the whole millimetre.
function turned(state: EditorState, sine: 1 | -1): EditorState {
  const { unit, items } = state.session.selection;
  if (items.length === 0) return state;
  const [x, y] = middleOf(state, items);
  const about: Position = [Math.round(x), Math.round(y)];
  return step(state, words("step.turn"), { kind: "turn", unit, items, about, cosine: 0, sine, copy: false });
}

function mirrored(state: EditorState, [dx, dy]: Position): EditorState {
  const { unit, items } = state.session.selection;
  if (items.length === 0) return state;
  const from = middleOf(state, items);
  const to: Position = [from[0] + dx, from[1] + dy];
  return step(state, words("step.mirror"), { kind: "mirror", unit, items, from, to, copy: false });
}

function middleOf(state: EditorState, items: readonly ItemRef[]): Position {
  const unit = unitInHand(state);
  const places = items.flatMap(({ bucket, id }) => {
    const wall = bucket === "walls" ? find(unit.walls, id) : undefined;
    return wall === undefined ? placesOf(unit, { bucket, id }) : [wall.from, wall.to];
  });
  const box = boxAround(places);
  return [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
}

function offset(state: EditorState, distance: number): EditorState {
  const { unit, items } = state.session.selection;
  const edit: Edit = { kind: "offset-walls", unit, walls: idsOf(items), distance };
  return takeStep(laidDown(state), words("step.offset"), [edit], null);
}

function split(state: EditorState): EditorState {
  const { unit, items } = state.session.selection;
  const [first] = items;
  const wall = first?.bucket === "walls" ? find(unitInHand(state).walls, first.id) : undefined;
  if (wall === undefined) return state;
  const at = Math.round(wallLength(wall) / 2);
  return step(state, words("step.split"), { kind: "split-wall", unit, wall: wall.id, at });
}

// The copy is shown at once, with nothing selected.
function duplicated(state: EditorState, mirror: boolean): EditorState {
  const { unit } = state.session.selection;
  const before = new Set(Object.keys(state.history.doc.units));
  const edit: Edit = { kind: "duplicate-unit", unit, id: null, name: unitInHand(state).name, mirror };
  const after = takeStep(laidDown(state), words("step.duplicate-unit"), [edit], []);
  const made = Object.entries(after.history.doc.units).find(([key]) => !before.has(key));
  return made === undefined ? after : showUnit(after, made[1].id);
}

function idsOf(items: readonly ItemRef[]): readonly string[] {
  return items.map(({ id }) => id);
}
