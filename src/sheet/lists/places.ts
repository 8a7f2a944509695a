// The pieces of a unit at their places, each as it is drawn.

import { type PlacedPiece, placedPieces } from "../../fill/placedPieces.ts";
import type { UnitFill } from "../../fill/result.ts";
import type { SheetInfo } from "../info.ts";
import { lookOf, type PieceLook, plainLook } from "../pieceMark.ts";

export interface DrawnPiece extends PlacedPiece {
  readonly look: PieceLook;
}

/** What a fill gives a place, in its order. */
export function drawnPieces(unit: UnitFill, info: SheetInfo): readonly DrawnPiece[] {
  return placedPieces(unit).map((piece) => ({
    ...piece,
    look: piece.onFace === null ? plainLook(piece.family, piece.code, info) : lookOf(piece.onFace, info),
  }));
}
