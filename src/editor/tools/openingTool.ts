// Drops doors and windows on walls: the opening hangs on the wall under the pointer, is dragged along it with its
// distances to both neighbours in view, and any of them or the width can be typed.

import { alongLine } from "../../geom/line.ts";
import { find } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import { placeOnWall, tidy, wallLength, wallLine } from "../../plan/editAxis.ts";
import { keptAt } from "../../plan/editWalls.ts";
import type { Position, Wall } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { freeAround, type Stretch } from "../along.ts";
import { toStep } from "../snap/openSnap.ts";
import { words } from "../words/say.ts";
import {
  DISCARD,
  type Intent,
  type Mark,
  type Modifiers,
  type OpeningSize,
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
  typedNumber,
  typeOn,
  typeWhole,
  unreadable,
} from "./typed.ts";

type Phase =
  | { readonly kind: "idle" }
  | {
      readonly kind: "placing";
      readonly wall: string;
      readonly pointer: Position;
      readonly modifiers: Modifiers;
      readonly isPressed: boolean;
      readonly typed: Typed;
    };
type Placing = Extract<Phase, { readonly kind: "placing" }>;

export interface OpeningTool {
  readonly name: "door" | "window";
  readonly phase: Phase;
}

const [LEFT, RIGHT, WIDTH] = [0, 1, 2] as const;
const FIELDS = 3;

export function openingTool(name: "door" | "window"): OpeningTool {
  return { name, phase: { kind: "idle" } };
}

export function turnOpeningTool(
  tool: OpeningTool,
  event: ToolEvent,
  context: ToolContext,
): Turned<OpeningTool> {
  const { phase } = tool;
  switch (event.kind) {
    case "move":
    case "press":
      return pointed(tool, event, context);
    case "release":
      return phase.kind === "placing" && phase.isPressed
        ? finish(tool, { ...phase, pointer: event.at, modifiers: event.modifiers }, context)
        : [tool, []];
    case "double":
      return [tool, []];
    case "text":
      return phase.kind === "idle"
        ? [tool, []]
        : shown(tool, { ...phase, typed: typeOn(phase.typed, event.text) }, context);
    case "field":
      return phase.kind === "idle"
        ? [tool, []]
        : shown(tool, { ...phase, typed: typeWhole(phase.typed, event.text) }, context);
    case "key":
      return phase.kind === "idle" ? [tool, []] : keyed(tool, phase, event, context);
    default:
      return event satisfies never;
  }
}

// While the button is down, or something has been typed, the opening stays on its wall.
function pointed(
  tool: OpeningTool,
  event: Extract<ToolEvent, { readonly at: Position }>,
  context: ToolContext,
): Turned<OpeningTool> {
  const { phase } = tool;
  const isHeld = phase.kind === "placing" && (phase.isPressed || isTyped(phase.typed));
  const wall = isHeld ? phase.wall : context.wallAt(event.at);
  const isPress = event.kind === "press";
  if (wall === null) {
    const told: readonly Intent[] = isPress ? [{ kind: "message", said: words("message.no-wall") }] : [];
    return [openingTool(tool.name), [DISCARD, ...told]];
  }
  const typed = phase.kind === "placing" && phase.wall === wall ? phase.typed : nothingTyped(FIELDS);
  const isPressed = isPress || (phase.kind === "placing" && phase.isPressed);
  const { at: pointer, modifiers } = event;
  return shown(tool, { kind: "placing", wall, pointer, modifiers, isPressed, typed }, context);
}

function keyed(
  tool: OpeningTool,
  phase: Placing,
  event: Extract<ToolEvent, { readonly kind: "key" }>,
  context: ToolContext,
): Turned<OpeningTool> {
  switch (event.key) {
    case "Escape":
      return [openingTool(tool.name), [DISCARD]];
    case "Enter":
      return finish(tool, phase, context);
    case "Tab":
      return shown(tool, { ...phase, typed: nextField(phase.typed, event.modifiers.shift) }, context);
    case "Backspace":
      return shown(tool, { ...phase, typed: eraseLast(phase.typed) }, context);
    default:
      return [tool, []];
  }
}

