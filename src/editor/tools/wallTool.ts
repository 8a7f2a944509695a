// Draws walls, each from where the last one ended, until Escape, Enter, a double click or the first corner again.

import type { Edit } from "../../plan/edit.ts";
import { endAt } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import { words } from "../words/say.ts";
import { type Aim, aimMarks, LINE_FIELDS } from "./aim.ts";
import {
  DISCARD,
  type Intent,
  plainQuery,
  snapMarks,
  type ToolContext,
  type ToolEvent,
  type Turned,
} from "./protocol.ts";
import { SEGMENT_IDLE, type SegmentPhase, segmentFrom, turnSegment } from "./segment.ts";
import { nothingTyped } from "./typed.ts";

export interface WallTool {
  readonly name: "wall";
  readonly segment: SegmentPhase;
  /** Where the chain began; null between chains. */
  readonly first: Position | null;
}

export const WALL_TOOL: WallTool = { name: "wall", segment: SEGMENT_IDLE, first: null };

export function turnWallTool(tool: WallTool, event: ToolEvent, context: ToolContext): Turned<WallTool> {
  const [segment, news] = turnSegment(tool.segment, event, context);
  const first = segment.kind === "idle" ? null : (tool.first ?? segment.from);
  const next: WallTool = { name: "wall", segment, first };
  switch (news.kind) {
    case "nothing":
      return [next, []];
    case "hover": {
      const snap = context.snap(plainQuery(news.at, news.modifiers, context));
      return [next, [{ kind: "preview", edits: [], marks: snapMarks(snap) }]];
    }
    case "aim":
      return [next, [preview(news.aim, segment, context)]];
    case "unreadable":
      return [next, [{ kind: "message", said: words("message.not-a-number", { text: news.text }) }]];
    case "ended":
      return [WALL_TOOL, [DISCARD]];
    case "finished": {
      const { to } = news.aim;
      const begun = tool.first ?? news.aim.from;
      const isClosed = endAt({ from: begun, to: begun }, to) !== null;
      const ends = news.byDrag || isClosed;
      const chained: WallTool = ends ? WALL_TOOL : { name: "wall", segment: segmentFrom(to), first: begun };
      const edits = [wallEdit(news.aim, context)];
      return [chained, [{ kind: "commit", label: words("step.add-wall"), edits, select: null }]];
    }
    default:
      return news satisfies never;
  }
}

function preview(aim: Aim, segment: SegmentPhase, context: ToolContext): Intent {
  const typed = segment.kind === "drawing" ? segment.typed : nothingTyped(LINE_FIELDS);
  const edits = aim.length < 1 ? [] : [wallEdit(aim, context)];
  return {
    kind: "preview",
    edits,
    marks: [{ kind: "line", from: aim.from, to: aim.to }, ...aimMarks(aim, typed)],
  };
}

function wallEdit({ from, to }: Aim, { unit, settings }: ToolContext): Edit {
  const { thickness, justify } = settings;
  return { kind: "add-wall", unit: unit.id, wall: { from, to, thickness, justify } };
}
