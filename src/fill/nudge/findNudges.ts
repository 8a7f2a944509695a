// Which small moves of walls make the set of all pours cheaper, and by how much: the nudge list over a whole scheme.
//
//   every wall and free end ──▶ how the intervals follow it (one fill) ──▶ what each shift could save at most (looked up)
//   the most promising first ──▶ the plan with the move made, solved again from the present one ──▶ the fill of those listed
//
// Each move is tried by itself, in all pours of its unit. The work is limited by numbers of fills and solver steps, so the
// list is the same on every machine, unless it was stopped.

import type { Project } from "../../plan/project.ts";
import { roundTo } from "../../units.ts";
import { castingsOf, pourDays } from "../castings.ts";
import { costOf } from "../optimise/countPlan.ts";
import { type ChosenSet, fillAsChosen, type OptimiseInput } from "../optimise/optimiseProject.ts";
import { problemOf, type StatedProblem } from "../optimise/problemOf.ts";
import type { SetAnswer } from "../optimise/search.ts";
import { setParts, setPieces } from "../optimise/setDocument.ts";
import { type Candidate, candidatesOf, flushShifts, followsOf, movedUnit } from "./candidates.ts";
import { roomChanges } from "./clearSizes.ts";
import { describeNudge, type NudgeCounts, type NudgeList, type SchemeNudge } from "./nudgeList.ts";
import { type Refilled, refill } from "./refill.ts";
import { resolveFrom, resolveQuickly, startFrom } from "./resolve.ts";
import { createScreen, GREATEST_MOVE, type Prospect } from "./screen.ts";

export interface NudgeInput extends Omit<OptimiseInput, "proofSteps"> {
  /** The set as it is chosen without any move. */
  readonly chosen: ChosenSet;
  /** How many moves are solved again at most. */
  readonly most?: number;
}

export interface NudgeProgress {
  readonly stage: "screen" | "price" | "prove";
  readonly done: number;
  readonly of: number;
  /** The greatest saving so far, in what the set is counted by. */
  readonly best: number;
}

/** Solved again at most, and listed at most. */
const MOST_PRICED = 24;
const MOST_LISTED = 12;
/** Simplex steps for the search over all layouts: for all listed together, and for one of them at most. */
const PROOF_STEPS = 12_000;
const PROOF_STEPS_ONE = 2000;

/** The moves that save, most first, one for each wall. Yields after every wall looked at and every move solved. */
export function* findNudges(input: NudgeInput): Generator<NudgeProgress, NudgeList> {
  const { chosen, project } = input;
  const { stated, answer } = chosen;
  const isStopped = input.isStopped ?? (() => false);
  const cost = costOf(stated.problem, answer.plan);
  const scale = stated.amounts.scale;
  const list = (status: NudgeList["status"], found: Found): NudgeList => ({
    status,
    project: project.name,
    countedBy: stated.countedBy,
    cost: cost.total / scale,
    greatest: GREATEST_MOVE,
    walls: found.walls,
    priced: found.priced,
    mostLeft: found.left / scale,
    nudges: found.nudges,
  });
  if (cost.isShort || answer.status === "infeasible")
    return list("no-plan", { walls: 0, priced: 0, left: 0, nudges: [] });

  const base = refilledUnits(input);
  const screened = yield* screen(input, base, isStopped);
  const priced = yield* price(input, base, screened.prospects, isStopped);
  const listed = yield* prove(input, priced.found.sort(mostFirst).slice(0, MOST_LISTED), isStopped);
  const nudges = listed.flatMap((each) => told(each, input, base));
  const found = { walls: screened.walls, priced: priced.count, left: priced.left, nudges };
  if (isStopped()) return list("stopped", found);
  return list(priced.left > 0 ? "limit" : "done", found);
}

interface Found {
  readonly walls: number;
  readonly priced: number;
  /** Units. */
  readonly left: number;
  readonly nudges: readonly SchemeNudge[];
}

/** By unit, its castings filled anew; those in no pour left out. */
type Base = ReadonlyMap<string, readonly Refilled[]>;

function refilledUnits(input: NudgeInput): Base {
  const units = new Map<string, Refilled[]>();
  const isPoured = (pours: readonly string[]) => input.project.pours.length === 0 || pours.length > 0;
  // With the intervals that the stated problem names: the same objects, so that they can be looked up.
  for (const casting of input.chosen.castings) {
    if (!isPoured(casting.pours)) continue;
    const own = units.get(casting.unit.id);
    const filled = refill(casting, casting.unit, input);
    if (own === undefined) units.set(casting.unit.id, [filled]);
    else own.push(filled);
  }
  return units;
}

