// What stands beside the title block of an elevation: what to mind, and either how to read it or the problems of its
// faces. Problems that find no paper there go to a sheet of their own at the end.

import type { UnitFill } from "../../fill/result.ts";
import type { Box } from "../box.ts";
import type { SheetInfo } from "../info.ts";
import { wrapped } from "../lettering.ts";
import type { Mark } from "../mark.ts";
import { type NoteBlock, notesMarks, problemBlock } from "../notes.ts";
import { besideBox, contentBox, type PaperSize } from "../paper.ts";
import type { PackedPage } from "./packing.ts";
import { ELEVATION_WORDS } from "./words.ts";

const PITCH = 3.5;
const SMALL = { height: 2.5, weight: 400 } as const;
const HEAD = 4.2;
const COLUMN_GAP = 6;
const LIST_COLUMNS = 4;

/** The numbers of the problems whose rings are on the page, from 1. */
function ringsOn(page: PackedPage): readonly number[] {
  const numbers = page.flatMap(({ blocks }) =>
    blocks.flatMap(({ block }) => {
      const { start, end, sheetFace } = block.plan.stretch;
      return sheetFace.face.unfilled
        .filter(({ x }) => x >= start && x < end)
        .map(({ problem }) => problem + 1);
    }),
  );
  return [...new Set(numbers)].sort((a, b) => a - b);
}

export interface ElevationNotes {
  /** Beside the title block, page by page. */
  readonly beside: readonly (readonly Mark[])[];
  /** Sheets of problems that found no paper beside any page. */
  readonly lists: readonly (readonly Mark[])[];
}

export function elevationNotes(
  unit: UnitFill,
  pages: readonly PackedPage[],
  info: SheetInfo,
  paper: PaperSize,
): ElevationNotes {
  const words = ELEVATION_WORDS[info.language];
  const [left, right] = columns(besideBox(paper) ?? contentBox(paper), 2) as [Box, Box];
  const unshown = new Set<number>();
  const shown = new Set<number>();
  const beside = pages.map((page): readonly Mark[] => {
    const numbers = ringsOn(page);
    const mind = textMarks(words.cautions, words.mind, right);
    if (numbers.length === 0) return [...textMarks(words.legend, words.marks, left), ...mind];
    const blocks = problemBlocks(unit, numbers, left.width);
    const noted = notesMarks(
      blocks.map(({ block }) => block),
      below(left),
    );
    const count = blocks.length - noted.rest.length;
    for (const [index, { number }] of blocks.entries()) (index < count ? shown : unshown).add(number);
    const heading = noted.rest.length > 0 ? words.problemsGoOn : words.problems;
    return [headingMark(heading, left), ...noted.marks, ...mind];
  });
  const rest = [...unshown].filter((number) => !shown.has(number)).sort((a, b) => a - b);
  return { beside, lists: listPages(unit, rest, info, paper) };
}

function problemBlocks(unit: UnitFill, numbers: readonly number[], width: number) {
  return numbers.flatMap((number): readonly { number: number; block: NoteBlock }[] => {
    const problem = unit.problems[number - 1];
    return problem === undefined ? [] : [{ number, block: problemBlock({ number, problem }, info.language, width) }];
  });
}

function listPages(
  unit: UnitFill,
  numbers: readonly number[],
  info: SheetInfo,
  paper: PaperSize,
): readonly (readonly Mark[])[] {
  const areas = columns(contentBox(paper), LIST_COLUMNS);
  let rest: readonly NoteBlock[] = problemBlocks(unit, numbers, areas[0]!.width).map(({ block }) => block);
  const pages: (readonly Mark[])[] = [];
  while (rest.length > 0) {
    const marks: Mark[] = [headingMark(ELEVATION_WORDS[info.language].problems, areas[0]!)];
    for (const area of areas) {
      const noted = notesMarks(rest, below(area));
      marks.push(...noted.marks);
      rest = noted.rest;
    }
    pages.push(marks);
  }
  return pages;
}

function columns(area: Box, count: number): readonly Box[] {
  const width = (area.width - COLUMN_GAP * (count - 1)) / count;
  return Array.from({ length: count }, (_, index) => ({
    ...area,
    x: area.x + index * (width + COLUMN_GAP),
    width,
  }));
}

function below(box: Box): Box {
  return { ...box, y: box.y + HEAD, height: box.height - HEAD };
}

/** A heading with sentences under it. */
export function textMarks(heading: string, texts: readonly string[], box: Box): readonly Mark[] {
  const lines = texts.flatMap((text) => wrapped(text, box.width, SMALL));
  return [
    headingMark(heading, box),
    ...lines.map(
      (text, index): Mark => ({
        kind: "text",
        at: [box.x, box.y + HEAD + 3 + index * PITCH],
        text,
        ...SMALL,
        ink: "ink",
        anchor: "start",
      }),
    ),
  ];
}

function headingMark(text: string, box: Box): Mark {
  const at = [box.x, box.y + 3] as const;
  return { kind: "text", at, text, height: 2.5, weight: 700, ink: "ink", anchor: "start" };
}
