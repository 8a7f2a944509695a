// What the pours need beyond what is owned: by code, where it is short, and what buying it costs.
//
// Counted from any fill, chosen together or wall by wall: needed as the set counts it, the greatest need of any day.

import type { Family, Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import { compareLines } from "../bill.ts";
import { castingsOf, pourDays } from "../castings.ts";
import {
  type DayNeeds,
  dayNeeds,
  daysTaken,
  greatestNeed,
  ownedOf,
  pieceFinder,
  type Where,
  whereShort,
  windowNeeds,
} from "../dayNeeds.ts";
import type { FillDocument } from "../result.ts";
import { sparesOf } from "./spares.ts";

/** `pours` and `units`: of the days on which it is short. */
export interface ShortageLine extends Where {
  readonly code: string;
  readonly family: Family;
  /** The most that stands at once; of what stays in the concrete, all that the pours use up. */
  readonly needed: number;
  readonly owned: number;
  /** Needed beyond what is owned. */
  readonly short: number;
  /** To have in hand beside the need; not counted as short. */
  readonly spare: number;
  /** Of one, as the kit has it; null: it does not say. */
  readonly price: number | null;
  /** What buying the shortage costs; null where the price is not known. */
  readonly cost: number | null;
}

export interface Shortage {
  /** Every code that any pour needs, in the order of bills. */
  readonly lines: readonly ShortageLine[];
  /** Of all lines with a price. */
  readonly cost: number;
  /** Codes that are short and have no price. */
  readonly unpriced: number;
}

/**
 * What every day of a fill needs of each code.
 *
 * @throws {RangeError} if the fill is of another project
 */
export function dayNeedsOf(fill: FillDocument, kit: Kit, project: Project): DayNeeds {
  const castings = castingsOf(project);
  if (castings.length !== fill.units.length) throw new RangeError("the fill is not of this project");
  const bills = fill.units.map(({ bill }) => bill);
  return dayNeeds(bills, pourDays(project, castings), kit);
}

/** @throws {RangeError} if the fill is of another project */
export function shortageOf(fill: FillDocument, kit: Kit, project: Project): Shortage {
  const castings = castingsOf(project);
  const days = pourDays(project, castings);
  const needs = dayNeedsOf(fill, kit, project);
  const find = pieceFinder(kit);
  const prices = new Map(kit.pieces.map(({ code, price }) => [code, price]));
  const lines = [...needs.lines].sort(compareLines).map(({ code, family }): ShortageLine => {
    const stays = daysTaken(family, find(code));
    const needed = greatestNeed(needs, code, stays);
    const owned = ownedOf(project, code);
    const short = Math.max(0, needed - owned);
    const price = prices.get(code) ?? null;
    return {
      code,
      family,
      needed,
      owned,
      short,
      spare: sparesOf(family, needed),
      price,
      cost: price === null ? null : short * price,
      ...whereShort(windowNeeds(needs, code, stays), owned, days, castings),
    };
  });
  return {
    lines,
    cost: lines.reduce((sum, { cost }) => sum + (cost ?? 0), 0),
    unpriced: lines.filter(({ short, price }) => short > 0 && price === null).length,
  };
}
