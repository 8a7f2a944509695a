// The fill of a project chosen as a whole: one panel set for every pour, and the fill that takes it.
//
//   fill wall by wall ──▶ what the intervals ask ──▶ the choice ──▶ fill again, each interval as chosen ──▶ document with `set`

import type { Solver } from "../../solver/linear.ts";
import { type Casting, castingsOf, pourDays, poursByDay } from "../castings.ts";
import { type FillTogether, fillCasting, fillDocument } from "../fillProject.ts";
import type { FilledUnit } from "../fillWalls.ts";
import type { FillDocument, Problem } from "../result.ts";
import { withoutSetPins } from "../setPins.ts";
import type { ChooseCover, Chosen, FreeInterval } from "../solve.ts";
import { type ChangedInterval, changedIntervals } from "./changed.ts";
import { describeChanges, type Side } from "./changes.ts";
import { type ChosenInterval, chosenIntervals, coverOf, placeKey } from "./chosen.ts";
import { type Demand, demandOf } from "./demand.ts";
import { allowedIn, limitProblems } from "./limits.ts";
import { optimiseSet } from "./optimiseSet.ts";
import { type GivenSet, problemOf, type StatedProblem } from "./problemOf.ts";
import type { OptimiseTools, Progress, SetAnswer } from "./search.ts";
import { describeSet, type PiecesSource, setParts, setPieces } from "./setDocument.ts";
import type { Plan } from "./setProblem.ts";

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

/** As {@link optimiseProject}, with the plan and the prices that prove its bound. Pins that a set made are free again. */
export function* chooseSet(given: OptimiseInput): Generator<SetProgress, ChosenSet> {
  const input = { ...given, project: withoutSetPins(given.project) };
  const { project, kit } = input;
  const castings = castingsOf(project);
  const days = pourDays(project, castings);
  const alone: FilledUnit[] = [];
  const demands = castings.map((casting, k) => {
    const free: FreeInterval[] = [];
    const listed: ChooseCover = (interval) => {
      free.push(interval);
      return interval.cover;
    };
    const filled = fillCasting(casting, input, listed);
    alone.push(filled);
    return demandOf(filled, free, kit, allowedIn({ project, kit, days }, k));
  });
  const mostWidths = project.limits?.mostWidths ?? null;
  const { used: stated, answer } = yield* chosenSet(
    { project, kit, demands, days, buy: project.buy, mostWidths },
    input,
  );
  const { changed, filled: chosen } = fillAsChosen(input, castings, stated, answer.plan);
  const problems = limitProblems({ project, kit, filled: chosen, demands });
  const filled = chosen.map((unit, k) => withProblems(unit, problems[k]!));
  const fill = fillDocument(project, castings, filled);
  const source = { project, kit, days, stated };
  // What the limits rule out is left out of both sides.
  const isLimited = project.limits !== undefined;
  const before = sideOf(
    source,
    isLimited ? fillAsPlanned(input, castings, stated, stated.wallByWall) : alone,
  );
  const after = sideOf(source, filled);
  const set = describeSet({ ...source, bills: after.bills, pieces: after.pieces, answer });
  const beforeParts = setParts(source, stated.wallByWall, before.pieces);
  const changes = describeChanges({ ...source, castings, before, beforeParts, after, changed });
  return { fill: { ...fill, set: { ...set, changes } }, castings, filled, demands, stated, answer };
}

/** The fill of all castings with the covers of a plan, and which of these are not the best for an interval alone. */
export function fillAsChosen(
  input: FillTogether,
  castings: readonly Casting[],
  stated: StatedProblem,
  plan: Plan,
): { readonly changed: readonly ChangedInterval[]; readonly filled: readonly FilledUnit[] } {
  const changed = changedIntervals({ stated, plan, pours: poursByDay(input.project) });
  const reasons = new Map(changed.map(({ interval, because }) => [interval, because]));
  return { changed, filled: fillAsPlanned(input, castings, stated, plan, reasons) };
}

function fillAsPlanned(
  input: FillTogether,
  castings: readonly Casting[],
  stated: StatedProblem,
  plan: Plan,
  reasons: ReadonlyMap<FreeInterval, string> = new Map(),
): readonly FilledUnit[] {
  const covers = castings.map(() => new Map<string, Chosen>());
  for (const chosen of chosenIntervals(stated, plan))
    covers[chosen.casting]!.set(placeKey(chosen.interval.stretch), chosenCover(stated, chosen, reasons));
  return castings.map((casting, k) =>
    fillCasting(casting, input, ({ stretch, cover }) => covers[k]!.get(placeKey(stretch)) ?? cover),
  );
}

function chosenCover(
  stated: StatedProblem,
  { run, layout, interval }: ChosenInterval,
  reasons: ReadonlyMap<FreeInterval, string>,
): Chosen {
  const because = reasons.get(interval);
  return { ...coverOf(stated, run, layout), ...(because !== undefined && { because }) };
}

function sideOf(source: Omit<PiecesSource, "bills">, filled: readonly FilledUnit[]): Side {
  const bills = filled.map(({ fill }) => fill.bill);
  return { filled, bills, pieces: setPieces({ ...source, bills }) };
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
    const freer = yield* chosenSet({ ...given, mostWidths: null }, withoutBound(input));
    return { used: freer.used, answer: { ...freer.answer, status, proof, lacks } };
  }
  if (status !== "infeasible") return { used, answer };
  const bought = yield* chosenSet({ ...given, buy: true }, withoutBound(input));
  return { used: bought.used, answer: { ...bought.answer, status, proof } };
}

// With less asked a plan may cost less than any that keeps to all of it: the earlier bound says nothing here.
function withoutBound(input: OptimiseInput): OptimiseInput {
  return input.soFar === undefined ? input : { ...input, soFar: { ...input.soFar, bound: 0 } };
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
