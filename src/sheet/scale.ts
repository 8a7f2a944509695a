// Which scale a drawing on a sheet takes.

import type { Mm } from "../units.ts";

/** Reducing scales, the largest first. @see ISO 5455, from 1:50 on and carried on in the same steps */
const SCALES: readonly number[] = [50, 100, 200, 500, 1000, 2000, 5000, 10000];

/** Height of the wall that a row of the ribbon can hold beside its labels, mm of paper. */
const GREATEST_WALL = 110;

/**
 * The scale of the ribbon: 1:50 for all walls a person builds in one pour, so that a 600 panel is 12 mm on every
 * sheet of a project; smaller only for a wall too tall for the paper.
 */
export function ribbonScale(tallest: Mm): number {
  return SCALES.find((scale) => tallest / scale <= GREATEST_WALL) ?? tallest / GREATEST_WALL;
}

/** "1:50"; a dash for a scale that nobody measures by. */
export function scaleText(scale: number): string {
  return Number.isInteger(scale) ? `1:${scale}` : "–";
}
