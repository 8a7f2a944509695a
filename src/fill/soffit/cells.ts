// What is left of a soffit when legs, columns and openings are taken off, cut into cells that reach from edge to edge.
//
//   v ↑   ┌────┬──────┐        cut lines run along v, through every corner where the
//         │    │      │        outline changes: each cell has one floor and one ceiling
//         │    └──┬───┤
//         │       │ ▣ │        strips lie along v, the panels between them along u
//         └───────┴───┘ → u
//
// The sweep counts: +1 inside the outline, −1 inside whatever is taken off. A place is left where the sum is 1.

import type { Point } from "../../geom/point.ts";
import { type Ring, ringArea } from "../../geom/ring.ts";
import type { Mm } from "../../units.ts";

/** A rectangle with its sides along u and v. */
export interface Rect {
  readonly u0: Mm;
  readonly v0: Mm;
  readonly u1: Mm;
  readonly v1: Mm;
  /** Cut out of a cell whose floor or ceiling slopes. */
  readonly isBesideSlope?: true;
}

/** A cell of the sweep: between two cut lines, a floor and a ceiling. Oblique walls make the floor or ceiling slope. */
export interface Cell {
  readonly u0: Mm;
  readonly u1: Mm;
  /** Floor and ceiling at `u0` and at `u1`. */
  readonly floor: readonly [Mm, Mm];
  readonly ceiling: readonly [Mm, Mm];
}

interface Edge {
  readonly a: Point;
  readonly b: Point;
  /** What passing it upward adds to the sum. */
  readonly step: 1 | -1;
}

/**
 * The cells of `outline` less `taken`, by u0, then floor. Neighbours between the same two lines are one cell. Rings may
 * run either way and those of `taken` may overlap. Cost: edges × cut lines.
 */
export function cellsOf(outline: Ring, taken: readonly Ring[]): readonly Cell[] {
  return sweep([...edgesOf(outline, 1), ...taken.flatMap((ring) => edgesOf(ring, -1))], 1);
}

/** The cells of what lies both in `one` and in `other`, less `taken`. */
export function cellsInBoth(one: Ring, other: Ring, taken: readonly Ring[]): readonly Cell[] {
  return sweep([...edgesOf(one, 1), ...edgesOf(other, 1), ...taken.flatMap((ring) => edgesOf(ring, -1))], 2);
}

// Places where the sum is at least `least`.
function sweep(edges: readonly Edge[], least: number): readonly Cell[] {
  const cuts = cutLines(edges);
  const open = new Map<string, Cell>();
  const done: Cell[] = [];
  for (let k = 0; k + 1 < cuts.length; k++) {
    const [u0, u1] = [cuts[k]!, cuts[k + 1]!];
    const still = new Set<string>();
    for (const { below, above } of intervalsBetween(edges, { u0, u1, least })) {
      const key = `${lineKey(below)} ${lineKey(above)}`;
      const before = open.get(key);
      const piece: Cell = {
        u0: before?.u0 ?? u0,
        u1,
        floor: [before?.floor[0] ?? heightAt(below, u0), heightAt(below, u1)],
        ceiling: [before?.ceiling[0] ?? heightAt(above, u0), heightAt(above, u1)],
      };
      open.set(key, piece);
      still.add(key);
    }
    for (const [key, cell] of open) {
      if (still.has(key)) continue;
      done.push(cell);
      open.delete(key);
    }
  }
  done.push(...open.values());
  return done.sort((a, b) => a.u0 - b.u0 || a.floor[0] - b.floor[0]);
}

/** The corners of a rectangle, counter-clockwise. */
export function rectRing({ u0, u1, v0, v1 }: Rect): Ring {
  return [
    [u0, v0],
    [u1, v0],
    [u1, v1],
    [u0, v1],
  ];
}

/** Area of cells that do not overlap, mm². */
export function areaOfCells(cells: readonly Cell[]): number {
  return cells.reduce((sum, cell) => sum + cellArea(cell), 0);
}

/** Area of a cell, mm². */
export function cellArea({ u0, u1, floor, ceiling }: Cell): number {
  return ((u1 - u0) * (ceiling[0] - floor[0] + ceiling[1] - floor[1])) / 2;
}

