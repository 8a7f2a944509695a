// What stands beside the title block of the panel plan: its marks, what to mind. And the list of what found no place.

import type { UnitFill } from "../../fill/result.ts";
import type { Box } from "../box.ts";
import { textMarks } from "../elevations/notes.ts";
import type { SheetInfo } from "../info.ts";
import { ringMarks } from "../label.ts";
import { textWidth, wrapped } from "../lettering.ts";
import type { Mark, Point } from "../mark.ts";
import type { NoteBlock } from "../notes.ts";
import { FINE, THIN } from "../pieceMark.ts";
import type { Unplaced } from "./roomLabels.ts";
import { type LegendItem, PANEL_PLAN_WORDS } from "./words.ts";

const SMALL = { height: 2.5, weight: 400 } as const;
const STRONG = { height: 2.5, weight: 700 } as const;
const LEGEND_ROWS = 5;
const LEGEND_PITCH = 5;
const LEGEND_GAP = 4.5;
const SAMPLE = 11;

const ITEMS: readonly LegendItem[] = [
  "panel",
  "filler",
  "closure",
  "corner",
  "firstOut",
  "tie",
  "door",
  "window",
  "section",
  "problem",
];

/** Legend on the left, sentences on the right of the free paper. */
export function besideMarks(unit: UnitFill, info: SheetInfo, area: Box): readonly Mark[] {
  const words = PANEL_PLAN_WORDS[info.language];
  const legend: Mark[] = [];
  let x = area.x;
  for (let first = 0; first < ITEMS.length; first += LEGEND_ROWS) {
    const column = ITEMS.slice(first, first + LEGEND_ROWS);
    column.forEach((item, row) => {
      const y = area.y + 7.4 + row * LEGEND_PITCH;
      legend.push(...sample(item, x, y), text(words.items[item], x + SAMPLE + 1.5, y + 1.25));
    });
    x += SAMPLE + 1.5 + Math.max(...column.map((item) => textWidth(words.items[item], SMALL))) + LEGEND_GAP;
  }
  const rows = [...new Set(unit.ties.flatMap(({ heights }) => heights))].sort((a, b) => a - b);
  const mind = [...(rows.length > 0 ? [words.rows(rows)] : []), ...words.mind].join(" ");
  return [
    { kind: "text", at: [area.x, area.y + 3], text: words.legend, ...STRONG, ink: "ink", anchor: "start" },
    ...legend,
    ...textMarks(words.cautions, [mind], { ...area, x, width: area.x + area.width - x }),
  ];
}

function text(words: string, x: number, baseline: number): Mark {
  return { kind: "text", at: [x, baseline], text: words, ...SMALL, ink: "ink", anchor: "start" };
}

/** A mark of the plan as large as the legend takes it, its middle `y`. */
function sample(item: LegendItem, x: number, y: number): readonly Mark[] {
  const box: Box = { x, y: y - 0.8, width: SAMPLE, height: 1.6 };
  const half = { ...box, width: SAMPLE / 2 };
  switch (item) {
    case "panel":
      return [{ kind: "rect", box, fill: "paper", stroke: FINE }];
    case "filler":
      return [
        { kind: "rect", box: half, fill: "tone2", stroke: FINE },
        {
          kind: "rect",
          box: { ...box, x: x + SAMPLE / 2, width: SAMPLE / 4 },
          fill: "tone4",
          stroke: FINE,
        },
        {
          kind: "rect",
          box: { ...box, x: x + (3 * SAMPLE) / 4, width: SAMPLE / 6 },
          fill: "tone5",
          stroke: FINE,
        },
      ];
    case "closure":
      return [
        { kind: "rect", box: half, fill: "paper", stroke: FINE },
        { kind: "hatch", box: half, pattern: "lines", pitch: 0.8, weight: 0.25, ink: "ink" },
      ];
    case "corner":
      return [
        { kind: "rect", box: half, fill: "ink" },
        { kind: "rect", box: { x, y: y - 0.8, width: 1.6, height: 3 }, fill: "ink" },
      ];
    case "firstOut":
      return [
        { kind: "rect", box: half, fill: "tone3", stroke: FINE },
        polygon([
          [x + 1.9, y + 0.8],
          [x + SAMPLE / 4, y - 0.6],
          [x + SAMPLE / 2 - 1.9, y + 0.8],
        ]),
      ];
    case "tie":
      return [
        { kind: "rect", box: { ...box, x: x + 1.6, width: 3 }, fill: "faint" },
        { kind: "line", from: [x, y], to: [x + 6.2, y], stroke: { weight: 0.5, ink: "ink" } },
        { kind: "circle", centre: [x + 0.55, y], radius: 0.55, fill: "ink" },
      ];
    case "door":
    case "window":
      return [
        { kind: "rect", box, fill: "faint" },
        {
          kind: "rect",
          box: { ...box, x: x + 2, width: SAMPLE - 4 },
          fill: item === "door" ? "paper" : "band",
          stroke: THIN,
        },
        ...[x + 2, x + SAMPLE - 3].map(
          (left): Mark => ({
            kind: "rect",
            box: { ...box, x: left, width: 1 },
            fill: "band",
            stroke: FINE,
          }),
        ),
      ];
    case "section":
      return sectionSample(x, y);
    case "problem":
      return [
        ...ringMarks(x + 2.3, y, 1.9),
        { kind: "text", at: [x + 2.3, y + 1.25], text: "1", ...STRONG, ink: "ink", anchor: "middle" },
      ];
    default:
      return item satisfies never;
  }
}

