// The frame of an opening inside its void: the pieces of its reveals at their true depth, mitred, and the edge pieces.
//
//    ┌─────────────┐
//    │\___________/│     The assembler sees the opening square on. A reveal as deep as the wall is drawn as a
//    ││           ││     band of that depth, turned into the plane of the face.
//
import type { EdgePiece, FaceOpening, RevealPiece, RevealSide } from "../fill/result.ts";
import { alongFace } from "../fill/roomParts.ts";
import type { Mm } from "../units.ts";
import { type Box, boxRound } from "./box.ts";
import type { Mark, Point } from "./mark.ts";
import { FINE, OUTLINE, THIN } from "./pieceMark.ts";
import { boxIn, type RibbonContext, type Stretch, voidOf } from "./stretch.ts";

export interface FramePiece {
  readonly side: RevealSide;
  readonly piece: RevealPiece;
  readonly outline: readonly Point[];
  /** Round the outline. */
  readonly box: Box;
}

/** Breadth of an edge piece on paper, mm: it is an angle that covers next to nothing of the face. */
const EDGE_BREADTH = 0.8;

/** Part of the void that a frame may take at most on each side, so that something of the void is left. */
const GREATEST_SHARE = 0.2;

/** Depth of the frame in the void, mm of building, before it is limited by the size of the void. */
export function frameDepth(opening: FaceOpening, context: RibbonContext): Mm {
  const own = context.parts.reveals.filter((reveal) => reveal.opening === opening.id);
  const depth = Math.max(0, ...own.flatMap((reveal) => reveal.pieces.map((piece) => piece.width)));
  return Math.min(depth, opening.width * GREATEST_SHARE, (opening.head - opening.sill) * GREATEST_SHARE);
}

/** The pieces of the reveals that are set from this side, placed in the void `box`. */
export function framePieces(opening: FaceOpening, box: Box, context: RibbonContext): readonly FramePiece[] {
  const own = context.parts.reveals.filter((reveal) => reveal.opening === opening.id);
  const depth = frameDepth(opening, context) / context.scale;
  const sides = new Set(own.filter((reveal) => reveal.pieces.length > 0).map((reveal) => reveal.side));
  return own.flatMap(({ side, pieces }) =>
    pieces.map((piece) => {
      const outline = trapezium(side, piece, { box, depth, sides, scale: context.scale });
      return { side, piece, outline, box: boxRound(outline) };
    }),
  );
}

interface Frame {
  readonly box: Box;
  readonly depth: number;
  readonly sides: ReadonlySet<RevealSide>;
  readonly scale: number;
}

/** Along the reveal from `at`, mitred where the piece reaches a reveal that stands across. */
function trapezium(side: RevealSide, piece: RevealPiece, frame: Frame): readonly Point[] {
  const { box, depth, sides, scale } = frame;
  const isUpright = side === "left" || side === "right";
  const whole = isUpright ? box.height : box.width;
  const [before, behind] = isUpright ? (["sill", "head"] as const) : (["left", "right"] as const);
  const from = Math.min(piece.at / scale, whole);
  const to = Math.min((piece.at + piece.length) / scale, whole);
  const inFrom = sides.has(before) ? Math.min(Math.max(from, depth), whole - depth) : from;
  const inTo = sides.has(behind) ? Math.max(Math.min(to, whole - depth), inFrom) : to;
  const right = box.x + box.width;
  const foot = box.y + box.height;
  switch (side) {
    case "left":
    case "right": {
      const [outer, inner] = side === "left" ? [box.x, box.x + depth] : [right, right - depth];
      return [
        [outer, foot - from],
        [outer, foot - to],
        [inner, foot - inTo],
        [inner, foot - inFrom],
      ];
    }
    default: {
      const [outer, inner] = side === "head" ? [box.y, box.y + depth] : [foot, foot - depth];
      return [
        [box.x + from, outer],
        [box.x + to, outer],
        [box.x + inTo, inner],
        [box.x + inFrom, inner],
      ];
    }
  }
}

/** The void of an opening with its frame; a box opening is a dashed outline on unbroken panels. */
export function openingMarks(
  opening: FaceOpening,
  stretch: Stretch,
  context: RibbonContext,
): readonly Mark[] {
  const box = boxIn(stretch, context.scale, voidOf(opening));
  if (box === null) return [];
  const frames = framePieces(opening, box, context).map((frame) => frameMark(frame, stretch, context));
  return opening.formed === "box"
    ? [{ kind: "rect", box, stroke: { weight: 0.35, ink: "ink", dash: [1.6, 0.8] } }, ...frames]
    : [{ kind: "rect", box, fill: "paper", stroke: OUTLINE }, ...frames];
}

function frameMark(frame: FramePiece, stretch: Stretch, context: RibbonContext): Mark {
  const id = frame.piece.piece;
  const isHere = context.names[id]?.letters === stretch.sheetFace.letter;
  const shape: Mark = { kind: "polygon", points: frame.outline, fill: "band", stroke: FINE };
  return isHere ? { ...shape, piece: id } : { ...shape, fill: "paper" };
}

/** An edge piece along a jamb, a lintel or a sill of the face: a narrow strip on the side of the void. */
export function edgeMark(edge: EdgePiece, stretch: Stretch, scale: number): Mark {
  const { face } = stretch.sheetFace;
  const [a, b] = [alongFace(face, edge.from).x, alongFace(face, edge.to).x].sort((p, q) => p - q) as [Mm, Mm];
  const [low, high] = [edge.from[2], edge.to[2]].sort((p, q) => p - q) as [Mm, Mm];
  const isUpright = b - a < high - low;
  const left = (a - stretch.start) / scale;
  const breadth = EDGE_BREADTH;
  const isLeftJamb = face.openings.some((opening) => Math.abs(opening.x - a) < 6);
  const isHead = face.openings.some((opening) => Math.abs(opening.head - low) < 6);
  const box: Box = isUpright
    ? {
        x: isLeftJamb ? left : left - breadth,
        y: -high / scale,
        width: breadth,
        height: (high - low) / scale,
      }
    : { x: left, y: isHead ? -low / scale : -low / scale - breadth, width: (b - a) / scale, height: breadth };
  return { kind: "rect", box, fill: "paper", stroke: THIN, piece: edge.piece };
}
