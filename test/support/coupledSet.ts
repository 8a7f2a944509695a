// One set for pours of walls whose joints need not match: column generation over whole walls, and the best plan of its columns.
// What it costs to match every joint is seen beside it.

import { createCoverTable } from "../../src/fill/coverTable.ts";
import type { SetProblem } from "../../src/fill/optimise/setProblem.ts";
import { coverZone } from "../../src/fill/zoneCover.ts";
import { createModelBuilder, type Entry } from "../../src/solver/builder.ts";
import type { Solver } from "../../src/solver/linear.ts";
import { bestCoupled, type CoupledLayout } from "./coupledFaces.ts";
import { cut, type Element } from "./cutWall.ts";
import { instanceProblem, instanceText } from "./setInstance.ts";

interface CoupledWall {
  readonly count: number;
  readonly a: readonly Element[];
  readonly b: readonly Element[];
}

export interface CoupledInstance {
  readonly widths: readonly number[];
  readonly standard: number;
  readonly price: Readonly<Record<string, number>>;
  readonly handling: number;
  readonly closure: {
    readonly min: number;
    readonly max: number;
    readonly step: number;
    readonly cost: number;
    readonly perMm: number;
  };
  readonly unmatched: number;
  readonly lower: number;
  readonly upper: number;
  readonly pours: readonly { readonly id: string; readonly walls: readonly CoupledWall[] }[];
}

export function readCoupled(name: string): CoupledInstance {
  return JSON.parse(instanceText(name));
}

/** The instance with every joint matched: what stands in intervals is chosen, what stands in zones is not. */
export function strictProblem(instance: CoupledInstance): SetProblem {
  const { closure, handling, widths } = instance;
  const table = createCoverTable(
    widths.map((width) => ({ width, standard: width === instance.standard })),
    { least: closure.min, greatest: closure.max },
    0,
  );
  const kinds = [...widths].sort((x, y) => y - x);
  const standing = new Array<number>(instance.pours.length * kinds.length).fill(0);
  let constant = 0;
  const pours = instance.pours.map(({ id, walls }, day) => {
    const runs = new Map<number, number>();
    for (const { count, a, b } of walls) {
      for (const { kind, from, to } of cut(a, b)) {
        if (kind === "interval") {
          runs.set(to - from, (runs.get(to - from) ?? 0) + count);
          continue;
        }
        const cover = coverZone(to - from, table);
        if (cover.status !== "covered") throw new RangeError(`nothing covers a zone of ${to - from}`);
        for (const width of cover.widths) {
          standing[day * kinds.length + kinds.indexOf(width)]! += count;
          constant += count * handling;
        }
        if (cover.closure !== null) constant += count * (closure.cost + closure.perMm * cover.closure);
      }
    }
    return { id, runs: [...runs] };
  });
  const problem = instanceProblem({ ...instance, pours }, 60);
  // Both faces of an interval take one sequence.
  const offers = problem.offers.map(({ columns, closures }) => ({
    columns: columns.map((column) => ({
      ...column,
      cost: 2 * column.cost,
      uses: column.uses.map((use) => ({ ...use, count: 2 })),
    })),
    closures: closures.map((strip) => ({ ...strip, cost: 2 * strip.cost })),
  }));
  return { ...problem, offers, standing, constant };
}

interface Column {
  readonly pour: number;
  readonly wall: number;
  readonly work: number;
  readonly layout: CoupledLayout;
}

const MOST_ROUNDS = 10;

/** A bound, proven in whole thousandths of a cent, and a plan of the columns found; cents. */
export function coupledSet(instance: CoupledInstance, solver: Solver, steps: number) {
  const { pours, widths } = instance;
  const columns: Column[] = [];
  let bound = 0;
  let prices = pours.map(() => widths.map(() => 0));
  let known = -1;
  for (let round = 0; round < MOST_ROUNDS && columns.length > known; round++) {
    known = columns.length;
    let sum = 0;
    pours.forEach(({ walls }, pour) => {
      walls.forEach((wall, k) => {
        const layout = layoutAt(instance, wall, prices[pour]!);
        sum += wall.count * layout.cost;
        const isKnown = columns.some(
          (each) => each.pour === pour && each.wall === k && isSame(each.layout, layout),
        );
        if (!isKnown) columns.push({ pour, wall: k, work: workOf(instance, layout), layout });
      });
    });
    bound = Math.max(bound, sum);
    const solved = master(instance, columns, solver, null);
    if (solved.cost * 1000 - bound < 1000) break;
    prices = solved.prices;
  }
  return { bound: Math.ceil(bound / 1000 / 60) * 60, cost: master(instance, columns, solver, steps).cost };
}

