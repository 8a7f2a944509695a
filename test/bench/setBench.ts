// What the choice of one set costs: seeded schemes, the bound, the plan and the proof beside filling wall by wall and beside a
// plain model of patterns, in one run. Prints; it never passes or fails by the clock.

import { coverInterval } from "../../src/fill/cover.ts";
import { createCoverTable } from "../../src/fill/coverTable.ts";
import { costOf, workOf } from "../../src/fill/optimise/countPlan.ts";
import { optimiseSet } from "../../src/fill/optimise/optimiseSet.ts";
import { type Layout, type Plan, placeIn, type SetProblem } from "../../src/fill/optimise/setProblem.ts";
import { createModelBuilder, type Entry } from "../../src/solver/builder.ts";
import { loadHighs } from "../../src/solver/highs.ts";
import type { Solver } from "../../src/solver/linear.ts";
import { seeded } from "./gridUnit.ts";

const WIDTHS = [600, 550, 500, 450, 400, 350, 300, 250, 200, 150, 100, 50];
const STRIP = { least: 20, greatest: 90 };
/** Simplex steps the plain model of patterns may take: a limit that ends on every machine. */
const PATTERN_STEPS = 60_000;

/** Runs of 300 to 6,000 mm, one in seven off the grid of 50; amounts in cents. */
function scheme(pours: number, runs: number, seed: number): SetProblem {
  const random = seeded(seed);
  const below = (n: number) => Math.floor(random() * n);
  const list = Array.from({ length: pours }, (_, offer) =>
    Array.from({ length: runs - below(10) }, () => ({
      offer,
      length:
        300 + 50 * Math.floor((below(115) * below(115)) / 115) + (below(7) === 0 ? 10 * (1 + below(4)) : 0),
      count: 1,
    })),
  ).flat();
  const counts = new Map<string, { offer: number; length: number; count: number }>();
  for (const run of list) {
    const key = `${run.offer} ${run.length}`;
    counts.set(key, { ...run, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return {
    kinds: WIDTHS.map((width) => ({
      price: 4500 + (7000 * width * 24) / 10_000,
      owned: 0,
      most: Number.POSITIVE_INFINITY,
    })),
    days: pours,
    standing: new Array<number>(pours * WIDTHS.length).fill(0),
    offers: Array.from({ length: pours }, (_, day) => ({
      columns: WIDTHS.map((width, kind) => ({
        width,
        cost: 60,
        blemish: width === 600 ? 0 : 1,
        uses: [{ day, kind, count: 1 }],
      })),
      closures: Array.from({ length: 71 }, (_, k) => ({ width: 20 + k, cost: 50_040 + 30 * (20 + k) })),
    })),
    runs: [...counts.values()],
    kindCharge: 0,
    shortage: 1e8,
    constant: 0,
    step: 60,
  };
}

/** Every run as is best for it alone. */
export function wallByWall(problem: SetProblem): Plan {
  const table = createCoverTable(
    WIDTHS.map((width) => ({ width, standard: width === 600 })),
    STRIP,
    100,
  );
  return problem.runs.map(({ length, count }) => {
    const cover = coverInterval(length, table);
    if (cover.status !== "covered") throw new RangeError(`no cover of ${length}`);
    const counts = WIDTHS.map((width) => cover.widths.filter((own) => own === width).length);
    return [
      {
        layout: { counts, closure: cover.closure === null ? -1 : cover.closure - STRIP.least },
        times: count,
      },
    ];
  });
}

/** Layouts of at most two fillers more than the least, all of them as columns of one mixed-integer program: what it reached. */
function patternMip(problem: SetProblem, solver: Solver): string {
  const begin = performance.now();
  const builder = createModelBuilder();
  const demand = problem.runs.map(({ count }) => builder.addRow(count, count));
  const rows = problem.standing.map(() => builder.addRow(Number.NEGATIVE_INFINITY, 0));
  problem.kinds.forEach(({ price }, kind) => {
    const entries = Array.from(
      { length: problem.days },
      (_, day) => [rows[placeIn(problem, day, kind)]!, -1] as const,
    );
    builder.addColumn({ cost: price, isWhole: true, entries });
  });
  problem.runs.forEach(({ offer, length, count }, run) => {
    for (const layout of patterns(problem, offer, length)) {
      const entries: Entry[] = [[demand[run]!, 1]];
      layout.counts.forEach((pieces, kind) => {
        if (pieces > 0) entries.push([rows[placeIn(problem, offer, kind)]!, pieces]);
      });
      builder.addColumn({ cost: workOf(problem, offer, layout), upper: count, isWhole: true, entries });
    }
  });
  const model = builder.build();
  const { status, values } = solver(model, { gap: problem.step * 0.999, steps: PATTERN_STEPS });
  const seconds = ((performance.now() - begin) / 1000).toFixed(1);
  if (values === null) return `none (${status}, ${seconds} s)`;
  const cost = values.reduce((sum, value, k) => sum + Math.round(value) * model.cost[k]!, 0);
  return `${Math.round(cost / 100)} (${status}, ${seconds} s)`;
}

function patterns(problem: SetProblem, offer: number, length: number): readonly Layout[] {
  const found: Layout[] = [];
  const extend = (
    counts: readonly number[],
    from: number,
    left: number,
    closure: number,
    fillers: number,
  ): void => {
    if (left % 600 === 0) found.push({ counts: [left / 600, ...counts], closure });
    if (fillers === 0) return;
    for (let column = from; column < WIDTHS.length; column++) {
      const width = WIDTHS[column]!;
      if (width <= left)
        extend(counts.with(column - 1, counts[column - 1]! + 1), column, left - width, closure, fillers - 1);
    }
  };
  const none = new Array<number>(WIDTHS.length - 1).fill(0);
  if (length % 50 === 0) extend(none, 1, length, -1, 3);
  else {
    problem.offers[offer]!.closures.forEach(({ width }, closure) => {
      if (width <= length && (length - width) % 50 === 0) extend(none, 1, length - width, closure, 3);
    });
  }
  return found;
}

/** Prints one row for each scheme. */
export async function benchSets(): Promise<void> {
  const solver = await loadHighs();
  const rows: Record<string, string | number>[] = [];
  for (const { pours, runs, seed, isProven } of [
    { pours: 8, runs: 100, seed: 1, isProven: true },
    { pours: 8, runs: 100, seed: 2, isProven: true },
    { pours: 30, runs: 150, seed: 3, isProven: false },
  ]) {
    const problem = scheme(pours, runs, seed);
    const start = wallByWall(problem);
    const begin = performance.now();
    const seconds = () => Number(((performance.now() - begin) / 1000).toFixed(1));
    const steps = optimiseSet(problem, start, { solver, ...(!isProven && { proofSteps: 1 }) });
    const first = { bound: 0, half: 0, tenth: 0, plan: 0 };
    let planned = 0;
    let step = steps.next();
    for (; step.done !== true; step = steps.next()) {
      const { stage, best, bound } = step.value;
      if (stage === "bound") first.bound = seconds();
      if (first.half === 0 && best - bound <= 0.005 * best) first.half = seconds();
      if (first.tenth === 0 && best - bound <= 0.001 * best) first.tenth = seconds();
      if (stage === "proof") [first.plan, planned] = [seconds(), best];
    }
    const { status, cost, certified } = step.value;
    const total = seconds();
    const euros = (cents: number) => Math.round(cents / 100);
    const pattern = patternMip(problem, solver);
    rows.push({
      scheme: `${pours} × ${runs}`,
      "wall by wall": euros(costOf(problem, start).total),
      bound: euros(certified),
      "bound s": first.bound,
      "0.5 % s": first.half,
      "0.1 % s": first.tenth,
      plan: euros(planned === 0 ? cost : planned),
      "plan s": first.plan === 0 ? total : first.plan,
      "gap %": Number(((100 * ((planned === 0 ? cost : planned) - certified)) / cost).toFixed(3)),
      end: `${status} ${euros(cost)}`,
      "end s": total,
      [`patterns, ${PATTERN_STEPS} steps`]: pattern,
      "memory MB": Math.round(process.memoryUsage().rss / 1e6),
    });
  }
  console.table(rows);
}
