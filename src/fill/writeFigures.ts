// How numbers stand in the files of a fill: each measure with its own decimals, half away from zero, no −0.

import type { Position } from "../plan/project.ts";
import { roundTo } from "../units.ts";

export const position = (at: Position) => at.map(length);
export const length = (value: number) => figure(value, 3);
export const area = (value: number) => figure(value, 4);
export const mass = (value: number) => figure(value, 2);
export const amount = (value: number) => figure(value, 6);
export const count = (value: number) => figure(value, 0);

function figure(value: number, decimals: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`no file can hold the number ${value}`);
  return roundTo(value, decimals);
}
