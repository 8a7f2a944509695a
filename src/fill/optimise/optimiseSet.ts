// The cheapest set for all pours together: always a plan, always a bound, the proof if the work allowed for it is enough.
//
//   wall by wall ──▶ bound, proven in whole numbers ──▶ better plans ──▶ the solver's search ──▶ proof in whole numbers
//
// A generator: whoever drives it may show what it yields, stop it and keep the best so far, or let it go. The same problem
// gives the same answer whatever the machine's speed, unless it was stopped.

import type { Solver } from "../../solver/linear.ts";
import type { PanelSet } from "../result.ts";
import type { DayPrices } from "./bound.ts";
import { generate, type PricedBound } from "./columns.ts";
import { costOf } from "./countPlan.ts";
import { isLeast } from "./exhaust.ts";
import { improve } from "./improve.ts";
import { prove } from "./prove.ts";
import type { Plan, SetProblem } from "./setProblem.ts";
import { tidy } from "./tidy.ts";

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
   * stopped. "infeasible": no plan does with the pieces there are; the plan then is short of some.
   */
  readonly status: "optimal" | "gap" | "stopped" | "infeasible";
  readonly plan: Plan;
  /** Units. */
  readonly cost: number;
  /** No plan costs less, proven in whole numbers, units. */
  readonly bound: number;
  /** The bound that `prices` prove, which anyone can check: see bound.ts. */
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

const PROOF_STEPS = 60_000;

/** @param start - a plan that covers every run, such as wall by wall: the answer is never dearer */
export function* optimiseSet(
  problem: SetProblem,
  start: Plan,
  tools: OptimiseTools,
): Generator<Progress, SetAnswer> {
  const isStopped = tools.isStopped ?? (() => false);
  const found = yield* searchTwice(problem, start, { ...tools, isStopped });
  const plan = found.status === "stopped" ? found.plan : tidy(problem, found.plan, { ...tools, isStopped });
  return { ...found, plan };
}

function* searchTwice(problem: SetProblem, start: Plan, tools: SearchTools): Generator<Progress, SetAnswer> {
  const { isStopped } = tools;
  const found = yield* search(problem, start, tools);
  if (!costOf(problem, found.plan).isShort || found.status === "stopped") return found;
  // Short of something: either no plan does without, or one is to be found that does.
  const bare = yield* search(shortageOnly(problem), found.plan, tools, "shortage");
  if (bare.certified > 0) return { ...found, status: "infeasible", proof: "certificate" };
  if (bare.cost > 0 && bare.proof !== null) return { ...found, status: "infeasible", proof: bare.proof };
  const again = bare.cost === 0 ? yield* search(problem, bare.plan, tools) : found;
  if (!costOf(problem, again.plan).isShort) return again;
  return { ...again, status: isStopped() ? "stopped" : "gap", proof: null };
}

type SearchTools = OptimiseTools & { readonly isStopped: () => boolean };

// `goal` "shortage": the problem prices nothing but shortages, and whether there is any is all that is asked.
function* search(
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

/** The same runs with nothing to pay but for what is lacking. */
function shortageOnly(problem: SetProblem): SetProblem {
  return {
    ...problem,
    kinds: problem.kinds.map(({ owned, most }) => {
      const isLimited = Number.isFinite(most);
      return {
        price: isLimited ? 1 : 0,
        owned: isLimited ? Math.max(owned, most) : owned,
        most: Number.POSITIVE_INFINITY,
      };
    }),
    offers: problem.offers.map(({ columns, closures }) => ({
      columns: columns.map((column) => ({ ...column, cost: 0 })),
      closures: closures.map((closure) => ({ ...closure, cost: 0 })),
    })),
    kindCharge: 0,
    shortage: 0,
    constant: 0,
    step: 1,
  };
}