function polygon(points: readonly Point[]): Mark {
  return { kind: "polygon", points, fill: "paper", stroke: THIN };
}

function sectionSample(x: number, y: number): readonly Mark[] {
  const letter = textWidth("A", { height: 3.5, weight: 700 }) + 1.2;
  const box = { x: x + 1.3, y: y - 2.2, width: letter + 3.2, height: 4.4 };
  const pointer: Mark = {
    kind: "polygon",
    points: [
      [x, y],
      [x + 1.3, y - 1.1],
      [x + 1.3, y + 1.1],
    ],
    fill: "ink",
  };
  const middle = { ink: "ink", anchor: "middle" } as const;
  return [
    pointer,
    { kind: "rect", box, fill: "paper", stroke: THIN },
    { kind: "rect", box: { ...box, width: letter }, fill: "ink" },
    {
      kind: "text",
      at: [box.x + letter / 2, y + 1.75],
      text: "A",
      height: 3.5,
      weight: 700,
      ...middle,
      ink: "paper",
    },
    { kind: "text", at: [box.x + letter + 1.6, y + 1.25], text: "2", ...SMALL, ...middle },
  ];
}

const LINE = 3.6;
const BLOCK_GAP = 1.2;

/** The list of what found no place, one block for a face, to be set in columns of this width. */
export function unplacedBlocks(
  unplaced: readonly Unplaced[],
  info: SheetInfo,
  width: number,
): readonly NoteBlock[] {
  const words = PANEL_PLAN_WORDS[info.language];
  return [
    linesBlock([words.list], width, STRONG),
    spaced(linesBlock([words.listRule], width, SMALL)),
    ...unplaced.map(({ room, letter, sheet, widths }) => {
      const parts = [
        ...(widths === null ? [] : [widths.join(", ")]),
        ...(sheet === null ? [] : [words.onSheet(sheet)]),
      ];
      const head = linesBlock([`${room} ${letter}`.trim()], width, STRONG);
      const body = linesBlock(parts, width, SMALL);
      return {
        marks: [...head.marks, ...shifted(body.marks, head.height)],
        height: head.height + body.height + BLOCK_GAP,
      };
    }),
  ];
}

function spaced(block: NoteBlock): NoteBlock {
  return { ...block, height: block.height + BLOCK_GAP };
}

function linesBlock(
  texts: readonly string[],
  width: number,
  lettering: typeof SMALL | typeof STRONG,
): NoteBlock {
  const lines = texts.flatMap((line) => wrapped(line, width, lettering));
  return {
    marks: lines.map(
      (line, index): Mark => ({
        kind: "text",
        at: [0, 3 + index * LINE],
        text: line,
        ...lettering,
        ink: "ink",
        anchor: "start",
      }),
    ),
    height: lines.length * LINE,
  };
}

function shifted(marks: readonly Mark[], by: number): readonly Mark[] {
  return marks.map((mark) => (mark.kind === "text" ? { ...mark, at: [mark.at[0], mark.at[1] + by] } : mark));
}
