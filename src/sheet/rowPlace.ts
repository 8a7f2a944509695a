// Gives every stretch, corner and label of a row its place across the paper, and the row its height.
//
//     AB   B →    BC   C →        heads: corners and letters
//      |    6  7  |     5         numbers of what lies at the head of the wall
//     ┌──────────┬┬──────────     the wall itself
//     └──────────┴┴──────────
//        600 600     600          tape: widths under their pieces
//                 [6] 300         flags of what is too narrow

import type { SheetCorner } from "./faceOrder.ts";
import { heightOfLabels, labelWidth, leaderOffset } from "./label.ts";
import type { RowSpan } from "./page.ts";
import {
  cornerHeadWidth,
  gapBefore,
  gapBehind,
  LABEL_GAP,
  letterHeight,
  letterWidth,
  type RowPlan,
  STRIP_GAP,
} from "./rowPlan.ts";
import { spreadOut } from "./spread.ts";
import type { HeadLabel, TapeLabel } from "./stretchLabels.ts";
import type { StretchPlan } from "./stretchMarks.ts";

export interface PlacedStretch {
  readonly plan: StretchPlan;
  readonly x: number;
}

export interface PlacedCorner {
  readonly corner: SheetCorner;
  /** Where the drawing is folded. */
  readonly x: number;
  /** The stretch on the right of it in its strip; null where the strip ends. */
  readonly next: PlacedStretch | null;
  readonly previous: PlacedStretch | null;
  /** Shown before, on this row or another. */
  readonly isAgain: boolean;
}

/** Vertical measures from the upper edge of the row, mm of paper. */
export interface RowHeights {
  /** Baseline of the letters and foot of the corner heads. */
  readonly letters: number;
  /** Upper edge of the labels at the head of the wall. */
  readonly head: number;
  /** Height of the labels. */
  readonly labels: number;
  readonly wall: number;
  readonly floor: number;
  /** Foot of the widths under the floor. */
  readonly tape: number;
  readonly flags: number;
  readonly whole: number;
}

export interface PlacedRow {
  readonly stretches: readonly PlacedStretch[];
  readonly corners: readonly PlacedCorner[];
  readonly letters: readonly { readonly at: PlacedStretch; readonly x: number; readonly room: number }[];
  readonly cornerHeads: readonly { readonly at: PlacedCorner; readonly x: number; readonly stem: number }[];
  readonly head: readonly { readonly label: HeadLabel; readonly x: number; readonly wish: number }[];
  readonly widths: readonly { readonly label: TapeLabel; readonly x: number }[];
  readonly flags: readonly { readonly label: TapeLabel; readonly x: number; readonly wish: number }[];
  readonly heights: RowHeights;
}

const LABELS = heightOfLabels(false);
const LETTERS_FOOT = 10.4;
const HEAD_GAP = 0.6;
/** Paper in which leaders bend. */
const BEND = 1.3;
/** From the floor line to the foot of the widths under it. */
const TAPE_FOOT = 4.6;

/** Height of a row before anything is placed: what a page needs for it, mm of paper. */
function rowHeights(row: RowPlan): RowHeights {
  const plans = row.flat();
  const hasHead = plans.some(({ labels }) => labels.head.length > 0);
  const hasFlags = plans.some(({ labels }) => labels.tape.some(({ level }) => level === 2));
  const head = LETTERS_FOOT + HEAD_GAP;
  const wall = head + (hasHead ? LABELS : 0) + BEND;
  const floor = wall + Math.max(0, ...plans.map(({ height }) => height));
  const flags = floor + TAPE_FOOT + BEND;
  return {
    letters: LETTERS_FOOT,
    head,
    wall,
    floor,
    labels: LABELS,
    tape: floor + TAPE_FOOT,
    flags,
    whole: hasFlags ? flags + LABELS : floor + TAPE_FOOT,
  };
}

/** Places one row. `shown` holds the names of the corners that earlier rows show. */
export function placeRow(row: RowPlan, shown: ReadonlySet<string>, span: RowSpan): PlacedRow {
  const { stretches, corners } = placeStrips(row, shown, span.left);
  const [stems, head] = placeHead(stretches, corners, span);
  const [cornerHeads, letters] = placeLetters(stretches, stems, span);
  return {
    stretches,
    corners,
    letters,
    cornerHeads,
    head,
    widths: stretches.flatMap(({ plan, x }) =>
      plan.labels.tape.filter(({ level }) => level === 1).map((label) => ({ label, x: x + label.x })),
    ),
    flags: placeFlags(stretches, span),
    heights: rowHeights(row),
  };
}

