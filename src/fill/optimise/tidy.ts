// Of many plans that cost the same, one that a crew would choose: fewer fillers and fewer narrow pieces, offer by offer, and
// no dearer.

import type { Solver } from "../../solver/linear.ts";
import { costOf, usageOf } from "./countPlan.ts";
import { flowModel } from "./flowModel.ts";
import type { Layout, Plan, SetProblem } from "./setProblem.ts";

export interface TidyTools {
  readonly solver: Solver;
  readonly isStopped: () => boolean;
}

const STEPS = 3000;
const MOST_ARCS = 15_000;
const DEPTH = 6;

/** A plan that costs no more and has no more blemishes than this one. */
export function tidy(problem: SetProblem, plan: Plan, { solver, isStopped }: TidyTools): Plan {
  const { total } = costOf(problem, plan);
  const allowance = problem.kinds.map(({ owned }) => owned);
  let best = plan;
  for (const offer of problem.offers.keys()) {
    if (isStopped()) break;
    const blemishes = blemishesOf(problem, best, offer);
    if (blemishes === 0) continue;
    const flow = flowModel(blemished(problem, offer, blemishes + 1), {
      free: [offer],
      usage: usageOf(problem, best, (each) => each !== offer),
      allowance,
      depthOf: () => DEPTH,
      pruning: null,
      mostArcs: MOST_ARCS,
    });
    const values = flow === null ? null : solver(flow.model, { gap: 0.999, steps: STEPS, isStopped }).values;
    const found = values === null ? null : (flow?.planOf(values, best) ?? null);
    if (found === null || costOf(problem, found).total > total) continue;
    if (blemishesOf(problem, found, offer) < blemishes) best = found;
  }
  return best;
}

/** The same problem where a step of cost weighs more than all blemishes there are now, and these count as well. */
function blemished(problem: SetProblem, offer: number, weight: number): SetProblem {
  const weighed = (cost: number) => (cost / problem.step) * weight;
  const { columns, closures } = problem.offers[offer]!;
  const own = {
    columns: columns.map((column) => ({ ...column, cost: weighed(column.cost) + column.blemish })),
    closures: closures.map((closure) => ({ ...closure, cost: weighed(closure.cost) })),
  };
  return {
    ...problem,
    kinds: problem.kinds.map((kind) => ({ ...kind, price: weighed(kind.price) })),
    offers: problem.offers.map((each, k) => (k === offer ? own : each)),
    kindCharge: weighed(problem.kindCharge),
    shortage: weighed(problem.shortage),
    step: 1,
  };
}

function blemishesOf(problem: SetProblem, plan: Plan, offer: number): number {
  const { columns } = problem.offers[offer]!;
  const inOne = ({ counts }: Layout) =>
    counts.reduce((sum, count, column) => sum + count * columns[column]!.blemish, 0);
  let sum = 0;
  problem.runs.forEach((run, index) => {
    if (run.offer !== offer) return;
    for (const { layout, times } of plan[index]!) sum += times * inOne(layout);
  });
  return sum;
}
