// The pieces of a fill as they stand in the plan, cut at the height of a person's chest: rectangles beside the concrete.
//
//        from ──── x ────┬─ width ─┬──────── to      face; concrete above it, the person below
//                        │  piece  │ depth of the frame
//                        └─────────┘

import RBush from "rbush";
import type { FacePiece, FilledFace } from "../../fill/result.ts";
import type { Kit, Piece } from "../../kit/kit.ts";
import { ruleValue } from "../../kit/kit.ts";
import type { Face } from "../../plan/face.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { type Box, boxAround } from "../box.ts";
import type { LiveFill } from "../live/liveFill.ts";

/** Height of the cut above the floor, mm: doors and most windows are open there (common practice, no source). */
export const CUT: Mm = 1200;
/** Depth of the frames where the kit does not say, mm. */
const USUAL_DEPTH: Mm = 65;

export type PieceKind =
  | "panel"
  | "filler"
  | "closure"
  | "corner"
  | "outside-corner"
  | "stop-end"
  | "unfilled";

export interface ScenePiece extends Box {
  readonly id: string;
  readonly kind: PieceKind;
  readonly code: string;
  readonly face: string;
  readonly walls: readonly string[];
  readonly x: Mm;
  readonly width: Mm;
  /** Two corners on the concrete, then two away from it. */
  readonly corners: readonly [Position, Position, Position, Position];
  /** Lies wholly under the cut: below a window. */
  readonly isUnderCut: boolean;
  readonly isFirstOut: boolean;
  readonly needsTwo: boolean;
}

export interface ScenePieces {
  readonly all: readonly ScenePiece[];
  readonly index: RBush<ScenePiece>;
  /** How far pieces stand out from the concrete. */
  readonly depth: Mm;
}

const known = new WeakMap<LiveFill, ScenePieces>();

/** The pieces of a fill in the plan, worked out once. */
export function scenePieces(live: LiveFill): ScenePieces {
  const found = known.get(live);
  if (found !== undefined) return found;
  const depth = ruleValue(live.kit, "frameDepth") ?? USUAL_DEPTH;
  const book = pieceBook(live.kit);
  const limit = ruleValue(live.kit, "personLimit") ?? Number.POSITIVE_INFINITY;
  const all = [
    ...live.fill.faces.flatMap((face) => facePieces(face, { depth, book, limit })),
    ...outsideCorners(live, depth),
  ];
  const index = new RBush<ScenePiece>();
  index.load([...all]);
  const made = { all, index, depth };
  known.set(live, made);
  return made;
}

interface FaceContext {
  readonly depth: Mm;
  readonly book: ReadonlyMap<string, Piece>;
  readonly limit: number;
}

function pieceBook(kit: Kit): ReadonlyMap<string, Piece> {
  return new Map(kit.pieces.map((piece) => [piece.code, piece]));
}

function facePieces(face: FilledFace, { depth, book, limit }: FaceContext): readonly ScenePiece[] {
  const placed = (x: Mm, width: Mm) => rectangleOn(face, { x, width, depth });
  const pieces = face.pieces.flatMap((piece): readonly ScenePiece[] => {
    const kind = kindOf(piece, book);
    if (kind === null || piece.z > CUT) return [];
    const corners = placed(piece.x, piece.width);
    return [
      {
        ...boxAround(corners),
        id: piece.piece,
        kind,
        code: piece.code,
        face: face.id,
        walls: face.walls,
        x: piece.x,
        width: piece.width,
        corners,
        isUnderCut: piece.z + piece.height <= CUT,
        isFirstOut: piece.firstOut === true,
        needsTwo: (book.get(piece.code)?.mass ?? 0) > limit,
      },
    ];
  });
  const voids = face.unfilled
    .filter(({ z, height }) => z <= CUT && z + height > CUT)
    .map(({ x, width }, k): ScenePiece => {
      const corners = placed(x, width);
      const id = `${face.id}/void${k + 1}`;
      const plain = { isUnderCut: false, isFirstOut: false, needsTwo: false };
      const { walls } = face;
      return {
        ...boxAround(corners),
        ...plain,
        ...{ id, kind: "unfilled", code: "", face: face.id, walls, x, width, corners },
      };
    });
  return [...pieces, ...voids];
}

function kindOf({ family, code, zone }: FacePiece, book: ReadonlyMap<string, Piece>): PieceKind | null {
  switch (family) {
    case "wall-panel":
      return zone === true || book.get(code)?.standard === true ? "panel" : "filler";
    case "closure-strip":
      return "closure";
    case "inside-corner":
      return "corner";
    case "stop-end":
      return "stop-end";
    default:
      return null;
  }
}

/** The way along a face, of length 1. */
export function alongFace({ from, to }: Pick<FilledFace, "from" | "to">): readonly [ux: number, uy: number] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.sqrt(dx * dx + dy * dy) || 1;
  return [dx / length, dy / length];
}

/** A rectangle before a face: `x` and `width` along it, `depth` away from the concrete, on the person's side. */
export function rectangleOn(
  face: Pick<FilledFace, "from" | "to">,
  { x, width, depth }: { readonly x: Mm; readonly width: Mm; readonly depth: Mm },
): readonly [Position, Position, Position, Position] {
  const [ux, uy] = alongFace(face);
  const at = (along: Mm, away: Mm): Position => [
    face.from[0] + ux * along + uy * away,
    face.from[1] + uy * along - ux * away,
  ];
  return [at(x, 0), at(x + width, 0), at(x + width, depth), at(x, depth)];
}

// An outside corner has no width of its own: it fills the square between the panels of the two faces that meet.
function outsideCorners({ fill, outline }: LiveFill, depth: Mm): readonly ScenePiece[] {
  const upright = fill.corners.filter(
    ({ family, from, to }) => family === "outside-corner" && from[2] <= CUT && to[2] > CUT,
  );
  return outline.faces.flatMap((face): readonly ScenePiece[] => {
    if (face.toCorner.turn !== "outside") return [];
    const [x, y] = face.to;
    const edge = upright.find(({ from }) => Math.abs(from[0] - x) < 2 && Math.abs(from[1] - y) < 2);
    if (edge === undefined) return [];
    const corners = cornerSquare(face, outline.faces[face.next] ?? face, depth);
    const owner = fill.faces.find(({ to }) => Math.abs(to[0] - x) < 2 && Math.abs(to[1] - y) < 2);
    return [
      {
        ...boxAround(corners),
        ...{ id: edge.piece, kind: "outside-corner", code: edge.code, face: owner?.id ?? "" },
        ...{ walls: owner?.walls ?? [], x: face.length, width: 0, corners },
        ...{ isUnderCut: false, isFirstOut: false, needsTwo: false },
      },
    ];
  });
}

function cornerSquare(face: Face, next: Face, depth: Mm): ScenePiece["corners"] {
  const [x, y] = face.to;
  const [ax, ay] = alongFace(face);
  const [bx, by] = alongFace(next);
  const [ox, oy] = [ay * depth, -ax * depth];
  const [px, py] = [by * depth, -bx * depth];
  return [
    [x, y],
    [x + ox, y + oy],
    [x + ox + px, y + oy + py],
    [x + px, y + py],
  ];
}
