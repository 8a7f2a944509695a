// Packs the blocks into rows and the rows onto pages: room after room, and inside a room as few rows as can be had.
//
// The faces of a room go into the row that is open and into rows of the room's own, each into the first that has paper
// for it: once in the order of their letters, once the widest first. The order of letters wins unless it needs more rows.

import { heightOfLabels } from "../label.ts";
import type { RowHeights } from "../rowPlace.ts";
import type { FaceBlock } from "./faceBlock.ts";

export interface PackedBlock {
  readonly block: FaceBlock;
  /** Left edge of the block, from that of the row. */
  readonly x: number;
}

export interface PackedRow {
  readonly blocks: readonly PackedBlock[];
  readonly heights: RowHeights;
  /** Upper edge on its page, from that of the content. */
  readonly y: number;
}

export type PackedPage = readonly PackedRow[];

/** Paper on the left of a row for the heights of ties, openings and wall. */
export const GUTTER = 10.6;

/** Paper between two faces, and between two rooms. */
const FACE_GAP = 4;
const ROOM_GAP = 8;
const ROW_GAP = 1.2;

/** Measures of a row from its upper edge, mm of paper. */
export const NAME_FOOT = 3.6;
export const NAME_RULE = 4.9;
const LETTERS_FOOT = 11;
const HEAD_GAP = 0.4;
const BEND = 1.1;
const TAPE = 3.7;
const FLAG_BEND = 1;

/** Measures of a row that holds these blocks. */
function heightsOf(blocks: readonly FaceBlock[]): RowHeights {
  const labels = heightOfLabels(true);
  const hasHead = blocks.some(({ head }) => head.length > 0);
  const hasFlags = blocks.some(({ flags }) => flags.length > 0);
  const head = LETTERS_FOOT + HEAD_GAP;
  const wall = head + (hasHead ? labels : 0) + BEND;
  const floor = wall + Math.max(0, ...blocks.map(({ plan }) => plan.height));
  const tape = floor + TAPE;
  const flags = tape + FLAG_BEND;
  return {
    letters: LETTERS_FOOT,
    head,
    labels,
    wall,
    floor,
    tape,
    flags,
    whole: hasFlags ? flags + labels : tape,
  };
}

/** The tallest wall that a row of this height can hold with all its labels, mm of paper. */
export function tallestWall(height: number): number {
  const labels = heightOfLabels(true);
  return height - (LETTERS_FOOT + HEAD_GAP + labels + BEND + TAPE + FLAG_BEND + labels);
}

function gapBetween(a: FaceBlock, b: FaceBlock): number {
  return a.room === b.room ? FACE_GAP : ROOM_GAP;
}

type Row = readonly FaceBlock[];

function rowWidth(row: Row): number {
  return row.reduce(
    (sum, block, index) => sum + block.width + (index === 0 ? 0 : gapBetween(row[index - 1]!, block)),
    0,
  );
}

function rowsOf(blocks: readonly FaceBlock[], width: number): readonly (readonly PackedBlock[])[] {
  const rooms = [...new Set(blocks.map(({ room }) => room))];
  const rows: Row[] = [];
  for (const room of rooms) {
    const own = blocks.filter((block) => block.room === room);
    const open = rows.pop() ?? [];
    const inOrder = firstFit(open, own, width);
    const widestFirst = firstFit(
      open,
      [...own].sort((a, b) => b.width - a.width),
      width,
    );
    const best = widestFirst.length < inOrder.length ? widestFirst : inOrder;
    const order = new Map(own.map((block, index) => [block, index]));
    const at = (block: FaceBlock) => order.get(block) ?? -1;
    const sorted = best.map((row) => [...row].sort((a, b) => at(a) - at(b)));
    const [first, ...others] = sorted;
    rows.push(first!, ...others.sort((a, b) => at(a[0]!) - at(b[0]!)));
  }
  return rows.map(placedRow);
}

/** Rows that hold the blocks, each in the first row with paper for it; the first row goes on with `open`. */
function firstFit(open: Row, blocks: readonly FaceBlock[], width: number): readonly Row[] {
  const rows: FaceBlock[][] = [[...open]];
  for (const block of blocks) {
    const row = rows.find((some) => some.length === 0 || rowWidth([...some, block]) <= width);
    if (row === undefined) rows.push([block]);
    else row.push(block);
  }
  return rows;
}

function placedRow(row: Row): readonly PackedBlock[] {
  let x = 0;
  return row.map((block, index) => {
    if (index > 0) x += gapBetween(row[index - 1]!, block);
    const packed = { block, x };
    x += block.width;
    return packed;
  });
}

/** The pages, for content of this size. */
export function packPages(
  blocks: readonly FaceBlock[],
  content: { readonly width: number; readonly height: number },
): readonly PackedPage[] {
  const pages: PackedRow[][] = [];
  let end = 0;
  for (const row of rowsOf(blocks, content.width - GUTTER)) {
    const heights = heightsOf(row.map(({ block }) => block));
    const page = pages.at(-1);
    const y = end + ROW_GAP;
    if (page !== undefined && y + heights.whole <= content.height) {
      page.push({ blocks: row, heights, y });
      end = y + heights.whole;
    } else {
      pages.push([{ blocks: row, heights, y: 0 }]);
      end = heights.whole;
    }
  }
  return pages;
}
