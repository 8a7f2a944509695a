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

/** The panels of a face: corners and the ring at the head of the wall come later. */
export function panelsOf(face: FilledFace): readonly FacePiece[] {
  return face.pieces.filter(({ family }) => !isHeadPiece(family) && !isCornerPiece(family));
}

/** What holds a piece: the pieces that touch each of its sides. */
interface Hold {
  readonly piece: FacePiece;
  readonly left: readonly FacePiece[];
  readonly right: readonly FacePiece[];
  readonly above: readonly FacePiece[];
  /** Null on the floor, which no piece leaves downward. */
  readonly below: readonly FacePiece[] | null;
}

/** A face about to be cleared. */
interface Clearing {
  readonly holds: readonly Hold[];
  /** Panels and corners that stand. */
  readonly standing: Set<FacePiece>;
  readonly heads: ReadonlySet<FacePiece>;
  readonly first: FacePiece | null;
}

/** Place of a piece in the order of the work: what went in last comes out first where nothing else decides. */
type Lead = (piece: FacePiece) => number;

/** @param eased - inside corners whose other face is clear: they hold nothing any more */
export function startOf(face: FilledFace, eased: ReadonlySet<string>, lead: Lead): FaceOut["start"] {
  const clearing = clearingOf(face, eased, lead);
  if (clearing.first !== null) return "first-out";
  return clearing.holds.some((hold) => isFree(hold, clearing)) ? "free" : "forced";
}

/** @param eased - as {@link startOf} */
export function faceOut(face: FilledFace, eased: ReadonlySet<string>, lead: Lead): FaceOut {
  const clearing = clearingOf(face, eased, lead);
  const { standing, first } = clearing;
  let left = clearing.holds;
  let start: FaceOut["start"] = first === null ? "free" : "first-out";
  let from: Mm | null = first === null ? null : first.x + first.width / 2;
  const out: string[] = [];
  while (left.length > 0) {
    const free = left.filter((hold) => isFree(hold, clearing));
    const open = free.length > 0 ? free : left.filter((hold) => isOpenAbove(hold, clearing));
    const candidates = open.length > 0 ? open : left;
    if (out.length === 0 && free.length === 0) start = "forced";
    const next = from === null ? narrowest(candidates, lead) : nearestTo(from, candidates, lead);
    from ??= next.x + next.width / 2;
    standing.delete(next);
    left = left.filter(({ piece }) => piece !== next);
    out.push(next.piece);
  }
  return { pieces: out, start };
}

function clearingOf(face: FilledFace, eased: ReadonlySet<string>, lead: Lead): Clearing {
  const panels = panelsOf(face);
  const posts = face.pieces.filter(({ family, piece }) => family === "inside-corner" && !eased.has(piece));
  const heads = face.pieces.filter(({ family }) => isHeadPiece(family));
  const firsts = panels.filter(({ firstOut }) => firstOut === true);
  return {
    holds: panels.map((piece) => holdOf(piece, [...panels, ...posts], heads)),
    standing: new Set([...panels, ...posts]),
    heads: new Set(heads),
    first: [...firsts].sort((a, b) => lead(b) - lead(a))[0] ?? null,
  };
}

function holdOf(piece: FacePiece, others: readonly FacePiece[], heads: readonly FacePiece[]): Hold {
  const { x, z, width, height } = piece;
  const beside = others.filter((other) => isBeside(other.z, other.height, z, height));
  const over = [...others, ...heads].filter((other) => isBeside(other.x, other.width, x, width));
  return {
    piece,
    left: beside.filter((other) => other.x + other.width === x),
    right: beside.filter((other) => other.x === x + width),
    above: over.filter((other) => other.z === z + height),
    below: z > 0 ? over.filter((other) => other.z + other.height === z) : null,
  };
}

function isFree(hold: Hold, clearing: Clearing): boolean {
  const { standing, heads, first } = clearing;
  const { piece, left, right, above, below } = hold;
  if (!isOpenAbove(hold, clearing)) return false;
  const isStart = first !== null && piece.x >= first.x && piece.x + piece.width <= first.x + first.width;
  const isOpen = (side: readonly FacePiece[]) => !side.some((other) => standing.has(other));
  return (
    isStart ||
    isOpen(left) ||
    isOpen(right) ||
    (below !== null && isOpen(below)) ||
    !above.some((other) => standing.has(other) || heads.has(other))
  );
}

function isOpenAbove({ above }: Hold, { standing }: Clearing): boolean {
  return !above.some((other) => standing.has(other));
}

function narrowest(holds: readonly Hold[], lead: Lead): FacePiece {
  const pieces = holds.map(({ piece }) => piece);
  return pieces.sort((a, b) => a.width - b.width || lead(b) - lead(a) || b.z - a.z || a.x - b.x)[0]!;
}

/** The nearest column of the face, in it the highest piece. */
function nearestTo(from: Mm, holds: readonly Hold[], lead: Lead): FacePiece {
  const away = (piece: FacePiece) => Math.abs(piece.x + piece.width / 2 - from);
  const pieces = holds.map(({ piece }) => piece);
  return pieces.sort((a, b) => away(a) - away(b) || b.z - a.z || lead(b) - lead(a) || a.x - b.x)[0]!;
}

/** Whether two lengths on one line share more than an end. */
function isBeside(a: Mm, aLength: Mm, b: Mm, bLength: Mm): boolean {
  return a < b + bLength && b < a + aLength;
}
