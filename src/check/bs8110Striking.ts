// How long do forms and props stay at least, by the table of BS 8110 and the formulas behind it?

import type { Celsius, Hour } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

/** "…-soffit": the forms, props left. */
export type Bs8110Member = "vertical" | "slab-soffit" | "beam-soffit" | "slab-props" | "beam-props";

/** Degree-hours or, times 24, degree-days over t + 10. */
const SUMS: Readonly<Record<Bs8110Member, number>> = {
  vertical: 300,
  "slab-soffit": 100 * 24,
  "beam-soffit": 250 * 24,
  "slab-props": 250 * 24,
  "beam-props": 360 * 24,
};
const TEMPERATURE = {
  input: "mean surface temperature of the concrete",
  least: 0,
  greatest: 25,
  unit: "°C",
} as const;

export const BS8110_STRIKING_FORMULA =
  "vertical 300/(t + 10) h; slab soffit 100, beam soffit and slab props 250, beam props 360, all /(t + 10) days";
export const BS8110_STRIKING_SOURCE = "BS 8110-1:1997, table 6.2, CEM I 42.5 and faster, from memory of it";

/** Least time before striking, h, at a mean surface temperature of 0 to 25 °C, otherwise refused. No proof of strength. */
export function bs8110Striking(member: Bs8110Member, temperature: Celsius): Answer<Hour> {
  return refusalOf([temperature, TEMPERATURE]) ?? computed(SUMS[member] / (temperature + 10));
}
