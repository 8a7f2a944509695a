// Is there a cheaper plan at all? One model of every layout that a plan within the gap could use, searched by the solver.
//
// What costs more above the bound than the gap is wide is left out, which is proven in whole numbers; what the solver finds is
// counted again. That it found all there is, is its own word: it reckons with rounded numbers. The search is limited by steps,
// which are the same on every machine.

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
  /** Only plans that cost less than this are wanted, units; absent: less than the plan given. */
  readonly toBeat?: number;
}

export interface Proven {
  readonly plan: Plan;
  /** Whether the search came to its end: then, by the solver's word, no plan is cheaper than this one. */
  readonly isEnded: boolean;
}

const MOST_ARCS = 40_000;

/** The better of `plan` and what the search finds. */
export function prove(problem: SetProblem, plan: Plan, tools: ProveTools): Proven {
  const cost = Math.min(costOf(problem, plan).total, tools.toBeat ?? Number.POSITIVE_INFINITY);
  const flow = flowModel(problem, {
    free: problem.offers.map((_, offer) => offer),
    usage: Float64Array.from(problem.standing),
    allowance: problem.kinds.map(({ owned }) => owned),
    depthOf: () => Number.POSITIVE_INFINITY,
    pruning: { bound: tools.bound, slack: cost * FINE - tools.bound.fine },
    mostArcs: MOST_ARCS,
  });
  if (flow === null) return { plan, isEnded: false };
  const { status, values } = tools.solver(flow.model, {
    gap: problem.step * 0.999,
    steps: tools.steps,
    isStopped: tools.isStopped,
  });
  const found = values === null ? null : flow.planOf(values, plan);
  if (found === null) return { plan, isEnded: false };
  return {
    plan: costOf(problem, found).total < cost ? found : plan,
    isEnded: status === "optimal" && flow.isComplete,
  };
}
