// What a sheet is made of: marks on paper, each with its place in millimetres and its style from a short list.
//
//   0,0 ────── x →      A layout decides everything here; a writer (SVG, later PDF) only writes it down.
//    │                  All coordinates, widths and heights in this file are millimetres of paper,
//    y ↓                y downward. The first mark lies lowest.

import type { PaperMm } from "../units.ts";
import type { Box } from "./box.ts";
import type { FontWeight } from "./fontWidths.ts";

/**
 * The tones of a sheet, by what they are for. `tone1` to `tone5` deepen as a piece gets narrower.
 *
 * tone1 to tone5 are steps 2 to 6 of the nine-class sequential scheme "Blues" of ColorBrewer: colour specifications
 * and designs developed by Cynthia Brewer (https://colorbrewer2.org), © 2002 Cynthia Brewer, Mark Harrower and The
 * Pennsylvania State University, Apache License 2.0. Ink on the deepest of them keeps a contrast of 5.5 to 1.
 */
export const INKS = {
  ink: "#111111",
  soft: "#555555",
  faint: "#bdbdbd",
  band: "#e8e8e8",
  paper: "#ffffff",
  tone1: "#deebf7",
  tone2: "#c6dbef",
  tone3: "#9ecae1",
  tone4: "#6baed6",
  tone5: "#4292c6",
} as const;

export type Ink = keyof typeof INKS;

/** Line weights of a sheet, after the steps of ISO 128: hair, thin, fine, outline, concrete, frame and fault. */
type LineWeight = 0.13 | 0.18 | 0.25 | 0.35 | 0.5 | 0.7 | 1;

/** Heights of a capital letter, after the steps of ISO 3098. */
export type LetterHeight = 2.5 | 3.5 | 5 | 7 | 10;

export interface Stroke {
  readonly weight: LineWeight;
  readonly ink: Ink;
  /** Lengths of dash and gap in turn; not given: a full line. */
  readonly dash?: readonly number[];
}

export type Point = readonly [x: number, y: number];

interface LineMark {
  readonly kind: "line";
  readonly from: Point;
  readonly to: Point;
  readonly stroke: Stroke;
}

interface PolylineMark {
  readonly kind: "polyline";
  readonly points: readonly Point[];
  readonly stroke: Stroke;
}

interface PolygonMark {
  readonly kind: "polygon";
  readonly points: readonly Point[];
  readonly fill?: Ink;
  readonly stroke?: Stroke;
}

interface RectMark {
  readonly kind: "rect";
  readonly box: Box;
  readonly fill?: Ink;
  readonly stroke?: Stroke;
}

interface CircleMark {
  readonly kind: "circle";
  readonly centre: Point;
  readonly radius: number;
  readonly fill?: Ink;
  readonly stroke?: Stroke;
}

/** A field of lines rising at 45° or of dots, cut off at the box. `pitch` is measured across the lines. */
export interface HatchMark {
  readonly kind: "hatch";
  readonly box: Box;
  readonly pattern: "lines" | "dots";
  readonly pitch: number;
  readonly weight: LineWeight;
  readonly ink: Ink;
}

/** One line of text standing on its baseline, which ends at `at` or runs through it. */
export interface TextMark {
  readonly kind: "text";
  readonly at: Point;
  readonly text: string;
  readonly height: LetterHeight;
  readonly weight: FontWeight;
  readonly ink: Ink;
  readonly anchor: "start" | "middle" | "end";
  /** Turned a quarter to the left about `at`, so that it reads upward. Not given: it reads to the right. */
  readonly isUpright?: true;
}

type Shape = LineMark | PolylineMark | PolygonMark | RectMark | CircleMark | HatchMark | TextMark;

/** A mark. `piece` names the piece that it draws, on one mark only of all sheets of one kind. */
export type Mark = Shape & { readonly piece?: string };

/** One sheet of paper. */
export interface Sheet {
  /** For a file, without extension: small letters, digits and hyphens. Unique among the sheets of a unit. */
  readonly name: string;
  readonly width: PaperMm;
  readonly height: PaperMm;
  readonly title: string;
  /** What the sheet shows, in a sentence or two, for a person who cannot see it. */
  readonly description: string;
  /** The room or place it is about, in words; absent on a sheet of the whole unit. */
  readonly room?: string;
  /** What its code says; absent on a sheet without one. */
  readonly key?: string;
  readonly marks: readonly Mark[];
}
