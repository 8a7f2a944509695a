// What stands on every sheet whatever it shows: frame, title block, scale bar and the code that tells a stale sheet.
// It also says how much paper is left for the rest.

import type { Storey } from "../plan/project.ts";
import type { PaperMm } from "../units.ts";
import type { Box } from "./box.ts";
import { FRAME_WORDS } from "./frameWords.ts";
import { isAllMirrored, type SheetInfo } from "./info.ts";
import { textWidth } from "./lettering.ts";
import type { Mark, Stroke } from "./mark.ts";
import { besideBox, contentBox, frameBox, isLarge, PAPERS, type PaperSize, titleBox } from "./paper.ts";
import { pourNames } from "./pourNames.ts";
import { QUIET, qrMarks } from "./qr.ts";
import { largeBar, ratioOf, smallBar } from "./scaleBar.ts";
import { fieldRow, type TitleField } from "./titleField.ts";

export interface FrameEntries {
  readonly paper: PaperSize;
  readonly title: string;
  /** As "1:50"; "" where nothing is to scale. */
  readonly scale: string;
  readonly sheet: number;
  readonly sheets: number;
  /** Text of the code, plain ASCII, best from `sheetKey`; not given: no code. */
  readonly key?: string;
}

export interface Frame {
  readonly width: PaperMm;
  readonly height: PaperMm;
  /** What a sheet may draw in. */
  readonly content: Box;
  /** On a large sheet the free paper on the left of the title block, below `content`; null on a small one. */
  readonly beside: Box | null;
  readonly marks: readonly Mark[];
}

const FRAME: Stroke = { weight: 0.7, ink: "ink" };
const THIN: Stroke = { weight: 0.18, ink: "ink" };

/** Modules of the largest code that `sheetKey` makes, for the size of its place. */
const KEY_MODULES = 29;

/** Side of the code on a small sheet: as high as the block, its outline included. */
const SMALL_CODE = 13.05;

/** Breadth of the cell of the code on a large sheet. */
const LARGE_CELL = 30;

export function frameOf(info: SheetInfo, entries: FrameEntries): Frame {
  const { paper } = entries;
  return {
    ...PAPERS[paper],
    content: contentBox(paper),
    beside: besideBox(paper),
    marks: isLarge(paper) ? largeMarks(info, entries) : smallMarks(info, entries),
  };
}

/** One row across the foot. Its right margin and the paper over it are the quiet zone of the code. */
function smallMarks(info: SheetInfo, entries: FrameEntries): readonly Mark[] {
  const whole = titleBox(entries.paper);
  const quiet = (QUIET * SMALL_CODE) / KEY_MODULES;
  const code = {
    x: whole.x + whole.width - SMALL_CODE,
    y: whole.y + whole.height - SMALL_CODE,
    width: SMALL_CODE,
    height: SMALL_CODE,
  };
  const hasKey = entries.key !== undefined;
  const block = hasKey ? { ...whole, width: code.x - quiet - FRAME.weight / 2 - whole.x } : whole;
  const ratio = ratioOf(entries.scale);
  const words = FRAME_WORDS[info.language];
  const scale = { label: "", value: "", width: ratio === null ? 0 : 25 }; // filled in below
  const before: readonly TitleField[] = stretched(
    [
      { label: words.scheme, value: info.project, width: 41 },
      { label: words.title, value: entries.title, width: 55 },
      poursField(info, 25),
      { label: words.document, value: info.document, width: 20 },
      { label: words.madeBy, value: info.madeBy, width: 21 },
      { label: words.releasedBy, value: info.releasedBy, width: 21 },
    ],
    block.width - 10 - 22 - 20 - scale.width,
  );
  const fields = [
    ...before.slice(0, 4),
    { label: words.revision, value: info.revision, width: 10 },
    { label: words.date, value: info.date, width: 22 },
    ...(ratio === null ? [] : [scale]),
    { label: words.sheet, value: words.sheetOf(entries.sheet, entries.sheets), width: 20 },
    ...before.slice(4),
  ];
  return [
    { kind: "rect", box: block, stroke: FRAME },
    ...fieldRow(fields, block),
    ...(ratio === null
      ? []
      : scaleCell(words.scale, entries.scale, ratio, { ...block, x: leftOf(scale, fields, block) })),
    ...(hasKey ? qrMarks(entries.key, code) : []),
  ];
}

