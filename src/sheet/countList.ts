// The list of a room sheet, which is its legend as well: each row begins with the piece drawn as on the wall.
//
//   ▭ WP600      600 × 2250   14  □  □       Two boxes to tick: before the pour, and after striking.

import type { Language } from "../plan/project.ts";
import type { Box } from "./box.ts";
import type { CountRow } from "./countRows.ts";
import { FAMILY_WORDS } from "./familyWords.ts";
import { fittingMark } from "./fittingMark.ts";
import { cutToWidth, textWidth } from "./lettering.ts";
import type { Mark } from "./mark.ts";
import { foldMark, OUTLINE, pieceMarks, tieMark } from "./pieceMark.ts";
import { propMarks } from "./soffit/propMark.ts";
import { WORDS } from "./words.ts";

/** Heights of a row, the first in which all rows fit being taken; the last still holds a box to tick. */
const PITCHES = [5.6, 5.2, 4.6] as const;
const HEAD = 3.8;
const COLUMN_GAP = 5;
/** Height of a symbol and side of a box where the rows have paper for them. */
const TICK = 4.2;
/** Kept free between symbols or boxes of two rows. */
const ROW_GAP = 0.7;
/** Right end of the figures, left edges of the two boxes, from the right edge of a column. */
const FIGURE_END = 18;
const BOXES = [15.5, 6] as const;
const SYMBOL_WIDTH = 7;
/** Between the words over the boxes. */
const HEAD_GAP = 1.2;
const TEXT_START = 8.6;

/** Width of a column in which a code, its size and its boxes have paper, mm. */
const COLUMN_WIDTH = 58;

function columnsIn({ width }: Pick<Box, "width">): number {
  return width >= 2 * COLUMN_WIDTH + COLUMN_GAP ? 2 : 1;
}

/** Height in which all rows fit at their best, mm. */
export function listHeight(rows: readonly CountRow[], width: number): number {
  return rows.length === 0 ? 0 : HEAD + Math.ceil(rows.length / columnsIn({ width })) * PITCHES[0];
}

/**
 * Draws as many rows as fit, filling the first column before the second; `rest` goes to another page.
 *
 * @param least - rows in the first column before the second one begins
 */
export function listMarks(
  rows: readonly CountRow[],
  area: Box,
  language: Language,
  least = 8,
): { readonly marks: readonly Mark[]; readonly rest: readonly CountRow[] } {
  const columns = columnsIn(area);
  const perColumn = (pitch: number) => Math.max(0, Math.floor((area.height - HEAD) / pitch));
  const pitch = PITCHES.find((some) => perColumn(some) * columns >= rows.length) ?? PITCHES[1];
  const shown = rows.slice(0, perColumn(pitch) * columns);
  // Two columns of equal length read better than one full and one nearly empty.
  const even = Math.max(Math.ceil(shown.length / columns), Math.min(shown.length, least));
  const length = Math.max(1, Math.min(even, perColumn(pitch)));
  const width = (area.width - COLUMN_GAP * (columns - 1)) / columns;
  const marks: Mark[] = [];
  for (let column = 0; column * length < shown.length; column++) {
    const x = area.x + column * (width + COLUMN_GAP);
    marks.push(...columnHead(language, x, width, area.y));
    shown.slice(column * length, (column + 1) * length).forEach((row, index) => {
      marks.push(
        ...rowMarks(row, FAMILY_WORDS[language][row.family], {
          x,
          y: area.y + HEAD + index * pitch,
          width,
          height: pitch,
        }),
      );
    });
  }
  return { marks, rest: rows.slice(shown.length) };
}

function columnHead(language: Language, x: number, width: number, y: number): readonly Mark[] {
  const { before, after } = WORDS[language];
  const middle = (box: number) => x + width - BOXES[box]! + TICK / 2;
  // Over their boxes as far as there is paper: a long word ends at the edge, and the other keeps clear of it.
  const end = Math.min(x + width, middle(1) + textWidth(after, PLAIN) / 2);
  const free = end - textWidth(after, PLAIN) - HEAD_GAP;
  const words = [
    headWord(before, Math.min(free, middle(0) + textWidth(before, PLAIN) / 2), y),
    headWord(after, end, y),
  ];
  const rule: Mark = { kind: "line", from: [x, y + HEAD], to: [x + width, y + HEAD], stroke: OUTLINE };
  return [...words, rule];
}

function headWord(text: string, end: number, y: number): Mark {
  return { kind: "text", at: [end, y + 2.5], text, ...PLAIN, ink: "soft", anchor: "end" };
}

