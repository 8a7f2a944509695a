// The best bands for all cells of a soffit at once, with a strip along every cut that needs one.
//
//   │ A  ‖  B │      along the cut either A ends with a strip or B begins with one, whichever makes the better bands
//
// The cells are taken by u0. What is still to be decided of earlier cells is only which of them end with a strip, so the
// search keeps the best of every such pattern and is exact.

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

type Tally = Omit<Layout, "cells">;

interface Partial extends Tally {
  readonly plan: CellPlan;
  readonly before: Partial | null;
}

const NOTHING: Tally = {
  unbuilt: 0,
  cost: { closures: 0, fillers: 0, pieces: 0, strips: 0 },
  stripLength: 0,
  bands: [],
};

/** The best layout. Cells come by u0, then v0, as `cellsOf` gives them. */
export function layOutCells(cells: readonly Rect[], supports: Supports, tables: BandTables): Layout {
  const lowNeighbours = cells.map((): number[] => []);
  const lastHigh = cells.map((_, k) => k);
  for (const { low, high } of supports.pairs) {
    lowNeighbours[high]!.push(low);
    lastHigh[low] = Math.max(lastHigh[low]!, high);
  }
  // How the cells end that later ones still ask about → the best way there.
  let open = new Map<string, { readonly ends: ReadonlyMap<number, Ending>; readonly best: Partial | null }>([
    ["", { ends: new Map(), best: null }],
  ]);
  cells.forEach((rect, k) => {
    const { low, high } = supports.isOpen[k]!;
    const plans = plansOf(rect, tables, {
      low: low ? "must" : lowNeighbours[k]!.length > 0 ? "may" : "never",
      high: high ? "must" : lastHigh[k]! > k ? "may" : "never",
    });
    const next: typeof open = new Map();
    for (const { ends, best } of open.values()) {
      const before = lowNeighbours[k]!.map((low) => ends.get(low));
      for (const plan of plans) {
        if (!isCarried(plan, before)) continue;
        const kept = [...ends, [k, endingOf(plan)] as const].filter(([cell]) => lastHigh[cell]! > k);
        const key = kept.map(([cell, ending]) => `${cell} ${ending}`).join(", ");
        const tally = addPlan(best ?? NOTHING, plan);
        const known = next.get(key)?.best;
        const order =
          known == null ? -1 : compareLayouts(tally, known) || compareBands(tally.bands, known.bands);
        if (order < 0) next.set(key, { ends: new Map(kept), best: { ...tally, plan, before: best } });
      }
    }
    open = next;
  });
  const end = open.get("")?.best ?? null;
  const plans: CellPlan[] = [];
  for (let at = end; at !== null; at = at.before) plans.push(at.plan);
  const { unbuilt, cost, stripLength, bands: sizes } = end ?? NOTHING;
  return { cells: plans.reverse(), unbuilt, cost, stripLength, bands: sizes };
}

type Ending = "strip" | "panels" | "unbuilt";

function endingOf({ bands, highStrip }: CellPlan): Ending {
  return bands === null ? "unbuilt" : highStrip ? "strip" : "panels";
}

// Along every cut the panels of either side must end on a strip. A cell that is not built carries nothing.
function isCarried(plan: CellPlan, before: readonly (Ending | undefined)[]): boolean {
  if (plan.bands === null) return before.every((ending) => ending !== "panels");
  return plan.lowStrip || before.every((ending) => ending === "strip");
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
  if (bands === null) return { ...tally, unbuilt: unbuilt + (rect.u1 - rect.u0) * across };
  const strips = bands.cost.strips + Number(lowStrip) + Number(highStrip);
  const sizes = [...tally.bands, ...bands.lengths.map((length): BandSize => [length, across])];
  return {
    unbuilt,
    bands: sizes.sort((a, b) => b[0] - a[0] || b[1] - a[1]),
    stripLength: stripLength + strips * across,
    cost: {
      closures: cost.closures + bands.cost.closures,
      fillers: cost.fillers + bands.cost.fillers,
      pieces: cost.pieces + bands.cost.pieces,
      strips: cost.strips + strips,
    },
  };
}
