// The set as the document tells it: what every pour needs of each piece, counted from the bills of the fill that is written.

import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import { compareLines } from "../bill.ts";
import { type Casts, castingsOf } from "../castings.ts";
import { dayNeeds, greatestNeed, ownedOf, pieceFinder, whereShort, windowNeeds } from "../dayNeeds.ts";
import type { BillLine, PanelSet, SetPiece } from "../result.ts";
import type { SetParts } from "../setChanges.ts";
import { costOf, type PlanCost, paidFor } from "./countPlan.ts";
import { amountOf, fillersIn, type StatedProblem } from "./problemOf.ts";
import type { SetAnswer } from "./search.ts";
import type { Plan } from "./setProblem.ts";
import { widthsIn } from "./widths.ts";

export interface PiecesSource {
  readonly project: Project;
  readonly kit: Kit;
  readonly days: readonly (readonly Casts[])[];
  readonly stated: StatedProblem;
  /** By casting. */
  readonly bills: readonly (readonly BillLine[])[];
}

export interface SetSource extends PiecesSource {
  readonly pieces: readonly SetPiece[];
  readonly answer: SetAnswer;
}

export function describeSet(source: SetSource): PanelSet {
  const { stated, answer, pieces } = source;
  const { problem, amounts } = stated;
  const cost = costOf(problem, answer.plan);
  const wallByWall = costOf(problem, stated.wallByWall);
  const missing = missingOf(source, cost);
  const fillers = fillersIn(stated, answer.plan);
  const paid = paidFor(problem, cost);
  const inUnits = (units: number) => units / amounts.scale;
  return {
    status: answer.status,
    countedBy: stated.countedBy,
    pieces,
    cost: inUnits(paid.total),
    parts: setParts(source, answer.plan, pieces),
    lowerBound: inUnits(Math.min(answer.bound, paid.total)),
    proof: answer.proof,
    chosen: { widths: widthsIn(problem, answer.plan).length, fillers },
    ...(answer.lacks !== undefined && { lacks: answer.lacks }),
    wallByWall: wallByWall.isShort || hasTooManyWidths(stated) ? null : inUnits(wallByWall.total),
    ...(missing.length > 0 && { missing }),
  };
}

function hasTooManyWidths({ problem, wallByWall }: StatedProblem): boolean {
  return widthsIn(problem, wallByWall).length > (problem.mostWidths ?? Number.POSITIVE_INFINITY);
}

/** What the cost of a plan is made of, its shortages priced as if they could be bought. */
export function setParts(
  { project, stated }: Pick<SetSource, "project" | "stated">,
  plan: Plan,
  pieces: readonly SetPiece[],
): SetParts {
  const { problem, amounts, constant } = stated;
  const charged = amounts.whole(project.objective.filler ?? 0) * fillersIn(stated, plan);
  const cost = costOf(problem, plan);
  const closures = closureWork(stated, plan) + constant.closures;
  const inUnits = (units: number) => units / amounts.scale;
  return {
    set: inUnits(paidFor(problem, cost).set),
    handling: inUnits(cost.work + problem.constant - closures - charged),
    closures: inUnits(closures),
    distinctSizes: inUnits(cost.charges),
    ...(charged > 0 && { fillers: inUnits(charged) }),
    fixed: fixedOf(pieces),
  };
}

function closureWork({ problem }: StatedProblem, plan: Plan): number {
  let sum = 0;
  problem.runs.forEach(({ offer }, run) => {
    for (const { layout, times } of plan[run]!) {
      if (layout.closure >= 0) sum += times * problem.offers[offer]!.closures[layout.closure]!.cost;
    }
  });
  return sum;
}

/** Need of every code over all days, in the order of bills. */
export function setPieces({ project, kit, days, bills, stated }: PiecesSource): readonly SetPiece[] {
  const pieces = new Map(kit.pieces.map((piece) => [piece.code, piece]));
  const cutFrom = pieceFinder(kit);
  const needs = dayNeeds(bills, days, kit);
  return [...needs.lines].sort(compareLines).map(({ code, family }): SetPiece => {
    const piece = pieces.get(code);
    const needed = greatestNeed(needs, code, cutFrom(code)?.stays ?? 0);
    const owned = ownedOf(project, code);
    const price = family === "wall-panel" ? amountOf(piece, stated.countedBy) : (piece?.price ?? null);
    return { code, family, needed, owned, toBuy: Math.max(0, needed - owned), price };
  });
}

function fixedOf(pieces: readonly SetPiece[]): number {
  return pieces.reduce(
    (sum, { family, toBuy, price }) =>
      // Closures are paid for each time, by the objective.
      family === "wall-panel" || family === "closure-strip" ? sum : sum + toBuy * (price ?? 0),
    0,
  );
}

// Where the set has to do with what is owned: wall panels, the pieces the choice is about.
function missingOf(source: SetSource, cost: PlanCost): NonNullable<PanelSet["missing"]> {
  const { project, stated, answer, days, bills, kit } = source;
  if (project.buy) return [];
  const { codes, problem } = stated;
  const castings = castingsOf(project);
  const needs = dayNeeds(bills, days, kit);
  const find = pieceFinder(kit);
  const short = (kind: number) =>
    answer.status === "infeasible"
      ? Math.max(0, cost.need[kind]! - problem.kinds[kind]!.owned)
      : cost.missing[kind]!;
  return codes.flatMap((code, kind) => {
    const quantity = short(kind);
    if (quantity === 0) return [];
    const windows = windowNeeds(needs, code, find(code)?.stays ?? 0);
    return [{ code, quantity, ...whereShort(windows, ownedOf(project, code), days, castings) }];
  });
}
