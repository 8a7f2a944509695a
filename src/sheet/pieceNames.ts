// The name of every piece of a room: the letter of its face and a number in working order, "B3".
//
// Numbers count anew on each face, so a change on one face renames nothing elsewhere. What turns a corner goes by the
// letters of its two faces. On one face panels come first, then what frames the openings, then the head of the wall.

import type { FacePiece, RevealSide } from "../fill/result.ts";
import type { RoomParts } from "../fill/roomParts.ts";
import type { SheetFace, SheetRing } from "./faceOrder.ts";
import { isCornerPiece, isHeadPiece } from "./pieceKind.ts";

export interface PieceName {
  /** Letter or letters: of the face, or of the two faces of a corner. */
  readonly letters: string;
  /** From 1 on each face; null for a corner piece. */
  readonly number: number | null;
}

const REVEAL_ORDER: readonly RevealSide[] = ["left", "right", "head", "sill"];

/** Names by piece id of all pieces on the faces of these rings, and of the reveals that are set from them. */
export function pieceNames(
  rings: readonly SheetRing[],
  parts: RoomParts,
): { readonly [piece: string]: PieceName } {
  const names: { [piece: string]: PieceName } = {};
  for (const ring of rings) nameCorners(ring, names);
  const framed = new Set<string>();
  for (const { faces } of rings) {
    for (const sheetFace of faces) {
      let number = 0;
      for (const piece of workingOrder(sheetFace, parts, framed)) {
        if (names[piece] === undefined) names[piece] = { letters: sheetFace.letter, number: ++number };
      }
    }
  }
  return names;
}

function nameCorners(ring: SheetRing, names: { [piece: string]: PieceName }): void {
  ring.faces.forEach(({ face }, index) => {
    const next = ring.corners[(index + 1) % ring.corners.length];
    const previous = ring.corners[index];
    for (const piece of face.pieces) {
      if (!isCornerPiece(piece.family)) continue;
      const corner = piece.x === 0 ? previous : piece.x + piece.width === face.length ? next : null;
      if (corner) names[piece.piece] = { letters: corner.name, number: null };
    }
  });
}

/** Piece ids of one face as they are set. An opening seen from two faces of a room is framed from the first. */
function workingOrder(sheetFace: SheetFace, parts: RoomParts, framed: Set<string>): readonly string[] {
  const { face, direction } = sheetFace;
  const lead = (x: number, width: number) => (direction === "right" ? x : -(x + width));
  const along = (a: FacePiece, b: FacePiece) => lead(a.x, a.width) - lead(b.x, b.width) || a.z - b.z;
  const openings = [...face.openings]
    .sort((a, b) => lead(a.x, a.width) - lead(b.x, b.width) || a.sill - b.sill)
    .filter((opening) => !framed.has(opening.id));
  const frames = openings.flatMap((opening) => {
    framed.add(opening.id);
    return REVEAL_ORDER.flatMap((side) =>
      parts.reveals
        .filter((reveal) => reveal.opening === opening.id && reveal.side === side)
        .flatMap((reveal) => [...reveal.pieces].sort((a, b) => a.at - b.at)),
    );
  });
  const sorted = [...face.pieces].sort(along);
  return [
    ...sorted.filter((piece) => !isHeadPiece(piece.family)),
    ...frames,
    ...sorted.filter((piece) => isHeadPiece(piece.family)),
  ].map((piece) => piece.piece);
}
