// What a plan takes and costs, counted in whole numbers.

import { type Layout, type Plan, placeIn, type SetProblem } from "./setProblem.ts";

/** What a plan costs, units. */
export interface PlanCost {
  readonly set: number;
  readonly work: number;
  readonly charges: number;
  readonly total: number;
  /** The greatest need of any day, by kind. */
  readonly need: readonly number[];
  /** Pieces of each kind beyond the most there can be. */
  readonly missing: readonly number[];
  readonly isShort: boolean;
}

/** Pieces by day and kind, with what else stands there; of the runs of some offers only, if given. */
export function usageOf(
  problem: SetProblem,
  plan: Plan,
  counts: (offer: number) => boolean = () => true,
): Float64Array {
  const usage = Float64Array.from(problem.standing);
  problem.runs.forEach((run, index) => {
    if (!counts(run.offer)) return;
    const { columns } = problem.offers[run.offer]!;
    for (const { layout, times } of plan[index]!) {
      layout.counts.forEach((count, column) => {
        if (count === 0) return;
        for (const use of columns[column]!.uses) {
          usage[placeIn(problem, use.day, use.kind)]! += use.count * count * times;
        }
      });
    }
  });
  return usage;
}

/** The greatest need of any day, by kind. */
export function needOf(problem: SetProblem, usage: Float64Array): readonly number[] {
  return problem.kinds.map((_, kind) => {
    let most = 0;
    for (let day = 0; day < problem.days; day++) most = Math.max(most, usage[placeIn(problem, day, kind)]!);
    return most;
  });
}

/** Handling and closure of one run with this layout, units. */
export function workOf(problem: SetProblem, offer: number, { counts, closure }: Layout): number {
  const { columns, closures } = problem.offers[offer]!;
  const handling = counts.reduce((sum, count, column) => sum + count * columns[column]!.cost, 0);
  return handling + (closure < 0 ? 0 : closures[closure]!.cost);
}

/** The cost of a plan, its shortages priced in. */
export function costOf(problem: SetProblem, plan: Plan): PlanCost {
  const need = needOf(problem, usageOf(problem, plan));
  let set = 0;
  let charges = 0;
  const missing = problem.kinds.map(({ price, owned, most }, kind) => {
    const held = need[kind]!;
    const short = Math.max(0, held - Math.max(owned, most));
    set += price * Math.max(0, held - short - owned) + problem.shortage * short;
    if (held > 0) charges += problem.kindCharge;
    return short;
  });
  let work = 0;
  problem.runs.forEach((run, index) => {
    for (const { layout, times } of plan[index]!) work += times * workOf(problem, run.offer, layout);
  });
  const isShort = missing.some((lacking) => lacking > 0);
  return { set, work, charges, total: set + work + charges + problem.constant, need, missing, isShort };
}

/** The cost with what is missing priced as if it could be bought, units. */
export function paidFor(
  problem: SetProblem,
  cost: PlanCost,
): { readonly set: number; readonly total: number } {
  const more = cost.missing.reduce(
    (sum, short, kind) => sum + short * (problem.kinds[kind]!.price - problem.shortage),
    0,
  );
  return { set: cost.set + more, total: cost.total + more };
}
