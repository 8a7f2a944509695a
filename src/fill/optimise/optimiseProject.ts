// The fill of a project chosen as a whole: one panel set for every pour, and the fill that takes it.
//
//   fill wall by wall ──▶ what the intervals ask ──▶ the choice ──▶ fill again, each interval as chosen ──▶ document with `set`

import type { Solver } from "../../solver/linear.ts";
import type { Mm } from "../../units.ts";
import { castingsOf, pourDays } from "../castings.ts";
import { type FillTogether, fillCasting, fillDocument } from "../fillProject.ts";
import type { FilledUnit } from "../fillWalls.ts";
import type { FillDocument, Problem } from "../result.ts";
import { withoutSetPins } from "../setPins.ts";
import type { ChooseCover, FreeInterval } from "../solve.ts";
import type { Stretch } from "../stretches.ts";
import { costOf } from "./countPlan.ts";
import { type Demand, demandOf } from "./demand.ts";
import { allowedIn, limitProblems } from "./limits.ts";
import { optimiseSet } from "./optimiseSet.ts";
import { type GivenSet, problemOf, type StatedProblem } from "./problemOf.ts";
import type { OptimiseTools, Progress, SetAnswer } from "./search.ts";
import { describeSet } from "./setDocument.ts";
import type { LaidOut, Layout, Plan } from "./setProblem.ts";

export interface OptimiseInput extends FillTogether {
  readonly solver: Solver;
  readonly isStopped?: () => boolean;
  /** Simplex steps the solver's search may take. */
  readonly proofSteps?: number;
  /** Goes on from what another search of the same project has come to. */
  readonly soFar?: SoFar;
}

/** What a search has come to, as plain data: kept outside of it, it outlives whoever searched. */
export interface SoFar {
  readonly plan: Plan;
  /** Proven, in units of the problem. */
  readonly bound: number;
}

/** How far the work is, in what the set is counted by. */
export interface SetProgress {
  readonly stage: "bound" | "plan" | "proof";
  readonly best: number;
  readonly bound: number;
  readonly soFar: SoFar;
}

/**
 * Fills a project with one set. Yields its progress; whoever drives it may stop between any two steps. A unit has one fill
 * in all its pours and mirror images. Intervals with pins stay as pinned, zones and bands as they are best by themselves.
 */
export function* optimiseProject(input: OptimiseInput): Generator<SetProgress, FillDocument> {
  const free = { ...input, project: withoutSetPins(input.project) };
  return yield* optimiseFree(free);
}

function* optimiseFree(input: OptimiseInput): Generator<SetProgress, FillDocument> {
  const { project, kit } = input;
  const castings = castingsOf(project);
  const days = pourDays(project, castings);
  const demands: Demand[] = [];
  for (const [k, casting] of castings.entries()) {
    const free: FreeInterval[] = [];
    const listed: ChooseCover = (interval) => {
      free.push(interval);
      return interval.cover;
    };
    const isAllowed = allowedIn({ project, kit, days }, k);
    demands.push(demandOf(fillCasting(casting, input, listed), free, kit, isAllowed));
  }
  const { used, answer } = yield* chosenSet(
    { project, kit, demands, days, buy: project.buy, mostWidths: project.limits?.mostWidths ?? null },
    input,
  );
  const covers = chosenCovers(used, answer.plan);
  const chosen = castings.map((casting, k) => {
    const own = covers[k];
    if (own === undefined) return fillCasting(casting, input);
    return fillCasting(casting, input, ({ stretch, cover }) => own.get(placeKey(stretch)) ?? cover);
  });
  const problems = limitProblems({ project, kit, filled: chosen, demands });
  const filled = chosen.map((unit, k) => withProblems(unit, problems[k]!));
  const fill = fillDocument(project, castings, filled);
  const set = describeSet({
    project,
    kit,
    days,
    stated: used,
    bills: fill.units.map(({ bill }) => bill),
    answer,
    wallByWall: costOf(used.problem, used.wallByWall),
  });
  return { ...fill, set };
}

