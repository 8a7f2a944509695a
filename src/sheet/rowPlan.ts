// Breaks the ribbon into rows that fit the paper: their pieces to scale, and all their labels side by side.
//
//   row 1   │ B │ C      │   row breaks fall on corners; a face too long for a row is cut at a panel joint
//   row 2   │ D │ A │
//
// A row that labels would overfill is broken earlier, so that no label ever has to be left out or laid over another.

import type { SheetCorner, SheetRing } from "./faceOrder.ts";
import { labelWidth } from "./label.ts";
import { textWidth } from "./lettering.ts";
import type { LetterHeight } from "./mark.ts";
import type { RowSpan } from "./page.ts";
import { cutAt, cutsIn, type RibbonContext, type Stretch } from "./stretch.ts";
import { planStretch, type StretchPlan } from "./stretchMarks.ts";

/** Stretches that follow each other without a break. */
type Strip = readonly StretchPlan[];

/** Strips of one row, left to right. */
export type RowPlan = readonly Strip[];

/** Paper between two strips of a row. */
export const STRIP_GAP = 20;

/** Breadth of an outside corner: it has no width on a face, so it stands between the two faces. */
export const POST = 3;

/** Paper kept free between labels of one line. */
export const LABEL_GAP = 1.2;

/** Faces narrower than this on paper carry a small letter. */
const WIDE_FACE = 15;

export function letterHeight(plan: StretchPlan): LetterHeight {
  return plan.width >= WIDE_FACE ? 10 : 5;
}

export function letterWidth(plan: StretchPlan): number {
  return textWidth(plan.stretch.sheetFace.letter, { height: letterHeight(plan), weight: 700 });
}

export function cornerHeadWidth(corner: SheetCorner): number {
  const word = corner.roleWord;
  const wordWidth = word === null ? 0 : textWidth(word, { height: 2.5, weight: 700 });
  return Math.max(textWidth(corner.name, { height: 5, weight: 700 }) + 1.8, wordWidth);
}

/** Paper at the left of a stretch, between it and the one before in its strip or the beginning of the strip. */
export function gapBefore(plan: StretchPlan): number {
  return plan.stretch.left?.turn === "outside" ? POST : 0;
}

/** Paper behind the last stretch of a strip. */
export function gapBehind(plan: StretchPlan): number {
  return plan.stretch.right?.turn === "outside" ? POST : 0;
}

/** Rows of all rings: the ring of the room first, columns behind it in the same row where they fit. */
export function breakRows(rings: readonly SheetRing[], context: RibbonContext): readonly RowPlan[] {
  const rows: RowPlan[] = [];
  let row: RowPlan = [];
  for (const ring of rings) {
    let strip: Strip = [];
    const queue = stretchesOf(ring).reverse();
    for (let stretch = queue.pop(); stretch !== undefined; stretch = queue.pop()) {
      const plan = planStretch(stretch, context);
      if (fits([...row, [...strip, plan]], context.span)) {
        strip = [...strip, plan];
        continue;
      }
      if (row.length + strip.length > 0) {
        rows.push(strip.length > 0 ? [...row, strip] : row);
        row = [];
        strip = [];
        queue.push(stretch);
        continue;
      }
      const [here, rest] = cutToFit(stretch, context);
      strip = [planStretch(here, context)];
      if (rest !== null) queue.push(rest);
    }
    if (strip.length > 0) row = [...row, strip];
  }
  return row.length > 0 ? [...rows, row] : rows;
}

function stretchesOf(ring: SheetRing): Stretch[] {
  return ring.faces.map((sheetFace, index) => ({
    sheetFace,
    start: 0,
    end: sheetFace.face.length,
    left: ring.corners[index] ?? null,
    right: ring.corners[(index + 1) % ring.corners.length] ?? null,
  }));
}

/** The longest beginning of the stretch that fits a row alone, cut at a joint if there is one, and the rest. */
function cutToFit(stretch: Stretch, context: RibbonContext): readonly [Stretch, Stretch | null] {
  const cuts = cutsIn(stretch);
  // What fits, fits shorter too: the last fitting joint is found by halving.
  let [low, high] = [0, cuts.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (fits([[planStretch(cutAt(stretch, cuts[middle]!)[0], context)]], context.span)) low = middle + 1;
    else high = middle;
  }
  if (low > 0) return cutAt(stretch, cuts[low - 1]!);
  // No joint in reach: the paper decides, and halves until the labels fit as well.
  let length = Math.floor((context.span.right - context.span.left - 2 * POST) * context.scale);
  const isTooMuch = () => {
    const part = length < stretch.end - stretch.start ? cutAt(stretch, stretch.start + length)[0] : stretch;
    return !fits([[planStretch(part, context)]], context.span);
  };
  while (length > context.scale && isTooMuch()) length = Math.floor(length / 2);
  return stretch.start + length < stretch.end ? cutAt(stretch, stretch.start + length) : [stretch, null];
}

function fits(row: RowPlan, span: RowSpan): boolean {
  const plans = row.flat();
  const corners = plans.flatMap(({ stretch }) => [stretch.left ?? [], stretch.right ?? []].flat());
  const geometry = row.reduce((sum, strip) => sum + stripWidth(strip), STRIP_GAP * (row.length - 1));
  const tape = plans.flatMap(({ labels }) => labels.tape).filter(({ level }) => level === 2);
  const head = plans.flatMap(({ labels }) => labels.head);
  const wide = span.labelRight - span.labelLeft;
  return (
    geometry <= span.right - span.left &&
    sum(tape.map(({ parts }) => labelWidth(parts))) <= wide &&
    sum(head.map(({ parts }) => labelWidth(parts))) + 2 * LABEL_GAP * corners.length <=
      span.right - span.left &&
    sum([...corners.map(cornerHeadWidth), ...plans.map(letterWidth)]) <= wide
  );
}

/** Width of labels of one line, with the paper between them. */
function sum(widths: readonly number[]): number {
  return widths.reduce((total, width) => total + width + LABEL_GAP, 0);
}

function stripWidth(strip: Strip): number {
  const last = strip.at(-1);
  const behind = last === undefined ? 0 : gapBehind(last);
  return strip.reduce((total, plan) => total + gapBefore(plan) + plan.width, behind);
}
