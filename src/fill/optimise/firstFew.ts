// Some few widths that cover every run: a subset to begin with, or that there is none.
//
// Widths are dropped one by one, each time the one without which the bound is lowest; where that comes to a dead end, the other
// ways are gone through as well. At last one width is changed for another as long as that lowers the bound.

import type { Mm } from "../../units.ts";
import { type Bound, boundIfAny } from "./bound.ts";
import { cheapestFor, layoutOf } from "./cheapest.ts";
import type { PricedBound } from "./columns.ts";
import { FINE, type Plan, type SetProblem } from "./setProblem.ts";
import { narrowed, widthsOf } from "./widths.ts";

/**
 * The bound with some widths alone, or as far as it is not over; null where nothing covers a run.
 *
 * @param before - of a problem with more widths
 */
export type PriceWidths = (
  on: ReadonlySet<Mm>,
  before: PricedBound,
  isOver: (held: PricedBound) => boolean,
) => PricedBound | null;

/** Subsets looked at before the answer is "unknown". */
const MOST_LOOKED_AT = 3000;
const MOST_SWAPS = 100;

/** Widths, few enough, with their bound. */
interface Few {
  readonly on: ReadonlySet<Mm>;
  readonly held: PricedBound;
}

/**
 * @param held - the bound with all widths
 * @returns "none": no `most` widths cover every run, of which all ways were gone through
 */
export function firstFew(
  problem: SetProblem,
  most: number,
  held: PricedBound,
  price: PriceWidths,
): ReadonlySet<Mm> | "none" | "unknown" {
  const dropped = droppedTo(problem, most, held, price);
  if (typeof dropped === "string") return dropped;
  const one = swapped(problem, dropped, price);
  // What fits together in a smaller set and one width more is another place to begin at.
  const smaller = most > 1 ? droppedTo(problem, most - 1, held, price) : "none";
  const other = typeof smaller === "string" ? null : swapped(problem, smaller, price);
  if (other === null) return one.on;
  const more = widthsOf(problem).filter((width) => !other.on.has(width));
  let best = other;
  for (const width of more) {
    const on = new Set([...other.on, width]);
    const isOver = ({ bound }: PricedBound) => bound.fine >= best.held.bound.fine;
    const added = price(on, held, isOver);
    if (added !== null && !isOver(added)) best = { on, held: added };
  }
  const two = best === other ? other : swapped(problem, best, price);
  return two.held.bound.fine < one.held.bound.fine ? two.on : one.on;
}

function droppedTo(
  problem: SetProblem,
  most: number,
  all: PricedBound,
  price: PriceWidths,
): Few | "none" | "unknown" {
  let left = MOST_LOOKED_AT;
  const visit = ({ on, held }: Few, stay: ReadonlySet<Mm>): Few | null => {
    if (on.size <= most) return { on, held };
    left -= on.size;
    if (left < 0) return null;
    const { staying, fines } = missedIn(problem, on, stay, held);
    let best: { readonly width: Mm; readonly held: PricedBound } | null = null;
    const isOver = ({ bound }: PricedBound) => best !== null && bound.fine >= best.held.bound.fine;
    for (const [width, fine] of fines) {
      if (best !== null && fine >= best.held.bound.fine) break;
      const without = price(removed(on, width), held, isOver);
      if (without !== null && !isOver(without)) best = { width, held: without };
    }
    if (best === null || staying.size > most) return null;
    const { width } = best;
    return (
      visit({ on: removed(on, width), held: best.held }, staying) ??
      visit({ on, held }, new Set([...staying, width]))
    );
  };
  return visit({ on: new Set(widthsOf(problem)), held: all }, new Set()) ?? (left < 0 ? "unknown" : "none");
}

interface Missed {
  /** Widths that have to stay: nothing covers some run without. */
  readonly staying: Set<Mm>;
  /** Of the others, what the bound is at least without them, the lowest first. */
  readonly fines: readonly (readonly [width: Mm, fine: number])[];
}

function missedIn(
  problem: SetProblem,
  on: ReadonlySet<Mm>,
  stay: ReadonlySet<Mm>,
  { prices }: PricedBound,
): Missed {
  const staying = new Set(stay);
  const fines: (readonly [Mm, number])[] = [];
  for (const width of on) {
    if (stay.has(width)) continue;
    const rest = narrowed(problem, (each) => each !== width && on.has(each)).problem;
    const bound = boundIfAny(rest, prices);
    if (bound === null) staying.add(width);
    else fines.push([width, bound.fine]);
  }
  fines.sort(([a, one], [b, other]) => one - other || a - b);
  return { staying, fines };
}

function removed(on: ReadonlySet<Mm>, width: Mm): ReadonlySet<Mm> {
  return new Set([...on].filter((each) => each !== width));
}

function swapped(problem: SetProblem, some: Few, price: PriceWidths): Few {
  let best = some;
  const swaps = () => {
    const off = widthsOf(problem).filter((width) => !best.on.has(width));
    return [...best.on].reverse().flatMap((out) => off.map((into) => ({ out, into })));
  };
  let next = swaps();
  for (let left = MOST_SWAPS; left > 0 && next.length > 0; left--) {
    const { out, into } = next.shift()!;
    const on = new Set([...removed(best.on, out), into]);
    const isOver = ({ bound }: PricedBound) => bound.fine >= best.held.bound.fine;
    const held = price(on, best.held, isOver);
    if (held === null || isOver(held)) continue;
    best = { on, held };
    next = swaps();
  }
  return best;
}

/** The plan that is cheapest at the prices of a bound. */
export function planAt(problem: SetProblem, { tables }: Bound): Plan {
  return problem.runs.map(({ offer, length, count }) => {
    const own = problem.offers[offer]!;
    const cheapest = cheapestFor(own, tables[offer]!, length, FINE);
    const layout = layoutOf(own, tables[offer]!, length, cheapest?.closure ?? -1);
    return [{ layout, times: count }];
  });
}