interface Choice {
  /** What was solved in the end. */
  readonly used: StatedProblem;
  /** Its plan, with the status and proof of what was asked. */
  readonly answer: SetAnswer;
}

// What no plan keeps is left out of what is asked, and said: first the number of widths, then the pieces there are, as the plan
// that would buy the least of them.
function* chosenSet(given: GivenSet, input: OptimiseInput): Generator<SetProgress, Choice> {
  const used = problemOf(given);
  const answer = yield* driven(used, input);
  const { status, proof, lacks } = answer;
  if (lacks === "widths") {
    const any = yield* chosenSet({ ...given, mostWidths: null }, input);
    return { used: any.used, answer: { ...any.answer, status, proof, lacks } };
  }
  if (status !== "infeasible") return { used, answer };
  const bought = yield* chosenSet({ ...given, buy: true }, input);
  return { used: bought.used, answer: { ...bought.answer, status, proof } };
}

function withProblems(unit: FilledUnit, problems: readonly Problem[]): FilledUnit {
  if (problems.length === 0) return unit;
  return { ...unit, fill: { ...unit.fill, problems: [...unit.fill.problems, ...problems] } };
}

function* driven(
  { problem, wallByWall, amounts }: StatedProblem,
  input: OptimiseInput,
): Generator<SetProgress, SetAnswer> {
  const { solver, isStopped, proofSteps, soFar } = input;
  // Whatever a relaxation of a problem proves holds for the problem as well, so an earlier bound holds here.
  const known = (bound: number) => Math.max(bound, soFar?.bound ?? 0);
  const told = ({ stage, best, bound, plan }: Progress): SetProgress => ({
    stage,
    best: best / amounts.scale,
    bound: Math.min(best, known(bound)) / amounts.scale,
    soFar: { plan, bound: known(bound) },
  });
  const tools: OptimiseTools = {
    solver,
    ...(isStopped !== undefined && { isStopped }),
    ...(proofSteps !== undefined && { proofSteps }),
  };
  const steps = optimiseSet(problem, soFar?.plan ?? wallByWall, tools);
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) yield told(step.value);
  return { ...step.value, bound: known(step.value.bound) };
}

interface ChosenCover {
  readonly widths: readonly Mm[];
  readonly closure: Mm | null;
}

/** By casting: the cover of each interval, by its place. */
function chosenCovers(
  { problem, runs }: StatedProblem,
  plan: Plan,
): readonly (ReadonlyMap<string, ChosenCover> | undefined)[] {
  const covers: Map<string, ChosenCover>[] = [];
  runs.forEach(({ casting, intervals }, run) => {
    const own = covers[casting] ?? new Map<string, ChosenCover>();
    covers[casting] = own;
    const { columns, closures } = problem.offers[problem.runs[run]!.offer]!;
    // Equal intervals in the order of their faces, the layouts in an order of their own: neither depends on names.
    const layouts = [...plan[run]!]
      .sort(compareLaidOut)
      .flatMap(({ layout, times }) => Array.from({ length: times }, () => layout));
    intervals.forEach(({ stretch }, k) => {
      const { counts, closure } = layouts[k]!;
      const widths = counts.flatMap((count, column) =>
        Array.from({ length: count }, () => columns[column]!.width),
      );
      own.set(placeKey(stretch), { widths, closure: closure < 0 ? null : closures[closure]!.width });
    });
  });
  return covers;
}

function placeKey({ face, low }: Stretch): string {
  return `${face} ${low}`;
}

function compareLaidOut({ layout: a }: LaidOut, { layout: b }: LaidOut): number {
  return a.closure - b.closure || countOf(a) - countOf(b) || compareCounts(a, b);
}

const countOf = ({ counts }: Layout) => counts.reduce((sum, count) => sum + count, 0);

function compareCounts({ counts: a }: Layout, { counts: b }: Layout): number {
  for (const [column, count] of a.entries()) {
    if (count !== b[column]) return b[column]! - count;
  }
  return 0;
}
