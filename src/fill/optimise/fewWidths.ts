// The cheapest set of few sizes: which widths to do without, so that no more than so many are left.
//
//   all widths ─┬─ without 450 ─┬─ without 200 ─▶ few enough: a subset, with its bound
//               │               └─ 200 stays   ─▶ …
//               └─ 450 stays    ─▶ …
//
// A set of fewer widths is never cheaper, so the bound of what is left holds for every subset of it (column generation, proven
// in whole numbers); what cannot be cheaper than the best plan is left aside. Only of the subsets that could be is the best
// plan searched for. A limit in the mixed-integer program itself would be far weaker: its bound is percents too low.

import type { Mm } from "../../units.ts";
import { boundIfAny, type DayPrices } from "./bound.ts";
import { generate, type PricedBound } from "./columns.ts";
import { costOf } from "./countPlan.ts";
import { isLeast } from "./exhaust.ts";
import { anyFew, goodFew, planAt } from "./firstFew.ts";
import { prove } from "./prove.ts";
import { PROOF_STEPS, type Progress, type SearchTools, type SetAnswer, search } from "./search.ts";
import type { Plan, SetProblem } from "./setProblem.ts";
import { narrowed, widthsIn, widthsOf } from "./widths.ts";

/** Bounds by column generation. */
const MOST_PRICED = 600;
/** Subsets of which the best plan is searched for. */
const MOST_SEARCHED = 12;
/** Which of the solver's steps each of them gets. */
const SHARE = 3;

/** What is left of the widths, some of which are to stay, and its bound. */
interface Branch {
  readonly on: ReadonlySet<Mm>;
  readonly staying: ReadonlySet<Mm>;
  readonly held: PricedBound;
}

/** What is known of a subset: nothing cheaper in it, in whole numbers or by the solver's word; or it may hold a cheaper plan. */
type Closed = "whole" | "search" | "open";

interface Search {
  readonly problem: SetProblem;
  readonly most: number;
  readonly tools: SearchTools;
  readonly goal: "cost" | "shortage";
  plan: Plan;
  cost: number;
  /** Bounds that may yet be made. */
  left: number;
  readonly open: Branch[];
  /** Subsets of few enough widths. */
  readonly few: Branch[];
}

/** The best plan of at most `mostWidths` widths. Where none is found, the answer `lacks` widths and has the plan given. */
export function* searchFew(
  problem: SetProblem,
  start: Plan,
  tools: SearchTools,
  goal: "cost" | "shortage",
): Generator<Progress, SetAnswer> {
  const most = problem.mostWidths ?? Number.POSITIVE_INFINITY;
  const all = new Set(widthsOf(problem));
  const held = priced(problem, all, { tools, prices: null, isOver: () => false });
  if (held === null) throw new RangeError("nothing covers a run");
  const some = anyFew(problem, most, held);
  if (typeof some === "string") return withoutPlan(problem, start, held, some, tools);
  const state: Search = {
    problem,
    most,
    tools,
    goal,
    plan: start,
    cost: widthsIn(problem, start).length <= most ? costOf(problem, start).total : Number.POSITIVE_INFINITY,
    left: MOST_PRICED,
    open: [{ on: all, staying: new Set(), held }],
    few: [],
  };
  takeCheapest(state, some);
  const good = goodFew(problem, most, held, (on, { prices }, isOver) =>
    tools.isStopped() ? null : priced(problem, on, { tools, prices, isOver }),
  );
  let step = good.next();
  for (; step.done !== true; step = good.next()) if (goal === "cost") yield progress(state, "bound");
  const first = step.value ?? some;
  const firstClosed = yield* searchIn(state, first);
  while (state.open.length > 0 && state.left > 0 && !isKnown(state) && !tools.isStopped()) {
    branch(state);
    if (goal === "cost") yield progress(state, "bound");
  }
  return yield* searchSubsets(state, { on: first, closed: firstClosed }, held.prices);
}

