// How each kind of piece looks, on a wall and in the list: tone and form both say what it is.
//
//   ┌──────┐   ┌──────┐   ┌──┐   ████   ┌───────┐
//   │      │   │┌────┐│   │//│   █┊┊█   ├───────┤
//   │      │   │└────┘│   │//│   ████   └───────┘
//   one lifts  two lift  closure corner connector
//
// Fillers deepen in tone as they get narrower. Nothing rests on tone alone, so a photocopy loses nothing but comfort.

import type { FacePiece } from "../fill/result.ts";
import type { Family } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import { type Box, grown } from "./box.ts";
import type { SheetInfo } from "./info.ts";
import type { Ink, Mark, Point, Stroke } from "./mark.ts";
import { isFiller, isWithinPersonLimit } from "./pieceKind.ts";

/** What decides the look of a piece. */
export interface PieceLook {
  readonly family: Family;
  readonly tone: Ink;
  /** No tie inside: a piece opposite a corner or a joining wall. */
  readonly isZone: boolean;
  readonly isTwoPerson: boolean;
}

/** Least width of each tone, mm, the palest first: common widths fall into different tones. */
const TONES: readonly (readonly [least: Mm, tone: Ink])[] = [
  [450, "tone1"],
  [350, "tone2"],
  [300, "tone3"],
  [200, "tone4"],
  [0, "tone5"],
];

/** Regular panels from this width carry no tone, mm. */
const WIDE_PANEL: Mm = 600;

/** Distance of the second outline of a piece that two people lift, mm of paper. */
const SECOND_OUTLINE = 0.75;

export const OUTLINE: Stroke = { weight: 0.35, ink: "ink" };
export const FINE: Stroke = { weight: 0.25, ink: "ink" };
export const THIN: Stroke = { weight: 0.18, ink: "ink" };
export const GHOST: Stroke = { weight: 0.25, ink: "ink", dash: [1.2, 0.8] };

export function lookOf(piece: FacePiece, info: SheetInfo): PieceLook {
  return {
    family: piece.family,
    tone: toneOf(piece, info),
    isZone: piece.zone === true,
    isTwoPerson: isWithinPersonLimit(piece.code, info) === false,
  };
}

/** The look of a piece of which only code and family are known. */
export function plainLook(family: Family, code: string, info: SheetInfo): PieceLook {
  return { family, tone: "paper", isZone: false, isTwoPerson: isWithinPersonLimit(code, info) === false };
}

function toneOf(piece: FacePiece, info: SheetInfo): Ink {
  if (piece.family !== "wall-panel") return "paper";
  if (isFiller(piece, info) || piece.zone === true) return fillerTone(piece.width);
  return piece.width >= WIDE_PANEL ? "paper" : "tone1";
}

/** The tone of a filler of that width, mm. */
export function fillerTone(width: Mm): Ink {
  return TONES.find(([least]) => width >= least)?.[1] ?? "tone5";
}

/** The marks of a piece that forms the rectangle `box`; the first of them carries its id. */
export function pieceMarks(look: PieceLook, box: Box, piece?: string): readonly Mark[] {
  const [first, ...rest] = shapeOf(look, box);
  const lifted =
    look.isTwoPerson && Math.min(box.width, box.height) > 2.5
      ? [rect(grown(box, -SECOND_OUTLINE), undefined, THIN)]
      : [];
  return [piece === undefined ? first! : { ...first!, piece }, ...rest, ...lifted];
}

function shapeOf(look: PieceLook, box: Box): readonly Mark[] {
  switch (look.family) {
    case "slab-panel":
    case "wall-panel":
      return look.isZone ? [rect(box, look.tone, OUTLINE), dots(box)] : [rect(box, look.tone, OUTLINE)];
    case "closure-strip":
      return [
        rect(box, "paper", { weight: 0.5, ink: "ink" }),
        { kind: "hatch", box, pattern: "lines", pitch: 1.6, weight: 0.5, ink: "ink" },
      ];
    case "inside-corner":
      return [rect(box, "ink", undefined)];
    case "stop-end":
      return [rect(box, "paper", { weight: 0.5, ink: "ink" }), ...rungs(box)];
    case "wall-slab-connector":
    case "connector-corner":
      return [rect(box, "band", FINE), level(box, 0.3)];
    case "shoring-strip":
      return [rect(box, "band", FINE), level(box, 0.3), level(box, 0.7)];
    case "slab-edge-cap":
    case "cap-corner":
      return [rect(box, "band", FINE), level(box, 0.7), level(box, 0.85)];
    default:
      return [rect(box, "band", FINE)];
  }
}

function rect(box: Box, fill: Ink | undefined, stroke: Stroke | undefined): Mark {
  return {
    kind: "rect",
    box,
    ...(fill === undefined ? {} : { fill }),
    ...(stroke === undefined ? {} : { stroke }),
  };
}

function dots(box: Box): Mark {
  return { kind: "hatch", box: grown(box, -0.7), pattern: "dots", pitch: 1.5, weight: 0.35, ink: "ink" };
}

/** A level line at a share of the height, counted from the foot. */
function level(box: Box, share: number): Mark {
  const y = box.y + box.height * (1 - share);
  return { kind: "line", from: [box.x, y], to: [box.x + box.width, y], stroke: THIN };
}

/** Level lines every 3 mm from the foot. */
function rungs(box: Box): readonly Mark[] {
  const marks: Mark[] = [];
  for (let up = 3; up < box.height - 1; up += 3) {
    const y = box.y + box.height - up;
    marks.push({ kind: "line", from: [box.x, y], to: [box.x + box.width, y], stroke: FINE });
  }
  return marks;
}

/** An empty place where a piece stands that is drawn elsewhere on the sheet. */
export function ghostMarks(box: Box): readonly Mark[] {
  return [rect(box, "paper", GHOST)];
}

/** The white line along which an inside corner is folded on the drawing. */
export function foldMark(x: number, top: number, foot: number): Mark {
  const stroke: Stroke = { weight: 0.5, ink: "paper", dash: [2, 1.2] };
  return { kind: "line", from: [x, top], to: [x, foot], stroke };
}

/** The notch at the foot of the piece that comes out first. */
export function notchMark(x: number, foot: number, width: number): Mark {
  const half = Math.min(1.6, width * 0.4);
  const points: readonly Point[] = [
    [x - half, foot + 0.35],
    [x, foot - 4.2],
    [x + half, foot + 0.35],
  ];
  return { kind: "polygon", points, fill: "paper", stroke: OUTLINE };
}

/** A tie across a joint: solid where this side puts it in, open where the neighbour does. */
export function tieMark(x: number, y: number, isOwn: boolean): Mark {
  const box = { x: x - 1.2, y: y - 0.4, width: 2.4, height: 0.8 };
  return isOwn
    ? rect(box, "ink", { weight: 0.18, ink: "paper" })
    : rect(box, "paper", { weight: 0.18, ink: "ink" });
}
