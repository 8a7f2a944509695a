// Labels that stand outside what they name: under the floor line, or over the head of the wall with a leader.
//
//    ┌─┐                            A label is a row of parts on one baseline. How wide it is, is known before
//    │1│ 150 ┌out 2┐                it has a place, so that a row can tell whether all of its labels fit.
//    └─┘     └─────┘

import type { Box } from "./box.ts";
import { textWidth } from "./lettering.ts";
import type { Mark, Point, TextMark } from "./mark.ts";
import { FINE, OUTLINE, THIN } from "./pieceMark.ts";

type LabelKind =
  /** A piece's number that does not fit on it. */
  | { readonly kind: "flag" }
  /** A piece's number where no frame is needed. */
  | { readonly kind: "number" }
  /** The number of a problem. */
  | { readonly kind: "ring" }
  | { readonly kind: "width"; readonly isVoid: boolean }
  | { readonly kind: "out" };

/** `isSmall`: in the letters of a sheet that is read at a desk. */
export type LabelPart = LabelKind & { readonly text: string; readonly isSmall?: true };

/** Height of a flag and a ring, mm of paper; the other parts are lower. */
const LABEL_HEIGHT = 6;
const SMALL_LABEL_HEIGHT = 4.6;

/** Height of all labels of a sheet of this style. */
export function heightOfLabels(isSmall: boolean): number {
  return isSmall ? SMALL_LABEL_HEIGHT : LABEL_HEIGHT;
}

function labelHeight(part: LabelPart): number {
  return heightOfLabels(part.isSmall === true);
}

const GAP = 0.8;
const FLAG_PAD = 0.9;
const OUT_PAD = 0.7;

/** The lettering of a part. */
function letteringOf(part: LabelPart): Pick<TextMark, "height" | "weight"> {
  switch (part.kind) {
    case "flag":
      return { height: part.isSmall ? 3.5 : 5, weight: 700 };
    case "ring":
      return ringLettering(part);
    case "number":
      return { height: part.isSmall ? 2.5 : 5, weight: 400 };
    case "width":
      return { height: part.isSmall ? 2.5 : 3.5, weight: part.isVoid ? 400 : 600 };
    case "out":
      return { height: 2.5, weight: 600 };
    default:
      return part satisfies never;
  }
}

type RingText = Pick<LabelPart, "text" | "isSmall">;

/** The number of a problem, smaller the more digits it has, so that rings stay of one size. */
export function ringLettering({ text, isSmall }: RingText): Pick<TextMark, "height" | "weight"> {
  const digits = text.length + (isSmall === true ? 1 : 0);
  return { height: digits === 1 ? 5 : digits === 2 ? 3.5 : 2.5, weight: 700 };
}

/** Round the corners of its number. */
export function ringRadius(ring: RingText): number {
  const lettering = ringLettering(ring);
  const half = textWidth(ring.text, lettering) / 2;
  return Math.max(
    heightOfLabels(ring.isSmall === true) / 2,
    Math.sqrt(half * half + (lettering.height * lettering.height) / 4) + 0.3,
  );
}

export function partWidth(part: LabelPart): number {
  const text = textWidth(part.text, letteringOf(part));
  if (part.kind === "flag") return text + 2 * FLAG_PAD;
  if (part.kind === "ring") return 2 * ringRadius(part) + 1;
  return part.kind === "out" ? text + 2 * OUT_PAD : text;
}

export function labelWidth(parts: readonly LabelPart[]): number {
  return parts.reduce((sum, part) => sum + partWidth(part), 0) + GAP * Math.max(0, parts.length - 1);
}

/** From the middle of a label to where its leader meets it: a flag stands under its piece, what follows beside it. */
export function leaderOffset(parts: readonly LabelPart[]): number {
  const first = parts[0];
  const isFlag = first?.kind === "flag" || first?.kind === "ring";
  return isFlag ? (partWidth(first) - labelWidth(parts)) / 2 : 0;
}

/** The marks of a label with its middle at `x` and its upper edge at `top`. */
export function labelMarks(parts: readonly LabelPart[], x: number, top: number): readonly Mark[] {
  let left = x - labelWidth(parts) / 2;
  return parts.flatMap((part) => {
    const width = partWidth(part);
    const marks = partMarks(part, left, width, top);
    left += width + GAP;
    return marks;
  });
}

function partMarks(part: LabelPart, left: number, width: number, top: number): readonly Mark[] {
  const lettering = letteringOf(part);
  const middle = left + width / 2;
  const whole = labelHeight(part);
  const baseline = top + (whole + lettering.height) / 2;
  const text: Mark = {
    kind: "text",
    at: [middle, baseline],
    text: part.text,
    ...lettering,
    ink: "ink",
    anchor: "middle",
  };
  const frame = { x: left, y: top, width, height: whole };
  switch (part.kind) {
    case "flag":
      return [{ kind: "rect", box: frame, fill: "paper", stroke: OUTLINE }, text];
    case "out":
      return [
        { kind: "rect", box: { ...frame, y: top + (whole - 4) / 2, height: 4 }, fill: "paper", stroke: FINE },
        text,
      ];
    case "ring":
      return [...ringMarks(middle, top + whole / 2, ringRadius(part)), text];
    default:
      return [text];
  }
}

/** The open ring of a problem, without its number. */
export function ringMarks(x: number, y: number, radius: number): readonly Mark[] {
  return [{ kind: "circle", centre: [x, y], radius, fill: "paper", stroke: { weight: 0.7, ink: "ink" } }];
}

/** A leader from what is named to its label, bent where the label had to give way. */
export function leaderMark(
  from: readonly [x: number, y: number],
  bendAt: number,
  to: readonly [x: number, y: number],
): Mark {
  const isStraight = Math.abs(from[0] - to[0]) < 0.05;
  return isStraight
    ? { kind: "line", from, to: [from[0], to[1]], stroke: THIN }
    : { kind: "polyline", points: [from, [from[0], bendAt], to], stroke: THIN };
}

/** A small flag in its box, its leader ending in a dot on what it names. */
export function flagMarks(text: string, box: Box, at: Point): readonly Mark[] {
  const middle: Point = [box.x + box.width / 2, box.y + box.height / 2];
  const lettering = { height: 3.5, weight: 700 } as const;
  return [
    { kind: "line", from: at, to: middle, stroke: THIN },
    { kind: "circle", centre: at, radius: 0.45, fill: "ink" },
    { kind: "rect", box, fill: "paper", stroke: FINE },
    {
      kind: "text",
      at: [middle[0], middle[1] + lettering.height / 2],
      text,
      ...lettering,
      ink: "ink",
      anchor: "middle",
    },
  ];
}
