// Places columns: short walls, by their centre, as wide and deep as set or typed.

import type { Edit } from "../../plan/edit.ts";
import { tidyPosition } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { words } from "../words/say.ts";
import {
  DISCARD,
  type Mark,
  type Modifiers,
  NO_MODIFIERS,
  plainQuery,
  snapMarks,
  type ToolContext,
  type ToolEvent,
  type Turned,
} from "./protocol.ts";
import {
  eraseLast,
  nextField,
  nothingTyped,
  type Typed,
  typedNumber,
  typeOn,
  typeWhole,
  unreadable,
} from "./typed.ts";

export interface ColumnTool {
  readonly name: "column";
  /** Where the pointer is; null before it has been on the plan. */
  readonly pointer: Position | null;
  readonly modifiers: Modifiers;
  readonly isPressed: boolean;
  readonly typed: Typed;
}

const [WIDTH, DEPTH] = [0, 1] as const;
const FIELDS = 2;

export const COLUMN_TOOL: ColumnTool = {
  name: "column",
  pointer: null,
  modifiers: NO_MODIFIERS,
  isPressed: false,
  typed: nothingTyped(FIELDS),
};

export function turnColumnTool(tool: ColumnTool, event: ToolEvent, context: ToolContext): Turned<ColumnTool> {
  switch (event.kind) {
    case "move":
    case "press": {
      const isPressed = event.kind === "press" || tool.isPressed;
      return shown({ ...tool, pointer: event.at, modifiers: event.modifiers, isPressed }, context);
    }
    case "release":
      return tool.isPressed
        ? finish({ ...tool, pointer: event.at, modifiers: event.modifiers, isPressed: false }, context)
        : [tool, []];
    case "double":
      return [tool, []];
    case "text":
      return shown({ ...tool, typed: typeOn(tool.typed, event.text) }, context);
    case "field":
      return shown({ ...tool, typed: typeWhole(tool.typed, event.text) }, context);
    case "key":
      return keyed(tool, event, context);
    default:
      return event satisfies never;
  }
}

function keyed(
  tool: ColumnTool,
  event: Extract<ToolEvent, { readonly kind: "key" }>,
  context: ToolContext,
): Turned<ColumnTool> {
  switch (event.key) {
    case "Escape":
      return [COLUMN_TOOL, [DISCARD]];
    case "Enter":
      return finish(tool, context);
    case "Tab":
      return shown({ ...tool, typed: nextField(tool.typed, event.modifiers.shift) }, context);
    case "Backspace":
      return shown({ ...tool, typed: eraseLast(tool.typed) }, context);
    default:
      return [tool, []];
  }
}

function shown(tool: ColumnTool, context: ToolContext): Turned<ColumnTool> {
  if (tool.pointer === null) return [tool, []];
  const snap = context.snap(plainQuery(tool.pointer, tool.modifiers, context));
  const [width, depth] = sizeOf(tool, context);
  const edits = width > 0 && depth > 0 ? [columnEdit(snap.at, width, depth, context)] : [];
  return [
    tool,
    [{ kind: "preview", edits, marks: [...snapMarks(snap), ...figures(tool, snap.at, context)] }],
  ];
}

function finish(tool: ColumnTool, context: ToolContext): Turned<ColumnTool> {
  const text = unreadable(tool.typed);
  if (text !== null) return [tool, [{ kind: "message", said: words("message.not-a-number", { text }) }]];
  if (tool.pointer === null) return [tool, []];
  const { at } = context.snap(plainQuery(tool.pointer, tool.modifiers, context));
  const edits = [columnEdit(at, ...sizeOf(tool, context), context)];
  return [tool, [{ kind: "commit", label: words("step.add-column"), edits, select: null }]];
}

function sizeOf({ typed }: ColumnTool, { settings }: ToolContext): readonly [width: Mm, depth: Mm] {
  return [
    typedNumber(typed, WIDTH) ?? settings.column.width,
    typedNumber(typed, DEPTH) ?? settings.column.depth,
  ];
}

function columnEdit([x, y]: Position, width: Mm, depth: Mm, { unit }: ToolContext): Edit {
  const [from, to] = [tidyPosition([x - width / 2, y]), tidyPosition([x + width / 2, y])];
  return { kind: "add-wall", unit: unit.id, wall: { from, to, thickness: depth, justify: "centre" } };
}

function figures(tool: ColumnTool, [x, y]: Position, context: ToolContext): readonly Mark[] {
  const [width, depth] = sizeOf(tool, context);
  const figure = { kind: "figure", unit: "mm" } as const;
  return [
    {
      ...figure,
      name: "dimension.width",
      value: width,
      from: [x - width / 2, y],
      to: [x + width / 2, y],
      typed: tool.typed.texts[WIDTH] ?? null,
      isActive: tool.typed.active === WIDTH,
    },
    {
      ...figure,
      name: "dimension.depth",
      value: depth,
      from: [x, y - depth / 2],
      to: [x, y + depth / 2],
      typed: tool.typed.texts[DEPTH] ?? null,
      isActive: tool.typed.active === DEPTH,
    },
  ];
}
