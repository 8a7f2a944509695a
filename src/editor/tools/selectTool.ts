// Selects by click and by window, drags what is selected, and types into its dimensions.
//
//   idle ──press on a thing──▶ pressing ──moved far enough──▶ dragging ──release──▶ one step
//     │ └─press on nothing───▶ pressing ──moved far enough──▶ window   ──release──▶ a selection
//     └──digit, or press on a figure──▶ typing ──Enter──▶ one step

import type { ItemRef } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import type { Position } from "../../plan/project.ts";
import { boxAround } from "../box.ts";
import { isAmong, toggled } from "../selection.ts";
import type { Hit } from "../snap/hit.ts";
import { words } from "../words/say.ts";
import { dragTo, movingItems } from "./dragging.ts";
import {
  DISCARD,
  type Intent,
  type Mark,
  type Modifiers,
  type PointerEvent,
  type ToolContext,
  type ToolEvent,
  type ToolKey,
  type Turned,
} from "./protocol.ts";
import { beginTyping, keepTyped, nextTyping, type Typing, typedOn, typingPreview } from "./typeDimension.ts";
import { isNumeric } from "./typed.ts";

interface Held {
  readonly hit: Hit | null;
  /** What a drag would move. */
  readonly items: readonly ItemRef[];
  readonly start: Position;
}

export type SelectPhase =
  | { readonly kind: "idle" }
  | ({ readonly kind: "pressing"; readonly wasSelected: boolean; readonly modifiers: Modifiers } & Held)
  | ({ readonly kind: "dragging"; readonly pointer: Position; readonly modifiers: Modifiers } & Held)
  | { readonly kind: "window"; readonly start: Position; readonly added: readonly ItemRef[] }
  | ({ readonly kind: "typing" } & Typing);

export interface SelectTool {
  readonly name: "select";
  readonly phase: SelectPhase;
}

export const SELECT_TOOL: SelectTool = { name: "select", phase: { kind: "idle" } };

export function turnSelectTool(tool: SelectTool, event: ToolEvent, context: ToolContext): Turned<SelectTool> {
  const { phase } = tool;
  switch (event.kind) {
    case "press":
      return pressedAnew(phase, event, context);
    case "move":
      return pointed(tool, event, context);
    case "release":
      return released(tool, event, context);
    case "double":
      return [tool, []];
    case "text":
      return typedText(tool, event.text, context);
    case "field":
      return phase.kind === "typing" ? typing({ ...phase, text: event.text }, context) : [tool, []];
    case "key":
      return keyed(tool, event, context);
    default:
      return event satisfies never;
  }
}

function pressed(event: PointerEvent, context: ToolContext): Turned<SelectTool> {
  const { hit, at: start, modifiers } = event;
  if (hit?.kind === "dimension") {
    return typing({ items: context.selection, end: null, key: hit.key, text: "" }, context);
  }
  if (hit?.kind === "end") {
    const items: readonly ItemRef[] = [{ bucket: "walls", id: hit.wall }];
    return [inPhase({ kind: "pressing", hit, items, start, wasSelected: true, modifiers }), []];
  }
  if (hit === null) {
    return [inPhase({ kind: "pressing", hit, items: [], start, wasSelected: false, modifiers }), []];
  }
  const wasSelected = isAmong(context.selection, hit.item);
  const kept = modifiers.shift || wasSelected ? context.selection : [];
  const items = wasSelected ? kept : [...kept, hit.item];
  const selected: readonly Intent[] = wasSelected ? [] : [{ kind: "select", items }];
  return [inPhase({ kind: "pressing", hit, items, start, wasSelected, modifiers }), selected];
}

function pointed(tool: SelectTool, event: PointerEvent, context: ToolContext): Turned<SelectTool> {
  const { phase } = tool;
  const { at: pointer, modifiers } = event;
  if (phase.kind === "dragging") return dragged({ ...phase, pointer, modifiers }, context);
  if (phase.kind === "window") return [inPhase(phase), [windowPreview(phase.start, pointer)]];
  if (phase.kind !== "pressing") return [tool, []];
  const [dx, dy] = [pointer[0] - phase.start[0], pointer[1] - phase.start[1]];
  if (dx * dx + dy * dy <= context.reach * context.reach) return [tool, []];
  if (phase.hit !== null) {
    const { hit, items, start } = phase;
    return dragged({ kind: "dragging", hit, items, start, pointer, modifiers }, context);
  }
  const added = phase.modifiers.shift ? context.selection : [];
  return [inPhase({ kind: "window", start: phase.start, added }), [windowPreview(phase.start, pointer)]];
}

function released({ phase }: SelectTool, event: PointerEvent, context: ToolContext): Turned<SelectTool> {
  switch (phase.kind) {
    case "idle":
    case "typing":
      return [inPhase(phase), []];
    case "pressing":
      return [SELECT_TOOL, clicked(phase, context)];
    case "window": {
      const { box, touching } = windowOf(phase.start, event.at);
      const met = context.itemsInWindow(box, touching).filter((item) => !isAmong(phase.added, item));
      return [SELECT_TOOL, [DISCARD, { kind: "select", items: [...phase.added, ...met] }]];
    }
    case "dragging": {
      const { hit, items, start } = phase;
      if (hit === null) return [SELECT_TOOL, [DISCARD]];
      const { at: pointer, modifiers } = event;
      const { edits, label } = dragTo({ hit, items, start, pointer, modifiers }, context);
      if (edits.length === 0) return [SELECT_TOOL, [DISCARD]];
      const select = modifiers.ctrl && hit.kind === "item" ? null : context.selection;
      return [SELECT_TOOL, [{ kind: "commit", label, edits, select }]];
    }
    default:
      return phase satisfies never;
  }
}

