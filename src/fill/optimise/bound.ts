// What no plan can undercut, proven in whole numbers.
//
// Give every piece on every day a price of its own, such that the prices of a kind over all days come to no more than buying
// one more of it. Then any plan pays at least the sum of its cheapest runs at these prices, less what the owned pieces are
// worth. Which prices are good, a linear solver says; that the bound holds whatever they are, is shown here without it.
//
// Lagrangian relaxation of "no day takes more than the set holds"; see Geoffrion, Math. Programming Study 2 (1974).

import type { Mm } from "../../units.ts";
import { type CheapestTable, cheapestFor, cheapestTable } from "./cheapest.ts";
import { FINE, placeIn, type SetProblem } from "./setProblem.ts";

/** Prices of pieces, by day and kind as in `standing`: whole thousandths of a unit, not negative. */
export type DayPrices = Float64Array;

export interface Bound {
  /** No plan costs less, units. A multiple of the problem's step. */
  readonly value: number;
  /** The same before rounding up, thousandths of a unit. */
  readonly fine: number;
  /** By offer: what each column costs at these prices, thousandths. */
  readonly columnCosts: readonly Float64Array[];
  readonly tables: readonly CheapestTable[];
  /** By run: its cheapest cover, thousandths. */
  readonly leastOf: readonly number[];
}

/** The longest run of each offer, mm. */
export function longestOf(problem: SetProblem): readonly Mm[] {
  const longest = problem.offers.map(() => 0);
  for (const { offer, length } of problem.runs) longest[offer] = Math.max(longest[offer]!, length);
  return longest;
}

/** Makes prices fit to prove with: whole, not negative, in sum no more than a piece costs where any number may be bought. */
export function fitPrices(problem: SetProblem, raw: Float64Array): DayPrices {
  const prices = raw.map((price) => (price > 0 ? Math.floor(price) : 0));
  problem.kinds.forEach(({ price, most }, kind) => {
    if (Number.isFinite(most)) return;
    let over = -price * FINE;
    for (let day = 0; day < problem.days; day++) over += prices[placeIn(problem, day, kind)]!;
    for (let day = 0; day < problem.days && over > 0; day++) {
      const at = placeIn(problem, day, kind);
      const less = Math.min(over, prices[at]!);
      prices[at]! -= less;
      over -= less;
    }
  });
  return prices;
}

/**
 * The bound that these prices prove. Time: one change-making table an offer.
 *
 * @throws {RangeError} if a run has no cover at all, or the prices of a kind come to more than it costs
 */
export function boundOf(problem: SetProblem, prices: DayPrices): Bound {
  const bound = boundIfAny(problem, prices);
  if (bound === null) throw new RangeError("nothing covers a run");
  return bound;
}

/**
 * The same; null where some run has no cover at all.
 *
 * @throws {RangeError} if the prices of a kind come to more than it costs
 */
export function boundIfAny(problem: SetProblem, prices: DayPrices): Bound | null {
  const longest = longestOf(problem);
  const columnCosts = problem.offers.map(({ columns }) =>
    Float64Array.from(columns, ({ cost, uses }) =>
      uses.reduce((sum, use) => sum + use.count * prices[placeIn(problem, use.day, use.kind)]!, cost * FINE),
    ),
  );
  const tables = problem.offers.map((offer, k) => cheapestTable(offer, columnCosts[k]!, longest[k]!));
  let fine = problem.constant * FINE;
  const leastOf: number[] = [];
  for (const { offer, length, count } of problem.runs) {
    const cheapest = cheapestFor(problem.offers[offer]!, tables[offer]!, length, FINE);
    if (cheapest === null) return null;
    fine += count * cheapest.cost;
    leastOf.push(cheapest.cost);
  }
  problem.standing.forEach((count, at) => {
    fine += count * prices[at]!;
  });
  problem.kinds.forEach((_, kind) => {
    fine += leastWorth(problem, prices, kind);
  });
  const inSteps = Math.ceil(fine / (problem.step * FINE));
  return { value: inSteps * problem.step, fine, columnCosts, tables, leastOf };
}

/**
 * The least, over all numbers of pieces the set may hold of a kind, of what they cost less what they are worth, thousandths.
 *
 * @param need - it holds so many at least, and what stands on any day
 */
export function leastWorth(problem: SetProblem, prices: DayPrices, kind: number, need = 0): number {
  const { price, owned, most } = problem.kinds[kind]!;
  let worth = 0;
  let least = need;
  for (let day = 0; day < problem.days; day++) {
    worth += prices[placeIn(problem, day, kind)]!;
    least = Math.max(least, problem.standing[placeIn(problem, day, kind)]!);
  }
  if (most === Number.POSITIVE_INFINITY && worth > price * FINE)
    throw new RangeError("the prices of a kind come to more than it costs");
  const costOf = (held: number) =>
    price * FINE * Math.max(0, held - owned) + (held > 0 ? problem.kindCharge * FINE : 0) - worth * held;
  // Between these the cost runs straight, and beyond the last it does not fall, or the set holds no more.
  const turns = [least, Math.max(least, 1), Math.max(least, owned), Math.max(least, owned, most)];
  return Math.min(...turns.filter(Number.isFinite).map(costOf));
}
