// The marks of a sheet as the operators of a PDF page. Like the SVG writer it decides nothing.
//
// One matrix at the head of the page turns points from below into millimetres from above; a text turns itself back.

import { roundTo } from "../../units.ts";
import type { Box } from "../box.ts";
import type { FontWeight } from "../fontWidths.ts";
import { hatchDots, hatchLines } from "../hatch.ts";
import { textBox, typeSize } from "../lettering.ts";
import {
  type HatchMark,
  INKS,
  type Ink,
  type Mark,
  type Point,
  type Sheet,
  type Stroke,
  type TextMark,
} from "../mark.ts";
import { plainText } from "../plainText.ts";
import { sheetNumber } from "../svg.ts";
import type { PdfFont } from "./font.ts";

export type PdfFonts = { readonly [W in FontWeight]: PdfFont };

/** Points in a millimetre: 72 to the inch of 25.4 mm. */
const POINTS = 72 / 25.4;

/** How far the handles of a quarter circle of radius 1 reach, for an error under 0.03 %. */
const HANDLE = 0.5523;

/** A length on paper in points, to 0.0001. */
export function points(millimetres: number): string {
  return `${roundTo(millimetres * POINTS, 4)}`;
}

/** The content stream of a page. Fonts are called F400, F600 and F700. */
export function pageContent(sheet: Sheet, fonts: PdfFonts): string {
  const scale = roundTo(POINTS, 6);
  return [
    `${scale} 0 0 ${-scale} 0 ${points(sheet.height)} cm 4 M`, // mitres as long as those of SVG
    ...sheet.marks.map((mark) => markOperators(mark, fonts)),
  ].join("\n");
}

function markOperators(mark: Mark, fonts: PdfFonts): string {
  switch (mark.kind) {
    case "line":
      return painted(path([mark.from, mark.to]), undefined, mark.stroke);
    case "polyline":
      return painted(path(mark.points), undefined, mark.stroke);
    case "polygon":
      return painted(`${path(mark.points)} h`, mark.fill, mark.stroke);
    case "rect":
      return painted(rectangle(mark.box), mark.fill, mark.stroke);
    case "circle":
      return painted(circle(mark.centre, mark.radius), mark.fill, mark.stroke);
    case "hatch":
      return hatchOperators(mark);
    case "text":
      return textOperators(mark, fonts);
    default:
      return mark satisfies never;
  }
}

const numbers = (...values: readonly number[]) => values.map(sheetNumber).join(" ");

function path(corners: readonly Point[]): string {
  return corners.map(([x, y], index) => `${numbers(x, y)} ${index === 0 ? "m" : "l"}`).join(" ");
}

function rectangle({ x, y, width, height }: Box): string {
  return `${numbers(x, y, width, height)} re`;
}

function circle([x, y]: Point, r: number): string {
  const h = r * HANDLE;
  return [
    `${numbers(x + r, y)} m`,
    `${numbers(x + r, y + h, x + h, y + r, x, y + r)} c`,
    `${numbers(x - h, y + r, x - r, y + h, x - r, y)} c`,
    `${numbers(x - r, y - h, x - h, y - r, x, y - r)} c`,
    `${numbers(x + h, y - r, x + r, y - h, x + r, y)} c h`,
  ].join(" ");
}

function painted(shape: string, fill: Ink | undefined, stroke: Stroke | undefined): string {
  const paint = fill === undefined ? (stroke === undefined ? "n" : "S") : stroke === undefined ? "f" : "B";
  return [
    ...(fill === undefined ? [] : [`${colour(fill)} rg`]),
    ...(stroke === undefined
      ? []
      : [
          `${colour(stroke.ink)} RG ${sheetNumber(stroke.weight)} w [${numbers(...(stroke.dash ?? []))}] 0 d`,
        ]),
    `${shape} ${paint}`,
  ].join(" ");
}

/** Red, green and blue from 0 to 1, to the steps of the sheet's inks. */
function colour(ink: Ink): string {
  const parts = [1, 3, 5].map((at) => Number.parseInt(INKS[ink].slice(at, at + 2), 16));
  return parts.map((part) => roundTo(part / 255, 4)).join(" ");
}

/** Lines of the hatch are clipped, so that their ends lie on the edge of the box. */
function hatchOperators(mark: HatchMark): string {
  if (mark.pattern === "lines") {
    const strokes = hatchLines(mark).map(path).join(" ");
    const clip = `${rectangle(mark.box)} W n`;
    return `q ${clip} ${painted(strokes, undefined, { weight: mark.weight, ink: mark.ink })} Q`;
  }
  return painted(
    hatchDots(mark)
      .map((centre) => circle(centre, mark.weight / 2))
      .join(" "),
    mark.ink,
    undefined,
  );
}

function textOperators(mark: TextMark, fonts: PdfFonts): string {
  const text = plainText(mark.text);
  if (text === "") return "";
  const box = textBox({ ...mark, text });
  // Directions of the line and of the letters' heads, then where the line begins.
  const place =
    mark.isUpright === true
      ? `0 -1 -1 0 ${numbers(mark.at[0], box.y + box.height)}`
      : `1 0 0 -1 ${numbers(box.x, mark.at[1])}`;
  return (
    `BT ${colour(mark.ink)} rg /F${mark.weight} ${roundTo(typeSize(mark.height), 4)} Tf ` +
    `${place} Tm <${fonts[mark.weight].encode(text)}> Tj ET`
  );
}