function rowMarks(row: CountRow, family: string, box: Box): readonly Mark[] {
  const right = box.x + box.width;
  const middle = box.y + box.height / 2;
  const foot = box.y + box.height;
  const tall = Math.min(TICK, box.height - ROW_GAP);
  const count = `${row.quantity}`;
  const countWidth = textWidth(count, { height: 3.5, weight: 600 });
  const room = right - FIGURE_END - countWidth - 1.5 - (box.x + TEXT_START);
  const boxes = row.isOwn
    ? BOXES.map((from): Mark => {
        const tick = { x: right - from, y: middle - tall / 2, width: TICK, height: tall };
        return { kind: "rect", box: tick, stroke: OUTLINE };
      })
    : [];
  return [
    ...symbolMarks(row, { x: box.x + 0.3, y: middle - tall / 2, width: SYMBOL_WIDTH, height: tall }),
    ...nameMarks(row, family, { x: box.x + TEXT_START, middle, room }),
    {
      kind: "text",
      at: [right - FIGURE_END, middle + 1.75],
      text: count,
      height: 3.5,
      weight: 600,
      ink: "ink",
      anchor: "end",
    },
    ...boxes,
    { kind: "line", from: [box.x, foot], to: [right, foot], stroke: { weight: 0.13, ink: "faint" } },
  ];
}

const LARGE = { height: 3.5, weight: 600 } as const;
const SMALL = { height: 2.5, weight: 600 } as const;
const PLAIN = { height: 2.5, weight: 400 } as const;

/** Code, and behind it as far as there is paper its size, else what it is; a measure comes before its code. */
function nameMarks(
  row: CountRow,
  word: string,
  { x, middle, room }: { readonly x: number; readonly middle: number; readonly room: number },
): readonly Mark[] {
  const name = row.isMade ? row.size : row.code;
  const words = row.isMade
    ? [row.code, word]
    : row.isOwn
      ? [`${word} ${row.size}`.trim(), row.size, word].filter((text) => text !== "")
      : [row.size];
  // That the neighbour sets a tie must be read, and what a bare measure is of, if need be behind small letters.
  const must = row.isMade ? word : row.isOwn ? null : row.size;
  const least = must === null ? 0 : textWidth(must, PLAIN) + 1.5;
  const lettering = textWidth(name, LARGE) + least <= room ? LARGE : SMALL;
  const shown = cutToWidth(name, room, lettering);
  const used = textWidth(shown, lettering) + 1.5;
  const text = words.find((some) => textWidth(some, PLAIN) <= room - used);
  const at = [x, middle + lettering.height / 2] as const;
  const mark: Mark = { kind: "text", at, text: shown, ...lettering, ink: "ink", anchor: "start" };
  if (text === undefined) return [mark];
  return [mark, { kind: "text", at: [x + used, middle + 1.6], text, ...PLAIN, ink: "soft", anchor: "start" }];
}

/** The piece as it looks on the wall, in a box of one size for all. */
export function symbolMarks(row: CountRow, box: Box): readonly Mark[] {
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  const sized = (width: number, height: number): Box => ({
    x: x - width / 2,
    y: y - height / 2,
    width,
    height,
  });
  switch (row.family) {
    case "wall-panel": {
      const isLow = row.height < row.width / 2;
      return pieceMarks(row.look, sized(Math.min(7, Math.max(2, row.width / 85)), isLow ? 2 : box.height));
    }
    case "closure-strip":
      return pieceMarks(row.look, sized(2.4, box.height));
    case "slab-panel": // lying, as overhead
      return pieceMarks(row.look, sized(7, Math.min(box.height, Math.max(1.6, row.width / 150))));
    case "prop":
      return propMarks([x, y], 1.5);
    case "inside-corner":
      return [...pieceMarks(row.look, sized(4.2, box.height)), foldMark(x, box.y, box.y + box.height)];
    case "stop-end":
      return pieceMarks(row.look, sized(2.8, box.height));
    case "outside-corner":
      return [{ kind: "rect", box: sized(1.4, box.height), fill: "paper", stroke: OUTLINE }];
    case "connector-corner":
    case "cap-corner":
      return [
        ...pieceMarks(row.look, sized(4.2, 2.2)),
        { kind: "line", from: [x, y - 1.1], to: [x, y + 1.1], stroke: OUTLINE },
      ];
    case "tie":
    case "tie-sleeve":
      return [
        { kind: "line", from: [x, box.y], to: [x, box.y + box.height], stroke: { weight: 0.25, ink: "ink" } },
        tieMark(x, y, row.isOwn),
      ];
    case "reveal-closure":
    case "reveal-corner": {
      const points = [
        [x - 3.5, y - 0.9],
        [x + 3.5, y - 0.9],
        [x + 2.4, y + 0.9],
        [x - 2.4, y + 0.9],
      ] as const;
      return [{ kind: "polygon", points, fill: "band", stroke: { weight: 0.25, ink: "ink" } }];
    }
    case "wall-bracket":
    case "brace":
    case "facade-aligner":
      return [fittingMark(row, x, x, y)];
    case "alignment-ledger":
    case "opening-brace":
      return [fittingMark(row, box.x, box.x + box.width, y)];
    default:
      return pieceMarks(row.look, sized(7, 2.2));
  }
}
