// The paper of a room sheet: A4 on its side, a header above, a title block below, and what lies between.

import { type PaperMm, paperMm } from "../units.ts";
import type { Box } from "./box.ts";

/** Size of the paper, mm. @see ISO 216, A4 */
export const PAPER: { readonly width: PaperMm; readonly height: PaperMm } = {
  width: paperMm(297),
  height: paperMm(210),
};

export const MARGIN = 10;

/** Between the margins from side to side. */
export const WIDTH = PAPER.width - 2 * MARGIN;

/** Baseline of the name of the room, and the rule under the header. */
export const HEADER = { baseline: 20.2, rule: 23.2 } as const;

/** Upper and lower edge of what a page can hold between header and title block. */
export const CONTENT = { top: 24, bottom: 185.6 } as const;

export const TITLE_BLOCK: Box = { x: MARGIN, y: 187, width: WIDTH, height: 13 };

/** Columns below the ribbon: key plan, notes, list. */
export const LOWER = {
  keyPlan: { x: MARGIN, width: 52 },
  notes: { x: 66, width: 74 },
  list: { x: 144, width: 143 },
} as const;

/** Least height in which key plan, notes and list are worth beginning. */
export const LOWER_LEAST = 58;