function* screen(input: NudgeInput, base: Base, isStopped: () => boolean) {
  const { chosen } = input;
  const { plan, prices, bound: least } = chosen.answer;
  const { total: cost } = costOf(chosen.stated.problem, plan);
  const look = createScreen(restated(input, base), prices, { cost, least });
  const candidates = [...base.values()].flatMap(candidatesOf);
  const prospects: Prospect[] = [];
  for (const [k, candidate] of candidates.entries()) {
    if (isStopped()) break;
    const before = base.get(candidate.unit)!;
    const flush = flushShifts(candidate, before[0]!.casting.unit, GREATEST_MOVE);
    for (const shift of flush) {
      const moved = made({ candidate, shift }, input, before);
      const most = moved === null ? 0 : look.mostOf(moved.stated);
      if (most > 0) prospects.push({ candidate, shift, most });
    }
    const isPromising = look.prospects(candidate, candidate.guess).length > 0;
    const follows = isPromising ? followsOf(candidate, before, input) : null;
    if (follows !== null) {
      const others = look.prospects(candidate, follows).filter(({ shift }) => !flush.includes(shift));
      prospects.push(...others);
    }
    const progress: NudgeProgress = { stage: "screen", done: k + 1, of: candidates.length, best: 0 };
    yield progress;
  }
  // A stable sort: of equals the wall that comes first, then the smaller move.
  return { walls: candidates.length, prospects: prospects.sort((a, b) => b.most - a.most) };
}

/** The problem of the project as it is, with the intervals of `base`. */
function restated(input: NudgeInput, base: Base): StatedProblem {
  return statedWith(
    input,
    input.project,
    new Map([...base.values()].flat().map((each) => [each.casting.prefix, each])),
  );
}

function statedWith(
  { chosen, kit }: NudgeInput,
  project: Project,
  refilled: ReadonlyMap<string, Refilled>,
): StatedProblem {
  const castings = castingsOf(project);
  const demands = castings.map(({ prefix }, k) => refilled.get(prefix)?.demand ?? chosen.demands[k]!);
  return problemOf({
    project,
    kit,
    demands,
    days: pourDays(project, castings),
    buy: project.buy,
    mostWidths: project.limits?.mostWidths ?? null,
  });
}

interface MadeMove {
  readonly project: Project;
  readonly castings: readonly Refilled[];
  readonly stated: StatedProblem;
}

/** The project with a move made; null where it is refused, leaves more that cannot be built, or changes rooms or slabs. */
function made(
  { candidate, shift }: Pick<Prospect, "candidate" | "shift">,
  input: NudgeInput,
  before: readonly Refilled[],
): MadeMove | null {
  const unit = movedUnit(input.project, candidate.unit, candidate.editOf(shift));
  if (unit === null) return null;
  const castings = before.map(({ casting }) => refill(casting, unit, input));
  if (!castings.every((each, k) => isAsWhole(each, before[k]!))) return null;
  const units = input.project.units.map((each) => (each.id === unit.id ? unit : each));
  const project = { ...input.project, units };
  const stated = statedWith(input, project, new Map(castings.map((each) => [each.casting.prefix, each])));
  return { project, castings, stated };
}

function isAsWhole(after: Refilled, before: Refilled): boolean {
  const rooms = ({ filled }: Refilled) => filled.fill.rooms.map(({ name, kind }) => `${name} ${kind}`).sort();
  const slabs = ({ filled }: Refilled) =>
    filled.drafts.filter(({ settled }) => settled.formed.exposure === "under-slab").length;
  return (
    after.errors <= before.errors &&
    rooms(after).join("\n") === rooms(before).join("\n") &&
    slabs(after) >= slabs(before)
  );
}

interface PricedMove extends MadeMove {
  readonly prospect: Prospect;
  readonly answer: SetAnswer;
  /** In what the set is counted by. */
  readonly saving: number;
}

function* price(input: NudgeInput, base: Base, prospects: readonly Prospect[], isStopped: () => boolean) {
  const scale = input.chosen.stated.amounts.scale;
  const { problem } = input.chosen.stated;
  // By so much the plan before may be dearer than need be: what a move saves is not known finer.
  const gap = (costOf(problem, input.chosen.answer.plan).total - input.chosen.answer.bound) / scale;
  const best = new Map<Candidate, PricedMove>();
  const most = input.most ?? MOST_PRICED;
  let count = 0;
  let left = 0;
  for (const prospect of prospects) {
    const known = best.get(prospect.candidate);
    const hope = prospect.most / scale;
    if (known !== undefined && known.saving >= hope - gap) continue;
    if (known === undefined && best.size >= MOST_LISTED && leastSaving(best) >= hope - gap) continue;
    if (count >= most || isStopped()) {
      left = Math.max(left, prospect.most);
      continue;
    }
    count += 1;
    const move = tried(prospect, input, base, isStopped);
    if (move !== null && move.saving > (known?.saving ?? 0)) best.set(prospect.candidate, move);
    const progress: NudgeProgress = {
      stage: "price",
      done: count,
      of: Math.min(most, prospects.length),
      best: Math.max(0, ...[...best.values()].map(({ saving }) => saving)),
    };
    yield progress;
  }
  return { found: [...best.values()], count, left };
}

