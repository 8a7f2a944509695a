// In which order the pieces of one face come out.
//
//   │ 1 │ 2 │ 3 ▲ 4 │ 5 │      From the first-out piece to its two sides, towards the corners. A piece is free when it is
//   └───┴───┴───┴───┴───┘      the first-out piece, or when one whole side of it touches no piece of the face that still
//        ◀──     ──▶           stands: a neighbour is out, an opening or the end of the wall is there, or the corner
//                              beside it has let go, the face behind that corner being clear. Nothing stands on it. The
//                              ring at the head lies on what it stands on, and holds nothing beside it.

import type { FacePiece, FilledFace } from "../../fill/result.ts";
import type { Mm } from "../../units.ts";
import { isCornerPiece, isHeadPiece } from "../pieceKind.ts";

export interface FaceOut {
  /** Piece ids as they come out. */
  readonly pieces: readonly string[];
  /** Why the first of them can come out; "forced": nothing lets go by itself. */
  readonly start: "first-out" | "free" | "forced";
}

interface Standing extends Pick<FacePiece, "x" | "z" | "width" | "height"> {
  readonly piece: string;
}

/** The panels of a face: corners and the ring at the head of the wall come later. */
export function panelsOf(face: FilledFace): readonly FacePiece[] {
  return face.pieces.filter(({ family }) => !isHeadPiece(family) && !isCornerPiece(family));
}

/**
 * @param eased - inside corners whose other face is clear: they hold nothing any more
 * @param lead - place of a piece in the order of the work; what went in last comes out first where nothing else decides
 */
export function faceOut(
  face: FilledFace,
  eased: ReadonlySet<string>,
  lead: (piece: FacePiece) => number,
): FaceOut {
  const left = new Map(panelsOf(face).map((piece) => [piece.piece, piece]));
  const posts = face.pieces.filter(({ family, piece }) => family === "inside-corner" && !eased.has(piece));
  const heads = face.pieces.filter(({ family }) => isHeadPiece(family));
  const first = [...left.values()]
    .filter(({ firstOut }) => firstOut === true)
    .sort((a, b) => lead(b) - lead(a))[0];
  const isStart = (piece: FacePiece) =>
    first !== undefined && piece.x >= first.x && piece.x + piece.width <= first.x + first.width;
  const isFree = (piece: FacePiece) => {
    const others: readonly Standing[] = [...left.values(), ...posts].filter(
      (other) => other.piece !== piece.piece,
    );
    return isOpenAbove(piece, [...left.values()]) && (isStart(piece) || hasOpenSide(piece, others, heads));
  };
  const out: string[] = [];
  let start: FaceOut["start"] = first === undefined ? "free" : "first-out";
  let from: Mm | null = first === undefined ? null : first.x + first.width / 2;
  while (left.size > 0) {
    const free = [...left.values()].filter(isFree);
    const open = [...left.values()].filter((piece) => isOpenAbove(piece, [...left.values()]));
    const candidates = free.length > 0 ? free : open.length > 0 ? open : [...left.values()];
    const isFirst = out.length === 0;
    if (isFirst && free.length === 0) start = "forced";
    const next = from === null ? narrowest(candidates, lead) : nearestTo(from, candidates, lead);
    from ??= next.x + next.width / 2;
    left.delete(next.piece);
    out.push(next.piece);
  }
  return { pieces: out, start };
}

function narrowest(pieces: readonly FacePiece[], lead: (piece: FacePiece) => number): FacePiece {
  return [...pieces].sort((a, b) => a.width - b.width || lead(b) - lead(a) || b.z - a.z || a.x - b.x)[0]!;
}

/** The nearest column of the face, in it the highest piece. */
function nearestTo(from: Mm, pieces: readonly FacePiece[], lead: (piece: FacePiece) => number): FacePiece {
  const away = (piece: FacePiece) => Math.abs(piece.x + piece.width / 2 - from);
  return [...pieces].sort((a, b) => away(a) - away(b) || b.z - a.z || lead(b) - lead(a) || a.x - b.x)[0]!;
}

function isOpenAbove(piece: Standing, standing: readonly Standing[]): boolean {
  return !standing.some(
    (other) => other.z === piece.z + piece.height && isBeside(other.x, other.width, piece.x, piece.width),
  );
}

function hasOpenSide(piece: Standing, others: readonly Standing[], heads: readonly Standing[]): boolean {
  const level = (other: Standing) => isBeside(other.z, other.height, piece.z, piece.height);
  const over = (other: Standing) => isBeside(other.x, other.width, piece.x, piece.width);
  const end = piece.x + piece.width;
  const top = piece.z + piece.height;
  return (
    !others.some((other) => level(other) && other.x === end) ||
    !others.some((other) => level(other) && other.x + other.width === piece.x) ||
    (piece.z > 0 && !others.some((other) => over(other) && other.z + other.height === piece.z)) ||
    ![...others, ...heads].some((other) => over(other) && other.z === top)
  );
}

/** Whether two lengths on one line share more than an end. */
function isBeside(a: Mm, aLength: Mm, b: Mm, bLength: Mm): boolean {
  return a < b + bLength && b < a + aLength;
}
