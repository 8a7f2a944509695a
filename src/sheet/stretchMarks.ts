// Draws one stretch of the ribbon in its own coordinates: pieces, openings, gaps, ties and what lies on them.

import type { FacePiece } from "../fill/result.ts";
import { alongFace, isOnFace } from "../fill/roomParts.ts";
import { type Box, centreOf, grown } from "./box.ts";
import { fittingMark } from "./fittingMark.ts";
import { ringMarks } from "./label.ts";
import type { Mark } from "./mark.ts";
import { edgeMark, openingMarks } from "./openingFrame.ts";
import { openingLabels } from "./openingLabels.ts";
import { ghostMarks, lookOf, notchMark, pieceMarks, tieMark } from "./pieceMark.ts";
import { beginsIn, boxIn, type RibbonContext, type Stretch } from "./stretch.ts";
import { type InsideLabel, type StretchLabels, stretchLabels } from "./stretchLabels.ts";

/** Where a piece that shows in several stretches is drawn: here first, here as well, or elsewhere. */
export type Showing = "first" | "also" | "elsewhere";

/** A stretch ready to be put in its row. */
export interface StretchPlan {
  readonly stretch: Stretch;
  /** mm of paper. */
  readonly width: number;
  readonly height: number;
  readonly labels: StretchLabels;
  /** Text in the voids of its openings. */
  readonly voidMarks: readonly Mark[];
}

/** Settles all labels of a stretch, so that a row can tell how much paper they need. */
export function planStretch(stretch: Stretch, context: RibbonContext): StretchPlan {
  const labels = stretchLabels(stretch, context);
  const voids = stretch.sheetFace.face.openings.map((opening) => ({
    begins: beginsIn(stretch, opening.x),
    ...openingLabels(opening, labels, stretch, context),
  }));
  const here = voids.filter(({ begins }) => begins);
  return {
    stretch,
    width: (stretch.end - stretch.start) / context.scale,
    height: stretch.sheetFace.face.height / context.scale,
    labels: {
      ...labels,
      head: [...labels.head, ...here.flatMap(({ head }) => head)].sort((a, b) => a.x - b.x || a.y - b.y),
    },
    voidMarks: here.flatMap(({ marks }) => marks),
  };
}

/** The marks of a stretch, the lowest first. */
export function stretchMarks(
  plan: StretchPlan,
  context: RibbonContext,
  showing: (piece: FacePiece) => Showing,
): readonly Mark[] {
  const { stretch } = plan;
  const { face } = stretch.sheetFace;
  return [
    ...face.pieces.flatMap((piece) => facePieceMarks(piece, stretch, { context, showing })),
    ...face.unfilled.flatMap((gap) => gapMarks(boxIn(stretch, context.scale, gap))),
    ...face.openings.flatMap((opening) => openingMarks(opening, stretch, context)),
    ...faceEdges(stretch, context).map((edge) => edgeMark(edge, stretch, context.scale)),
    ...outline(plan),
    ...fittingMarks(stretch, context),
    ...tieMarks(stretch, context),
    ...face.pieces
      .filter((piece) => piece.firstOut === true && beginsIn(stretch, piece.x))
      .map((piece) => {
        const box = boxIn(stretch, context.scale, piece)!;
        return notchMark(box.x + box.width / 2, box.y + box.height, box.width);
      }),
    ...plan.labels.inside.flatMap((label) => insideMarks(label, context)),
    ...plan.voidMarks,
  ];
}

function facePieceMarks(
  piece: FacePiece,
  stretch: Stretch,
  how: { readonly context: RibbonContext; readonly showing: (piece: FacePiece) => Showing },
): readonly Mark[] {
  const box = boxIn(stretch, how.context.scale, piece);
  if (box === null) return [];
  const shown = how.showing(piece);
  if (shown === "elsewhere") return ghostMarks(box);
  return pieceMarks(lookOf(piece, how.context.info), box, shown === "first" ? piece.piece : undefined);
}

function gapMarks(box: Box | null): readonly Mark[] {
  if (box === null) return [];
  const dash = [1.2, 0.8];
  return [{ kind: "rect", box, fill: "paper", stroke: { weight: 0.35, ink: "ink", dash } }];
}

/** Edge pieces along the face; those at its ends stand in the corners of the ribbon. */
function faceEdges(stretch: Stretch, context: RibbonContext) {
  const { face } = stretch.sheetFace;
  return context.parts.edges.filter((edge) => {
    if (context.edgeFace[edge.piece] !== face.id || !isOnFace(face, edge)) return false;
    const ends = [alongFace(face, edge.from).x, alongFace(face, edge.to).x];
    const x = Math.min(Math.max(Math.min(...ends), 0), face.length);
    return beginsIn(stretch, x) || (x === face.length && stretch.end === x);
  });
}

/** The head of the wall and the floor line. */
function outline({ width, height }: StretchPlan): readonly Mark[] {
  return [
    { kind: "line", from: [0, -height], to: [width, -height], stroke: { weight: 0.5, ink: "ink" } },
    { kind: "line", from: [0, 0], to: [width, 0], stroke: { weight: 0.7, ink: "ink" } },
  ];
}

function tieMarks(stretch: Stretch, context: RibbonContext): readonly Mark[] {
  const { face } = stretch.sheetFace;
  const { ownTies, otherTies } = context.parts;
  return [...ownTies, ...otherTies].flatMap((tie) => {
    if (!tie.faces.includes(face.id)) return [];
    const { x } = alongFace(face, tie.at);
    if (x <= stretch.start || x > stretch.end) return [];
    const isOwn = tie.faces[0] === face.id;
    return tie.heights.map((height) =>
      tieMark((x - stretch.start) / context.scale, -height / context.scale, isOwn),
    );
  });
}

function fittingMarks(stretch: Stretch, context: RibbonContext): readonly Mark[] {
  const { face } = stretch.sheetFace;
  return context.parts.fittings
    .filter(({ face: id, x }) => id === face.id && (beginsIn(stretch, x) || x === stretch.end))
    .filter(({ x }) => x < stretch.end || stretch.end === face.length)
    .map((fitting) => {
      const from = (fitting.x - stretch.start) / context.scale;
      const to = (Math.min(fitting.x + (fitting.length ?? 0), stretch.end) - stretch.start) / context.scale;
      return { ...fittingMark(fitting, from, to, -fitting.z / context.scale), piece: fitting.piece };
    });
}

function insideMarks(label: InsideLabel, context: RibbonContext): readonly Mark[] {
  const [x, middle] = centreOf(label.box);
  const text: Mark = {
    kind: "text",
    at: [x, middle + label.height / 2],
    text: label.text,
    height: label.height,
    weight: 700,
    ink: "ink",
    anchor: "middle",
  };
  if (label.piece === null) return [...ringMarks(x, middle, label.box.width / 2), text];
  const look = lookOf(label.piece, context.info);
  // Dots must not run through the number.
  return look.isZone ? [{ kind: "rect", box: grown(label.box, 0.4), fill: look.tone }, text] : [text];
}