// Costs in thousandths of a cent, so that prices are whole.
function layoutAt(
  instance: CoupledInstance,
  { a, b }: CoupledWall,
  prices: readonly number[],
): CoupledLayout {
  const { widths, handling, closure, unmatched } = instance;
  const places = [...a, ...b].flatMap(({ from, to }) => [from, to]);
  const isOnGrid = places.every((x) => (x - places[0]!) % 50 === 0);
  const panels = widths.map((width, kind) => ({ width, cost: handling * 1000 + prices[kind]!, kind }));
  const strips: { width: number; cost: number; kind: number }[] = [];
  // On the grid of 50 a strip costs far more than any panel saves.
  for (let width = closure.min; !isOnGrid && width <= closure.max; width += closure.step)
    strips.push({ width, cost: (closure.cost + closure.perMm * width) * 1000, kind: -1 });
  const costs = { pieces: [...panels, ...strips], unmatched: unmatched * 1000 };
  const layout = bestCoupled({ a, b }, costs, isOnGrid ? 50 : 10);
  if (layout === null) throw new RangeError("a wall has no layout");
  return layout;
}

function workOf({ handling, closure, unmatched }: CoupledInstance, layout: CoupledLayout): number {
  const pieces = layout.counts.reduce((sum, count) => sum + count, 0);
  const strips = layout.closures.reduce((sum, width) => sum + closure.cost + closure.perMm * width, 0);
  return pieces * handling + strips + layout.unmatched * unmatched;
}

function isSame(one: CoupledLayout, other: CoupledLayout): boolean {
  return (
    one.unmatched === other.unmatched &&
    one.closures.join() === other.closures.join() &&
    one.counts.every((count, k) => count === other.counts[k])
  );
}

function master(instance: CoupledInstance, columns: readonly Column[], solver: Solver, steps: number | null) {
  const { pours, widths, price } = instance;
  const isWhole = steps !== null;
  const builder = createModelBuilder();
  const demands = pours.map(({ walls }) => walls.map(({ count }) => builder.addRow(count, count)));
  const limits = pours.map(() => widths.map(() => builder.addRow(Number.NEGATIVE_INFINITY, 0)));
  widths.forEach((width, kind) => {
    const entries = limits.map((rows): Entry => [rows[kind]!, -1]);
    builder.addColumn({ cost: price[width]!, isWhole, upper: 10_000, entries });
  });
  for (const { pour, wall, work, layout } of columns) {
    const entries: Entry[] = [[demands[pour]![wall]!, 1]];
    layout.counts.forEach((count, kind) => {
      if (count > 0) entries.push([limits[pour]![kind]!, count]);
    });
    builder.addColumn({ cost: work, isWhole, upper: pours[pour]!.walls[wall]!.count, entries });
  }
  const model = builder.build();
  const { values, duals } = isWhole ? solver(model, { gap: 59, steps }) : solver(model);
  let counted = 0;
  values?.forEach((value, k) => {
    counted += (isWhole ? Math.round(value) : value) * model.cost[k]!;
  });
  return {
    cost: counted,
    prices: duals === null ? pours.map(() => widths.map(() => 0)) : wholePrices(instance, limits, duals),
  };
}

// Rounded down, and in sum over the pours no more than a piece costs.
function wholePrices(
  { widths, price }: CoupledInstance,
  limits: readonly (readonly number[])[],
  duals: Float64Array,
): number[][] {
  const prices = limits.map((rows) => rows.map((row) => Math.max(0, Math.floor(-duals[row]! * 1000))));
  widths.forEach((width, kind) => {
    let left = price[width]! * 1000;
    for (const own of prices) {
      own[kind] = Math.min(own[kind]!, left);
      left -= own[kind]!;
    }
  });
  return prices;
}