function placeStrips(row: RowPlan, shown: ReadonlySet<string>, left: number) {
  const seen = new Set(shown);
  const stretches: PlacedStretch[] = [];
  const corners: PlacedCorner[] = [];
  let x = left;
  for (const strip of row) {
    let previous: PlacedStretch | null = null;
    for (const plan of strip) {
      const gap = gapBefore(plan);
      const next: PlacedStretch = { plan, x: x + gap };
      const corner = plan.stretch.left;
      if (corner !== null) {
        corners.push({ corner, x: x + gap / 2, next, previous, isAgain: seen.has(corner.name) });
        seen.add(corner.name);
      }
      x += gap + plan.width;
      stretches.push(next);
      previous = next;
    }
    const last = strip.at(-1)!;
    const corner = last.stretch.right;
    if (corner !== null) {
      const gap = gapBehind(last);
      corners.push({ corner, x: x + gap / 2, next: null, previous, isAgain: seen.has(corner.name) });
      seen.add(corner.name);
      x += gap;
    }
    x += STRIP_GAP;
  }
  return { stretches, corners };
}

/** Labels over the wall, and between them the stems that carry the heads of the corners. */
function placeHead(stretches: readonly PlacedStretch[], corners: readonly PlacedCorner[], span: RowSpan) {
  const stems = corners.map((at) => ({ kind: "stem" as const, at, wish: at.x, width: 2 * LABEL_GAP }));
  const labels = stretches.flatMap(({ plan, x }) =>
    plan.labels.head.map((label) => ({
      kind: "label" as const,
      label,
      wish: x + label.x,
      width: labelWidth(label.parts) + LABEL_GAP,
    })),
  );
  const placed = spreadOut(
    [...stems, ...labels].sort((a, b) => a.wish - b.wish),
    span.left - LABEL_GAP,
    span.labelRight,
  );
  const stemPlaces = new Map<PlacedCorner, number>();
  const head: { label: HeadLabel; x: number; wish: number }[] = [];
  for (const [item, x] of placed) {
    if (item.kind === "stem") stemPlaces.set(item.at, x);
    else head.push({ label: item.label, x, wish: item.wish });
  }
  return [corners.map((at) => ({ at, stem: stemPlaces.get(at) ?? at.x })), head] as const;
}

/** Heads of corners and letters of faces in one line, as they follow each other. */
function placeLetters(
  stretches: readonly PlacedStretch[],
  stems: readonly { readonly at: PlacedCorner; readonly stem: number }[],
  span: RowSpan,
) {
  const heads = stems.map(({ at, stem }) => ({
    kind: "corner" as const,
    at,
    stem,
    order: at.x,
    wish: stem,
    width: cornerHeadWidth(at.corner) + LABEL_GAP,
  }));
  const letters = stretches.map((at) => {
    const width = letterWidth(at.plan) + LABEL_GAP;
    const isWide = letterHeight(at.plan) === 10;
    const wish = isWide ? at.x + 5.5 + width / 2 : at.x + at.plan.width / 2;
    return { kind: "letter" as const, at, order: at.x + at.plan.width / 2, wish, width };
  });
  const items = [...heads, ...letters].sort((a, b) => a.order - b.order);
  const placed = spreadOut(items, span.labelLeft, span.labelRight);
  const cornerHeads: { at: PlacedCorner; x: number; stem: number }[] = [];
  const faceLetters: { at: PlacedStretch; x: number; room: number }[] = [];
  placed.forEach(([item, x], index) => {
    if (item.kind === "corner") {
      cornerHeads.push({ at: item.at, x, stem: item.stem });
      return;
    }
    const following = placed[index + 1];
    const next = following === undefined ? span.labelRight : following[1] - following[0].width / 2;
    const end = Math.min(next, item.at.x + item.at.plan.width);
    faceLetters.push({ at: item.at, x, room: end - (x + item.width / 2) });
  });
  return [cornerHeads, faceLetters] as const;
}

function placeFlags(stretches: readonly PlacedStretch[], span: RowSpan) {
  const flags = stretches.flatMap(({ plan, x }) =>
    plan.labels.tape
      .filter(({ level }) => level === 2)
      .map((label) => ({
        label,
        foot: x + label.x,
        wish: x + label.x - leaderOffset(label.parts),
        width: labelWidth(label.parts) + LABEL_GAP,
      })),
  );
  return spreadOut(flags, span.labelLeft, span.labelRight).map(([flag, x]) => ({
    label: flag.label,
    x,
    wish: flag.foot,
  }));
}
