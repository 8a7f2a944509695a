// Questions about one piece on a face that several parts of a sheet ask.

import type { FacePiece, FilledFace } from "../fill/result.ts";
import type { Family } from "../kit/kit.ts";
import type { SheetInfo } from "./info.ts";

const CORNER_FAMILIES: ReadonlySet<Family> = new Set(["inside-corner", "connector-corner", "cap-corner"]);

const HEAD_FAMILIES: ReadonlySet<Family> = new Set([
  "wall-slab-connector",
  "slab-edge-cap",
  "connector-corner",
  "cap-corner",
]);

/** Whether the piece goes by the name of its corner instead of a number. */
export function isCornerPiece(family: Family): boolean {
  return CORNER_FAMILIES.has(family);
}

/** Whether the piece belongs to the ring at the head of the wall, which is set when the panels stand. */
export function isHeadPiece(family: Family): boolean {
  return HEAD_FAMILIES.has(family);
}

/**
 * Whether the piece is a wall panel outside the regular set. Where the kit does not know the code, a panel with a
 * reason is one: a fill gives reasons for fillers and closures only.
 */
export function isFiller(piece: FacePiece, info: SheetInfo): boolean {
  if (piece.family !== "wall-panel" || piece.zone === true) return false;
  const known = info.pieces[piece.code];
  return known === undefined ? piece.reason !== undefined : !known.standard;
}

/** Whether one person may lift it by the limit the kit states; null when the limit or the mass is not known. */
export function isWithinPersonLimit(code: string, info: SheetInfo): boolean | null {
  const mass = info.pieces[code]?.mass;
  return mass === undefined || info.personLimit === null ? null : mass <= info.personLimit;
}

/** Whether a filler, a closure or the first-out piece stands at that end of the face, its corner and zone passed over. */
export function closesAt(face: FilledFace, end: "from" | "to", info: SheetInfo): boolean {
  const sign = end === "from" ? 1 : -1;
  const from = (piece: FacePiece) => (end === "from" ? piece.x : piece.x + piece.width);
  const first = face.pieces
    .filter((piece) => piece.z === 0 && !isCornerPiece(piece.family) && piece.zone !== true)
    .sort((a, b) => sign * (from(a) - from(b)))[0];
  if (first === undefined) return false;
  return first.family === "closure-strip" || first.firstOut === true || isFiller(first, info);
}
