// The bands of a soffit and the names of what lies in them: letters go on after the faces, digits in the order of laying.
//
//   ┌───┬───┬───┬─┐ E    A band is a row of panels between two supports, laid from the end away from the door; its last
//   │ 1 │ 2 │ 3 │4│      piece closes it, and comes out first. The fill lists the pieces in that order.
//   └───┴───┴───┴─┘

import type { Soffit, SoffitPiece } from "../../fill/result.ts";
import { distance } from "../../geom/point.ts";
import type { Position } from "../../plan/project.ts";
import { faceLetter, type SheetRing } from "../faceOrder.ts";
import type { PieceName } from "../pieceNames.ts";

export interface Band {
  readonly letter: string;
  /** In the order of laying; the last one closes. */
  readonly pieces: readonly SoffitPiece[];
}

/** Corners nearer than this are one, mm: outlines are written to 0.001. */
const SAME = 0.01;

/** Whether the piece is laid between the supports: a slab panel, or a plank that closes what panels leave. */
export function isLaid({ family }: Pick<SoffitPiece, "family">): boolean {
  return family === "slab-panel" || family === "closure-strip";
}

/** The bands of each soffit, lettered through from behind the faces of these rings. */
export function bandsOf(
  soffits: readonly Soffit[],
  rings: readonly SheetRing[],
): readonly (readonly Band[])[] {
  let letters = rings.reduce((sum, { faces }) => sum + faces.length, 0);
  return soffits.map((soffit) =>
    rowsOf(soffit).map((pieces): Band => ({ letter: faceLetter(letters++), pieces })),
  );
}

/** Names by piece id: of what is laid. */
export function bandNames(bands: readonly Band[]): { readonly [piece: string]: PieceName } {
  return Object.fromEntries(
    bands.flatMap(({ letter, pieces }) =>
      pieces.map(({ piece }, index): [string, PieceName] => [piece, { letters: letter, number: index + 1 }]),
    ),
  );
}

/** Numbers of all props of a unit by piece id, from 1 in the order of the fill: the same on every sheet. */
export function propNumbers(soffits: readonly Soffit[]): { readonly [piece: string]: number } {
  const numbers: { [piece: string]: number } = {};
  let count = 0;
  for (const { props } of soffits) for (const { piece } of props) numbers[piece] = ++count;
  return numbers;
}

/** A piece goes on with the row of the one before it where they share the side along the lengths, else it begins one. */
function rowsOf({ pieces, along }: Soffit): readonly (readonly SoffitPiece[])[] {
  const rows: SoffitPiece[][] = [];
  for (const piece of pieces.filter(isLaid)) {
    const row = rows.at(-1);
    const last = row?.at(-1);
    if (last !== undefined && sharesLength(last, piece, along)) row!.push(piece);
    else rows.push([piece]);
  }
  return rows;
}

function sharesLength(a: SoffitPiece, b: SoffitPiece, along: Soffit["along"]): boolean {
  return edgesOf(a.outline).some(
    ([from, to]) =>
      isAlong(from, to, along) &&
      edgesOf(b.outline).some(
        ([start, end]) =>
          (distance(from, start) < SAME && distance(to, end) < SAME) ||
          (distance(from, end) < SAME && distance(to, start) < SAME),
      ),
  );
}

function isAlong(a: Position, b: Position, along: Soffit["along"]): boolean {
  const [dx, dy] = [Math.abs(b[0] - a[0]), Math.abs(b[1] - a[1])];
  return along === "y" ? dy > dx : dx >= dy;
}

export function edgesOf(outline: readonly Position[]): readonly (readonly [Position, Position])[] {
  return outline.map((from, index) => [from, outline[(index + 1) % outline.length]!] as const);
}
