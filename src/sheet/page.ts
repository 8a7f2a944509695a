// How a room sheet shares out the paper inside its frame: a header, the ribbon, and three columns below it.

import { contentBox, type SmallPaper } from "./paper.ts";

/** From side to side of what is shared out, mm of paper. */
interface Column {
  readonly x: number;
  readonly width: number;
}

/** Horizontal measures of a row of the ribbon: the wall itself, and how far its labels may reach. */
export interface RowSpan {
  readonly left: number;
  readonly right: number;
  readonly labelLeft: number;
  readonly labelRight: number;
}

export interface RoomPage {
  readonly left: number;
  readonly right: number;
  /** Baseline of the name of the room, and the rule under the header. */
  readonly header: { readonly baseline: number; readonly rule: number };
  /** Upper and lower edge of what a page can hold between header and title block. */
  readonly top: number;
  readonly bottom: number;
  readonly row: RowSpan;
  readonly keyPlan: Column;
  readonly notes: Column;
  readonly list: Column;
}

/** Least height in which key plan, notes and list are worth beginning. */
export const LOWER_LEAST = 58;

/** Width for which the columns were chosen: that of A4. Narrower paper takes the same share of each. */
const DRAFT_WIDTH = 277;

export function roomPage(paper: SmallPaper): RoomPage {
  const { x: left, y, width, height } = contentBox(paper);
  const right = left + width;
  const share = width / DRAFT_WIDTH;
  const column = (from: number, to: number): Column => ({
    x: left + from * share,
    width: (to - from) * share,
  });
  return {
    left,
    right,
    header: { baseline: y + 10.2, rule: y + 13.2 },
    top: y + 14,
    bottom: y + height,
    row: { left: left + 10.6, right: right - 2.4, labelLeft: left, labelRight: right },
    keyPlan: column(0, 52),
    notes: column(56, 130),
    list: column(134, 277),
  };
}