function withoutPlan(
  problem: SetProblem,
  plan: Plan,
  { bound, prices }: PricedBound,
  found: "none" | "unknown",
  { isStopped }: SearchTools,
): SetAnswer {
  const { total } = costOf(problem, plan);
  const own = {
    plan,
    cost: total,
    bound: bound.value,
    certified: bound.value,
    prices,
    lacks: "widths",
  } as const;
  if (isStopped()) return { ...own, status: "stopped", proof: null };
  if (found === "unknown") return { ...own, status: "gap", proof: null };
  return { ...own, status: "infeasible", proof: "enumeration" };
}

interface PriceOptions {
  readonly tools: SearchTools;
  /** Good for a problem with more widths. */
  readonly prices: DayPrices | null;
  /** Whether a bound is so high that no better one is wanted. */
  readonly isOver: (held: PricedBound) => boolean;
}

/** The bound with some widths alone; null where nothing covers a run. */
function priced(
  whole: SetProblem,
  on: ReadonlySet<Mm>,
  { tools, prices, isOver }: PriceOptions,
): PricedBound | null {
  const { problem } = narrowed(whole, (width) => on.has(width));
  const unpriced = boundIfAny(problem, new Float64Array(problem.standing.length));
  if (unpriced === null) return null;
  const known = [planAt(problem, unpriced)];
  const before = prices === null ? null : boundIfAny(problem, prices);
  if (before !== null) known.push(planAt(problem, before));
  let best: PricedBound | null = before === null || prices === null ? null : { bound: before, prices };
  if (best !== null && isOver(best)) return best;
  const layouts = problem.runs.map((_, run) =>
    known.flatMap((plan) => plan[run]!.map(({ layout }) => layout)),
  );
  const rounds = generate(problem, layouts, tools.solver);
  for (let round = rounds.next(); ; round = rounds.next()) {
    const { bound, prices: own } = round.value;
    if (best === null || bound.fine > best.bound.fine) best = { bound, prices: own };
    if (round.done === true || isOver(best) || tools.isStopped()) return best;
  }
}

const isOver = ({ problem, cost }: Search, { bound }: PricedBound) => cost - bound.value < problem.step;

/** Takes the branch with the lowest bound and parts it by the width that is missed most. */
function branch(state: Search): void {
  const { problem, most, open, few, tools } = state;
  const taken = takeLowest(open);
  if (taken === undefined || isOver(state, taken.held)) return;
  const staying = new Set(taken.staying);
  let missed: { readonly width: Mm; readonly fine: number } | null = null;
  for (const width of taken.on) {
    if (staying.has(width)) continue;
    const rest = narrowed(problem, (each) => each !== width && taken.on.has(each)).problem;
    const bound = boundIfAny(rest, taken.held.prices);
    if (bound === null || state.cost - bound.value < problem.step) staying.add(width);
    else if (missed === null || bound.fine > missed.fine) missed = { width, fine: bound.fine };
  }
  const enter = (on: ReadonlySet<Mm>) => {
    state.left -= 1;
    const options = { tools, prices: taken.held.prices, isOver: (held: PricedBound) => isOver(state, held) };
    const held = priced(problem, on, options);
    if (held === null || isOver(state, held)) return;
    (on.size <= most ? few : open).push({ on, staying, held });
  };
  if (staying.size > most) return;
  if (staying.size === most) enter(staying);
  else if (missed !== null) {
    const { width } = missed;
    enter(new Set([...taken.on].filter((each) => each !== width)));
    open.push({ ...taken, staying: new Set([...staying, width]) });
  }
}

function takeLowest(open: Branch[]): Branch | undefined {
  let lowest = 0;
  open.forEach(({ held }, k) => {
    if (held.bound.fine < open[lowest]!.held.bound.fine) lowest = k;
  });
  return open.splice(lowest, 1)[0];
}

/** No plan of few enough widths costs less, as far as whole numbers say. */
function boundOfAll({ open, few, cost }: Search): number {
  return [...open, ...few].reduce((least, { held }) => Math.min(least, held.bound.value), cost);
}

const isKnown = (state: Search) => state.goal === "shortage" && (state.cost === 0 || boundOfAll(state) > 0);

function progress(state: Search, stage: Progress["stage"]): Progress {
  return { stage, best: state.cost, bound: boundOfAll(state), plan: state.plan };
}

