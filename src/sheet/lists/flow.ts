// Puts sections of rows into columns and pages: a section goes on in the next column under its own heading, said to be
// continued, and no heading stands alone at the foot of a column. Short sections are not torn apart at all.

import type { Box } from "../box.ts";
import type { Mark } from "../mark.ts";

/** A piece of a column of its own height. */
export interface Strip {
  readonly height: number;
  /** Its marks in a box of the column's width and its own height. */
  readonly draw: (box: Box) => readonly Mark[];
}

export interface Section {
  readonly head: (isContinued: boolean) => Strip;
  readonly rows: readonly Strip[];
  /** Rather begins a column than goes on in the next one, as long as it takes less than half a column. */
  readonly isWhole?: boolean;
}

/** Free paper between two sections of a column, mm. */
const SECTION_GAP = 2.4;

export interface Columns {
  /** The columns of a page, from left to right; the first page may have less paper than the rest. */
  readonly boxes: (page: number) => readonly Box[];
  /** What stands over a column that holds anything. */
  readonly head?: (box: Box) => readonly Mark[];
}

/** A page that is laid out but not drawn yet: most layouts are only tried. */
type LaidPage = () => readonly Mark[];

/** The pages laid out in the way that takes the fewest of them; the first of equals. */
export function fewestPages<Way>(
  ways: readonly Way[],
  lay: (way: Way) => readonly LaidPage[],
): readonly (readonly Mark[])[] {
  const best = ways.map(lay).reduce((fewest, pages) => (pages.length < fewest.length ? pages : fewest));
  return best.map((page) => page());
}

/** How far a flow has come: the next row to be placed. */
interface Cursor {
  readonly section: number;
  readonly row: number;
}

/**
 * The pages, one at least. On the last page the columns end as level as the rows allow. A row that no
 * column can hold is placed all the same.
 */
export function flowed(sections: readonly Section[], columns: Columns): readonly LaidPage[] {
  const pages: LaidPage[] = [];
  let at: Cursor = { section: 0, row: 0 };
  do {
    const boxes = columns.boxes(pages.length);
    const full = filledPage(sections, at, boxes, tallestOf(boxes));
    const page = full.end.section < sections.length ? full : levelled(sections, at, boxes);
    const used = boxes.slice(0, page.columns);
    pages.push(() => [
      ...(columns.head === undefined ? [] : used.flatMap(columns.head)),
      ...page.placed.flatMap(({ strip, box }) => strip.draw(box)),
    ]);
    at = page.end;
  } while (at.section < sections.length);
  return pages;
}

interface Placed {
  readonly strip: Strip;
  readonly box: Box;
}

interface Filled {
  readonly placed: readonly Placed[];
  readonly end: Cursor;
  /** Something is taller than the column that it stands in. */
  readonly isForced: boolean;
}

interface FilledPage extends Filled {
  /** How many of the columns hold anything. */
  readonly columns: number;
}

/** The shortest columns that hold all that is left. */
function levelled(sections: readonly Section[], from: Cursor, boxes: readonly Box[]): FilledPage {
  const tallest = tallestOf(boxes);
  for (let height = LEVEL_STEP; height < tallest; height += LEVEL_STEP) {
    const low = boxes.map((box) => ({ ...box, height: Math.min(box.height, height) }));
    const page = filledPage(sections, from, low, tallest);
    if (page.end.section >= sections.length && !page.isForced) return page;
  }
  return filledPage(sections, from, boxes, tallest);
}

const LEVEL_STEP = 4;

function tallestOf(boxes: readonly Box[]): number {
  return Math.max(...boxes.map(({ height }) => height));
}

/** @param tallest - height of a column before it is shortened */
function filledPage(
  sections: readonly Section[],
  from: Cursor,
  boxes: readonly Box[],
  tallest: number,
): FilledPage {
  const placed: Placed[] = [];
  let at = from;
  let isForced = false;
  let columns = 0;
  for (const box of boxes) {
    if (at.section >= sections.length) break;
    const column = filledColumn(sections, at, box, tallest / 2);
    placed.push(...column.placed);
    at = column.end;
    isForced ||= column.isForced;
    columns += 1;
  }
  return { placed, end: at, isForced, columns };
}

/** @param wholeUnder - height under which a section that is whole is not torn */
function filledColumn(sections: readonly Section[], from: Cursor, box: Box, wholeUnder: number): Filled {
  const placed: Placed[] = [];
  const place = (strip: Strip, y: number) =>
    placed.push({ strip, box: { x: box.x, y, width: box.width, height: strip.height } });
  const foot = box.y + box.height;
  let y = box.y;
  let { section, row } = from;
  let isForced = false;
  while (section < sections.length) {
    const { head, rows, isWhole } = sections[section]!;
    const heading = head(row > 0);
    const top = y === box.y ? y : y + SECTION_GAP;
    const all = rows.slice(row).reduce((sum, { height }) => sum + height, 0);
    const keepsWhole = isWhole === true && heading.height + all < wholeUnder;
    const first = keepsWhole ? all : (rows[row]?.height ?? 0);
    if (top + heading.height + first > foot) {
      if (y > box.y) return { placed, end: { section, row }, isForced };
      isForced = true;
    }
    place(heading, top);
    y = top + heading.height;
    for (let count = 0; row < rows.length; row++, count++) {
      const strip = rows[row]!;
      if (count > 0 && y + strip.height > foot) return { placed, end: { section, row }, isForced };
      place(strip, y);
      y += strip.height;
    }
    section += 1;
    row = 0;
  }
  return { placed, end: { section, row }, isForced };
}
