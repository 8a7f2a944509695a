// The best bands for all cells of a soffit at once, with a strip along every cut that needs one.
//
//   │ A  ‖  B │      along the cut either A ends with a strip or B begins with one, whichever makes the better bands
//
// The cells are taken by u0. What a later cell asks of all earlier ones that it meets is one thing: do they all end with a
// strip, does one of them end with panels? The search keeps the best of every pattern of such answers and is exact.

import type { Mm } from "../../units.ts";
import type { Bands, BandTables, SoffitCost } from "./bandTables.ts";
import type { Rect } from "./cells.ts";
import type { Supports } from "./supports.ts";

/** What is built in one cell; `bands` null: nothing can be. */
export interface CellPlan {
  readonly rect: Rect;
  /** Whether a strip lies in the cell along its side at u0, at u1. */
  readonly lowStrip: boolean;
  readonly highStrip: boolean;
  readonly bands: Bands | null;
}

export interface Layout {
  readonly cells: readonly CellPlan[];
  /** Area of cells that cannot be built, mm². */
  readonly unbuilt: number;
  readonly cost: SoffitCost;
  /** Of all strips, mm. */
  readonly stripLength: Mm;
  /** Every band as [length, width across], the longest first: what settles equals whichever way the plan lies. */
  readonly bands: readonly BandSize[];
}

type BandSize = readonly [length: Mm, across: Mm];

/** Orders layouts: what cannot be built, closures, panels not standard, panels, strips, length of strips. */
export function compareLayouts(a: Tally, b: Tally): number {
  return (
    a.unbuilt - b.unbuilt ||
    a.cost.closures - b.cost.closures ||
    a.cost.fillers - b.cost.fillers ||
    a.cost.pieces - b.cost.pieces ||
    a.cost.strips - b.cost.strips ||
    a.stripLength - b.stripLength
  );
}

/** Negative where the bands of `a` are longer, compared one after the other from the longest. */
export function compareBands(a: readonly BandSize[], b: readonly BandSize[]): number {
  for (let k = 0; k < Math.min(a.length, b.length); k++) {
    const order = b[k]![0] - a[k]![0] || b[k]![1] - a[k]![1];
    if (order !== 0) return order;
  }
  return a.length - b.length;
}

type Tally = Pick<Layout, "unbuilt" | "cost" | "stripLength">;

interface Partial extends Tally {
  readonly plan: CellPlan;
  readonly before: Partial | null;
}

const NOTHING: Tally = {
  unbuilt: 0,
  cost: { closures: 0, fillers: 0, pieces: 0, strips: 0 },
  stripLength: 0,
};

/** The best layout. Cells come by u0, then v0, as `cellsOf` gives them. */
export function layOutCells(cells: readonly Rect[], supports: Supports, tables: BandTables): Layout {
  const highNeighbours = cells.map((): number[] => []);
  const hasLow = cells.map(() => false);
  for (const { low, high } of supports.pairs) {
    highNeighbours[low]!.push(high);
    hasLow[high] = true;
  }
  let open: readonly State[] = [{ endings: [], best: null }];
  cells.forEach((rect, k) => {
    const { low, high } = supports.isOpen[k]!;
    const plans = plansOf(rect, tables, {
      low: low ? "must" : hasLow[k] ? "may" : "never",
      high: high ? "must" : highNeighbours[k]!.length > 0 ? "may" : "never",
    });
    const next = new Map<string, State>();
    for (const { endings, best } of open) {
      const before = endings.find(({ cell }) => cell === k)?.ending ?? "strip";
      const others = endings.filter(({ cell }) => cell !== k);
      // Plans that end alike lead to one state: its key is made once.
      const ways = new Map<Ending, { readonly key: string; readonly after: State["endings"] }>();
      for (const plan of plans) {
        if (!isCarried(plan, before)) continue;
        const ending = endingOf(plan);
        let way = ways.get(ending);
        if (way === undefined) {
          const after = withEnding(others, highNeighbours[k]!, ending);
          way = { after, key: after.map((one) => `${one.cell} ${one.ending}`).join(", ") };
          ways.set(ending, way);
        }
        const known = next.get(way.key)?.best ?? null;
        const partial: Partial = { ...addPlan(best ?? NOTHING, plan), plan, before: best };
        if (known === null || isBetter(partial, known))
          next.set(way.key, { endings: way.after, best: partial });
      }
    }
    open = [...next.values()];
  });
  // Every cell that others wait for has come: one state is left.
  const end = open[0]?.best ?? null;
  const plans: CellPlan[] = [];
  for (let at = end; at !== null; at = at.before) plans.push(at.plan);
  const { unbuilt, cost, stripLength } = end ?? NOTHING;
  return { cells: plans.reverse(), unbuilt, cost, stripLength, bands: bandsOf(end) };
}

