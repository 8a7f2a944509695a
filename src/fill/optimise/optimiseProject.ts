// The fill of a project chosen as a whole: one panel set for every pour, and the fill that takes it.
//
//   fill wall by wall ──▶ what the intervals ask ──▶ the choice ──▶ fill again, each interval as chosen ──▶ document with `set`

import type { Solver } from "../../solver/linear.ts";
import type { Mm } from "../../units.ts";
import { type Casting, castingsOf, pourDays } from "../castings.ts";
import { type FillTogether, fillCasting, fillDocument } from "../fillProject.ts";
import type { FillDocument } from "../result.ts";
import type { ChooseCover, FreeInterval } from "../solve.ts";
import type { Stretch } from "../stretches.ts";
import { costOf } from "./countPlan.ts";
import { type Demand, demandOf } from "./demand.ts";
import { type OptimiseTools, optimiseSet, type SetAnswer } from "./optimiseSet.ts";
import { problemOf, type StatedProblem } from "./problemOf.ts";
import { describeSet } from "./setDocument.ts";
import type { LaidOut, Layout, Plan } from "./setProblem.ts";

export interface OptimiseInput extends FillTogether {
  readonly solver: Solver;
  readonly isStopped?: () => boolean;
  /** Simplex steps the solver's search may take. */
  readonly proofSteps?: number;
}

/** How far the work is, in what the set is counted by. */
export interface SetProgress {
  readonly stage: "bound" | "plan" | "proof";
  readonly best: number;
  readonly bound: number;
}

/** The fill of a project with one set, and what it was chosen by. */
export interface ChosenSet {
  readonly fill: FillDocument;
  readonly castings: readonly Casting[];
  /** By casting: what its fill asks of the set. */
  readonly demands: readonly Demand[];
  /** What was solved; with `buy` false and no plan that does with the pieces there are, the problem that buys what lacks. */
  readonly stated: StatedProblem;
  /** The plan that the fill shows, with the status and proof of what was asked. */
  readonly answer: SetAnswer;
}

/**
 * Fills a project with one set. Yields its progress; whoever drives it may stop between any two steps. A unit has one fill
 * in all its pours and mirror images. Intervals with pins stay as pinned, zones and bands as they are best by themselves.
 */
export function* optimiseProject(input: OptimiseInput): Generator<SetProgress, FillDocument> {
  return (yield* chooseSet(input)).fill;
}

/** As {@link optimiseProject}, with the plan and the prices that prove its bound. */
export function* chooseSet(input: OptimiseInput): Generator<SetProgress, ChosenSet> {
  const { project, kit } = input;
  const castings = castingsOf(project);
  const days = pourDays(project, castings);
  const demands: Demand[] = [];
  for (const casting of castings) {
    const free: FreeInterval[] = [];
    const listed: ChooseCover = (interval) => {
      free.push(interval);
      return interval.cover;
    };
    demands.push(demandOf(fillCasting(casting, input, listed), free, kit));
  }
  const given = { project, kit, demands, days };
  const stated = problemOf({ ...given, buy: project.buy });
  const answer = yield* driven(stated, input);
  // What no plan has pieces for is shown as the plan that would buy the least of them.
  const bought = answer.status === "infeasible" ? problemOf({ ...given, buy: true }) : null;
  const found = bought === null ? answer : yield* driven(bought, input);
  const used = bought ?? stated;
  const covers = chosenCovers(used, found.plan);
  const filled = castings.map((casting, k) => {
    const own = covers[k];
    if (own === undefined) return fillCasting(casting, input);
    return fillCasting(casting, input, ({ stretch, cover }) => own.get(placeKey(stretch)) ?? cover);
  });
  const fill = fillDocument(project, castings, filled);
  const shown: SetAnswer = { ...found, status: answer.status, proof: answer.proof };
  const set = describeSet({
    project,
    kit,
    days,
    stated: used,
    bills: fill.units.map(({ bill }) => bill),
    answer: shown,
    wallByWall: costOf(used.problem, used.wallByWall),
  });
  return { fill: { ...fill, set }, castings, demands, stated: used, answer: shown };
}

function* driven(
  { problem, wallByWall, amounts }: StatedProblem,
  input: OptimiseInput,
): Generator<SetProgress, SetAnswer> {
  const told = ({ stage, best, bound }: SetProgress): SetProgress => ({
    stage,
    best: best / amounts.scale,
    bound: bound / amounts.scale,
  });
  const { solver, isStopped, proofSteps } = input;
  const tools: OptimiseTools = {
    solver,
    ...(isStopped !== undefined && { isStopped }),
    ...(proofSteps !== undefined && { proofSteps }),
  };
  const steps = optimiseSet(problem, wallByWall, tools);
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) yield told(step.value);
  return step.value;
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
