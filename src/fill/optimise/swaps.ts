// What one interval does to the cost: the plan with its layout changed for another, all else as it is.

import { costOf, needOf, usageOf, workOf } from "./countPlan.ts";
import { type Layout, type Plan, placeIn, type SetProblem } from "./setProblem.ts";

export interface Swap {
  readonly run: number;
  readonly from: Layout;
  readonly to: Layout;
}

/** A kind of which the set needs another number. */
export interface NeedChange {
  readonly kind: number;
  /** Less than 0: fewer. */
  readonly more: number;
  /** The first day that needs so many. */
  readonly day: number;
}

export interface SwapEffect {
  /** Dearer by so much, units; less than 0: cheaper. Null where either takes more pieces than there can be. */
  readonly cost: number | null;
  /** By kind. */
  readonly needs: readonly NeedChange[];
}

/** Prices swaps in a plan, each by itself; time grows with the days, not with the runs. */
export function createSwaps(problem: SetProblem, plan: Plan): (swap: Swap) => SwapEffect {
  const usage = usageOf(problem, plan);
  const needs = needOf(problem, usage);
  const { isShort } = costOf(problem, plan);
  return ({ run, from, to }) => {
    const { offer } = problem.runs[run]!;
    const changes = new Map<number, number>();
    for (const [layout, sign] of [
      [from, -1],
      [to, 1],
    ] as const) {
      layout.counts.forEach((count, column) => {
        if (count === 0) return;
        for (const use of problem.offers[offer]!.columns[column]!.uses) {
          const place = placeIn(problem, use.day, use.kind);
          changes.set(place, (changes.get(place) ?? 0) + sign * count * use.count);
        }
      });
    }
    const kinds = [...new Set([...changes.keys()].map((place) => place % problem.kinds.length))];
    let cost = workOf(problem, offer, to) - workOf(problem, offer, from);
    let lacks = isShort;
    const found = kinds
      .sort((a, b) => a - b)
      .map((kind): NeedChange => {
        let need = 0;
        let first = 0;
        for (let day = 0; day < problem.days; day++) {
          const place = placeIn(problem, day, kind);
          const count = usage[place]! + (changes.get(place) ?? 0);
          if (count <= need) continue;
          need = count;
          first = day;
        }
        const { owned, most } = problem.kinds[kind]!;
        if (need > Math.max(owned, most)) lacks = true;
        cost += kindCost(problem, kind, need) - kindCost(problem, kind, needs[kind]!);
        return { kind, more: need - needs[kind]!, day: first };
      });
    return { cost: lacks ? null : cost, needs: found.filter(({ more }) => more !== 0) };
  };
}

function kindCost({ kinds, kindCharge }: SetProblem, kind: number, need: number): number {
  const { price, owned } = kinds[kind]!;
  return price * Math.max(0, need - owned) + (need > 0 ? kindCharge : 0);
}
