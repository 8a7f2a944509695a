// What each side of a cell rests on: connectors, the next cell, or nothing.
//
//   connector ▓│ cell A │ cell B │▓ connector        A | B: one of the two must have a strip along the cut
//              │        └────────┤  open             open: the cell needs a strip of its own there

import { type Ring, ringArea } from "../../geom/ring.ts";
import type { Mm } from "../../units.ts";
import type { Rect } from "./cells.ts";

export interface Supports {
  /** For each cell: whether its side at u0, at u1, has a stretch that nothing carries. */
  readonly isOpen: readonly { readonly low: boolean; readonly high: boolean }[];
  /** Cells that meet along a cut: `low` ends where `high` begins. */
  readonly pairs: readonly { readonly low: number; readonly high: number }[];
}

interface Stretch {
  readonly v0: Mm;
  readonly v1: Mm;
}

/** Looks at both sides of every cell. `legs` are the connectors' horizontal legs. */
export function supportsOf(cells: readonly Rect[], legs: readonly Ring[]): Supports {
  const edges = legEdges(legs);
  const pairs: { low: number; high: number }[] = [];
  const covered = cells.map(({ u0, u1 }) => ({
    low: [...(edges.facingHigh.get(u0) ?? [])],
    high: [...(edges.facingLow.get(u1) ?? [])],
  }));
  cells.forEach((low, i) => {
    cells.forEach((high, j) => {
      if (low.u1 !== high.u0) return;
      const shared = { v0: Math.max(low.v0, high.v0), v1: Math.min(low.v1, high.v1) };
      if (shared.v1 <= shared.v0) return;
      pairs.push({ low: i, high: j });
      covered[i]!.high.push(shared);
      covered[j]!.low.push(shared);
    });
  });
  return {
    pairs,
    isOpen: cells.map((cell, k) => ({
      low: !isCovered(cell, covered[k]!.low),
      high: !isCovered(cell, covered[k]!.high),
    })),
  };
}

/** Upright edges of the legs by their place along u, by the side on which the soffit lies. */
function legEdges(legs: readonly Ring[]) {
  const facingHigh = new Map<Mm, Stretch[]>();
  const facingLow = new Map<Mm, Stretch[]>();
  for (const leg of legs) {
    const turn = ringArea(leg) >= 0 ? 1 : -1;
    leg.forEach((from, k) => {
      const to = leg[(k + 1) % leg.length]!;
      if (from[0] !== to[0] || from[1] === to[1]) return;
      // Counter-clockwise, an edge that goes up has the leg on its left, at lesser u.
      const list = to[1] > from[1] === turn > 0 ? facingHigh : facingLow;
      const stretch = { v0: Math.min(from[1], to[1]), v1: Math.max(from[1], to[1]) };
      const known = list.get(from[0]);
      if (known === undefined) list.set(from[0], [stretch]);
      else known.push(stretch);
    });
  }
  return { facingHigh, facingLow };
}

function isCovered({ v0, v1 }: Rect, stretches: readonly Stretch[]): boolean {
  let reached = v0;
  for (const stretch of [...stretches].sort((a, b) => a.v0 - b.v0)) {
    if (stretch.v0 > reached) break;
    reached = Math.max(reached, stretch.v1);
  }
  return reached >= v1;
}