function shown(tool: OpeningTool, phase: Placing, context: ToolContext): Turned<OpeningTool> {
  const placed = placement(tool.name, phase, context);
  if (placed === null) return [openingTool(tool.name), [DISCARD]];
  const marks = figures(placed, phase.typed);
  return [{ ...tool, phase }, [{ kind: "preview", edits: [openingEdit(placed, context)], marks }]];
}

function finish(tool: OpeningTool, phase: Placing, context: ToolContext): Turned<OpeningTool> {
  const text = unreadable(phase.typed);
  if (text !== null) {
    const released: OpeningTool = { ...tool, phase: { ...phase, isPressed: false } };
    return [released, [{ kind: "message", said: words("message.not-a-number", { text }) }]];
  }
  const placed = placement(tool.name, phase, context);
  if (placed === null) return [openingTool(tool.name), [DISCARD]];
  const edits = [openingEdit(placed, context)];
  return [
    openingTool(tool.name),
    [{ kind: "commit", label: words("step.add-opening"), edits, select: null }],
  ];
}

interface Placed {
  readonly wall: Wall;
  readonly at: Mm;
  readonly size: OpeningSize;
  readonly free: Stretch;
  readonly isMiddle: boolean;
}

// Where the opening goes: as typed from either side; else by steps from its left neighbour, or in the middle of the
// free stretch when that is near.
function placement(name: "door" | "window", phase: Placing, context: ToolContext): Placed | null {
  const wall = find(context.unit.walls, phase.wall);
  if (wall === undefined) return null;
  const usual = context.settings[name];
  const size = { ...usual, width: typedNumber(phase.typed, WIDTH) ?? usual.width };
  const along = alongLine(wallLine(wall), phase.pointer);
  const free = freeAround(context.unit, wall, Math.max(0, Math.min(along, wallLength(wall))), null);
  const left = typedNumber(phase.typed, LEFT);
  const right = typedNumber(phase.typed, RIGHT);
  const placed = (at: Mm, isMiddle = false) => ({
    wall,
    at: keptAt(wall, at, size.width),
    size,
    free,
    isMiddle,
  });
  if (left !== null) return placed(tidy(free.start + left));
  if (right !== null) return placed(tidy(free.end - right - size.width));
  const [wanted, isMiddle] = stepped(along - size.width / 2, size.width, free, { phase, context });
  return placed(wanted, isMiddle);
}

function stepped(
  wanted: Mm,
  width: Mm,
  free: Stretch,
  { phase, context }: { readonly phase: Placing; readonly context: ToolContext },
): readonly [Mm, boolean] {
  const { settings, reach } = context;
  if (phase.modifiers.alt || !settings.snapping) return [toStep(wanted, 1), false];
  const room = free.end - free.start - width;
  if (room < 0) return [tidy(free.start), false];
  const middle = tidy(free.start + room / 2);
  const isMiddle = Math.abs(wanted - middle) <= reach && Number.isInteger(middle);
  if (isMiddle) return [middle, true];
  const step = settings.grid > 0 ? settings.grid : 1;
  const within = Math.max(0, Math.min(toStep(wanted - free.start, step), room));
  return [tidy(free.start + within), false];
}

function openingEdit({ wall, at, size }: Placed, { unit }: ToolContext): Edit {
  return { kind: "add-opening", unit: unit.id, opening: { wall: wall.id, at, ...size } };
}

function figures({ wall, at, size, free, isMiddle }: Placed, typed: Typed): readonly Mark[] {
  const end = at + size.width;
  const figure = (
    name: "dimension.left" | "dimension.right" | "dimension.width",
    field: number,
    span: Stretch,
  ): Mark => ({
    kind: "figure",
    name,
    value: tidy(span.end - span.start),
    unit: "mm",
    from: placeOnWall(wall, span.start),
    to: placeOnWall(wall, span.end),
    typed: typed.texts[field] ?? null,
    isActive: typed.active === field,
  });
  const middle: readonly Mark[] = isMiddle
    ? [
        {
          kind: "snap",
          reason: {
            kind: "alignment",
            from: placeOnWall(wall, free.start),
            to: placeOnWall(wall, at + size.width / 2),
            wall: wall.id,
            said: words("snap.middle"),
          },
        },
      ]
    : [];
  return [
    ...middle,
    figure("dimension.left", LEFT, { start: free.start, end: at }),
    figure("dimension.right", RIGHT, { start: end, end: free.end }),
    figure("dimension.width", WIDTH, { start: at, end }),
  ];
}
