// The set as the document tells it: what every pour needs of each piece, counted from the bills of the fill that is written.

import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import { compareLines } from "../bill.ts";
import { type Casts, castingsOf } from "../castings.ts";
import { dayNeeds, greatestNeed, ownedOf, pieceFinder, whereShort, windowNeeds } from "../dayNeeds.ts";
import type { BillLine, PanelSet, SetPiece } from "../result.ts";
import { costOf, type PlanCost, paidFor } from "./countPlan.ts";
import type { SetAnswer } from "./optimiseSet.ts";
import { amountOf, type StatedProblem } from "./problemOf.ts";

export interface SetSource {
  readonly project: Project;
  readonly kit: Kit;
  readonly days: readonly (readonly Casts[])[];
  readonly stated: StatedProblem;
  /** By casting. */
  readonly bills: readonly (readonly BillLine[])[];
  readonly answer: SetAnswer;
  readonly wallByWall: PlanCost;
}

export function describeSet(source: SetSource): PanelSet {
  const { stated, answer, wallByWall } = source;
  const { problem, amounts, constant } = stated;
  const cost = costOf(problem, answer.plan);
  const pieces = setPieces(source);
  const closures = closureWork(stated, answer) + constant.closures;
  const missing = missingOf(source, cost);
  const paid = paidFor(problem, cost);
  const inUnits = (units: number) => units / amounts.scale;
  return {
    status: answer.status,
    countedBy: stated.countedBy,
    pieces,
    cost: inUnits(paid.total),
    parts: {
      set: inUnits(paid.set),
      handling: inUnits(cost.work + problem.constant - closures),
      closures: inUnits(closures),
      distinctSizes: inUnits(cost.charges),
      fixed: fixedOf(pieces),
    },
    lowerBound: inUnits(Math.min(answer.bound, paid.total)),
    proof: answer.proof,
    wallByWall: wallByWall.isShort ? null : inUnits(wallByWall.total),
    ...(missing.length > 0 && { missing }),
  };
}

function closureWork({ problem }: StatedProblem, { plan }: SetAnswer): number {
  let sum = 0;
  problem.runs.forEach(({ offer }, run) => {
    for (const { layout, times } of plan[run]!) {
      if (layout.closure >= 0) sum += times * problem.offers[offer]!.closures[layout.closure]!.cost;
    }
  });
  return sum;
}

/** Need of every code over all days, in the order of bills. */
function setPieces({ project, kit, days, bills, stated }: SetSource): readonly SetPiece[] {
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
