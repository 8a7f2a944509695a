// Draws paths and outlines point by point: services in the slab, balcony slabs and openings in slabs. Each stretch is
// straight, snapped and typed like a wall's.

import { isNear } from "../../geom/point.ts";
import type { Edit } from "../../plan/edit.ts";
import { JOINT_REACH, LEAST_WALL } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import { type Words, words } from "../words/say.ts";
import { aimAt, aimMarks, LINE_FIELDS } from "./aim.ts";
import {
  DISCARD,
  type Modifiers,
  plainQuery,
  snapMarks,
  type ToolContext,
  type ToolEvent,
  type Turned,
} from "./protocol.ts";
import {
  eraseLast,
  isTyped,
  nextField,
  nothingTyped,
  type Typed,
  typeOn,
  typeWhole,
  unreadable,
} from "./typed.ts";

export interface PathTool {
  readonly name: "service" | "slab" | "slab-opening";
  readonly phase:
    | { readonly kind: "idle" }
    | {
        readonly kind: "drawing";
        readonly places: readonly Position[];
        readonly pointer: Position;
        readonly modifiers: Modifiers;
        readonly typed: Typed;
      };
}

type Drawing = Extract<PathTool["phase"], { readonly kind: "drawing" }>;

export function pathTool(name: PathTool["name"]): PathTool {
  return { name, phase: { kind: "idle" } };
}

export function turnPathTool(tool: PathTool, event: ToolEvent, context: ToolContext): Turned<PathTool> {
  const { phase } = tool;
  if (phase.kind === "idle") return begin(tool, event, context);
  switch (event.kind) {
    case "move":
      return shown(tool, { ...phase, pointer: event.at, modifiers: event.modifiers }, context);
    case "press":
      return shown(tool, { ...phase, pointer: event.at, modifiers: event.modifiers }, context);
    case "release":
      return addPlace(tool, { ...phase, pointer: event.at, modifiers: event.modifiers }, context);
    case "double":
      return finish(tool, phase, context);
    case "text":
      return shown(tool, { ...phase, typed: typeOn(phase.typed, event.text) }, context);
    case "field":
      return shown(tool, { ...phase, typed: typeWhole(phase.typed, event.text) }, context);
    case "key":
      return keyed(tool, phase, event, context);
    default:
      return event satisfies never;
  }
}

function begin(tool: PathTool, event: ToolEvent, context: ToolContext): Turned<PathTool> {
  if (event.kind === "key" && event.key === "Escape") return [tool, [DISCARD]];
  if (event.kind !== "move" && event.kind !== "press") return [tool, []];
  const snap = context.snap(plainQuery(event.at, event.modifiers, context));
  if (event.kind === "move") return [tool, [{ kind: "preview", edits: [], marks: snapMarks(snap) }]];
  const { at: pointer, modifiers } = event;
  const typed = nothingTyped(LINE_FIELDS);
  return shown(tool, { kind: "drawing", places: [snap.at], pointer, modifiers, typed }, context);
}

function keyed(
  tool: PathTool,
  phase: Drawing,
  event: Extract<ToolEvent, { readonly kind: "key" }>,
  context: ToolContext,
): Turned<PathTool> {
  switch (event.key) {
    case "Escape":
      return [pathTool(tool.name), [DISCARD]];
    case "Enter":
      return isTyped(phase.typed) ? addPlace(tool, phase, context) : finish(tool, phase, context);
    case "Tab":
      return shown(tool, { ...phase, typed: nextField(phase.typed, event.modifiers.shift) }, context);
    case "Backspace": {
      if (isTyped(phase.typed)) return shown(tool, { ...phase, typed: eraseLast(phase.typed) }, context);
      const places = phase.places.slice(0, -1);
      return places.length === 0
        ? [pathTool(tool.name), [DISCARD]]
        : shown(tool, { ...phase, places }, context);
    }
    default:
      return [tool, []];
  }
}

// The point under the pointer joins the path; an outline brought back to its first corner is finished.
function addPlace(tool: PathTool, phase: Drawing, context: ToolContext): Turned<PathTool> {
  const text = unreadable(phase.typed);
  if (text !== null) return [tool, [{ kind: "message", said: words("message.not-a-number", { text }) }]];
  const { to, length } = aimFrom(phase, context);
  if (length < LEAST_WALL) return shown(tool, phase, context);
  const [first] = phase.places;
  const isBack = first !== undefined && phase.places.length > 2 && isNear(first, to, JOINT_REACH);
  if (isBack && tool.name !== "service") return finish(tool, phase, context);
  const places = [...phase.places, to];
  return shown(tool, { ...phase, places, typed: nothingTyped(LINE_FIELDS) }, context);
}

function finish(tool: PathTool, phase: Drawing, context: ToolContext): Turned<PathTool> {
  const least = tool.name === "service" ? 2 : 3;
  if (phase.places.length < least) {
    if (tool.name === "service") return [pathTool(tool.name), [DISCARD]];
    return [tool, [{ kind: "message", said: words("message.too-few-points") }]];
  }
  const edits = [pathEdit(tool.name, phase.places, context)];
  return [pathTool(tool.name), [{ kind: "commit", label: stepWords(tool.name), edits, select: null }]];
}

function shown(tool: PathTool, phase: Drawing, context: ToolContext): Turned<PathTool> {
  const aim = aimFrom(phase, context);
  const places = aim.length < LEAST_WALL ? phase.places : [...phase.places, aim.to];
  const least = tool.name === "service" ? 2 : 3;
  const edits = places.length < least ? [] : [pathEdit(tool.name, places, context)];
  const path = { kind: "path", places, isClosed: tool.name !== "service" } as const;
  return [{ ...tool, phase }, [{ kind: "preview", edits, marks: [path, ...aimMarks(aim, phase.typed)] }]];
}

function aimFrom(phase: Drawing, context: ToolContext) {
  const { pointer, modifiers, typed } = phase;
  const last = phase.places[phase.places.length - 1] ?? pointer;
  const [first] = phase.places;
  // The first corner draws the last stretch to itself, straight or not: an outline must close.
  const closes = first !== undefined && phase.places.length > 2 && isNear(first, pointer, context.reach);
  if (!closes) return aimAt({ from: last, pointer, modifiers, typed }, context);
  const free: Modifiers = { ...modifiers, alt: true, shift: context.settings.ortho };
  return aimAt({ from: last, pointer: first, modifiers: free, typed }, context);
}

function pathEdit(
  name: PathTool["name"],
  places: readonly Position[],
  { unit, settings }: ToolContext,
): Edit {
  if (name === "service") {
    return { kind: "add-service", unit: unit.id, path: places, clearance: settings.clearance };
  }
  const bucket = name === "slab" ? "slabs" : "slabOpenings";
  return { kind: "add-slab", unit: unit.id, bucket, outline: places };
}

function stepWords(name: PathTool["name"]): Words {
  return name === "service" ? words("step.add-service") : words("step.add-slab");
}
