// The cheapest layout of every run of an offer, when each column has a cost of its own: change-making, all lengths in one table.
//
// Martello, Toth: Knapsack Problems, Wiley 1990, ch. 5. Whole numbers throughout.

import type { Mm } from "../../units.ts";
import { greatestDivisor } from "./amounts.ts";
import type { Layout, Offer } from "./setProblem.ts";

/** Least costs of exact sums, by steps of length. */
export interface CheapestTable {
  readonly step: Mm;
  /** By number of steps; Infinity where no sum of widths is so long. */
  readonly least: Float64Array;
  /** The column to take first for that; 255 where there is none. */
  readonly first: Uint8Array;
}

export interface Cheapest {
  readonly cost: number;
  readonly closure: number;
}

/** Every sum of widths is a multiple of this, mm. */
export function stepOf(offer: Offer): Mm {
  return greatestDivisor(offer.columns.map(({ width }) => width));
}

const NONE = 255;

/**
 * @param costs - of one piece of each column, whole
 * @param longest - longest sum asked for, mm
 */
export function cheapestTable(offer: Offer, costs: Float64Array, longest: Mm): CheapestTable {
  const step = stepOf(offer);
  const steps = Math.floor(longest / step);
  const least = new Float64Array(steps + 1).fill(Number.POSITIVE_INFINITY);
  const first = new Uint8Array(steps + 1).fill(NONE);
  const widths = Int32Array.from(offer.columns, ({ width }) => width / step);
  least[0] = 0;
  for (let at = 1; at <= steps; at++) {
    let best = Number.POSITIVE_INFINITY;
    let taken = NONE;
    for (let column = 0; column < widths.length; column++) {
      const from = at - widths[column]!;
      if (from < 0) continue;
      const cost = least[from]! + costs[column]!;
      if (cost < best) {
        best = cost;
        taken = column;
      }
    }
    least[at] = best;
    first[at] = taken;
  }
  return { step, least, first };
}

/** The cheapest cover of a length, with at most one closure; null where there is none. `fine` scales the closures' costs. */
export function cheapestFor(offer: Offer, table: CheapestTable, length: Mm, fine: number): Cheapest | null {
  let best: Cheapest | null = null;
  const consider = (rest: Mm, closure: number, cost: number) => {
    if (rest < 0 || rest % table.step !== 0) return;
    const total = table.least[rest / table.step]! + cost;
    if (total < (best?.cost ?? Number.POSITIVE_INFINITY)) best = { cost: total, closure };
  };
  consider(length, -1, 0);
  offer.closures.forEach(({ width, cost }, closure) => {
    consider(length - width, closure, cost * fine);
  });
  return best;
}

/** The layout behind a cheapest cover. */
export function layoutOf(offer: Offer, table: CheapestTable, length: Mm, closure: number): Layout {
  const counts = offer.columns.map(() => 0);
  let at = (length - (closure < 0 ? 0 : offer.closures[closure]!.width)) / table.step;
  while (at > 0) {
    const column = table.first[at]!;
    counts[column]! += 1;
    at -= offer.columns[column]!.width / table.step;
  }
  return { counts, closure };
}
