// Is there a cheaper plan at all? One model of every layout that a plan within the gap could use.
//
// What costs more above the bound than the gap is wide is left out, which is proven in whole numbers; so if the solver ends
// its search, its answer is the best plan there is. The search is limited by steps, which are the same on every machine.

import type { Solver } from "../../solver/linear.ts";
import type { Bound } from "./bound.ts";
import { costOf } from "./countPlan.ts";
import { flowModel } from "./flowModel.ts";
import { FINE, type Plan, type SetProblem } from "./setProblem.ts";

export interface ProveTools {
  readonly solver: Solver;
  readonly isStopped: () => boolean;
  readonly bound: Bound;
  readonly steps: number;
  readonly onBetter: (plan: Plan) => void;
}

export interface Proven {
  readonly plan: Plan;
  /** Whether the search came to its end: then no plan is cheaper than this one. */
  readonly isProven: boolean;
}

const MOST_ARCS = 40_000;

/** The best of `plan` and what the search finds. */
export function prove(problem: SetProblem, plan: Plan, tools: ProveTools): Proven {
  let best = plan;
  let cost = costOf(problem, plan).total;
  const flow = flowModel(problem, {
    free: problem.offers.map((_, offer) => offer),
    usage: Float64Array.from(problem.standing),
    allowance: problem.kinds.map(({ owned }) => owned),
    depthOf: () => Number.POSITIVE_INFINITY,
    pruning: { bound: tools.bound, slack: cost * FINE - tools.bound.fine },
    mostArcs: MOST_ARCS,
  });
  if (flow === null) return { plan, isProven: false };
  const take = (values: Float64Array): boolean => {
    const found = flow.planOf(values, plan);
    if (found === null) return false;
    const total = costOf(problem, found).total;
    if (total < cost) {
      best = found;
      cost = total;
      tools.onBetter(found);
    }
    return true;
  };
  const solved = tools.solver(flow.model, {
    gap: problem.step * 0.999,
    steps: tools.steps,
    isStopped: tools.isStopped,
    onBetter: (values) => void take(values),
  });
  const isRead = solved.values !== null && take(solved.values);
  return { plan: best, isProven: solved.status === "optimal" && flow.isComplete && isRead };
}
