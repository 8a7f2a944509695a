// The cheapest set for all pours together: always a plan, always a bound, the proof if the work allowed for it is enough.
//
//   wall by wall ──▶ bound, proven in whole numbers ──▶ better plans ──▶ the solver's search ──▶ proof in whole numbers
//
// A generator: whoever drives it may show what it yields, stop it and keep the best so far, or let it go. The same problem
// gives the same answer whatever the machine's speed, unless it was stopped.

import { costOf } from "./countPlan.ts";
import { searchFew } from "./fewWidths.ts";
import { type OptimiseTools, type Progress, type SearchTools, type SetAnswer, search } from "./search.ts";
import type { Plan, SetProblem } from "./setProblem.ts";
import { tidy } from "./tidy.ts";
import { narrowed, widthsIn, widthsOf } from "./widths.ts";

/** @param start - a plan that covers every run, such as wall by wall: the answer is never dearer, unless this has too many widths */
export function* optimiseSet(
  problem: SetProblem,
  start: Plan,
  tools: OptimiseTools,
): Generator<Progress, SetAnswer> {
  const isStopped = tools.isStopped ?? (() => false);
  const found = yield* searchTwice(problem, start, { ...tools, isStopped });
  if (found.status === "stopped" || found.lacks === "widths") return found;
  if (!isFew(problem)) return { ...found, plan: tidy(problem, found.plan, { ...tools, isStopped }) };
  const inUse = new Set(widthsIn(problem, found.plan));
  const few = narrowed(problem, (width) => inUse.has(width));
  const plan = few.toWhole(tidy(few.problem, few.toNarrow(found.plan), { ...tools, isStopped }));
  return { ...found, plan };
}

/** Whether the number of widths is a limit at all. */
function isFew(problem: SetProblem): boolean {
  return problem.mostWidths !== undefined && problem.mostWidths < widthsOf(problem).length;
}

function searchWithin(
  problem: SetProblem,
  start: Plan,
  tools: SearchTools,
  goal: "cost" | "shortage" = "cost",
): Generator<Progress, SetAnswer> {
  return isFew(problem) ? searchFew(problem, start, tools, goal) : search(problem, start, tools, goal);
}

function* searchTwice(problem: SetProblem, start: Plan, tools: SearchTools): Generator<Progress, SetAnswer> {
  const { isStopped } = tools;
  const found = yield* searchWithin(problem, start, tools);
  const isLeft = found.status === "stopped" || found.lacks === "widths";
  if (isLeft || !costOf(problem, found.plan).isShort) return found;
  // Short of something: either no plan does without, or one is to be found that does.
  const bare = yield* searchWithin(shortageOnly(problem), found.plan, tools, "shortage");
  if (bare.certified > 0)
    return {
      ...found,
      status: "infeasible",
      proof: bare.proof === "enumeration" ? "enumeration" : "certificate",
    };
  if (bare.cost > 0 && bare.proof !== null) return { ...found, status: "infeasible", proof: bare.proof };
  const again = bare.cost === 0 ? yield* searchWithin(problem, bare.plan, tools) : found;
  if (!costOf(problem, again.plan).isShort) return again;
  return { ...again, status: isStopped() ? "stopped" : "gap", proof: null };
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
