// Where the number, the width and the marks of each piece of a stretch go: onto the piece, under it, or over it.
//
// A number goes onto its piece as large as it fits. Where it fits in no size, it leaves the piece on a flag: under the
// floor line if the piece stands on the floor, else over the head of the wall with a leader to it.

import type { FaceOpening, FacePiece, Unfilled } from "../fill/result.ts";
import { type Box, boxAround, centreOf, overlaps } from "./box.ts";
import type { LabelPart } from "./label.ts";
import { labelWidth, partWidth, ringLettering } from "./label.ts";
import { textWidth } from "./lettering.ts";
import type { LetterHeight } from "./mark.ts";
import { isCornerPiece, isHeadPiece } from "./pieceKind.ts";
import {
  beginsIn,
  boxIn,
  type NameStyle,
  type RibbonContext,
  type Stretch,
  shownName,
  styled,
  voidOf,
} from "./stretch.ts";
import { WORDS } from "./words.ts";

/** A number or a ring that lies on what it names. */
export interface InsideLabel {
  readonly text: string;
  readonly height: LetterHeight;
  readonly box: Box;
  /** The piece it names; null for a ring. */
  readonly piece: FacePiece | null;
}

/** A label under the floor line. Level 1 stands directly under its piece, level 2 may move aside. */
export interface TapeLabel {
  readonly level: 1 | 2;
  /** Middle of what it names. */
  readonly x: number;
  readonly parts: readonly LabelPart[];
}

/** A label over the head of the wall. */
export interface HeadLabel {
  readonly x: number;
  /** Where its leader ends. */
  readonly y: number;
  readonly hasDot: boolean;
  readonly parts: readonly LabelPart[];
}

export interface StretchLabels {
  readonly inside: readonly InsideLabel[];
  readonly tape: readonly TapeLabel[];
  readonly head: readonly HeadLabel[];
  /** Flags of low pieces under an opening, which stand in its void if it has paper for them. */
  readonly underVoid: readonly { readonly opening: string; readonly label: HeadLabel }[];
}

/** A size a number may have on its piece, and what it keeps clear of at its sides and above and below, mm of paper. */
interface NumberSize {
  readonly height: LetterHeight;
  readonly inset: number;
  readonly clear: number;
}

const NUMBER_SIZES: { readonly [S in NameStyle]: readonly NumberSize[] } = {
  figure: [
    { height: 10, inset: 0.9, clear: 0.8 },
    { height: 7, inset: 0.9, clear: 0.8 },
    { height: 5, inset: 0.5, clear: 0.45 },
  ],
  whole: [
    { height: 5, inset: 0.9, clear: 0.6 },
    { height: 3.5, inset: 0.5, clear: 0.45 },
    { height: 2.5, inset: 0.4, clear: 0.4 },
  ],
};

/** Clear of a width to the edges of its piece, so that neighbours read as two numbers, mm of paper. */
const WIDTH_INSET = 0.4;

interface Draft {
  readonly inside: InsideLabel[];
  readonly head: HeadLabel[];
  readonly underVoid: { readonly opening: string; readonly label: HeadLabel }[];
  /** Flags of what stands on the floor, by its left end on the face. */
  readonly flags: Map<number, LabelPart[]>;
}

/** The labels of all that begins in the stretch, from left to right. */
export function stretchLabels(stretch: Stretch, context: RibbonContext): StretchLabels {
  const { face } = stretch.sheetFace;
  const draft: Draft = { inside: [], head: [], underVoid: [], flags: new Map() };
  const blocked = face.openings
    .filter((opening) => opening.formed === "box")
    .flatMap((opening) => boxIn(stretch, context.scale, voidOf(opening)) ?? []);
  const gaps = face.unfilled.filter((gap) => beginsIn(stretch, gap.x));
  for (const gap of [...gaps].sort((a, b) => a.x - b.x || a.z - b.z)) labelGap(gap, stretch, context, draft);
  const pieces = face.pieces.filter((piece) => beginsIn(stretch, piece.x) && !isCornerPiece(piece.family));
  for (const piece of [...pieces].sort((a, b) => a.x - b.x || a.z - b.z)) {
    labelPiece(piece, stretch, { context, draft, blocked });
  }
  return {
    inside: draft.inside,
    tape: tapeLabels(stretch, context, draft.flags),
    head: draft.head,
    underVoid: draft.underVoid,
  };
}

function labelGap(gap: Unfilled, stretch: Stretch, context: RibbonContext, draft: Draft): void {
  const box = boxIn(stretch, context.scale, gap)!;
  const part = styled({ kind: "ring", text: `${gap.problem + 1}` }, context);
  const size = partWidth(part);
  const [x, middle] = centreOf(box);
  if (size <= box.width && size <= box.height) {
    const ring = boxAround(x, middle, size - 1, size - 1);
    draft.inside.push({ text: part.text, height: ringLettering(part).height, box: ring, piece: null });
  } else if (gap.z === 0) addTo(draft.flags, gap.x, part);
  else draft.head.push({ x, y: middle, hasDot: true, parts: [part] });
}

