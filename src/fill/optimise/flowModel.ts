// The choice of layouts for some offers, the others standing as they are, as one model for a mixed-integer solver.
//
//   flow on each graph of paths ──▶ how many of each column ──▶ pieces by day ≤ owned + bought (+ short)
//
// A path of the flow graph is a layout, so a whole flow is a choice of layouts for every run (flowGraph.ts).

import { createModelBuilder, type Entry, type ModelBuilder } from "../../solver/builder.ts";
import type { LinearModel } from "../../solver/linear.ts";
import { type FlowGraph, flowGraph, type GraphOptions, pathsOf } from "./flowGraph.ts";
import { type LaidOut, type Plan, placeIn, type SetProblem } from "./setProblem.ts";

export interface FlowModelOptions extends Omit<GraphOptions, "depth"> {
  /** The offers whose runs are chosen anew. */
  readonly free: readonly number[];
  /** Pieces by day and kind that all other runs take, with what else stands there. */
  readonly usage: Float64Array;
  /** By kind: how many cost nothing, those owned among them. */
  readonly allowance: readonly number[];
  readonly depthOf: (offer: number) => number;
}

export interface FlowModel {
  readonly model: LinearModel;
  /** Whether it holds every plan that could be wanted. */
  readonly isComplete: boolean;
  /** The plan with the free offers' layouts as answered; null where the answer is none. */
  readonly planOf: (values: Float64Array, others: Plan) => Plan | null;
}

interface OfferPart {
  readonly offer: number;
  readonly graph: FlowGraph;
  readonly firstArc: number;
  readonly firstEnd: number;
}

/** Null where it would be too large. */
export function flowModel(problem: SetProblem, options: FlowModelOptions): FlowModel | null {
  const builder = createModelBuilder();
  const graphs: FlowGraph[] = [];
  for (const offer of options.free) {
    const graph = flowGraph(problem, offer, { ...options, depth: options.depthOf(offer) });
    if (graph === null) return null;
    graphs.push(graph);
  }
  const dayRows = addSet(problem, options, builder);
  const parts = graphs.map((graph, k) => addOffer(problem, options.free[k]!, graph, dayRows, builder));
  return {
    model: builder.build(),
    isComplete: graphs.every(({ isComplete }) => isComplete),
    planOf: (values, others) => readPlan(problem, parts, values, others),
  };
}

/** What the set allows on each day, and in how many rows a piece of a kind counts. */
type DayRows = ReadonlyMap<number, readonly number[]>;

function addSet(
  problem: SetProblem,
  { free, usage, allowance }: FlowModelOptions,
  builder: ModelBuilder,
): DayRows {
  const touched = new Set<number>();
  for (const offer of free) {
    for (const { uses } of problem.offers[offer]!.columns) {
      for (const { day, kind } of uses) touched.add(placeIn(problem, day, kind));
    }
  }
  const rows = new Map<number, readonly number[]>();
  problem.kinds.forEach(({ price, most }, kind) => {
    const own = allowance[kind]!;
    const taken = mostOf(problem, free, kind);
    let cap = taken;
    const isLimited = Number.isFinite(most);
    const entries: Entry[] = [];
    const charged: Entry[] = [];
    let isHeld = false;
    for (let day = 0; day < problem.days; day++) {
      const place = placeIn(problem, day, kind);
      const standing = usage[place]!;
      if (standing > 0) isHeld = true;
      cap = Math.max(cap, taken + standing);
      if (!touched.has(place) && standing <= own) continue;
      const row = builder.addRow(Number.NEGATIVE_INFINITY, own - standing);
      entries.push([row, -1]);
      if (touched.has(place)) rows.set(place, [row]);
    }
    if (problem.kindCharge > 0 && !isHeld) {
      for (let day = 0; day < problem.days; day++) {
        const place = placeIn(problem, day, kind);
        if (!touched.has(place)) continue;
        const row = builder.addRow(Number.NEGATIVE_INFINITY, 0);
        charged.push([row, -taken]);
        rows.set(place, [...(rows.get(place) ?? []), row]);
      }
      builder.addColumn({ cost: problem.kindCharge, upper: 1, isWhole: true, entries: charged });
    }
    if (entries.length === 0) return;
    builder.addColumn({
      cost: price,
      upper: isLimited ? Math.max(0, most - own) : cap,
      isWhole: true,
      entries,
    });
    if (isLimited) builder.addColumn({ cost: problem.shortage, upper: cap, isWhole: true, entries });
  });
  return rows;
}

