// The layouts of all runs of one offer as paths in one graph.
//
//   0 ──250──▶ 5 ──250──▶ 10 ─ ─▶ end of a run of 2900: 500 in fillers, 4 × 600 beside them
//   0 ────500──────────▶ 10 ─ ─▶ end of a run of 1700: 500 in fillers, 2 × 600 beside them
//
// Nodes are lengths covered so far without the widest column, in steps; an arc is a piece; an end says which run a path
// covers and how many of the widest it takes for the rest. So long runs need no long graph: only how many of the widest are
// given up for other pieces ("depth") counts. Without a limit of depth every layout is a path.
//
// Valério de Carvalho, Annals of Operations Research 86 (1999): arc-flow; widths fall along a path, so an order of pieces
// stands once.

import type { Bound } from "./bound.ts";
import { stepOf } from "./cheapest.ts";
import { FINE, type SetProblem } from "./setProblem.ts";

/** A piece of `column` from node `from` to node `to`. */
export interface Arc {
  readonly from: number;
  readonly to: number;
  readonly column: number;
}

/** The end of paths that cover `run` with `closure` (−1: none) and `widest` of the widest column. */
export interface PathEnd {
  readonly node: number;
  readonly run: number;
  readonly closure: number;
  readonly widest: number;
}

export interface FlowGraph {
  readonly arcs: readonly Arc[];
  readonly ends: readonly PathEnd[];
  /** Whether every layout is a path, but for those too dear to be in a plan within the slack. */
  readonly isComplete: boolean;
}

/** Keeps only what a plan may use that costs no more than `slack` above the bound, thousandths. */
export interface Pruning {
  readonly bound: Bound;
  readonly slack: number;
}

export interface GraphOptions {
  /** How many of the widest column may be given up; Infinity: any. */
  readonly depth: number;
  readonly pruning: Pruning | null;
  /** Gives up (null) beyond so many arcs and ends. */
  readonly mostArcs: number;
}

/** The graph of one offer's runs; null where it would be too large. */
export function flowGraph(problem: SetProblem, offer: number, options: GraphOptions): FlowGraph | null {
  const { columns } = problem.offers[offer]!;
  const step = stepOf(problem.offers[offer]!);
  const widths = columns.map(({ width }) => width / step);
  const found = endsOf(problem, offer, { ...options, step, widest: widths[0] ?? Number.POSITIVE_INFINITY });
  if (found === null) return null;
  const { pruning } = options;
  const costs = pruning?.bound.columnCosts[offer] ?? new Float64Array(columns.length);
  const slack = pruning?.slack ?? Number.MAX_VALUE;
  const size = 1 + found.ends.reduce((most, { node }) => Math.max(most, node), 0);
  if (size * Math.max(1, columns.length - 1) > 40 * options.mostArcs) return null;
  const worthOf = ({ run, closure, widest }: PathEnd) =>
    pruning === null
      ? 0
      : (closure < 0 ? 0 : problem.offers[offer]!.closures[closure]!.cost * FINE) +
        widest * (costs[0] ?? 0) -
        pruning.bound.leastOf[run]!;

  const { onward, reachedBy } = fromStart(widths, costs, size);
  const behind = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  for (const end of found.ends) behind[end.node] = Math.min(behind[end.node]!, worthOf(end));
  for (let at = size - 1; at >= 0; at--) {
    for (let column = 1; column < widths.length; column++) {
      const to = at + widths[column]!;
      if (to < size) behind[at] = Math.min(behind[at]!, costs[column]! + behind[to]!);
    }
  }
  const ends = found.ends.filter((end) => onward[end.node]! + worthOf(end) <= slack);
  const arcs: Arc[] = [];
  for (let from = 0; from < size; from++) {
    for (let column = Math.max(1, reachedBy[from]!); column < widths.length; column++) {
      const to = from + widths[column]!;
      if (to >= size || !(onward[from]! + costs[column]! + behind[to]! <= slack)) continue;
      arcs.push({ from, to, column });
      if (arcs.length + ends.length > options.mostArcs) return null;
    }
  }
  return { arcs, ends, isComplete: found.isComplete };
}

// Least cost to each node, and the first column, widest first, with which it can be reached in order of width.
function fromStart(widths: readonly number[], costs: Float64Array, size: number) {
  const onward = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  const reachedBy = new Int32Array(size).fill(widths.length);
  onward[0] = 0;
  reachedBy[0] = 0;
  for (let column = 1; column < widths.length; column++) {
    for (let to = widths[column]!; to < size; to++) {
      const before = onward[to - widths[column]!]!;
      if (before === Number.POSITIVE_INFINITY) continue;
      onward[to] = Math.min(onward[to]!, before + costs[column]!);
      reachedBy[to] = Math.min(reachedBy[to]!, column);
    }
  }
  return { onward, reachedBy };
}

function endsOf(
  problem: SetProblem,
  offer: number,
  { depth, step, widest, mostArcs }: GraphOptions & { step: number; widest: number },
) {
  const ends: PathEnd[] = [];
  let isComplete = true;
  const closures = [{ width: 0 }, ...problem.offers[offer]!.closures];
  for (const [run, { offer: own, length }] of problem.runs.entries()) {
    if (own !== offer) continue;
    for (const [index, { width }] of closures.entries()) {
      const left = (length - width) / step;
      if (left < 0 || !Number.isInteger(left)) continue;
      const whole = Math.floor(left / widest);
      if (whole > depth) isComplete = false;
      for (let given = 0; given <= Math.min(whole, depth); given++) {
        const taken = whole - given;
        ends.push({
          node: left - (taken === 0 ? 0 : taken * widest),
          run,
          closure: index - 1,
          widest: taken,
        });
        if (ends.length > mostArcs) return null;
      }
    }
  }
  return { ends, isComplete };
}

/**
 * Takes whole flows apart into paths.
 *
 * @param arcFlow - how often each arc is used; what enters a node leaves it or ends there
 * @param endFlow - how often each end is
 * @param columnCount - of the offer
 * @returns one entry a path and how often; null where the flow is none
 */
export function pathsOf(
  graph: FlowGraph,
  flows: { readonly arcFlow: readonly number[]; readonly endFlow: readonly number[] },
  columnCount: number,
): readonly { readonly end: PathEnd; readonly counts: readonly number[]; readonly times: number }[] | null {
  const into = new Map<number, number[]>();
  graph.arcs.forEach((arc, index) => {
    if (flows.arcFlow[index]! <= 0) return;
    const known = into.get(arc.to);
    if (known === undefined) into.set(arc.to, [index]);
    else known.push(index);
  });
  const left = [...flows.arcFlow];
  const paths: { end: PathEnd; counts: number[]; times: number }[] = [];
  for (const [index, end] of graph.ends.entries()) {
    let open = flows.endFlow[index]!;
    while (open > 0) {
      const taken: number[] = [];
      let times = open;
      for (let node = end.node; node !== 0; ) {
        const arc = into.get(node)?.find((each) => left[each]! > 0);
        if (arc === undefined) return null;
        taken.push(arc);
        times = Math.min(times, left[arc]!);
        node = graph.arcs[arc]!.from;
      }
      const counts = new Array<number>(columnCount).fill(0);
      if (columnCount > 0) counts[0] = end.widest;
      for (const arc of taken) {
        left[arc]! -= times;
        counts[graph.arcs[arc]!.column]! += 1;
      }
      paths.push({ end, counts, times });
      open -= times;
    }
  }
  return paths;
}
