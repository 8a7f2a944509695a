// Which strip of form does a line of ties hold, and where does one row of it end and the next begin?
//
//        ·     ┌──window──┐     ·
//   tie ─●─ ─ ─│          │─ ─ ─●─      beside an opening: half the way to its jamb
//   tie ─●─ ─ ─┴─●─ ─ ─ ●─┴─ ─ ─●─      under it: half the way to the next line that has a tie there
//
// A strip reaches half the way to what holds the form next: a line of ties, a jamb, the end of the face. A line that stands
// where an opening is, or on its jamb, is cut there: what is under the sill is one line, what is over the head another.

import type { StripPart } from "../check/tieRows.ts";
import type { Mm } from "../units.ts";
import type { FaceRun, RunTie } from "./faceRuns.ts";

/** A stretch of a line of ties between floor, sills, heads and surface. */
export interface TieStretch {
  /** Index in the fill's list of ties. */
  readonly tie: number;
  readonly rows: readonly Mm[];
  readonly parts: readonly StripPart[];
}

/** The stretches of every line of a run that have a tie, upward. `surface`: of the concrete, above the floor. */
export function tieStretches(run: FaceRun, surface: Mm): readonly TieStretch[] {
  const held = run.ties.map((line) => heldStretches(run, line, surface));
  return run.ties.flatMap((line, index) =>
    held[index]!.map(({ from, to, rows }) => ({
      tie: line.tie,
      rows,
      parts: partsOf(run, held, { index, from, to }),
    })),
  );
}

interface Held {
  readonly from: Mm;
  readonly to: Mm;
  readonly rows: readonly Mm[];
}

function heldStretches(run: FaceRun, { place, heights }: RunTie, surface: Mm): readonly Held[] {
  const cuts = run.openings
    .filter(({ low, high }) => low <= place && place <= high)
    .sort((a, b) => a.sill - b.sill);
  const found: Held[] = [];
  let from = 0;
  for (const { sill, head } of [...cuts, { sill: surface, head: surface }]) {
    const rows = heights.filter((z) => z > from && z < sill);
    if (rows.length > 0) found.push({ from, to: sill, rows });
    from = Math.max(from, head);
  }
  return found;
}

function partsOf(
  run: FaceRun,
  held: readonly (readonly Held[])[],
  { index, from, to }: { readonly index: number; readonly from: Mm; readonly to: Mm },
): readonly StripPart[] {
  const breaks = new Set([from, to]);
  for (const { sill, head } of run.openings) {
    for (const z of [sill, head]) if (z > from && z < to) breaks.add(z);
  }
  const heights = [...breaks].sort((a, b) => a - b);
  return heights.slice(1).map((top, k): StripPart => {
    const foot = heights[k]!;
    const z = (foot + top) / 2;
    const reach = restraint(run, held, { index, z, step: 1 }) - restraint(run, held, { index, z, step: -1 });
    return { from: foot, to: top, width: Math.max(0, reach / 2) };
  });
}

// The place of what holds the form next at a height, up or down the run.
function restraint(
  run: FaceRun,
  held: readonly (readonly Held[])[],
  { index, z, step }: { readonly index: number; readonly z: Mm; readonly step: 1 | -1 },
): Mm {
  const { place } = run.ties[index]!;
  let nearest = step > 0 ? run.length : 0;
  const nearer = (other: Mm) => {
    if ((other - place) * step >= 0 && (nearest - other) * step > 0) nearest = other;
  };
  for (const { low, high, sill, head } of run.openings) {
    if (sill < z && z < head) nearer(step > 0 ? low : high);
  }
  for (let k = index + step; k >= 0 && k < run.ties.length; k += step) {
    if (run.ties[k]!.place === place) continue;
    if (!held[k]!.some(({ from, to }) => from < z && z < to)) continue;
    nearer(run.ties[k]!.place);
    break;
  }
  return nearest;
}