/** The ratio in the row of the label, which stands back where both do not fit; the bar in the place of the value. */
function scaleCell(label: string, scale: string, ratio: number, cell: Box): readonly Mark[] {
  const quiet = { height: 2.5, weight: 400 } as const;
  const room = 20 - textWidth(label, quiet);
  const heights = [3.5, 2.5] as const;
  const height = heights.find((some) => textWidth(scale, { height: some, weight: 600 }) <= room);
  const word: Mark = {
    kind: "text",
    at: [cell.x + 1.5, cell.y + 3.7],
    text: label,
    ...quiet,
    ink: "soft",
    anchor: "start",
  };
  const value: Mark = {
    kind: "text",
    at: [cell.x + 23.5, cell.y + 4.7],
    text: scale,
    height: height ?? 3.5,
    weight: 600,
    ink: "ink",
    anchor: "end",
  };
  return [...(height === undefined ? [] : [word]), value, ...smallBar(ratio, cell.x + 1.5, cell.y + 11, 22)];
}

function leftOf(field: TitleField, fields: readonly TitleField[], block: Box): number {
  return fields.slice(0, fields.indexOf(field)).reduce((x, { width }) => x + width, block.x);
}

/** The fields with the paper shared out as they share it now. */
function stretched(fields: readonly TitleField[], width: number): readonly TitleField[] {
  const share = width / fields.reduce((sum, field) => sum + field.width, 0);
  return fields.map((field) => ({ ...field, width: field.width * share }));
}

/** Frame all round, three rows of fields in the lower right corner with the code at their end, scale bar on the left. */
function largeMarks(info: SheetInfo, entries: FrameEntries): readonly Mark[] {
  const frame = frameBox(entries.paper);
  const block = titleBox(entries.paper);
  const cell = { ...block, x: block.x + block.width - LARGE_CELL, width: LARGE_CELL };
  const hasKey = entries.key !== undefined;
  const wide = hasKey ? block.width - LARGE_CELL : block.width;
  const rows = largeRows(info, entries);
  const height = block.height / rows.length;
  const ratio = ratioOf(entries.scale);
  const words = FRAME_WORDS[info.language];
  const note = words.onPaper(entries.scale, entries.paper);
  return [
    { kind: "rect", box: frame, stroke: FRAME },
    { kind: "rect", box: block, stroke: FRAME },
    ...rows.flatMap((fields, index) => {
      const y = block.y + index * height;
      const over: Mark = { kind: "line", from: [block.x, y], to: [block.x + wide, y], stroke: THIN };
      return [
        ...(index === 0 ? [] : [over]),
        ...fieldRow(stretched(fields, wide), { x: block.x, y, height }),
      ];
    }),
    ...(hasKey ? codeCell(entries.key, cell) : []),
    ...(ratio === null ? [] : largeBar(ratio, frame.x + 5, frame.y + frame.height - 3, note)),
  ];
}

function largeRows(info: SheetInfo, entries: FrameEntries): readonly (readonly TitleField[])[] {
  const words = FRAME_WORDS[info.language];
  return [
    [
      { label: words.scheme, value: info.project, width: 75 },
      { label: words.title, value: entries.title, width: 75 },
    ],
    [
      { label: words.madeBy, value: info.madeBy, width: 38 },
      { label: words.checkedBy, value: info.checkedBy, width: 38 },
      { label: words.releasedBy, value: info.releasedBy, width: 38 },
      { label: words.date, value: info.date, width: 36 },
    ],
    [
      { label: words.slabTop, value: slabTop(info.storey), width: 24 },
      poursField(info, 38),
      { label: words.document, value: info.document, width: 34 },
      { label: words.revision, value: info.revision, width: 14 },
      { label: words.scale, value: entries.scale, width: 18 },
      { label: words.sheet, value: words.sheetOf(entries.sheet, entries.sheets), width: 22 },
    ],
  ];
}

function codeCell(key: string, cell: Box): readonly Mark[] {
  const side = (LARGE_CELL * KEY_MODULES) / (KEY_MODULES + 2 * QUIET);
  const code = {
    x: cell.x + (cell.width - side) / 2,
    y: cell.y + (cell.height - side) / 2,
    width: side,
    height: side,
  };
  const edge: Mark = {
    kind: "line",
    from: [cell.x, cell.y],
    to: [cell.x, cell.y + cell.height],
    stroke: THIN,
  };
  return [edge, ...qrMarks(key, code)];
}

/** The names of the pours, and under them the hand, which is never cut: a mirrored wall cannot be turned round. */
function poursField(info: SheetInfo, width: number): TitleField {
  const words = FRAME_WORDS[info.language];
  const names = pourNames(info);
  return {
    label: words.pours,
    value: names.join(", "),
    ...(names.length > 1 ? { list: { names, label: words.countedPours(names.length) } } : {}),
    below: isAllMirrored(info) ? words.mirrored : words.asDrawn,
    width,
  };
}

/** Level of the upper face of the slab over the floor of the storey, m; empty without a slab. */
function slabTop({ clearHeight, slab }: Storey): string {
  return slab === 0 ? "" : `+${((clearHeight + slab) / 1000).toFixed(3)}`;
}