/** How the cells end that a later cell meets: the worst of them, from left to right. */
type Ending = "strip" | "unbuilt" | "panels";
const ENDINGS: readonly Ending[] = ["strip", "unbuilt", "panels"];

interface State {
  /** Of the cells still to come that meet one that is laid. */
  readonly endings: readonly { readonly cell: number; readonly ending: Ending }[];
  readonly best: Partial | null;
}

function withEnding(endings: State["endings"], cells: readonly number[], ending: Ending): State["endings"] {
  if (cells.length === 0) return endings;
  const worse = (other: Ending) => (ENDINGS.indexOf(other) > ENDINGS.indexOf(ending) ? other : ending);
  const known = endings.map((one) =>
    cells.includes(one.cell) ? { cell: one.cell, ending: worse(one.ending) } : one,
  );
  const fresh = cells.filter((cell) => !endings.some((one) => one.cell === cell));
  return [...known, ...fresh.map((cell) => ({ cell, ending }))];
}

function endingOf({ bands, highStrip }: CellPlan): Ending {
  return bands === null ? "unbuilt" : highStrip ? "strip" : "panels";
}

// Along every cut the panels of either side must end on a strip. A cell that is not built carries nothing.
function isCarried(plan: CellPlan, before: Ending): boolean {
  if (plan.bands === null) return before !== "panels";
  return plan.lowStrip || before === "strip";
}

// Only equals are compared band by band: to list and sort all bands costs more than the rest.
function isBetter(one: Partial, known: Partial): boolean {
  const order = compareLayouts(one, known);
  return order < 0 || (order === 0 && compareBands(bandsOf(one), bandsOf(known)) < 0);
}

function bandsOf(last: Partial | null): readonly BandSize[] {
  const sizes: BandSize[] = [];
  for (let at = last; at !== null; at = at.before) {
    const { bands, rect } = at.plan;
    for (const length of bands?.lengths ?? []) sizes.push([length, rect.v1 - rect.v0]);
  }
  return sizes.sort((a, b) => b[0] - a[0] || b[1] - a[1]);
}

const STRIPS: Readonly<Record<SideStrip, readonly boolean[]>> = {
  must: [true],
  may: [false, true],
  never: [false],
};

/** Whether a strip lies along a side: where nothing carries it, where another cell meets it, beside a connector. */
type SideStrip = "must" | "may" | "never";

/** Every way to build a cell, and last of all not to build it. */
function plansOf(
  rect: Rect,
  tables: BandTables,
  side: { readonly low: SideStrip; readonly high: SideStrip },
): readonly CellPlan[] {
  const strip = tables.stripWidth;
  const plans: CellPlan[] = [];
  for (const lowStrip of STRIPS[side.low]) {
    for (const highStrip of STRIPS[side.high]) {
      const count = Number(lowStrip) + Number(highStrip);
      if (count > 0 && strip === null) continue;
      const along = rect.u1 - rect.u0 - count * (strip ?? 0);
      const bands = along < 0 ? null : tables.bands(along, rect.v1 - rect.v0);
      if (bands !== null) plans.push({ rect, lowStrip, highStrip, bands });
    }
  }
  plans.push({ rect, lowStrip: false, highStrip: false, bands: null });
  return plans;
}

function addPlan(tally: Tally, { rect, lowStrip, highStrip, bands }: CellPlan): Tally {
  const { unbuilt, cost, stripLength } = tally;
  const across = rect.v1 - rect.v0;
  if (bands === null) return { cost, stripLength, unbuilt: unbuilt + (rect.u1 - rect.u0) * across };
  const strips = bands.cost.strips + Number(lowStrip) + Number(highStrip);
  return {
    unbuilt,
    stripLength: stripLength + strips * across,
    cost: {
      closures: cost.closures + bands.cost.closures,
      fillers: cost.fillers + bands.cost.fillers,
      pieces: cost.pieces + bands.cost.pieces,
      strips: cost.strips + strips,
    },
  };
}
