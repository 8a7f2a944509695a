// One search from start to end: the bound, better plans, the solver's search, the proof. What `optimiseSet` does once or more.

import type { Solver } from "../../solver/linear.ts";
import type { PanelSet } from "../result.ts";
import type { DayPrices } from "./bound.ts";
import { generate, type PricedBound } from "./columns.ts";
import { costOf } from "./countPlan.ts";
import { isLeast } from "./exhaust.ts";
import { improve } from "./improve.ts";
import { prove } from "./prove.ts";
import type { Plan, SetProblem } from "./setProblem.ts";

export interface Progress {
  readonly stage: "bound" | "plan" | "proof";
  /** Of the best plan so far, units. */
  readonly best: number;
  /** No plan costs less, units. */
  readonly bound: number;
  readonly plan: Plan;
}

export interface SetAnswer {
  /**
   * "optimal": no plan is cheaper, proven in whole numbers. "gap": the work allowed for that ran out. "stopped": it was
   * stopped. "infeasible": no plan does with the pieces there are, and the plan is short of some; or, where it `lacks`
   * widths, none with so few of them, and the plan is the one to start from.
   */
  readonly status: "optimal" | "gap" | "stopped" | "infeasible";
  readonly lacks?: "widths";
  readonly plan: Plan;
  /** Units. */
  readonly cost: number;
  /** No plan costs less, proven in whole numbers, units. */
  readonly bound: number;
  /** The bound that `prices` prove, which anyone can check: see bound.ts; with a limit of widths the least of many such. */
  readonly certified: number;
  readonly prices: DayPrices;
  /** See `PanelSet` in result.ts. */
  readonly proof: PanelSet["proof"];
}

export interface OptimiseTools {
  readonly solver: Solver;
  /** Asked often; true ends the work with the best so far. */
  readonly isStopped?: () => boolean;
  /** Simplex steps the solver's search may take. */
  readonly proofSteps?: number;
}

export const PROOF_STEPS = 60_000;

export type SearchTools = OptimiseTools & { readonly isStopped: () => boolean };

/**
 * The best plan with any of the widths on offer.
 *
 * @param goal - "shortage": the problem prices nothing but shortages, and whether there is any is all that is asked
 */
export function* search(
  problem: SetProblem,
  start: Plan,
  tools: SearchTools,
  goal: "cost" | "shortage" = "cost",
): Generator<Progress, SetAnswer> {
  const { solver, isStopped } = tools;
  let plan = start;
  let cost = costOf(problem, plan).total;
  const known = start.map((laid) => laid.map(({ layout }) => layout));
  const rounds = generate(problem, known, solver);
  let round = rounds.next();
  let held: PricedBound = round.value;
  const progress = (stage: Progress["stage"]): Progress => ({
    stage,
    best: cost,
    bound: held.bound.value,
    plan,
  });
  const answer = (status: SetAnswer["status"], proof: SetAnswer["proof"]): SetAnswer => ({
    status,
    plan,
    cost,
    bound: status === "optimal" ? cost : held.bound.value,
    certified: held.bound.value,
    prices: held.prices,
    proof,
  });
  const isKnown = () => goal === "shortage" && (cost === 0 || held.bound.value > 0);
  const isMet = () => cost - held.bound.value < problem.step;

  for (; round.done !== true; round = rounds.next()) {
    held = round.value;
    if (goal === "cost") yield progress("bound");
    if (isStopped()) return answer("stopped", null);
  }
  const generated = round.value;
  held = generated;
  if (isKnown()) return answer("gap", null);

  const better = improve(problem, start, { solver, isStopped, bound: held.bound, bought: generated.bought });
  for (let next = better.next(); next.done !== true; next = better.next()) {
    plan = next.value;
    cost = costOf(problem, plan).total;
    if (goal === "cost") yield progress("plan");
    if (isKnown()) return answer("gap", null);
  }
  if (isMet()) return answer("optimal", "certificate");
  if (isStopped()) return answer("stopped", null);

  if (goal === "cost") yield progress("proof");
  const proven = prove(problem, plan, {
    solver,
    isStopped,
    bound: held.bound,
    steps: tools.proofSteps ?? PROOF_STEPS,
  });
  plan = proven.plan;
  cost = costOf(problem, plan).total;
  if (isMet()) return answer("optimal", "certificate");
  if (!isStopped() && isLeast(problem, held, goal === "cost" ? cost : problem.step))
    return answer("optimal", "enumeration");
  if (proven.isEnded) return answer("gap", "search");
  return answer(isStopped() ? "stopped" : "gap", null);
}
