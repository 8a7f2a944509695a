// A face as it is drawn in the elevation: every rectangle on it with what it is, openings, ties, joints. Pure.
//
//   ┌──┬──────────────────┐ height
//   │  │   connector      │
//   │  ├───┬────┬────┬────┤ top
//   │▓▓│100│600 │600 │ …  │
//   └──┴───┴────┴────┴────┘ 0      ▓ corner leg; ticks at the joints along the floor

import type { FilledUnit } from "../../fill/fillWalls.ts";
import type { FaceOpening, FacePiece, FilledFace, Problem } from "../../fill/result.ts";
import { type Kit, type Piece, ruleValue } from "../../kit/kit.ts";
import type { Mm } from "../../units.ts";
import type { PlacedProblem } from "../scene/problemPlaces.ts";

export type DrawnKind = "panel" | "filler" | "closure" | "corner" | "band" | "stop-end" | "unfilled";

/** A rectangle on the face. */
export interface DrawnPart {
  readonly kind: DrawnKind;
  /** The piece's id; of what is unfilled one of its own. */
  readonly id: string;
  readonly code: string;
  readonly x: Mm;
  readonly z: Mm;
  readonly width: Mm;
  readonly height: Mm;
  readonly isFirstOut: boolean;
  readonly needsTwo: boolean;
  readonly isZone: boolean;
  /** Why it is there, in the words of the fill; null where it goes without saying. */
  readonly reason: string | null;
  /** The problem that keeps it open, as a place in the fill's list; null where it is filled. */
  readonly problem: number | null;
}

export interface DrawnTie {
  readonly x: Mm;
  readonly heights: readonly Mm[];
  readonly code: string;
  readonly length: Mm;
}

export interface DrawnFace {
  readonly index: number;
  readonly face: FilledFace;
  readonly parts: readonly DrawnPart[];
  readonly openings: readonly FaceOpening[];
  readonly ties: readonly DrawnTie[];
  /** Joints along the floor, both ends included, left to right. */
  readonly joints: readonly Mm[];
  /** Heights that make up the face, floor upward: rows of panels, then connector or cap. */
  readonly stack: readonly { readonly height: Mm; readonly kind: "row" | "connector" | "cap" }[];
}

const known = new WeakMap<FilledUnit, Map<number, DrawnFace>>();

/** A face of a filled unit, worked out once. */
export function drawnFace(filled: FilledUnit, kit: Kit, index: number): DrawnFace {
  const faces = known.get(filled) ?? new Map<number, DrawnFace>();
  known.set(filled, faces);
  const found = faces.get(index);
  if (found !== undefined) return found;
  const face = filled.fill.faces[index]!;
  const parts = partsOf(face, kit);
  const made: DrawnFace = {
    index,
    face,
    parts,
    openings: face.openings,
    ties: tiesOn(filled, face),
    joints: jointsOf(face, parts),
    stack: stackOf(filled, index),
  };
  faces.set(index, made);
  return made;
}

/**
 * The faces of the ring that a face belongs to, as the person turning in the room sees them left to right. The ring
 * begins at its first face in the order of the fill, so that it stays put while the hand moves along it.
 */
export function ringOf({ drafts }: FilledUnit, face: number): readonly number[] {
  const ring = [face];
  for (;;) {
    const next = drafts[ring.at(-1)!]!.settled.formed.next;
    if (next === face || ring.length > drafts.length) break;
    ring.push(next);
  }
  const first = ring.indexOf(Math.min(...ring));
  const turned = [...ring.slice(first), ...ring.slice(0, first)];
  return turned.filter((index) => drafts[index]!.settled.length > 0);
}

/** Numbers of the problems of a face's fill as the list of the unit gives them; 0 where the list has none. */
export function problemNumbers(
  problems: readonly Problem[],
  list: readonly Pick<PlacedProblem, "number" | "problem">[],
): readonly number[] {
  const numbers = new Map(list.map(({ number, problem }) => [nameOf(problem), number]));
  return problems.map((problem) => numbers.get(nameOf(problem)) ?? 0);
}

function nameOf({ kind, message, where }: Problem): string {
  return `${kind} ${where.face} ${where.x} ${message}`;
}

function partsOf(face: FilledFace, kit: Kit): readonly DrawnPart[] {
  const book = bookOf(kit);
  const limit = ruleValue(kit, "personLimit") ?? Number.POSITIVE_INFINITY;
  const pieces = face.pieces.map(
    (piece): DrawnPart => ({
      kind: kindOf(piece, book.get(piece.code)),
      id: piece.piece,
      code: piece.code,
      x: piece.x,
      z: piece.z,
      width: piece.width,
      height: piece.height,
      isFirstOut: piece.firstOut === true,
      needsTwo: (book.get(piece.code)?.mass ?? 0) > limit,
      isZone: piece.zone === true,
      reason: piece.reason ?? null,
      problem: null,
    }),
  );
  const plain = { isFirstOut: false, needsTwo: false, isZone: false, reason: null, code: "" };
  const voids = face.unfilled.map(
    ({ problem, ...at }, k): DrawnPart => ({
      ...plain,
      ...at,
      kind: "unfilled",
      id: `${face.id}/void${k + 1}`,
      problem,
    }),
  );
  return [...pieces, ...voids].sort((a, b) => a.x - b.x || a.z - b.z);
}

const books = new WeakMap<Kit, ReadonlyMap<string, Piece>>();

/** The pieces of a kit by code. */
export function bookOf(kit: Kit): ReadonlyMap<string, Piece> {
  const book = books.get(kit) ?? new Map(kit.pieces.map((piece) => [piece.code, piece]));
  books.set(kit, book);
  return book;
}

function kindOf({ family, zone }: FacePiece, piece: Piece | undefined): DrawnKind {
  switch (family) {
    case "closure-strip":
      return "closure";
    case "inside-corner":
      return "corner";
    case "stop-end":
      return "stop-end";
    case "wall-panel":
      return zone === true || piece?.standard === true ? "panel" : "filler";
    default:
      return "band";
  }
}

function tiesOn({ fill }: FilledUnit, face: FilledFace): readonly DrawnTie[] {
  const [dx, dy] = [face.to[0] - face.from[0], face.to[1] - face.from[1]];
  const drawn = Math.sqrt(dx * dx + dy * dy);
  if (drawn === 0) return [];
  const found = fill.ties
    .filter(({ faces }) => faces.includes(face.id))
    .map(({ at, heights, code, length }): DrawnTie => {
      const along = ((at[0] - face.from[0]) * dx + (at[1] - face.from[1]) * dy) / drawn;
      return { x: Math.round(along), heights, code, length };
    });
  return found.sort((a, b) => a.x - b.x);
}

function jointsOf(face: FilledFace, parts: readonly DrawnPart[]): readonly Mm[] {
  const joints = new Set<Mm>([0, face.length]);
  for (const { kind, x, width, z } of parts) {
    if (z === 0 && kind !== "band") joints.add(x).add(x + width);
  }
  return [...joints].sort((a, b) => a - b);
}

function stackOf({ drafts }: FilledUnit, index: number): DrawnFace["stack"] {
  const { rows, crown } = drafts[index]!.profile;
  const own: DrawnFace["stack"] = rows.map(({ height }) => ({ height, kind: "row" }));
  if (crown === null) return own;
  return [...own, { height: crown.height, kind: crown.family === "slab-edge-cap" ? "cap" : "connector" }];
}
