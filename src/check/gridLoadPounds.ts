// What does one tie or shore of a regular grid carry, and how far apart may ties be? Inch-pound: psf, inches, pounds,
// pounds per foot.

import { type Answer, computed, refusalOf } from "./range.ts";

const SQUARE_INCHES_PER_SQUARE_FOOT = 144;
const INCHES_PER_FOOT = 12;
const PRESSURE = { input: "pressure", least: 0, greatest: 10_000, unit: "psf" } as const;
const SPACING = { input: "spacing", least: 0.1, greatest: 400, unit: "in" } as const;
const LINE = { input: "load on the member", least: 1, greatest: 100_000, unit: "lb/ft" } as const;
const STRENGTH = { input: "strength of the tie", least: 1, greatest: 1e6, unit: "lb" } as const;

/** Load of an inner tie or shore, lb: psf × spacing × spacing. 0 to 10 000 psf, each spacing 0.1 to 400 in, otherwise refused. */
export function gridLoadPounds(pressurePsf: number, alongInches: number, upInches: number): Answer<number> {
  const refusal = refusalOf([pressurePsf, PRESSURE], [alongInches, SPACING], [upInches, SPACING]);
  return refusal ?? computed((pressurePsf * alongInches * upInches) / SQUARE_INCHES_PER_SQUARE_FOOT);
}

/** Load on a member that takes the pressure of a width, lb/ft. */
export function lineLoadPounds(pressurePsf: number, widthInches: number): Answer<number> {
  const refusal = refusalOf([pressurePsf, PRESSURE], [widthInches, SPACING]);
  return refusal ?? computed((pressurePsf * widthInches) / INCHES_PER_FOOT);
}

/** Farthest apart that ties of a strength may be on a member, in: always rounded down by whoever builds. */
export function tieSpacingInches(strengthPounds: number, lineLoad: number): Answer<number> {
  const refusal = refusalOf([strengthPounds, STRENGTH], [lineLoad, LINE]);
  return refusal ?? computed((strengthPounds * INCHES_PER_FOOT) / lineLoad);
}
