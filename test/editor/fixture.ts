// The two-room plan of the tests of edits as the editor holds it, and short ways to send events.

import { type Hit, hitAt } from "../../src/editor/snap/hit.ts";
import { planIndexOf } from "../../src/editor/snap/planIndex.ts";
import {
  contextOf,
  type EditorState,
  handleEvent,
  startEditor,
  takeTool,
  unitInHand,
  unitInView,
} from "../../src/editor/state/editorState.ts";
import {
  type Modifiers,
  NO_MODIFIERS,
  type ToolEvent,
  type ToolKey,
} from "../../src/editor/tools/protocol.ts";
import type { ToolName } from "../../src/editor/tools/tool.ts";
import { find, type ItemRef, type PlanDocument } from "../../src/plan/document.ts";
import type { Position, Unit } from "../../src/plan/project.ts";
import { documentOf, twoRooms } from "../plan/editFixture.ts";

/** What a test writes for an event: a place is moved to, a text is typed, a named key is pressed. */
export type Script = readonly (ToolEvent | string | Move)[];
interface Move {
  readonly go: Position;
  readonly with?: Partial<Modifiers>;
}

export function editorOn(unit: Unit = twoRooms(), tool: ToolName = "select"): EditorState {
  return takeTool(startEditor(documentOf(unit)), tool);
}

const KEYS: readonly ToolKey[] = [
  "Escape",
  "Enter",
  "Tab",
  "Backspace",
  "ArrowLeft",
  "ArrowRight",
  "ArrowUp",
  "ArrowDown",
];

/** The state after all events, with the thing under the pointer found as the page finds it. */
export function play(state: EditorState, ...script: Script): EditorState {
  return script.reduce<EditorState>((now, entry) => handleEvent(now, eventOf(now, entry)), state);
}

function eventOf(state: EditorState, entry: Script[number]): ToolEvent {
  if (typeof entry !== "string")
    return "go" in entry ? pointer(state, "move", entry.go, entry.with) : withHit(state, entry);
  const key = KEYS.find((name) => name === entry);
  return key === undefined ? { kind: "text", text: entry } : { kind: "key", key, modifiers: NO_MODIFIERS };
}

function withHit(state: EditorState, event: ToolEvent): ToolEvent {
  if (event.kind !== "press" && event.kind !== "release") return event;
  return event.hit === null ? pointer(state, event.kind, event.at, event.modifiers) : event;
}

function pointer(
  state: EditorState,
  kind: "press" | "move" | "release",
  at: Position,
  modifiers: Partial<Modifiers> = {},
): ToolEvent {
  return { kind, at, hit: hitOf(state, at), modifiers: { ...NO_MODIFIERS, ...modifiers } };
}

function hitOf(state: EditorState, at: Position): Hit | null {
  const { reach } = contextOf(state, "mouse");
  return hitAt(planIndexOf(unitInHand(state)), at, reach, state.session.selection.items);
}

export const press = (x: number, y: number, more: Partial<Modifiers> = {}): ToolEvent => ({
  kind: "press",
  at: [x, y],
  hit: null,
  modifiers: { ...NO_MODIFIERS, ...more },
});
export const release = (x: number, y: number, more: Partial<Modifiers> = {}): ToolEvent => ({
  kind: "release",
  at: [x, y],
  hit: null,
  modifiers: { ...NO_MODIFIERS, ...more },
});
export const go = (x: number, y: number, more: Partial<Modifiers> = {}): Move => ({ go: [x, y], with: more });
export const click = (x: number, y: number, more: Partial<Modifiers> = {}): Script => [
  press(x, y, more),
  release(x, y, more),
];
export const drag = (from: Position, to: Position, more: Partial<Modifiers> = {}): Script => [
  press(from[0], from[1]),
  go((from[0] + to[0]) / 2, (from[1] + to[1]) / 2, more),
  go(to[0], to[1], more),
  release(to[0], to[1], more),
];
export const double = (x: number, y: number): ToolEvent => ({
  kind: "double",
  at: [x, y],
  hit: null,
  modifiers: NO_MODIFIERS,
});

/** Ends of a wall in the document, as four numbers. */
export function ends(state: EditorState, id: string): readonly number[] | null {
  const wall = find(unitInHand(state).walls, id);
  return wall === undefined ? null : [...wall.from, ...wall.to];
}

/** Ends of a wall as the running gesture shows it. */
export function endsInView(state: EditorState, id: string): readonly number[] | null {
  const wall = find(unitInView(state).walls, id);
  return wall === undefined ? null : [...wall.from, ...wall.to];
}

export function selected(state: EditorState): readonly string[] {
  return state.session.selection.items.map(({ bucket, id }: ItemRef) => `${bucket} ${id}`);
}

export function steps(state: EditorState): number {
  return state.history.past.length;
}

export function doc(state: EditorState): PlanDocument {
  return state.history.doc;
}

/** The key of the reason the last preview gives, with the wall it names. */
export function snapShown(state: EditorState): string | null {
  const mark = state.session.preview?.marks.find(({ kind }) => kind === "snap");
  return mark?.kind === "snap" ? `${mark.reason.kind} ${mark.reason.wall ?? ""}`.trim() : null;
}

/** The figures the last preview shows: name without its family, value, what is typed. */
export function figures(state: EditorState): readonly (readonly [string, number, string | null])[] {
  return (state.session.preview?.marks ?? []).flatMap((mark) =>
    mark.kind === "figure" ? [[mark.name.replace("dimension.", ""), mark.value, mark.typed] as const] : [],
  );
}