function take(state: Search, plan: Plan): void {
  const { total } = costOf(state.problem, plan);
  if (total >= state.cost) return;
  state.plan = plan;
  state.cost = total;
}

/** The plan of some widths that takes the least work. */
function takeCheapest(state: Search, on: ReadonlySet<Mm>): void {
  const { problem: own, toWhole } = narrowed(state.problem, (width) => on.has(width));
  const unpriced = boundIfAny(own, new Float64Array(own.standing.length));
  if (unpriced !== null) take(state, toWhole(planAt(own, unpriced)));
}

const stepsOf = ({ tools }: Search) => Math.ceil((tools.proofSteps ?? PROOF_STEPS) / SHARE);

/** The best plan of one subset, searched from the start. */
function* searchIn(state: Search, on: ReadonlySet<Mm>): Generator<Progress, Closed> {
  const { problem, tools, goal } = state;
  const { problem: own, toWhole } = narrowed(problem, (width) => on.has(width));
  const unpriced = boundIfAny(own, new Float64Array(own.standing.length));
  if (unpriced === null) return "whole";
  const steps = search(own, planAt(own, unpriced), { ...tools, proofSteps: stepsOf(state) }, goal);
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) {
    take(state, toWhole(step.value.plan));
    if (goal === "cost") yield progress(state, "plan");
  }
  take(state, toWhole(step.value.plan));
  if (step.value.status === "optimal") return "whole";
  return step.value.proof === "search" ? "search" : "open";
}

/** Searches the subsets that could hold a cheaper plan, the lowest bound first, and says what is known in the end. */
function* searchSubsets(
  state: Search,
  first: { readonly on: ReadonlySet<Mm>; readonly closed: Closed },
  prices: DayPrices,
): Generator<Progress, SetAnswer> {
  const { problem, tools, goal } = state;
  state.few.sort((a, b) => a.held.bound.fine - b.held.bound.fine);
  const left: { readonly subset: Branch; readonly closed: Closed }[] = [];
  let isEnumerated = false;
  for (const [k, subset] of state.few.entries()) {
    if (isOver(state, subset.held)) continue;
    if (k >= MOST_SEARCHED || tools.isStopped() || isKnown(state)) {
      left.push({ subset, closed: "open" });
      continue;
    }
    if (goal === "cost") yield progress(state, "proof");
    // What was found of the first holds for it and for any part of it, not for what has a width more.
    const isFirst = [...subset.on].every((width) => first.on.has(width));
    const before = isFirst ? first.closed : k === 0 ? yield* searchIn(state, subset.on) : "open";
    const closed = before === "open" ? closeSubset(state, subset) : before;
    if (closed === "whole") isEnumerated = true;
    else left.push({ subset, closed });
  }
  const open = left.filter(({ subset }) => !isOver(state, subset.held));
  const bound = boundOfAll({ ...state, few: open.map(({ subset }) => subset) });
  const isMet = state.cost - bound < problem.step;
  const own = {
    plan: state.plan,
    cost: state.cost,
    bound: isMet ? state.cost : bound,
    certified: bound,
    prices,
  };
  if (isMet) return { ...own, status: "optimal", proof: isEnumerated ? "enumeration" : "certificate" };
  if (tools.isStopped()) return { ...own, status: "stopped", proof: null };
  const isSearched = state.open.length === 0 && open.every(({ closed }) => closed === "search");
  return { ...own, status: "gap", proof: isSearched ? "search" : null };
}

/** Searches one subset for a plan that costs less than the best. */
function closeSubset(state: Search, { on, held }: Branch): Closed {
  const { problem, tools } = state;
  if (isOver(state, held)) return "whole";
  const { problem: own, toWhole } = narrowed(problem, (width) => on.has(width));
  const proven = prove(own, planAt(own, held.bound), {
    ...tools,
    bound: held.bound,
    steps: stepsOf(state),
    toBeat: state.cost,
  });
  take(state, toWhole(proven.plan));
  if (isOver(state, held) || isLeast(own, held, state.cost)) return "whole";
  return proven.isEnded ? "search" : "open";
}
