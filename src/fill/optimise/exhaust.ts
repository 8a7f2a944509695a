// Is there a cheaper plan at all? Gone through in whole numbers, run by run: a proof that asks no solver to be believed.
//
// At the prices of a bound every plan costs the bound and what it wastes: each layout what it is dearer than the cheapest of
// its run, each kind what the set then costs more than it is worth at best. Layouts are laid in turn, and left as soon as they
// waste more than a cheaper plan can. For a few pours of a few runs this ends; for a whole scheme it does not.

import { type Bound, leastWorth } from "./bound.ts";
import type { PricedBound } from "./columns.ts";
import { FINE, placeIn, type SetProblem } from "./setProblem.ts";

/** Counted one by one. With more there is no end to it. */
const MOST_RUNS = 60;
/** Of listing layouts, and of laying them in turn. */
const MOST_STEPS = 300_000;

/** A layout that a cheaper plan may have. */
interface Candidate {
  /** What it is dearer than the cheapest of its run, thousandths. */
  readonly waste: number;
  /** Handling and closure, units. */
  readonly work: number;
  /** What it takes, by place of day and kind. */
  readonly takes: readonly (readonly [place: number, count: number])[];
}

/** Whether it is proven that no plan with the pieces there are costs less than `cost`; false where that takes too long. */
export function isLeast(problem: SetProblem, { bound, prices }: PricedBound, cost: number): boolean {
  const runs = problem.runs.flatMap(({ count }, run) => new Array<number>(count).fill(run));
  if (runs.length > MOST_RUNS) return false;
  const mostWaste = (cost - problem.step) * FINE - bound.fine;
  const budget = { steps: MOST_STEPS };
  const candidates = problem.runs.map((_, run) => candidatesOf(problem, bound, run, mostWaste, budget));
  const wasteOf = createSetWaste(problem, prices);
  const usage = Float64Array.from(problem.standing);

  /** Whether nothing that goes on from here is cheaper; equal runs take their layouts in one order only. */
  const isBarren = (at: number, from: number, waste: number, work: number): boolean => {
    if (budget.steps-- <= 0) return false;
    const needs = needsOf(usage, problem.kinds.length);
    if (waste + needs.reduce((sum, need, kind) => sum + wasteOf(kind, need), 0) > mostWaste) return true;
    const run = runs[at];
    if (run === undefined) return work + setCost(problem, needs) >= cost;
    const own = candidates[run]!;
    for (let k = from; k < own.length && waste + own[k]!.waste <= mostWaste; k++) {
      const { takes, waste: more, work: moreWork } = own[k]!;
      for (const [place, count] of takes) usage[place]! += count;
      const isOut = isBarren(at + 1, runs[at + 1] === run ? k : 0, waste + more, work + moreWork);
      for (const [place, count] of takes) usage[place]! -= count;
      if (!isOut) return false;
    }
    return true;
  };
  return budget.steps > 0 && isBarren(0, 0, 0, problem.constant);
}

function needsOf(usage: Float64Array, kinds: number): readonly number[] {
  const needs = new Array<number>(kinds).fill(0);
  usage.forEach((count, place) => {
    needs[place % kinds] = Math.max(needs[place % kinds]!, count);
  });
  return needs;
}

function setCost({ kinds, kindCharge }: SetProblem, needs: readonly number[]): number {
  return kinds.reduce((sum, { price, owned }, kind) => {
    const need = needs[kind]!;
    return sum + price * Math.max(0, need - owned) + (need > 0 ? kindCharge : 0);
  }, 0);
}

/** What a kind wastes at least where a day takes so many, thousandths; Infinity where there are not so many. */
function createSetWaste(problem: SetProblem, prices: PricedBound["prices"]) {
  const known = problem.kinds.map((): number[] => []);
  return (kind: number, need: number): number => {
    const { owned, most } = problem.kinds[kind]!;
    if (need > Math.max(owned, most)) return Number.POSITIVE_INFINITY;
    const own = known[kind]!;
    own[need] ??= leastWorth(problem, prices, kind, need) - leastWorth(problem, prices, kind);
    return own[need];
  };
}

/** The layouts of a run that waste no more than `mostWaste`, the least first; not all of them once the steps ran out. */
function candidatesOf(
  problem: SetProblem,
  { columnCosts, tables, leastOf }: Bound,
  run: number,
  mostWaste: number,
  budget: { steps: number },
): readonly Candidate[] {
  const { offer, length } = problem.runs[run]!;
  const { columns, closures } = problem.offers[offer]!;
  const costs = columnCosts[offer]!;
  const { step, least } = tables[offer]!;
  const found: Candidate[] = [];
  const counts = columns.map(() => 0);
  const extend = (column: number, left: number, waste: number, work: number): void => {
    const onward = least[left / step] ?? Number.POSITIVE_INFINITY;
    if (budget.steps-- <= 0 || waste + onward > mostWaste) return;
    if (left === 0) found.push({ waste, work, takes: takesOf(problem, offer, counts) });
    const own = columns[column];
    if (left === 0 || own === undefined) return;
    for (let count = 0; count * own.width <= left; count++) {
      counts[column] = count;
      extend(column + 1, left - count * own.width, waste + count * costs[column]!, work + count * own.cost);
    }
    counts[column] = 0;
  };
  extend(0, length, -leastOf[run]!, 0);
  for (const { width, cost } of closures) {
    if (width <= length) extend(0, length - width, cost * FINE - leastOf[run]!, cost);
  }
  return found.sort((a, b) => a.waste - b.waste);
}

function takesOf(problem: SetProblem, offer: number, counts: readonly number[]): Candidate["takes"] {
  const takes = new Map<number, number>();
  problem.offers[offer]!.columns.forEach(({ uses }, column) => {
    if (counts[column] === 0) return;
    for (const { day, kind, count } of uses) {
      const place = placeIn(problem, day, kind);
      takes.set(place, (takes.get(place) ?? 0) + count * counts[column]!);
    }
  });
  return [...takes];
}