/** More of a kind than these offers can take on any day. */
function mostOf(problem: SetProblem, free: readonly number[], kind: number): number {
  let most = 0;
  for (const { offer, length, count } of problem.runs) {
    if (!free.includes(offer)) continue;
    let own = 0;
    for (const { width, uses } of problem.offers[offer]!.columns) {
      const each = uses.reduce((sum, use) => sum + (use.kind === kind ? use.count : 0), 0);
      own = Math.max(own, Math.floor(length / width) * each);
    }
    most += own * count;
  }
  return most;
}

function addOffer(
  problem: SetProblem,
  offer: number,
  graph: FlowGraph,
  dayRows: DayRows,
  builder: ModelBuilder,
): OfferPart {
  const { columns, closures } = problem.offers[offer]!;
  const counts = columns.map(() => builder.addRow(0, 0));
  const nodes = new Map<number, number>();
  const nodeRow = (node: number): number => {
    const known = nodes.get(node) ?? builder.addRow(0, 0);
    nodes.set(node, known);
    return known;
  };
  const demands = new Map<number, number>();
  problem.runs.forEach((run, index) => {
    if (run.offer === offer) demands.set(index, builder.addRow(run.count, run.count));
  });
  const own = problem.runs.filter((run) => run.offer === offer);
  const paths = own.reduce((sum, { count }) => sum + count, 0);
  columns.forEach((column, k) => {
    const entries = new Map<number, number>([[counts[k]!, -1]]);
    for (const { day, kind, count } of column.uses) {
      for (const row of dayRows.get(placeIn(problem, day, kind)) ?? []) {
        entries.set(row, (entries.get(row) ?? 0) + count);
      }
    }
    const upper = own.reduce((sum, { length, count }) => sum + count * Math.floor(length / column.width), 0);
    builder.addColumn({ cost: column.cost, upper, isWhole: true, entries: [...entries] });
  });
  const firstArc = builder.columnCount();
  for (const { from, to, column } of graph.arcs) {
    const entries: Entry[] = [
      [counts[column]!, 1],
      [nodeRow(to), 1],
    ];
    if (from !== 0) entries.push([nodeRow(from), -1]);
    // A path takes an arc once at most. Bounds say nothing new, and cut the solver's time by ten.
    builder.addColumn({ cost: 0, upper: paths, isWhole: true, entries });
  }
  const firstEnd = builder.columnCount();
  for (const { node, run, closure, widest } of graph.ends) {
    const entries: Entry[] = [[demands.get(run)!, 1]];
    if (node !== 0) entries.push([nodeRow(node), -1]);
    if (widest > 0) entries.push([counts[0]!, widest]);
    const cost = closure < 0 ? 0 : closures[closure]!.cost;
    builder.addColumn({ cost, upper: problem.runs[run]!.count, isWhole: true, entries });
  }
  return { offer, graph, firstArc, firstEnd };
}

function readPlan(
  problem: SetProblem,
  parts: readonly OfferPart[],
  values: Float64Array,
  others: Plan,
): Plan | null {
  const plan: (readonly LaidOut[])[] = [...others];
  for (const { offer, graph, firstArc, firstEnd } of parts) {
    const arcFlow = graph.arcs.map((_, k) => Math.round(values[firstArc + k]!));
    const endFlow = graph.ends.map((_, k) => Math.round(values[firstEnd + k]!));
    const paths = pathsOf(graph, { arcFlow, endFlow }, problem.offers[offer]!.columns.length);
    if (paths === null) return null;
    const byRun = new Map<number, LaidOut[]>();
    for (const { end, counts, times } of paths) {
      const own = byRun.get(end.run) ?? [];
      byRun.set(end.run, own);
      own.push({ layout: { counts, closure: end.closure }, times });
    }
    problem.runs.forEach((run, index) => {
      if (run.offer === offer) plan[index] = byRun.get(index) ?? [];
    });
  }
  return isExact(problem, plan) ? plan : null;
}

/** Whether every run is covered exactly and as often as it stands: a solver's word alone makes no plan. */
export function isExact(problem: SetProblem, plan: Plan): boolean {
  return problem.runs.every(({ offer, length, count }, index) => {
    const { columns, closures } = problem.offers[offer]!;
    let times = 0;
    for (const own of plan[index]!) {
      times += own.times;
      const panels = own.layout.counts.reduce((sum, each, column) => sum + each * columns[column]!.width, 0);
      const strip = own.layout.closure < 0 ? 0 : closures[own.layout.closure]!.width;
      if (own.times < 1 || panels + strip !== length) return false;
    }
    return times === count;
  });
}