function labelPiece(
  piece: FacePiece,
  stretch: Stretch,
  to: { readonly context: RibbonContext; readonly draft: Draft; readonly blocked: readonly Box[] },
): void {
  const { context, draft, blocked } = to;
  const box = boxIn(stretch, context.scale, piece)!;
  const text = shownName(piece.piece, context);
  const [x, middle] = centreOf(box);
  if (isHeadPiece(piece.family)) {
    draft.head.push({ x, y: box.y, hasDot: false, parts: [styled({ kind: "number", text }, context)] });
    return;
  }
  const place = numberPlace(text, box, {
    sizes: NUMBER_SIZES[context.nameStyle],
    heights: [-context.numberHeight / context.scale, middle],
    blocked,
  });
  if (place !== null) draft.inside.push({ text, piece, ...place });
  else if (piece.z === 0) addTo(draft.flags, piece.x, styled({ kind: "flag", text }, context));
  else {
    const over = stretch.sheetFace.face.openings.find((opening) => isUnder(piece, opening));
    const label: HeadLabel = { x, y: middle, hasDot: true, parts: [styled({ kind: "flag", text }, context)] };
    if (over === undefined) draft.head.push(label);
    else draft.underVoid.push({ opening: over.id, label });
  }
}

/** Whether the piece stands under the opening, so that a leader from above would cross the void. */
function isUnder(piece: FacePiece, opening: FaceOpening): boolean {
  const middle = piece.x + piece.width / 2;
  const isBeside = middle < opening.x || middle > opening.x + opening.width;
  return opening.formed === "band" && !isBeside && piece.z + piece.height <= opening.sill;
}

/** The largest size, and in it the first height, at which the number is on the piece and clear of what is blocked. */
function numberPlace(
  text: string,
  box: Box,
  among: {
    readonly sizes: readonly NumberSize[];
    readonly heights: readonly number[];
    readonly blocked: readonly Box[];
  },
): { readonly height: LetterHeight; readonly box: Box } | null {
  const x = box.x + box.width / 2;
  const tries = [...among.heights, box.y + box.height / 4, box.y + (box.height * 3) / 4];
  for (const { height, inset, clear } of among.sizes) {
    const width = textWidth(text, { height, weight: 700 });
    if (width + 2 * inset > box.width || height + 2 * clear > box.height) continue;
    for (const y of tries) {
      const place = boxAround(x, y, width, height);
      const isOnPiece = place.y >= box.y + clear && place.y + height <= box.y + box.height - clear;
      if (isOnPiece && !among.blocked.some((other) => overlaps(other, place))) return { height, box: place };
    }
  }
  return null;
}

function addTo(flags: Map<number, LabelPart[]>, x: number, part: LabelPart): void {
  flags.set(x, [...(flags.get(x) ?? []), part]);
}

/** One label for each thing that stands on the floor: its flags and its width, and the tag of a first-out piece. */
function tapeLabels(
  stretch: Stretch,
  context: RibbonContext,
  flags: ReadonlyMap<number, readonly LabelPart[]>,
): readonly TapeLabel[] {
  const { face } = stretch.sheetFace;
  const standing = [
    ...face.pieces.filter((piece) => piece.z === 0 && !isCornerPiece(piece.family)),
    ...face.unfilled.filter((gap) => gap.z === 0),
    ...face.openings
      .filter((opening) => opening.sill === 0 && opening.formed === "band")
      .map((opening) => ({ ...opening, isVoid: true })),
  ].filter(({ x }) => beginsIn(stretch, x));
  return standing
    .sort((a, b) => a.x - b.x)
    .flatMap((part) => {
      const left = (part.x - stretch.start) / context.scale;
      const paper = (Math.min(part.x + part.width, stretch.end) - part.x) / context.scale;
      const x = left + paper / 2;
      const width = styled({ kind: "width", text: `${part.width}`, isVoid: "isVoid" in part }, context);
      const out = "piece" in part ? context.outOrder[part.piece] : undefined;
      const tag: readonly LabelPart[] =
        out === undefined
          ? []
          : [styled({ kind: "out", text: WORDS[context.info.language].out(out) }, context)];
      const flag = flags.get(part.x) ?? [];
      const fits = flag.length === 0 && labelWidth([width]) + 2 * WIDTH_INSET <= paper;
      const level1: readonly TapeLabel[] = fits ? [{ level: 1, x, parts: [width] }] : [];
      const moved = fits ? tag : [...flag, width, ...tag];
      return moved.length === 0 ? level1 : [...level1, { level: 2, x, parts: moved } as const];
    });
}
