// The papers of a sheet, all lying on their long side, and where on them a sheet may draw.
//
//   small (A4, Letter)               large (A3, Tabloid)
//   ┌───────────────────────┐        ┌───────────────────────┐
//   │ content               │        │ content               │
//   │                       │        │          ┌───────────┐│
//   │ ┌──────────────────┬──┤        │ beside   │ title     ││
//   └─┴── title ─────────┴QR┘        └──────────┴───────────┴┘

import { type PaperMm, paperMm } from "../units.ts";
import type { Box } from "./box.ts";

/** The papers of a person's sheets and of plans; the first of each pair is that of most of the world. */
export type PaperSize = "A4" | "A3" | "Letter" | "Tabloid";

/** The small paper of a set of sheets; the large one goes with it. */
export type SmallPaper = "A4" | "Letter";

interface PaperMeasures {
  readonly width: PaperMm;
  readonly height: PaperMm;
}

/**
 * Width and height, mm.
 *
 * @see ISO 216, A3 and A4
 * @see ANSI/ASME Y14.1, A (8.5 × 11 in) and B (11 × 17 in), an inch being 25.4 mm
 */
export const PAPERS: { readonly [P in PaperSize]: PaperMeasures } = {
  A4: { width: paperMm(297), height: paperMm(210) },
  A3: { width: paperMm(420), height: paperMm(297) },
  Letter: { width: paperMm(279.4), height: paperMm(215.9) },
  Tabloid: { width: paperMm(431.8), height: paperMm(279.4) },
};

/** The paper of plans that goes with the paper of a person's sheets: twice its area. */
export function largePaper(small: SmallPaper): PaperSize {
  return small === "A4" ? "A3" : "Tabloid";
}

export function isLarge(paper: PaperSize): boolean {
  return paper === "A3" || paper === "Tabloid";
}

/** Paper left free all round, mm. */
export const MARGIN = 10;

/** Left margin of a large sheet, where it is bound. @see ISO 5457 */
const BINDING = 20;

/** Paper between the frame of a large sheet and what it holds. */
const INSET = 4;

/** Paper between the content and the title block. */
const GAP = 1.85;

/** The frame of a large sheet; a small one has none, this is the paper inside its margins. */
export function frameBox(paper: PaperSize): Box {
  const { width, height } = PAPERS[paper];
  const left = isLarge(paper) ? BINDING : MARGIN;
  return { x: left, y: MARGIN, width: width - left - MARGIN, height: height - 2 * MARGIN };
}

/** The title block with the code: across the foot of a small sheet, in the lower right corner of a large one. */
export function titleBox(paper: PaperSize): Box {
  const frame = frameBox(paper);
  const height = isLarge(paper) ? 36 : 13;
  const width = isLarge(paper) ? 180 : frame.width;
  return { x: frame.x + frame.width - width, y: frame.y + frame.height - height, width, height };
}

/** What a sheet may draw in: all the width, down to the title block. */
export function contentBox(paper: PaperSize): Box {
  const frame = frameBox(paper);
  const inset = isLarge(paper) ? INSET : 0;
  const gap = isLarge(paper) ? INSET : GAP;
  const y = frame.y + inset;
  return {
    x: frame.x + inset,
    y,
    width: frame.width - 2 * inset,
    height: titleBox(paper).y - gap - y,
  };
}

/** On a large sheet the paper on the left of the title block, over the scale bar; null on a small one. */
export function besideBox(paper: PaperSize): Box | null {
  if (!isLarge(paper)) return null;
  const content = contentBox(paper);
  const title = titleBox(paper);
  const y = content.y + content.height;
  const bar = 10;
  return { x: content.x, y, width: title.x - INSET - content.x, height: title.y + title.height - bar - y };
}