// A click that has not become a drag: with Shift it takes the thing in or out, without it leaves that alone selected.
function clicked(
  phase: Extract<SelectPhase, { readonly kind: "pressing" }>,
  context: ToolContext,
): readonly Intent[] {
  const { hit, modifiers, wasSelected } = phase;
  if (hit === null) return modifiers.shift ? [] : [{ kind: "select", items: [] }];
  if (hit.kind !== "item" || !wasSelected) return [];
  const items = modifiers.shift ? toggled(context.selection, hit.item) : [hit.item];
  return [{ kind: "select", items }];
}

function dragged(
  phase: Extract<SelectPhase, { readonly kind: "dragging" }>,
  context: ToolContext,
): Turned<SelectTool> {
  const { hit, items, start, pointer, modifiers } = phase;
  if (hit === null) return [SELECT_TOOL, []];
  const { edits, reason } = dragTo({ hit, items, start, pointer, modifiers }, context);
  const marks: readonly Mark[] = reason === null ? [] : [{ kind: "snap", reason }];
  return [inPhase(phase), [{ kind: "preview", edits, marks }]];
}

function typedText(tool: SelectTool, text: string, context: ToolContext): Turned<SelectTool> {
  const { phase } = tool;
  if (!isNumeric(text)) return [tool, []];
  if (phase.kind === "typing") return typing(typedOn(phase, text), context);
  const isHeld = phase.kind === "pressing" || phase.kind === "dragging";
  const items = isHeld ? phase.items : context.selection;
  const end = isHeld && phase.hit?.kind === "end" ? phase.hit.end : null;
  const begun = beginTyping({ items, end, key: end === null ? null : "length", text }, context);
  return begun === null ? [tool, []] : typing(begun, context);
}

// The tool in the typing phase, showing what the figure would give; at rest where there is no such figure.
function typing(phase: Typing, context: ToolContext): Turned<SelectTool> {
  const shown = typingPreview(phase, context);
  return shown === null ? [SELECT_TOOL, [DISCARD]] : [inPhase({ kind: "typing", ...phase }), [shown]];
}

// A click beside the field keeps what was typed. A press in the middle of a gesture (its release went elsewhere) drops
// what that gesture showed.
function pressedAnew(phase: SelectPhase, event: PointerEvent, context: ToolContext): Turned<SelectTool> {
  const [next, intents] = pressed(event, context);
  if (phase.kind === "typing") return [next, [...keepTyped(phase, context), ...intents]];
  return [next, phase.kind === "idle" ? intents : [DISCARD, ...intents]];
}

function keyed(
  tool: SelectTool,
  event: Extract<ToolEvent, { readonly kind: "key" }>,
  context: ToolContext,
): Turned<SelectTool> {
  const { phase } = tool;
  if (event.key === "Escape") return escaped(tool, context);
  if (phase.kind === "typing") return keyedWhileTyping(phase, event, context);
  const step = ARROWS[event.key];
  if (phase.kind !== "idle" || step === undefined || context.selection.length === 0) return [tool, []];
  const { shift, alt } = event.modifiers;
  const by = alt ? 1 : (context.settings.grid || 1) * (shift ? COARSE : 1);
  const items = movingItems(context.unit, context.selection);
  const edit: Edit = {
    kind: "move",
    unit: context.unit.id,
    items,
    dx: step[0] * by,
    dy: step[1] * by,
    stretch: true,
  };
  const label = words("step.move", { count: context.selection.length });
  return [tool, [{ kind: "commit", label, edits: [edit], select: context.selection }]];
}

const COARSE = 10; // times the step, with Shift
const ARROWS: Readonly<Partial<Record<ToolKey, readonly [x: number, y: number]>>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

// Leaves a gesture with nothing behind it; at rest it lets the selection go.
function escaped({ phase }: SelectTool, context: ToolContext): Turned<SelectTool> {
  if (phase.kind !== "idle") return [SELECT_TOOL, [DISCARD]];
  const letGo: readonly Intent[] = context.selection.length === 0 ? [] : [{ kind: "select", items: [] }];
  return [SELECT_TOOL, letGo];
}

function keyedWhileTyping(
  phase: Typing,
  event: Extract<ToolEvent, { readonly kind: "key" }>,
  context: ToolContext,
): Turned<SelectTool> {
  switch (event.key) {
    case "Enter":
      return [SELECT_TOOL, keepTyped(phase, context)];
    case "Backspace":
      return typing({ ...phase, text: phase.text.slice(0, -1) }, context);
    case "Tab": {
      const kept = phase.text === "" ? [] : keepTyped(phase, context);
      const next = nextTyping(phase, event.modifiers.shift, context);
      if (next === null) return [SELECT_TOOL, kept];
      const [turned, intents] = typing(next, context);
      return [turned, [...kept, ...intents]];
    }
    default:
      return [inPhase({ kind: "typing", ...phase }), []];
  }
}

function windowOf(start: Position, end: Position) {
  // Drawn to the right a window takes what lies in it, drawn to the left also what it touches.
  return { box: boxAround([start, end]), touching: end[0] < start[0] };
}

function windowPreview(start: Position, end: Position): Intent {
  return { kind: "preview", edits: [], marks: [{ kind: "window", ...windowOf(start, end) }] };
}

function inPhase(phase: SelectPhase): SelectTool {
  return { name: "select", phase };
}
