// What fewer sizes cost, and what fewer fillers: two curves of the best sets, a few points of each, to pick from.
//
//   cost │ ·                        each point is a choice of its own, with its bound:
//        │   ·                      widths: at most 7, 6, 5 … distinct widths
//        │      ·   ·    ·   ·      fillers: a charge for each one handled, from none to the price of the dearest panel
//        └──────────────────────
//
// A charge makes the curve of fillers exact: with no more fillers than the best plan at that charge has, no plan costs less than
// the bound at that charge less what its fillers are charged (Lagrange). Charges between two points are the slope between them,
// which finds every corner of the curve's lower hull and nothing else; what lies above the hull is never best at any charge.

import type { Project } from "../../plan/project.ts";
import { roundTo } from "../../units.ts";
import type { FillDocument, PanelSet } from "../result.ts";
import { type OptimiseInput, optimiseProject, type SetProgress } from "./optimiseProject.ts";
import { PROOF_STEPS } from "./search.ts";

/** One choice. Amounts in what the set is counted by. */
export interface CurvePoint {
  /** What in the project makes it the choice: `limits.mostWidths`, null for any number … */
  readonly mostWidths: number | null;
  /** … and `objective.filler`. */
  readonly filler: number;
  readonly widths: number;
  readonly fillers: number;
  /** Without any charge for fillers on the curve of fillers. */
  readonly cost: number;
  /** No choice with no more widths, or no more fillers, costs less: proven in whole numbers. */
  readonly lowerBound: number;
  readonly status: PanelSet["status"];
  readonly proof: PanelSet["proof"];
}

export interface Curve {
  readonly format: "panelwright-curve";
  readonly version: 1;
  readonly project: string;
  readonly countedBy: PanelSet["countedBy"];
  /** From any number of widths to few. */
  readonly widths: readonly CurvePoint[];
  /** From the cheapest choice to the one of fewest fillers. */
  readonly fillers: readonly CurvePoint[];
}

export interface TradeOff {
  readonly curve: Curve;
  /** The fill of each point, in the same order. */
  readonly fills: { readonly widths: readonly FillDocument[]; readonly fillers: readonly FillDocument[] };
}

// Each point is a problem of its own, of which no earlier search of the project knows anything.
export interface TradeOffInput extends Omit<OptimiseInput, "soFar"> {
  /** Most points of each curve, 2 or more. */
  readonly points?: number;
}

export interface TradeOffProgress extends SetProgress {
  readonly curve: "widths" | "fillers";
  /** Points found so far on this curve, and the most there will be. */
  readonly found: number;
  readonly most: number;
}

const POINTS = 6;
/** Of the steps that one choice by itself may take. */
const SHARE = 3;

interface Found {
  readonly point: CurvePoint;
  readonly fill: FillDocument;
}

/** Both curves of a project. Whoever drives it may stop it: the points found by then stand. */
export function* tradeOff(input: TradeOffInput): Generator<TradeOffProgress, TradeOff> {
  const widths = yield* widthCurve(input);
  const fillers = yield* fillerCurve(input);
  const countedBy = (widths[0] ?? fillers[0])?.fill.set?.countedBy ?? "price";
  return {
    curve: {
      format: "panelwright-curve",
      version: 1,
      project: input.project.name,
      countedBy,
      widths: widths.map(({ point }) => point),
      fillers: fillers.map(({ point }) => point),
    },
    fills: { widths: widths.map(({ fill }) => fill), fillers: fillers.map(({ fill }) => fill) },
  };
}

function* widthCurve(input: TradeOffInput): Generator<TradeOffProgress, readonly Found[]> {
  const most = Math.max(2, input.points ?? POINTS);
  let found: readonly Found[] = [];
  const charge = input.project.objective.filler ?? 0;
  for (let mostWidths: number | null = null; found.length < most; ) {
    const next: Found | null = yield* chosen(
      input,
      { mostWidths, filler: charge },
      { curve: "widths", found: found.length, most },
    );
    if (next === null) break;
    found = withFewer(found, next);
    mostWidths = next.point.widths - 1;
    if (mostWidths < 1) break;
  }
  return found;
}

/**
 * The points with one of fewer widths. Those dearer than it go: a search whose work ran out may end above one that was allowed less,
 * and a choice of fewer widths serves in the place of theirs.
 */
