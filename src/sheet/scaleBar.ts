// The scale bar: a length to hold a ruler to, for a print that was made larger or smaller loses its scale.

import { roundTo } from "../units.ts";
import { textWidth } from "./lettering.ts";
import type { Mark, Stroke } from "./mark.ts";

const EDGE: Stroke = { weight: 0.18, ink: "ink" };
const BAR_HEIGHT = 1.2;

/** Millimetres of building to one of paper: 50 for "1:50". Null for anything but a ratio. */
export function ratioOf(scale: string): number | null {
  const ratio = Number(/^1:(\d+(?:\.\d+)?)$/.exec(scale)?.[1]);
  return ratio > 0 ? ratio : null;
}

/** The greatest round length, mm of building, that is at most `width` on paper: 1, 2, 4 or 5 and noughts. */
function roundLength(ratio: number, width: number): number {
  let best = 1;
  for (let ten = 1; ten <= 1e7; ten *= 10) {
    for (const step of [1, 2, 4, 5]) if ((step * ten) / ratio <= width) best = Math.max(best, step * ten);
  }
  return best;
}

/** A bar in the cell of a title block: "1 m" over its right end. */
export function smallBar(ratio: number, x: number, foot: number, width: number): readonly Mark[] {
  const length = roundLength(ratio, width);
  const paper = length / ratio;
  const text = length < 1000 ? `${length} mm` : `${length / 1000} m`;
  return [
    ...barMarks(x, foot - BAR_HEIGHT, paper, 2),
    {
      kind: "text",
      at: [x + paper, foot - BAR_HEIGHT - 0.9],
      text,
      height: 2.5,
      weight: 400,
      ink: "ink",
      anchor: "end",
    },
  ];
}

/** A bar with a number at each part, for a large sheet; `note` stands behind it. */
export function largeBar(ratio: number, x: number, foot: number, note: string): readonly Mark[] {
  const length = roundLength(ratio, 100);
  const paper = length / ratio;
  const parts = [5, 4].find((some) => length % some === 0 && `${length}`.startsWith(`${some}`)) ?? 2;
  const labels = Array.from({ length: parts + 1 }, (_, part): Mark => {
    const text = `${roundTo((length * part) / parts / 1000, 3)}`;
    const at = [x + (paper * part) / parts, foot - BAR_HEIGHT - 0.9] as const;
    return { kind: "text", at, text, height: 2.5, weight: 400, ink: "ink", anchor: "middle" };
  });
  // The last number reaches beyond the end of the bar.
  const reach = textWidth(`${length / 1000}`, { height: 2.5, weight: 400 }) / 2;
  const behind: Mark = {
    kind: "text",
    at: [x + paper + reach + 2, foot],
    text: note,
    height: 2.5,
    weight: 400,
    ink: "ink",
    anchor: "start",
  };
  return [...barMarks(x, foot - BAR_HEIGHT, paper, parts), ...labels, behind];
}

/** Dark and light in turn, beginning with dark. */
function barMarks(x: number, y: number, width: number, parts: number): readonly Mark[] {
  const part = width / parts;
  return Array.from({ length: parts }, (_, index): Mark => {
    const box = { x: x + index * part, y, width: part, height: BAR_HEIGHT };
    return { kind: "rect", box, fill: index % 2 === 0 ? "ink" : "paper", stroke: EDGE };
  });
}
