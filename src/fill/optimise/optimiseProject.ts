// The fill of a project chosen as a whole: one panel set for every pour, and the fill that takes it.
//
//   fill wall by wall ──▶ what the intervals ask ──▶ the choice ──▶ fill again, each interval as chosen ──▶ document with `set`

import type { Solver } from "../../solver/linear.ts";
import { type Casting, castingsOf, pourDays, poursByDay } from "../castings.ts";
import { type FillTogether, fillCasting, fillDocument } from "../fillProject.ts";
import type { FilledUnit } from "../fillWalls.ts";
import type { FillDocument } from "../result.ts";
import type { ChooseCover, Chosen, FreeInterval } from "../solve.ts";
import { type ChangedInterval, changedIntervals } from "./changed.ts";
import { describeChanges, type Side } from "./changes.ts";
import { coverOf, placeKey } from "./chosen.ts";
import { type Demand, demandOf } from "./demand.ts";
import { type OptimiseTools, optimiseSet, type SetAnswer } from "./optimiseSet.ts";
import { problemOf, type StatedProblem } from "./problemOf.ts";
import { describeSet, type PiecesSource, setParts, setPieces } from "./setDocument.ts";
import type { Plan } from "./setProblem.ts";

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
  /** By casting. */
  readonly filled: readonly FilledUnit[];
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
  const alone: FilledUnit[] = [];
  const demands = castings.map((casting) => {
    const free: FreeInterval[] = [];
    const listed: ChooseCover = (interval) => {
      free.push(interval);
      return interval.cover;
    };
    const filled = fillCasting(casting, input, listed);
    alone.push(filled);
    return demandOf(filled, free, kit);
  });
  const given = { project, kit, demands, days };
  const stated = problemOf({ ...given, buy: project.buy });
  const asked = yield* driven(stated, input);
  // What no plan has pieces for is shown as the plan that would buy the least of them.
  const bought = asked.status === "infeasible" ? problemOf({ ...given, buy: true }) : null;
  const found = bought === null ? asked : yield* driven(bought, input);
  const used = bought ?? stated;
  const { changed, filled } = fillAsChosen(input, castings, used, found.plan);
  const fill = fillDocument(project, castings, filled);
  const answer: SetAnswer = { ...found, status: asked.status, proof: asked.proof };
  const source = { project, kit, days, stated: used };
  const before = sideOf(source, alone);
  const after = sideOf(source, filled);
  const set = describeSet({ ...source, pieces: after.pieces, answer });
  const beforeParts = setParts(used, used.wallByWall, before.pieces);
  const changes = describeChanges({ ...source, castings, before, beforeParts, after, changed });
  return { fill: { ...fill, set: { ...set, changes } }, castings, filled, demands, stated: used, answer };
}

/** The fill of all castings with the covers of a plan, and which of these are not the best for an interval alone. */
export function fillAsChosen(
  input: FillTogether,
  castings: readonly Casting[],
  stated: StatedProblem,
  plan: Plan,
): { readonly changed: readonly ChangedInterval[]; readonly filled: readonly FilledUnit[] } {
  const changed = changedIntervals({ stated, plan, pours: poursByDay(input.project) });
  const covers = changedCovers(stated, changed, castings);
  const filled = castings.map((casting, k) =>
    fillCasting(casting, input, ({ stretch, cover }) => covers[k]!.get(placeKey(stretch)) ?? cover),
  );
  return { changed, filled };
}

function sideOf(source: Omit<PiecesSource, "bills">, filled: readonly FilledUnit[]): Side {
  const bills = filled.map(({ fill }) => fill.bill);
  return { filled, bills, pieces: setPieces({ ...source, bills }) };
}

/** By casting: the cover of each interval that is filled otherwise than by itself, by its place. */
function changedCovers(
  stated: StatedProblem,
  changed: readonly ChangedInterval[],
  castings: readonly Casting[],
): readonly ReadonlyMap<string, Chosen>[] {
  const covers = castings.map(() => new Map<string, Chosen>());
  for (const { casting, run, layout, interval, because } of changed) {
    covers[casting]!.set(placeKey(interval.stretch), { ...coverOf(stated, run, layout), because });
  }
  return covers;
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