/** The largest rectangle from cut line to cut line on whole millimetres; null where there is none. */
export function rectWithin({ u0, u1, floor, ceiling }: Cell): Rect | null {
  const rect = {
    u0: Math.ceil(u0),
    u1: Math.floor(u1),
    v0: Math.ceil(Math.max(floor[0], floor[1])),
    v1: Math.floor(Math.min(ceiling[0], ceiling[1])),
  };
  if (rect.u1 <= rect.u0 || rect.v1 <= rect.v0) return null;
  const isSquare = floor[0] === floor[1] && ceiling[0] === ceiling[1];
  return isSquare ? rect : { ...rect, isBesideSlope: true };
}

/** The corners of a cell, counter-clockwise, a corner that two sides share once. */
export function cellRing({ u0, u1, floor, ceiling }: Cell): Ring {
  const ring: Point[] = [
    [u0, floor[0]],
    [u1, floor[1]],
  ];
  if (ceiling[1] > floor[1]) ring.push([u1, ceiling[1]]);
  if (ceiling[0] > floor[0]) ring.push([u0, ceiling[0]]);
  return ring;
}

// Edges along v are cut lines themselves and never between two of them.
function edgesOf(ring: Ring, weight: 1 | -1): readonly Edge[] {
  const turn = ringArea(ring) >= 0 ? weight : -weight;
  const found: Edge[] = [];
  ring.forEach((from, k) => {
    const to = ring[(k + 1) % ring.length]!;
    if (from[0] === to[0]) return;
    // Counter-clockwise, the ring's floor runs with u: passing it upward leads inside.
    const goesRight = to[0] > from[0];
    const step = goesRight === turn > 0 ? 1 : -1;
    found.push(goesRight ? { a: from, b: to, step } : { a: to, b: from, step });
  });
  return found;
}

function cutLines(edges: readonly Edge[]): readonly Mm[] {
  const cuts = new Set<Mm>();
  for (const { a, b } of edges) cuts.add(a[0]).add(b[0]);
  const oblique = edges.filter(({ a, b }) => a[1] !== b[1]);
  for (const edge of oblique) {
    for (const other of edges) {
      const at = crossing(edge, other);
      if (at !== null) cuts.add(at);
    }
  }
  return [...cuts].sort((a, b) => a - b);
}

function crossing(one: Edge, other: Edge): Mm | null {
  const slope = slopeOf(one) - slopeOf(other);
  if (slope === 0) return null;
  const at = (heightAt(other, 0) - heightAt(one, 0)) / slope;
  const low = Math.max(one.a[0], other.a[0]);
  const high = Math.min(one.b[0], other.b[0]);
  // A crossing at the end of an edge is a cut line already.
  return at > low + NEAR && at < high - NEAR ? at : null;
}

/** mm: two cut lines nearer than this are one line and rounding. */
const NEAR = 1e-6;

function slopeOf({ a, b }: Edge): number {
  return (b[1] - a[1]) / (b[0] - a[0]);
}

function heightAt({ a, b }: Edge, u: Mm): Mm {
  if (a[1] === b[1] || u === a[0]) return a[1];
  if (u === b[0]) return b[1];
  return a[1] + ((b[1] - a[1]) * (u - a[0])) / (b[0] - a[0]);
}

interface Interval {
  readonly below: Edge;
  readonly above: Edge;
}

function intervalsBetween(
  edges: readonly Edge[],
  { u0, u1, least }: { readonly u0: Mm; readonly u1: Mm; readonly least: number },
): readonly Interval[] {
  const middle = (u0 + u1) / 2;
  const spanning = edges
    .filter(({ a, b }) => a[0] <= u0 && b[0] >= u1)
    .map((edge) => ({ edge, v: heightAt(edge, middle) }))
    .sort((p, q) => p.v - q.v);
  const found: Interval[] = [];
  let sum = 0;
  let below: Edge | null = null;
  for (let k = 0; k < spanning.length; k++) {
    const { edge, v } = spanning[k]!;
    sum += edge.step;
    // Edges that lie on each other are passed together.
    if (k + 1 < spanning.length && spanning[k + 1]!.v === v) continue;
    if (below !== null && sum < least) {
      found.push({ below, above: edge });
      below = null;
    } else if (below === null && sum >= least) below = edge;
  }
  return found;
}

// Level edges at one height are one line, whoever they belong to.
function lineKey({ a, b }: Edge): string {
  return a[1] === b[1] ? String(a[1]) : `${a[0]},${a[1]},${b[0]},${b[1]}`;
}
