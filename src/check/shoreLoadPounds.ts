// What does one shore of a regular grid carry, in pounds?

import { type Answer, computed, refusalOf } from "./range.ts";

const SQUARE_INCHES_PER_SQUARE_FOOT = 144;
const LOAD = { input: "load on the slab form", least: 0, greatest: 4000, unit: "psf" } as const;
const SPACING = { input: "shore spacing", least: 1, greatest: 400, unit: "in" } as const;

/** Load of an inner shore, lb: psf × spacing × spacing. 0 to 4000 psf, each spacing 1 to 400 in, otherwise refused. */
export function shoreLoadPounds(loadPsf: number, alongInches: number, acrossInches: number): Answer<number> {
  const refusal = refusalOf([loadPsf, LOAD], [alongInches, SPACING], [acrossInches, SPACING]);
  return refusal ?? computed((loadPsf * alongInches * acrossInches) / SQUARE_INCHES_PER_SQUARE_FOOT);
}
