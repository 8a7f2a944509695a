// A stretch: the part of a face that one row of the ribbon shows, and its own paper coordinates.
//
//      ┌──────────────┐ −height       0,0 is the foot of its left end; x to the right, y downward, so what
//      │  x →         │               stands on the floor lies at negative y. A row moves all of it to its place.
//    0,0──────────────┘
//
// Most stretches are whole faces. A face too long for a row is cut where no panel or opening is cut with it.

import type { EdgePiece, FilledFace } from "../fill/result.ts";
import type { RoomParts } from "../fill/roomParts.ts";
import type { Mm } from "../units.ts";
import type { Box } from "./box.ts";
import type { SheetCorner, SheetFace } from "./faceOrder.ts";
import type { SheetInfo } from "./info.ts";
import type { LabelPart } from "./label.ts";
import type { RowSpan } from "./page.ts";
import { isHeadPiece } from "./pieceKind.ts";
import type { PieceName } from "./pieceNames.ts";

export interface Stretch {
  readonly sheetFace: SheetFace;
  readonly start: Mm;
  readonly end: Mm;
  /** The corner at its left and at its right end; null where the face goes on or ends loose. */
  readonly left: SheetCorner | null;
  readonly right: SheetCorner | null;
}

/** How pieces are named on a sheet: carried up to the wall in large figures, or read at a desk. */
export type NameStyle = "figure" | "whole";

/** What all stretches of a sheet share. */
export interface RibbonContext {
  readonly parts: RoomParts;
  readonly info: SheetInfo;
  readonly names: { readonly [piece: string]: PieceName };
  /** "figure": the number alone, as large as it fits; "whole": letter and number, "B3", in small letters. */
  readonly nameStyle: NameStyle;
  /** Place in the order of taking out, from 1, by the id of a first-out piece. */
  readonly outOrder: { readonly [piece: string]: number };
  /** The face on which each edge piece is drawn, by piece; null for one that stands in an outside corner. */
  readonly edgeFace: { readonly [piece: string]: string | null };
  /** The edge pieces that stand in an outside corner, by the name of the corner. */
  readonly cornerEdges: { readonly [corner: string]: readonly EdgePiece[] };
  /** What lies behind each face, by its id: "Hall", "outside". */
  readonly behind: { readonly [face: string]: readonly string[] };
  /** Millimetres of building to one of paper. */
  readonly scale: number;
  /** From side to side of the paper of a row. */
  readonly span: RowSpan;
  /** Height at which the numbers of full-height pieces stand, mm above the floor: between two tie rows. */
  readonly numberHeight: Mm;
}

/** The whole rectangle as it lies in the stretch, or the part of it there; null where it is not in it. */
export function boxIn(
  stretch: Stretch,
  scale: number,
  rect: { readonly x: Mm; readonly z: Mm; readonly width: Mm; readonly height: Mm },
): Box | null {
  const from = Math.max(rect.x, stretch.start);
  const to = Math.min(rect.x + rect.width, stretch.end);
  if (to <= from) return null;
  return {
    x: (from - stretch.start) / scale,
    y: -(rect.z + rect.height) / scale,
    width: (to - from) / scale,
    height: rect.height / scale,
  };
}

/** The name of a piece as the sheet writes it; empty where it has none. */
export function shownName(piece: string, context: RibbonContext): string {
  const name = context.names[piece];
  if (name === undefined || name.number === null) return "";
  return context.nameStyle === "whole" ? `${name.letters}${name.number}` : `${name.number}`;
}

/** The part as the sheet letters it. */
export function styled(part: LabelPart, context: RibbonContext): LabelPart {
  return context.nameStyle === "whole" ? { ...part, isSmall: true } : part;
}

/** Whether the left edge of something at `x` is in the stretch: there it is named. */
export function beginsIn(stretch: Stretch, x: Mm): boolean {
  return x >= stretch.start && x < stretch.end;
}

/** The void of an opening as a rectangle of the face. */
export function voidOf(opening: FilledFace["openings"][number]) {
  return { x: opening.x, z: opening.sill, width: opening.width, height: opening.head - opening.sill };
}

/** Places inside the stretch where it can be cut without cutting a panel, a closure, a corner, an opening or a gap. */
export function cutsIn(stretch: Stretch): readonly Mm[] {
  const { face } = stretch.sheetFace;
  const solid = [
    ...face.pieces.filter((piece) => !isHeadPiece(piece.family)),
    ...face.openings,
    ...face.unfilled,
  ];
  const ends = new Set(solid.flatMap((part) => [part.x, part.x + part.width]));
  return [...ends]
    .filter((x) => x > stretch.start && x < stretch.end)
    .filter((x) => !solid.some((part) => part.x < x && x < part.x + part.width))
    .sort((a, b) => a - b);
}

/** The two parts of a stretch cut at `x`. */
export function cutAt(stretch: Stretch, x: Mm): readonly [Stretch, Stretch] {
  return [
    { ...stretch, end: x, right: null },
    { ...stretch, start: x, left: null },
  ];
}
