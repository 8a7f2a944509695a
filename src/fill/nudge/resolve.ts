// The set of a project after a move, solved again from the plan before it: equal runs keep their layouts, others begin as
// they are best by themselves.

import { optimiseSet } from "../optimise/optimiseSet.ts";
import type { StatedProblem } from "../optimise/problemOf.ts";
import type { OptimiseTools, SetAnswer } from "../optimise/search.ts";
import type { LaidOut, Layout, Plan } from "../optimise/setProblem.ts";

/** Solves the set anew from a plan; the answer is never dearer than that. */
export function resolveFrom({ problem }: StatedProblem, start: Plan, tools: OptimiseTools): SetAnswer {
  const steps = optimiseSet(problem, start, tools);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

/** Programs the solver may be asked, the bound's among them, before a quick answer is as good as it gets. */
const QUICK_CALLS = 14;

/** The same within a few programs of the solver, without the search over all layouts: what a move is worth at least. */
export function resolveQuickly(stated: StatedProblem, start: Plan, tools: OptimiseTools): SetAnswer {
  let calls = 0;
  const solver: OptimiseTools["solver"] = (model, options) => {
    calls += 1;
    return tools.solver(model, options);
  };
  const isStopped = () => calls >= QUICK_CALLS || tools.isStopped?.() === true;
  return resolveFrom(stated, start, { solver, isStopped, proofSteps: 1 });
}

/** The layouts of the plan before where a run of the same length and offer stands, else wall by wall. */
export function startFrom(before: StatedProblem, plan: Plan, after: StatedProblem): Plan {
  const known = new Map<string, Layout[]>();
  before.runs.forEach((_, run) => {
    const layouts = plan[run]!.flatMap(({ layout, times }) => new Array<Layout>(times).fill(layout));
    known.set(runKey(before, run), layouts);
  });
  return after.runs.map((_, run): readonly LaidOut[] => {
    const { count } = after.problem.runs[run]!;
    const kept = (known.get(runKey(after, run)) ?? [])
      .slice(0, count)
      .map((layout) => ({ layout, times: 1 }));
    const rest = count - kept.length;
    if (rest === 0) return kept;
    const own = kept.at(-1)?.layout ?? after.wallByWall[run]![0]!.layout;
    return [...kept, { layout: own, times: rest }];
  });
}

// A casting, the widths on offer with what they are made of, and a length.
function runKey({ problem, runs }: StatedProblem, run: number): string {
  const { casting, group } = runs[run]!;
  const widths = group.widths.map(({ width, codes }) => `${width}:${[...codes.keys()].join("+")}`);
  return `${casting} ${problem.runs[run]!.length} ${widths.join(" ")}`;
}
