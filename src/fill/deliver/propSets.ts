// How many sets of props and strips a scheme turns over while its slabs are still propped.
//
//   sets = ceil(retention / cycle) + 1        7 days at a pour a day: 8 sets; at a pour in 4 days: 3
//
// Common practice, no source: one set more than stands, for the pour in hand.

import type { Family, Kit } from "../../kit/kit.ts";
import type { Day } from "../../units.ts";
import { compareLines } from "../bill.ts";
import { type DayNeeds, greatestNeed, pieceFinder } from "../dayNeeds.ts";

export interface PropLine {
  readonly code: string;
  readonly family: Family;
  /** The most that one day needs. */
  readonly perDay: number;
  /** The most that so many days in turn need: what to own of it. */
  readonly needed: number;
  /** Sets that the kit's `stays` makes of it: the set and the delta lists go by these. */
  readonly kitSets: number;
}

export interface PropSets {
  readonly retention: Day;
  readonly cycle: Day;
  readonly sets: number;
  readonly lines: readonly PropLine[];
}

/**
 * @param retention - days that props stay under a slab after its pour, over 0
 * @param cycle - days from one day of pouring to the next, over 0
 */
export function propSets(
  needs: DayNeeds,
  kit: Kit,
  { retention, cycle }: Pick<PropSets, "retention" | "cycle">,
): PropSets {
  const sets = Math.ceil(retention / cycle) + 1;
  const find = pieceFinder(kit);
  const lines = needs.lines
    .filter(({ family }) => family === "prop" || family === "shoring-strip")
    .sort(compareLines)
    .map(({ code, family }) => ({
      code,
      family,
      perDay: greatestNeed(needs, code, 0),
      needed: greatestNeed(needs, code, sets - 1),
      kitSets: (find(code)?.stays ?? 0) + 1,
    }));
  return { retention, cycle, sets, lines };
}