function leastSaving(best: ReadonlyMap<Candidate, PricedMove>): number {
  return Math.min(...[...best.values()].map(({ saving }) => saving));
}

/** The move made and solved again; null where it cannot be made, or not with the pieces there are. */
function tried(
  prospect: Prospect,
  input: NudgeInput,
  base: Base,
  isStopped: () => boolean,
): PricedMove | null {
  const { chosen, solver } = input;
  const move = made(prospect, input, base.get(prospect.candidate.unit)!);
  if (move === null) return null;
  const { stated } = move;
  const start = startFrom(chosen.stated, chosen.answer.plan, stated);
  const answer = resolveQuickly(stated, start, { solver, isStopped });
  return withAnswer({ ...move, prospect }, answer, chosen);
}

function withAnswer(
  move: MadeMove & Pick<PricedMove, "prospect">,
  answer: SetAnswer,
  chosen: ChosenSet,
): PricedMove | null {
  const { stated } = move;
  const after = costOf(stated.problem, answer.plan);
  if (after.isShort) return null;
  const now = costOf(chosen.stated.problem, chosen.answer.plan).total / chosen.stated.amounts.scale;
  return { ...move, answer, saving: roundTo(now - after.total / stated.amounts.scale, 6) };
}

/** Those to be listed, solved to the end and proven to save; most first. */
function* prove(input: NudgeInput, found: readonly PricedMove[], isStopped: () => boolean) {
  const { chosen, solver } = input;
  const least = chosen.answer.bound / chosen.stated.amounts.scale;
  const proofSteps = Math.min(PROOF_STEPS_ONE, Math.floor(PROOF_STEPS / Math.max(1, found.length)));
  const proven: PricedMove[] = [];
  for (const [k, move] of found.entries()) {
    const { stated, answer } = move;
    const isOpen = answer.status !== "optimal" && !isStopped();
    const better = isOpen ? resolveFrom(stated, answer.plan, { solver, isStopped, proofSteps }) : answer;
    const known = withAnswer(move, better, chosen) ?? move;
    if (roundTo(least - known.answer.cost / stated.amounts.scale, 6) > 0) proven.push(known);
    const best = Math.max(0, ...proven.map(({ saving }) => saving));
    const progress: NudgeProgress = { stage: "prove", done: k + 1, of: found.length, best };
    yield progress;
  }
  return proven.sort(mostFirst);
}

function mostFirst(a: PricedMove, b: PricedMove): number {
  return b.saving - a.saving || Math.abs(a.prospect.shift) - Math.abs(b.prospect.shift);
}

/** The move as it is listed, its whole project filled; none where soffits or fixed pieces make it no gain. */
function told(move: PricedMove, input: NudgeInput, base: Base): readonly SchemeNudge[] {
  const { chosen, kit } = input;
  const { project, stated, answer, prospect } = move;
  const castings = castingsOf(project);
  const { filled } = fillAsChosen({ ...input, project }, castings, stated, answer.plan);
  const days = pourDays(project, castings);
  const bills = filled.map(({ fill }) => fill.bill);
  const parts = setParts(project, stated, answer.plan, setPieces({ project, kit, days, stated, bills }));
  const fixed = { before: chosen.fill.set!.parts.fixed, after: parts.fixed };
  const pours = days.flat();
  const timesOf = (casting: number) => pours.filter((cast) => cast.casting === casting).length;
  const counts = (fills: ChosenSet["filled"]): NudgeCounts => {
    const sum = { closures: 0, fillers: 0, errors: 0 };
    fills.forEach(({ fill }, casting) => {
      sum.closures += fill.totals.closures * timesOf(casting);
      sum.fillers += fill.totals.fillers * timesOf(casting);
      sum.errors += fill.problems.filter(({ severity }) => severity === "error").length;
    });
    return sum;
  };
  const before = counts(chosen.filled);
  const after = counts(filled);
  const isGain = stated.countedBy !== "price" || move.saving > fixed.after - fixed.before;
  if (after.errors > before.errors || !isGain) return [];
  const own = base.get(prospect.candidate.unit)!;
  return [
    describeNudge({
      ...move,
      bound: chosen.answer.bound / chosen.stated.amounts.scale,
      pours: own.flatMap(({ casting }) => casting.pours),
      unit: own[0]!.casting.unit,
      counts: { before, after },
      fixed,
      rooms: roomChanges(own[0]!, move.castings[0]!),
    }),
  ];
}
