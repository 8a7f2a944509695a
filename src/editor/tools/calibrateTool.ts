// Gives the picture under the drawing its scale: click two places on it, type how far apart they are. Dragging moves
// the picture.
//
//   idle ─press─▶ pressed ─release─▶ first ─press─▶ second ─digits, Enter─▶ one step
//                    └─move─▶ dragging ─release─▶ one step

import type { Edit } from "../../plan/edit.ts";
import { spanLength } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import {
  calibrated,
  isOnUnderlay,
  movedBy,
  readUnderlay,
  type Underlay,
  underlayJson,
} from "../underlay/underlay.ts";
import { parseTyped } from "../words/numbers.ts";
import { type Words, words } from "../words/say.ts";
import {
  DISCARD,
  type Intent,
  type Mark,
  type PointerEvent,
  type ToolContext,
  type ToolEvent,
  type Turned,
} from "./protocol.ts";
import { isNumeric } from "./typed.ts";

type Phase =
  | { readonly kind: "idle" }
  | { readonly kind: "pressed"; readonly at: Position }
  | { readonly kind: "dragging"; readonly from: Position; readonly to: Position }
  | { readonly kind: "first"; readonly from: Position }
  | { readonly kind: "second"; readonly from: Position; readonly to: Position; readonly text: string | null };

export interface CalibrateTool {
  readonly name: "calibrate";
  readonly phase: Phase;
}

export const CALIBRATE_TOOL: CalibrateTool = { name: "calibrate", phase: { kind: "idle" } };

export function turnCalibrateTool(
  tool: CalibrateTool,
  event: ToolEvent,
  context: ToolContext,
): Turned<CalibrateTool> {
  if (event.kind === "key" && event.key === "Escape") return [CALIBRATE_TOOL, [DISCARD]];
  const answer = readUnderlay(context.unit.underlay);
  if (answer.status !== "ok") {
    const asked = event.kind === "press" ? [told(words("message.no-underlay"))] : [];
    return [CALIBRATE_TOOL, asked];
  }
  switch (event.kind) {
    case "press":
    case "move":
    case "release":
    case "double":
      return turnPointer(tool, event, { context, underlay: answer.underlay });
    case "text":
    case "field":
    case "key":
      return turnTyping(tool, event, { context, underlay: answer.underlay });
    default:
      return event satisfies never;
  }
}

interface Around {
  readonly context: ToolContext;
  readonly underlay: Underlay;
}

function turnPointer(
  tool: CalibrateTool,
  { kind, at }: PointerEvent,
  { context, underlay }: Around,
): Turned<CalibrateTool> {
  const { phase } = tool;
  if (kind === "press") {
    if (phase.kind === "first") {
      if (spanLength(phase.from, at) < context.reach) return [tool, []];
      return shown({ kind: "second", from: phase.from, to: at, text: null });
    }
    if (!isOnUnderlay(underlay, at))
      return [CALIBRATE_TOOL, [DISCARD, told(words("message.beside-underlay"))]];
    return phased({ kind: "pressed", at });
  }
  if (kind === "move") {
    if (phase.kind === "pressed" && !underlay.locked && spanLength(phase.at, at) > context.reach)
      return dragged({ kind: "dragging", from: phase.at, to: at }, { context, underlay });
    if (phase.kind === "dragging") return dragged({ ...phase, to: at }, { context, underlay });
    return phase.kind === "first" ? [tool, [preview(lineMarks(phase.from, at, null))]] : [tool, []];
  }
  if (kind === "release" && phase.kind === "pressed")
    return [phased({ kind: "first", from: phase.at })[0], [preview(lineMarks(phase.at, phase.at, null))]];
  if (kind === "release" && phase.kind === "dragging") {
    const edits = moveEdits({ ...phase, to: at }, { context, underlay });
    return [CALIBRATE_TOOL, [edits.length === 0 ? DISCARD : commit(words("step.move-underlay"), edits)]];
  }
  return [tool, []];
}

function turnTyping(
  tool: CalibrateTool,
  event: Exclude<ToolEvent, PointerEvent>,
  around: Around,
): Turned<CalibrateTool> {
  const { phase } = tool;
  if (phase.kind !== "second") return [tool, []];
  const text = phase.text ?? "";
  if (event.kind === "text")
    return isNumeric(event.text) ? shown({ ...phase, text: text + event.text }) : [tool, []];
  if (event.kind === "field") return shown({ ...phase, text: event.text === "" ? null : event.text });
  if (event.key === "Backspace") return shown({ ...phase, text: text.length > 1 ? text.slice(0, -1) : null });
  if (event.key !== "Enter" && event.key !== "Tab") return [tool, []];
  return finished(tool, phase, around);
}

function finished(
  tool: CalibrateTool,
  { from, to, text }: Extract<Phase, { readonly kind: "second" }>,
  { context, underlay }: Around,
): Turned<CalibrateTool> {
  const distance = text === null ? null : parseTyped(text);
  if (distance === null) return [tool, [told(words("message.not-a-number", { text: text ?? "" }))]];
  const scaled = calibrated(underlay, { from, to, distance });
  if (scaled === null) return [tool, [told(words("message.cannot-calibrate"))]];
  return [CALIBRATE_TOOL, [commit(words("step.calibrate"), [underlayEdit(scaled, context)])]];
}

function dragged(
  phase: Extract<Phase, { readonly kind: "dragging" }>,
  around: Around,
): Turned<CalibrateTool> {
  return [{ name: "calibrate", phase }, [{ kind: "preview", edits: moveEdits(phase, around), marks: [] }]];
}

function moveEdits(
  { from, to }: Extract<Phase, { readonly kind: "dragging" }>,
  { context, underlay }: Around,
): readonly Edit[] {
  const moved = movedBy(underlay, to[0] - from[0], to[1] - from[1]);
  return moved === null ? [] : [underlayEdit(moved, context)];
}

function underlayEdit(underlay: Underlay, { unit }: ToolContext): Edit {
  return { kind: "set-underlay", unit: unit.id, underlay: underlayJson(underlay) };
}

function shown(phase: Extract<Phase, { readonly kind: "second" }>): Turned<CalibrateTool> {
  return [{ name: "calibrate", phase }, [preview(lineMarks(phase.from, phase.to, phase.text))]];
}

function phased(phase: Phase): Turned<CalibrateTool> {
  return [{ name: "calibrate", phase }, []];
}

function preview(marks: readonly Mark[]): Intent {
  return { kind: "preview", edits: [], marks };
}

function commit(label: Words, edits: readonly Edit[]): Intent {
  return { kind: "commit", label, edits, select: null };
}

function told(said: Words): Intent {
  return { kind: "message", said };
}

function lineMarks(from: Position, to: Position, typed: string | null): readonly Mark[] {
  const value = spanLength(from, to);
  return [
    { kind: "line", from, to },
    { kind: "figure", name: "dimension.distance", value, unit: "mm", from, to, typed, isActive: true },
  ];
}
