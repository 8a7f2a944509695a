// Writes a sheet as SVG. It decides nothing: every place, width and tone is in the marks.
//
// A text is written with its length, so that a stand-in typeface is squeezed rather than run into its neighbour.

import { roundTo } from "../units.ts";
import type { Box } from "./box.ts";
import { hatchDots, hatchLines } from "./hatch.ts";
import { textWidth, typeSize } from "./lettering.ts";
import { type HatchMark, INKS, type Ink, type Mark, type Point, type Sheet, type Stroke } from "./mark.ts";
import { filePart, plainText, xmlText } from "./plainText.ts";

const FONT_FAMILY = "'IBM Plex Sans Condensed', 'Arial Narrow', sans-serif";

/** A number as every sheet writes it: to 0.01 mm, no minus before a zero, no noughts behind the point. */
export function sheetNumber(value: number): string {
  return String(roundTo(value, 2));
}

/**
 * The sheet as an SVG document with one final newline. Sizes are in millimetres and so is the view box. The same
 * sheet gives the same bytes everywhere.
 *
 * @param id - with which its ids begin, where several stand in one document
 */
export function sheetToSvg(sheet: Sheet, id = filePart(sheet.name) || "sheet"): string {
  const width = sheetNumber(sheet.width);
  const height = sheetNumber(sheet.height);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"`,
    ` role="img" aria-labelledby="${id}-title ${id}-desc" font-family="${FONT_FAMILY}"`,
    ` style="font-kerning:none;font-variant-ligatures:none" stroke-linejoin="miter">\n`,
    `<title id="${id}-title">${xmlText(sheet.title)}</title>\n`,
    `<desc id="${id}-desc">${xmlText(sheet.description)}</desc>\n`,
    `<rect width="${width}" height="${height}" fill="${INKS.paper}"/>\n`,
    ...sheet.marks.map((mark) => `${markToSvg(mark)}\n`),
    "</svg>\n",
  ].join("");
}

/** One element, without a line feed. */
export function markToSvg(mark: Mark): string {
  const piece = mark.piece === undefined ? "" : ` data-piece="${xmlText(mark.piece)}"`;
  switch (mark.kind) {
    case "line":
      return `<path d="${path([mark.from, mark.to])}"${paint(undefined, mark.stroke)}${piece}/>`;
    case "polyline":
      return `<path d="${path(mark.points)}"${paint(undefined, mark.stroke)}${piece}/>`;
    case "polygon":
      return `<path d="${path(mark.points)}Z"${paint(mark.fill, mark.stroke)}${piece}/>`;
    case "rect":
      return `<rect${rectangle(mark.box)}${paint(mark.fill, mark.stroke)}${piece}/>`;
    case "circle":
      return `<circle${circle(mark.centre, mark.radius)}${paint(mark.fill, mark.stroke)}${piece}/>`;
    case "hatch":
      return hatchToSvg(mark, piece);
    case "text":
      return textToSvg(mark, piece);
    default:
      return mark satisfies never;
  }
}

function path(points: readonly Point[]): string {
  return points
    .map(([x, y], index) => `${index === 0 ? "M" : "L"}${sheetNumber(x)} ${sheetNumber(y)}`)
    .join("");
}

function rectangle({ x, y, width, height }: Box): string {
  return ` x="${sheetNumber(x)}" y="${sheetNumber(y)}" width="${sheetNumber(width)}" height="${sheetNumber(height)}"`;
}

function circle([x, y]: Point, radius: number): string {
  return ` cx="${sheetNumber(x)}" cy="${sheetNumber(y)}" r="${sheetNumber(radius)}"`;
}

function paint(fill: Ink | undefined, stroke: Stroke | undefined): string {
  const inside = ` fill="${fill === undefined ? "none" : INKS[fill]}"`;
  if (stroke === undefined) return inside;
  const dash =
    stroke.dash === undefined ? "" : ` stroke-dasharray="${stroke.dash.map(sheetNumber).join(" ")}"`;
  return `${inside} stroke="${INKS[stroke.ink]}" stroke-width="${sheetNumber(stroke.weight)}"${dash}`;
}

function textToSvg(mark: Extract<Mark, { kind: "text" }>, piece: string): string {
  const text = plainText(mark.text);
  const anchor = mark.anchor === "start" ? "" : ` text-anchor="${mark.anchor}"`;
  const length = text.length > 1 ? ` textLength="${sheetNumber(textWidth(text, mark))}"` : "";
  const adjust = length === "" ? "" : ' lengthAdjust="spacingAndGlyphs"';
  const [x, y] = mark.at.map(sheetNumber);
  const turn = mark.isUpright === true ? ` transform="rotate(-90 ${x} ${y})"` : "";
  return (
    `<text x="${x}" y="${y}" font-size="${sheetNumber(typeSize(mark.height))}"` +
    ` font-weight="${mark.weight}" fill="${INKS[mark.ink]}"${anchor}${length}${adjust}${turn}${piece}>${xmlText(text)}</text>`
  );
}

function hatchToSvg(mark: HatchMark, piece: string): string {
  if (mark.pattern === "lines") {
    const strokes = hatchLines(mark).map(path).join("");
    return `<path d="${strokes}"${paint(undefined, { weight: mark.weight, ink: mark.ink })}${piece}/>`;
  }
  const dots = hatchDots(mark).map((centre) => `<circle${circle(centre, mark.weight / 2)}/>`);
  return `<g fill="${INKS[mark.ink]}"${piece}>${dots.join("")}</g>`;
}
