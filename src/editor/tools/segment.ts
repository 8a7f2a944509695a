// The gesture of drawing one line: click and click, or drag, with typed length and angle on the way. Walls, control
// lines and the measure are all drawn by it.
//
//   idle ──press──▶ drawing ──release far off──▶ finished (a drag)
//                     │ release where pressed: the hand is free, the line follows the pointer
//                     └──press and release, or Enter──▶ finished (a click)

import { LEAST_WALL } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import { type Aim, aimAt, LINE_FIELDS } from "./aim.ts";
import { type Modifiers, NO_MODIFIERS, plainQuery, type ToolContext, type ToolEvent } from "./protocol.ts";
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

export type SegmentPhase =
  | { readonly kind: "idle" }
  | {
      readonly kind: "drawing";
      readonly from: Position;
      readonly pointer: Position;
      readonly modifiers: Modifiers;
      readonly typed: Typed;
      /** Whether the button is down, and whether it was this press that began the line. */
      readonly press: "none" | "first" | "later";
    };

/** What an event did to the line. */
export type SegmentNews =
  | { readonly kind: "nothing" }
  /** The pointer hovers before the first click. */
  | { readonly kind: "hover"; readonly at: Position; readonly modifiers: Modifiers }
  | { readonly kind: "aim"; readonly aim: Aim }
  | { readonly kind: "finished"; readonly aim: Aim; readonly byDrag: boolean }
  | { readonly kind: "ended" }
  | { readonly kind: "unreadable"; readonly text: string };

export const SEGMENT_IDLE: SegmentPhase = { kind: "idle" };

const NOTHING: SegmentNews = { kind: "nothing" };

type Drawing = Extract<SegmentPhase, { readonly kind: "drawing" }>;

/** A line that begins where another has ended. */
export function segmentFrom(from: Position): Drawing {
  return {
    kind: "drawing",
    from,
    pointer: from,
    modifiers: NO_MODIFIERS,
    typed: nothingTyped(LINE_FIELDS),
    press: "none",
  };
}

export function turnSegment(
  phase: SegmentPhase,
  event: ToolEvent,
  context: ToolContext,
): readonly [SegmentPhase, SegmentNews] {
  if (phase.kind === "idle") return begin(event, context);
  switch (event.kind) {
    case "press":
    case "move": {
      const press = event.kind === "move" ? phase.press : "later";
      return aimed({ ...phase, pointer: event.at, modifiers: event.modifiers, press }, context);
    }
    case "release":
      return released({ ...phase, pointer: event.at, modifiers: event.modifiers }, context);
    case "double":
      return [SEGMENT_IDLE, { kind: "ended" }];
    case "text":
      return aimed({ ...phase, typed: typeOn(phase.typed, event.text) }, context);
    case "field":
      return aimed({ ...phase, typed: typeWhole(phase.typed, event.text) }, context);
    case "key":
      return keyed(phase, event, context);
    default:
      return event satisfies never;
  }
}

function begin(event: ToolEvent, context: ToolContext): readonly [SegmentPhase, SegmentNews] {
  if (event.kind === "move") {
    return [SEGMENT_IDLE, { kind: "hover", at: event.at, modifiers: event.modifiers }];
  }
  if (event.kind === "key" && event.key === "Escape") return [SEGMENT_IDLE, { kind: "ended" }];
  if (event.kind !== "press") return [SEGMENT_IDLE, NOTHING];
  const { at } = context.snap(plainQuery(event.at, event.modifiers, context));
  return aimed(
    { ...segmentFrom(at), pointer: event.at, modifiers: event.modifiers, press: "first" },
    context,
  );
}

function aimed(phase: Drawing, context: ToolContext): readonly [SegmentPhase, SegmentNews] {
  return [phase, { kind: "aim", aim: aimAt(phase, context) }];
}

function released(phase: Drawing, context: ToolContext): readonly [SegmentPhase, SegmentNews] {
  if (phase.press === "none") return aimed(phase, context);
  const [dx, dy] = [phase.pointer[0] - phase.from[0], phase.pointer[1] - phase.from[1]];
  // A first press that has hardly moved was a click: the line then follows the free pointer.
  const isClick = phase.press === "first" && dx * dx + dy * dy <= context.reach * context.reach;
  if (isClick) return aimed({ ...phase, press: "none" }, context);
  return finish(phase, context, phase.press === "first");
}

function finish(phase: Drawing, context: ToolContext, byDrag: boolean): readonly [SegmentPhase, SegmentNews] {
  const text = unreadable(phase.typed);
  if (text !== null)
    return [
      { ...phase, press: "none" },
      { kind: "unreadable", text },
    ];
  const aim = aimAt(phase, context);
  if (aim.length < LEAST_WALL) return aimed({ ...phase, press: "none" }, context);
  return [SEGMENT_IDLE, { kind: "finished", aim, byDrag }];
}

function keyed(
  phase: Drawing,
  event: Extract<ToolEvent, { readonly kind: "key" }>,
  context: ToolContext,
): readonly [SegmentPhase, SegmentNews] {
  switch (event.key) {
    case "Escape":
      return [SEGMENT_IDLE, { kind: "ended" }];
    case "Enter":
      return isTyped(phase.typed) ? finish(phase, context, false) : [SEGMENT_IDLE, { kind: "ended" }];
    case "Tab":
      return aimed({ ...phase, typed: nextField(phase.typed, event.modifiers.shift) }, context);
    case "Backspace":
      return aimed({ ...phase, typed: eraseLast(phase.typed) }, context);
    default:
      return [phase, NOTHING];
  }
}