export function withFewer<P extends { readonly point: Pick<CurvePoint, "cost"> }>(
  found: readonly P[],
  next: P,
): readonly P[] {
  return [...found.filter(({ point }) => point.cost <= next.point.cost), next];
}

function* fillerCurve(input: TradeOffInput): Generator<TradeOffProgress, readonly Found[]> {
  const most = Math.max(2, input.points ?? POINTS);
  const mostWidths = input.project.limits?.mostWidths ?? null;
  const at = (filler: number, count: number) =>
    chosen(input, { mostWidths, filler }, { curve: "fillers", found: count, most });
  const cheapest = yield* at(0, 0);
  if (cheapest === null) return [];
  const fewest = yield* at(twoDigits(dearestPanel(cheapest.fill)), 1);
  let found = fewest === null ? [cheapest] : lowerHull([cheapest, fewest]);
  const tried = new Set<number>();
  while (found.length >= 2 && found.length < most) {
    const filler = widestSlope(found, tried);
    if (filler === null) break;
    tried.add(filler);
    const next: Found | null = yield* at(filler, found.length);
    if (next === null) break;
    found = lowerHull([...found, next]);
  }
  return found;
}

/** Null where it was stopped, or nothing keeps to so few widths. */
function* chosen(
  input: TradeOffInput,
  { mostWidths, filler }: { readonly mostWidths: number | null; readonly filler: number },
  told: Omit<TradeOffProgress, keyof SetProgress>,
): Generator<TradeOffProgress, Found | null> {
  const { project, proofSteps = Math.ceil(PROOF_STEPS / SHARE) } = input;
  const steps = optimiseProject({ ...input, project: changed(project, mostWidths, filler), proofSteps });
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) yield { ...step.value, ...told };
  const { set } = step.value;
  if (set === undefined || set.status === "stopped" || set.lacks !== undefined) return null;
  const charged = told.curve === "fillers" ? (set.parts.fillers ?? 0) : 0;
  const point: CurvePoint = {
    mostWidths,
    filler,
    widths: set.chosen.widths,
    fillers: set.chosen.fillers,
    cost: roundTo(set.cost - charged, 6),
    lowerBound: roundTo(Math.max(0, set.lowerBound - charged), 6),
    status: set.status,
    proof: set.proof,
  };
  return { point, fill: step.value };
}

function changed(project: Project, mostWidths: number | null, filler: number): Project {
  const limits = { forbidden: [], greatestMass: null, ...project.limits, mostWidths };
  return { ...project, limits, objective: { ...project.objective, filler } };
}

function dearestPanel({ set }: FillDocument): number {
  const prices = (set?.pieces ?? []).map(({ family, price }) => (family === "wall-panel" ? (price ?? 0) : 0));
  return prices.reduce((most, price) => Math.max(most, price), 0);
}

/** The charge at which the two neighbours furthest apart cost the same, of those not tried; null where there is none. */
function widestSlope(found: readonly Found[], tried: ReadonlySet<number>): number | null {
  let best: { readonly filler: number; readonly area: number } | null = null;
  for (const [k, { point: left }] of found.entries()) {
    const right = found[k + 1]?.point;
    if (right === undefined) continue;
    const fewer = left.fillers - right.fillers;
    const dearer = right.cost - left.cost;
    const filler = twoDigits(dearer / fewer);
    if (filler <= 0 || tried.has(filler)) continue;
    if (best === null || fewer * dearer > best.area) best = { filler, area: fewer * dearer };
  }
  return best?.filler ?? null;
}

/** Points that no other beats in both, by falling number of fillers; of equals the first found. */
function lowerHull(found: readonly Found[]): Found[] {
  const sorted = [...found].sort(
    (a, b) =>
      b.point.fillers - a.point.fillers || a.point.cost - b.point.cost || a.point.filler - b.point.filler,
  );
  return sorted.filter(({ point }, k) => {
    const isBeaten = sorted.some(
      ({ point: other }, at) =>
        at !== k &&
        other.fillers <= point.fillers &&
        other.cost <= point.cost &&
        (other.fillers < point.fillers || other.cost < point.cost || at < k),
    );
    return !isBeaten;
  });
}

/** Two digits are fine enough for a charge, and keep amounts whole. */
function twoDigits(value: number): number {
  if (!(value > 0)) return 0;
  let scale = 1;
  while (value * scale < 10) scale *= 10;
  while (value * scale >= 100) scale /= 10;
  return Math.round(value * scale) / scale;
}
