// A good plan, soon: offer by offer, each time the best choice for its runs while all others stay as they are.
//
//   pieces the linear program would hold, rounded down ──▶ the longest offer first, what lacks is bought ──▶ again, each
//   against the others, until none gets cheaper ──▶ two offers at a time
//
// Every step is a small mixed-integer program with a limit of its own, so there is a plan at any moment and it only gets
// better.

import type { Solver } from "../../solver/linear.ts";
import type { Bound } from "./bound.ts";
import { costOf, usageOf } from "./countPlan.ts";
import { flowModel } from "./flowModel.ts";
import { FINE, type Plan, placeIn, type SetProblem } from "./setProblem.ts";

export interface ImproveTools {
  readonly solver: Solver;
  readonly isStopped: () => boolean;
  readonly bound: Bound;
  /** By kind: how many the linear program would buy. */
  readonly bought: Float64Array;
}

/** Simplex steps of one small program, and of one over two offers. */
const STEPS_ONE = 4000;
const STEPS_TWO = 8000;
const MOST_ARCS = 15_000;
/** Of the widest column given up for others, where no bound says more: three are as good as any number in usual kits. */
const DEPTHS = [3, 12, 60];
const MOST_CYCLES = 4;
/** In large schemes two at a time brings next to nothing and takes long. */
const MOST_PAIRS = 24;

/** Better plans as they are found; ends when the bound is met, nothing helps or it is stopped. */
export function* improve(problem: SetProblem, start: Plan, tools: ImproveTools): Generator<Plan, void> {
  const state = { problem, tools, best: start, cost: costOf(problem, start).total };
  const order = offersByLength(problem);
  const built = construct(state, order);
  if (take(state, built)) yield state.best;
  yield* cycle(
    state,
    order.map((offer) => [offer]),
    STEPS_ONE,
  );
  yield* cycle(state, pairsOf(order), STEPS_TWO);
}

interface State {
  readonly problem: SetProblem;
  readonly tools: ImproveTools;
  best: Plan;
  cost: number;
}

function take(state: State, plan: Plan | null): boolean {
  if (plan === null) return false;
  const { total } = costOf(state.problem, plan);
  if (total >= state.cost) return false;
  state.best = plan;
  state.cost = total;
  return true;
}

function isDone({ problem, tools, cost }: State): boolean {
  return tools.isStopped() || cost - tools.bound.value < problem.step;
}

function offersByLength(problem: SetProblem): readonly number[] {
  const lengths = problem.offers.map(() => 0);
  for (const { offer, length, count } of problem.runs) lengths[offer]! += length * count;
  return problem.offers
    .map((_, offer) => offer)
    .filter((offer) => lengths[offer]! > 0)
    .sort((a, b) => lengths[b]! - lengths[a]! || a - b);
}

// The longest offer beside each other one first: it is where the set is decided.
function pairsOf(order: readonly number[]): readonly (readonly number[])[] {
  const pairs: number[][] = [];
  for (let apart = 1; apart < Math.min(order.length, 5); apart++) {
    for (let k = 0; k + apart < order.length; k++) pairs.push([order[k]!, order[k + apart]!]);
  }
  return pairs.slice(0, MOST_PAIRS);
}

/** From nothing: what the linear program would hold is there already, what is lacking costs its price. */
function construct(state: State, order: readonly number[]): Plan | null {
  const { problem, tools, best } = state;
  const allowance = problem.kinds.map(({ owned, most }, kind) =>
    Math.min(Math.max(owned, most), owned + Math.floor(tools.bought[kind]! + 1e-6)),
  );
  let plan = best;
  const placed = new Set<number>();
  for (const offer of order) {
    if (tools.isStopped()) return null;
    const usage = usageOf(problem, plan, (each) => placed.has(each));
    const next = solveFor(state, [offer], {
      usage,
      allowance,
      steps: STEPS_ONE,
      others: plan,
      isPruned: false,
    });
    if (next === null) return null;
    plan = next;
    placed.add(offer);
    const now = usageOf(problem, plan, (each) => placed.has(each));
    problem.kinds.forEach((_, kind) => {
      for (let day = 0; day < problem.days; day++) {
        allowance[kind] = Math.max(allowance[kind]!, now[placeIn(problem, day, kind)]!);
      }
    });
  }
  return plan;
}

/** Each group of offers in turn against all others, until a whole round brought nothing. */
function* cycle(state: State, groups: readonly (readonly number[])[], steps: number): Generator<Plan, void> {
  const { problem } = state;
  const allowance = problem.kinds.map(({ owned }) => owned);
  let sinceBetter = 0;
  for (let k = 0; k < groups.length * MOST_CYCLES && sinceBetter < groups.length; k++) {
    if (isDone(state)) return;
    const group = groups[k % groups.length]!;
    const usage = usageOf(problem, state.best, (offer) => !group.includes(offer));
    const plan = solveFor(state, group, { usage, allowance, steps, others: state.best, isPruned: true });
    if (take(state, plan)) {
      sinceBetter = 0;
      yield state.best;
    } else sinceBetter += 1;
  }
}

interface Ask {
  readonly usage: Float64Array;
  readonly allowance: readonly number[];
  readonly steps: number;
  readonly others: Plan;
  readonly isPruned: boolean;
}

function solveFor(state: State, free: readonly number[], ask: Ask): Plan | null {
  const { problem, tools } = state;
  const pruning = ask.isPruned ? { bound: tools.bound, slack: state.cost * FINE - tools.bound.fine } : null;
  for (const depth of DEPTHS) {
    const flow = flowModel(problem, {
      free,
      usage: ask.usage,
      allowance: ask.allowance,
      depthOf: () => depth,
      pruning,
      mostArcs: MOST_ARCS,
    });
    if (flow === null) return null;
    const { status, values } = tools.solver(flow.model, {
      gap: problem.step * 0.999,
      steps: ask.steps,
      isStopped: tools.isStopped,
    });
    if (values !== null) return flow.planOf(values, ask.others);
    if (status !== "infeasible" || flow.isComplete) return null;
  }
  return null;
}
