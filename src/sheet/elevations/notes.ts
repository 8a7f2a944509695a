// What the elevations say in sentences: how to read them, what to mind, and the problems of the faces on the page.
// Problems that find no paper on their page go to the last, or to a sheet of their own at the end.

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

/** Paper between the last row and problems under it, and the least height worth beginning. */
const UNDER_ROWS = 5;
const LEAST_UNDER = 24;

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
  /** Page by page. */
  readonly notes: readonly (readonly Mark[])[];
  /** Sheets of problems that found no paper beside any page. */
  readonly lists: readonly (readonly Mark[])[];
}

export function elevationNotes(
  unit: UnitFill,
  pages: readonly PackedPage[],
  info: SheetInfo,
  paper: PaperSize,
): ElevationNotes {
  const open = new Set<number>();
  const notes = pages.map((page, index) => {
    const isLast = index === pages.length - 1;
    const numbers = [...new Set([...ringsOn(page), ...(isLast ? open : [])])].sort((a, b) => a - b);
    const noted = pageNotes(page, problemBlocks(unit, numbers, info), info, paper);
    for (const number of numbers) open.delete(number);
    for (const number of noted.rest) open.add(number);
    return noted.marks;
  });
  const rest = [...open].sort((a, b) => a - b);
  return { notes, lists: listPages(problemBlocks(unit, rest, info), info, paper) };
}

type Blocks = (width: number) => readonly NumberedBlock[];

interface NumberedBlock extends NoteBlock {
  readonly number: number;
}

/** Problems go under the rows if there is paper, else to the place of the legend; `rest` are those without a place. */
function pageNotes(page: PackedPage, blocks: Blocks, info: SheetInfo, paper: PaperSize) {
  const words = ELEVATION_WORDS[info.language];
  const content = contentBox(paper);
  const [left, right] = columns(besideBox(paper) ?? content, 2) as [Box, Box];
  const mind = textMarks(words.cautions, words.mind, right);
  const legend = textMarks(words.legend, [words.marks.join(" ")], left);
  const last = page.at(-1)!;
  const end = last.y + last.heights.whole + UNDER_ROWS;
  const under = { ...content, y: content.y + end, height: content.height - end };
  if (blocks(1e6).length === 0) return { marks: [...legend, ...mind], rest: [] };
  if (under.height >= LEAST_UNDER) {
    const placed = placeBlocks(blocks, columns(under, LIST_COLUMNS));
    const heading = headingMark(placed.rest.length > 0 ? words.problemsGoOn : words.problems, under);
    return { marks: [heading, ...placed.marks, ...legend, ...mind], rest: numbersOf(placed.rest) };
  }
  const placed = placeBlocks(blocks, [left]);
  const heading = headingMark(placed.rest.length > 0 ? words.problemsGoOn : words.problems, left);
  return { marks: [heading, ...placed.marks, ...mind], rest: numbersOf(placed.rest) };
}

function numbersOf(blocks: readonly NumberedBlock[]): readonly number[] {
  return blocks.map(({ number }) => number);
}

/** Fills one column after the other, each under the line of the heading. */
function placeBlocks(blocks: Blocks, areas: readonly Box[]) {
  let rest = blocks(areas[0]?.width ?? 0);
  const marks: Mark[] = [];
  for (const area of areas) {
    const noted = notesMarks(rest, below(area));
    marks.push(...noted.marks);
    rest = rest.slice(rest.length - noted.rest.length);
  }
  return { marks, rest };
}

function problemBlocks(unit: UnitFill, numbers: readonly number[], info: SheetInfo): Blocks {
  return (width) =>
    numbers.flatMap((number) => {
      const problem = unit.problems[number - 1];
      return problem === undefined
        ? []
        : [{ number, ...problemBlock({ number, problem }, info.language, width) }];
    });
}

function listPages(blocks: Blocks, info: SheetInfo, paper: PaperSize): readonly (readonly Mark[])[] {
  const areas = columns(contentBox(paper), LIST_COLUMNS);
  const pages: (readonly Mark[])[] = [];
  let rest = blocks(areas[0]!.width);
  while (rest.length > 0) {
    const now = rest;
    const placed = placeBlocks(() => now, areas);
    const heading = headingMark(ELEVATION_WORDS[info.language].problems, areas[0]!);
    pages.push([heading, ...placed.marks]);
    rest = placed.rest.length < now.length ? placed.rest : [];
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
