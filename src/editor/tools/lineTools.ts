// Control lines and the measure: one line each. A control line is drawn into the plan; a measured one stays on the
// drawing until the next and changes nothing.

import type { Edit } from "../../plan/edit.ts";
import { tidy } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import { words } from "../words/say.ts";
import { type Aim, aimMarks, LINE_FIELDS } from "./aim.ts";
import {
  DISCARD,
  type Mark,
  plainQuery,
  snapMarks,
  type ToolContext,
  type ToolEvent,
  type Turned,
} from "./protocol.ts";
import { SEGMENT_IDLE, type SegmentPhase, turnSegment } from "./segment.ts";
import { nothingTyped } from "./typed.ts";

export interface LineTool {
  readonly name: "control-line" | "measure";
  readonly segment: SegmentPhase;
  /** What was measured last. */
  readonly measured: Aim | null;
}

export function lineTool(name: LineTool["name"]): LineTool {
  return { name, segment: SEGMENT_IDLE, measured: null };
}

export function turnLineTool(tool: LineTool, event: ToolEvent, context: ToolContext): Turned<LineTool> {
  if (event.kind === "key" && event.key === "Escape") return [lineTool(tool.name), [DISCARD]];
  const [segment, news] = turnSegment(tool.segment, event, context);
  const next: LineTool = { ...tool, segment };
  switch (news.kind) {
    case "nothing":
      return [next, []];
    case "hover": {
      const snap = context.snap(plainQuery(news.at, news.modifiers, context));
      const kept = tool.measured === null ? [] : measureMarks(tool.measured);
      return [next, [{ kind: "preview", edits: [], marks: [...kept, ...snapMarks(snap)] }]];
    }
    case "aim": {
      const typed = segment.kind === "drawing" ? segment.typed : nothingTyped(LINE_FIELDS);
      const drawn = tool.name === "measure" ? measureMarks(news.aim) : lineMarks(news.aim);
      const edits = tool.name === "measure" || news.aim.length < 1 ? [] : [lineEdit(news.aim, context)];
      return [next, [{ kind: "preview", edits, marks: [...drawn, ...aimMarks(news.aim, typed)] }]];
    }
    case "unreadable":
      return [next, [{ kind: "message", said: words("message.not-a-number", { text: news.text }) }]];
    case "ended":
      return [lineTool(tool.name), [DISCARD]];
    case "finished":
      return tool.name === "measure"
        ? [{ ...next, measured: news.aim }, [{ kind: "preview", edits: [], marks: measureMarks(news.aim) }]]
        : [
            next,
            [
              {
                kind: "commit",
                label: words("step.add-control-line"),
                edits: [lineEdit(news.aim, context)],
                select: null,
              },
            ],
          ];
    default:
      return news satisfies never;
  }
}

function lineEdit({ from, to }: Aim, { unit }: ToolContext): Edit {
  return { kind: "add-control-line", unit: unit.id, from, to };
}

function lineMarks({ from, to }: Aim): readonly Mark[] {
  return [{ kind: "line", from, to }];
}

// The distance, and how far it goes east and north where it is askew.
function measureMarks({ from, to, length }: Aim): readonly Mark[] {
  const corner: Position = [to[0], from[1]];
  const figure = { kind: "figure", unit: "mm", typed: null, isActive: false } as const;
  const [dx, dy] = [tidy(Math.abs(to[0] - from[0])), tidy(Math.abs(to[1] - from[1]))];
  const parts: readonly Mark[] =
    dx === 0 || dy === 0
      ? []
      : [
          { ...figure, name: "dimension.across", value: dx, from, to: corner },
          { ...figure, name: "dimension.upright", value: dy, from: corner, to },
        ];
  return [
    { kind: "line", from, to },
    { ...figure, name: "dimension.length", value: length, from, to },
    ...parts,
  ];
}
