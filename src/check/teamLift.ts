// How much may two people lift where each alone may lift so much?

import type { Kg } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

const LIMIT = { input: "limit of one person", least: 0.1, greatest: 1000, unit: "kg" } as const;

export const TEAM_FORMULA = "two people: 2·m_1·2/3";
export const TEAM_SOURCE =
  "two thirds of the sum of what each may lift alone, from memory of HSE L23, Manual handling";

/** Limit of two people, kg: two thirds of the sum. The limit of one 0.1 to 1000 kg, otherwise refused. */
export function teamLift(one: Kg): Answer<Kg> {
  return refusalOf([one, LIMIT]) ?? computed((2 * one * 2) / 3);
}
