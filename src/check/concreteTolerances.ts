// How far may the struck concrete be from what was drawn: plumb, thickness, level, by three standards?

import type { Mm } from "../units.ts";
import { type Answer, type Bounds, computed, refusalOf } from "./range.ts";

const PLUMB_HEIGHT: Bounds = { input: "height of the wall", least: 50, greatest: 25_400, unit: "mm" };
const STOREY: Bounds = { input: "height of the wall", least: 50, greatest: 10_000, unit: "mm" };
const SIZE: Bounds = { input: "size of the section", least: 50, greatest: 2500, unit: "mm" };
const ACI_THICKNESS: Bounds = { input: "thickness of the wall", least: 50, greatest: 300, unit: "mm" };

export const ACI117_PLUMB_SOURCE = "ACI 117M-10, summary at chhnth.org/index5593-171.html";
export const ACI117_MEMORY_SOURCE = "ACI 117, from memory of it";
export const EN13670_SOURCE = "EN 13670:2009, tolerance class 1, from memory of it";
export const EUROCODE_SECTION_SOURCE =
  "a text on Eurocode 2, eurocode.us/concrete-structures-eurocode-2/tolerances.html";

/** Out of plumb, mm: 0.3 % of the height and 25 at most, for heights of 50 to 25 400 mm. */
export function aci117Plumb(height: Mm): Answer<Mm> {
  return refusalOf([height, PLUMB_HEIGHT]) ?? computed(Math.min((3 * height) / 1000, 25));
}

/** Out of plumb over one storey, mm: h/400 and 15 at least, for heights of 50 to 10 000 mm. */
export function en13670Plumb(height: Mm): Answer<Mm> {
  return refusalOf([height, STOREY]) ?? computed(Math.max(height / 400, 15));
}

/** Deviations of a size, mm, downward and upward. */
export interface Deviation {
  readonly less: Mm;
  readonly more: Mm;
}

/** Thickness of walls of 50 to 300 mm. */
export function aci117Thickness(thickness: Mm): Answer<Deviation> {
  return refusalOf([thickness, ACI_THICKNESS]) ?? computed({ less: 6, more: 10 });
}

const SIZES: readonly Mm[] = [150, 400, 2500];
const EN13670_SIZES: readonly Mm[] = [10, 15, 30];
const EUROCODE_SIZES: readonly Mm[] = [5, 15, 30];

/** Size of a section, ± mm, by class 1 of EN 13670: 10 up to 150, 15 at 400, 30 at 2500, straight between. */
export function en13670Section(size: Mm): Answer<Mm> {
  return between(size, EN13670_SIZES);
}

/** Size of a section, ± mm, as a text on Eurocode 2 has it: 5 up to 150, 15 at 400, 30 at 2500, straight between. */
export function eurocodeSection(size: Mm): Answer<Mm> {
  return between(size, EUROCODE_SIZES);
}

function between(size: Mm, limits: readonly Mm[]): Answer<Mm> {
  const refusal = refusalOf([size, SIZE]);
  if (refusal !== null) return refusal;
  const k = SIZES.findIndex((each) => size <= each);
  if (k === 0) return computed(limits[0]!);
  const [from, to] = [SIZES[k - 1]!, SIZES[k]!];
  const [low, high] = [limits[k - 1]!, limits[k]!];
  return computed(low + ((high - low) * (size - from)) / (to - from));
}
