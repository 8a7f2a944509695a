// Good prices for the bound, and layouts worth having, by column generation: a linear program over the layouts known so far
// says what a piece is worth on a day; change-making at these prices finds layouts that would pay; and so on until none does.
//
// Gilmore, Gomory: A linear programming approach to the cutting-stock problem, Operations Research 9 (1961).

import { createModelBuilder, type Entry, type ModelBuilder } from "../../solver/builder.ts";
import type { Solver } from "../../solver/linear.ts";
import { type Bound, boundOf, type DayPrices, fitPrices, longestOf } from "./bound.ts";
import { cheapestFor, layoutOf, stepOf } from "./cheapest.ts";
import { workOf } from "./countPlan.ts";
import { FINE, type Layout, placeIn, type SetProblem } from "./setProblem.ts";

export interface PricedBound {
  readonly bound: Bound;
  /** What proves it. */
  readonly prices: DayPrices;
}

export interface Generated extends PricedBound {
  /** By run: the layouts found, the given ones first. */
  readonly layouts: readonly (readonly Layout[])[];
  /** By kind: how many the linear program would buy beyond those owned. */
  readonly bought: Float64Array;
}

const MOST_ROUNDS = 60;
/** Cells of change-making tables over all rounds: what keeps thousand-metre runs of odd widths short. */
const MOST_CELLS = 4e8;

/**
 * Rounds of pricing, each a step of a generator that yields the best bound so far; the first is the one without prices.
 *
 * @param given - at least one layout for each run
 */
export function* generate(
  problem: SetProblem,
  given: readonly (readonly Layout[])[],
  solver: Solver,
): Generator<PricedBound, Generated> {
  const pools = given.map((layouts) => createPool(layouts));
  let prices: DayPrices = new Float64Array(problem.standing.length);
  let best = boundOf(problem, prices);
  let bought: Float64Array = new Float64Array(problem.kinds.length);
  yield { bound: best, prices };
  for (let round = roundsFor(problem); round > 0; round--) {
    const master = solveMaster(problem, pools, solver);
    if (master === null) break;
    bought = master.bought;
    const raw = fitPrices(problem, master.prices);
    const bound = boundOf(problem, raw);
    if (bound.fine > best.fine) {
      best = bound;
      prices = raw;
    }
    yield { bound: best, prices };
    if (!addCheapest(problem, bound, pools) || master.value * FINE - best.fine < FINE / 2) break;
  }
  return { bound: best, prices, layouts: pools.map(({ layouts }) => layouts), bought };
}

function roundsFor(problem: SetProblem): number {
  const longest = longestOf(problem);
  const cells = problem.offers.reduce(
    (sum, offer, k) => sum + (longest[k]! / stepOf(offer)) * offer.columns.length,
    1,
  );
  return Math.max(2, Math.min(MOST_ROUNDS, Math.floor(MOST_CELLS / cells)));
}

interface Pool {
  readonly layouts: Layout[];
  /** False where it was there already. */
  readonly add: (layout: Layout) => boolean;
}

function createPool(given: readonly Layout[]): Pool {
  const layouts: Layout[] = [];
  const known = new Set<string>();
  const add = (layout: Layout): boolean => {
    const key = `${layout.closure} ${layout.counts.join(" ")}`;
    if (known.has(key)) return false;
    known.add(key);
    layouts.push(layout);
    return true;
  };
  for (const layout of given) add(layout);
  return { layouts, add };
}

function addCheapest(problem: SetProblem, { tables }: Bound, pools: readonly Pool[]): boolean {
  let isNew = false;
  problem.runs.forEach(({ offer, length }, run) => {
    const table = tables[offer]!;
    const cheapest = cheapestFor(problem.offers[offer]!, table, length, FINE);
    if (cheapest === null) return;
    if (pools[run]!.add(layoutOf(problem.offers[offer]!, table, length, cheapest.closure))) isNew = true;
  });
  return isNew;
}

interface Master {
  readonly value: number;
  readonly prices: Float64Array;
  readonly bought: Float64Array;
}

function solveMaster(problem: SetProblem, pools: readonly Pool[], solver: Solver): Master | null {
  const builder = createModelBuilder();
  const demands = problem.runs.map(({ count }) => builder.addRow(count, count));
  const limits = addSetRows(problem, builder);
  const bought = limits.bought;
  problem.runs.forEach(({ offer }, run) => {
    const { columns } = problem.offers[offer]!;
    for (const layout of pools[run]!.layouts) {
      const entries = new Map<number, number>([[demands[run]!, 1]]);
      layout.counts.forEach((count, column) => {
        if (count === 0) return;
        for (const use of columns[column]!.uses) {
          const row = limits.rows[placeIn(problem, use.day, use.kind)]!;
          entries.set(row, (entries.get(row) ?? 0) + use.count * count);
        }
      });
      builder.addColumn({ cost: workOf(problem, offer, layout), entries: [...entries] });
    }
  });
  const solved = solver(builder.build());
  if (solved.status !== "optimal" || solved.values === null || solved.duals === null) return null;
  const { values, duals } = solved;
  let value = problem.constant;
  problem.kinds.forEach(({ price }, kind) => {
    value += price * values[bought[kind]!]! + problem.shortage * values[limits.short[kind]!]!;
  });
  let at = bought.length + limits.short.length;
  problem.runs.forEach(({ offer }, run) => {
    for (const layout of pools[run]!.layouts) value += workOf(problem, offer, layout) * values[at++]!;
  });
  return {
    value,
    prices: Float64Array.from(limits.rows, (row) => -duals[row]! * FINE),
    bought: Float64Array.from(bought, (column, kind) => values[column]! + values[limits.short[kind]!]!),
  };
}

/** A row a day and kind, "what the day takes is owned, bought or short", and columns a kind for what is bought and short. */
function addSetRows(problem: SetProblem, builder: ModelBuilder) {
  const rows = problem.standing.map((standing, at) => {
    const { owned } = problem.kinds[at % problem.kinds.length]!;
    return builder.addRow(Number.NEGATIVE_INFINITY, owned - standing);
  });
  const entriesOf = (kind: number): readonly Entry[] =>
    Array.from({ length: problem.days }, (_, day) => [rows[placeIn(problem, day, kind)]!, -1] as const);
  const bought = problem.kinds.map(({ price, owned, most }, kind) =>
    builder.addColumn({ cost: price, upper: Math.max(0, most - owned), entries: entriesOf(kind) }),
  );
  const short = problem.kinds.map(({ most }, kind) =>
    builder.addColumn({
      cost: problem.shortage,
      upper: Number.isFinite(most) ? Number.POSITIVE_INFINITY : 0,
      entries: entriesOf(kind),
    }),
  );
  return { rows, bought, short };
}
