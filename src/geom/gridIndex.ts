// Which segments lie near here? A uniform grid of square cells; a segment is listed in every cell it may touch.
//
//   ┌──┬──┬──┬──┐
//   │  │  │ ╱│  │     the segment ╱ is listed in the cells it passes,
//   ├──┼──┼╱─┼──┤     not in all cells of its bounding box
//   │  │ ╱│  │  │
//   └──┴──┴──┴──┘

import type { Point } from "./point.ts";

/** Segments by place. Items are known by their position in the list the index was built from. */
export interface GridIndex {
  /** Items that may lie within the reach of the segment from `a` to `b`, each once, in ascending order. */
  readonly near: (a: Point, b: Point, reach: number) => readonly number[];
}

const ROW = 0x4000000; // cells in a row: a key is then a whole number below 2^53 for any plan

/**
 * Builds the index. Cost grows with the number of cells the segments pass, so `cell` should be about a typical length.
 *
 * @param cell - side of a cell, mm
 */
export function buildGridIndex(segments: readonly (readonly [Point, Point])[], cell: number): GridIndex {
  // Items of one cell lie together in one list: thousands of small arrays would cost more than the search itself.
  const slots = new Map<number, number>();
  const listedSlots: number[] = [];
  const listedItems: number[] = [];
  const counts: number[] = [];
  segments.forEach(([a, b], item) => {
    visitCells(a, b, { cell, reach: 0 }, (key) => {
      let slot = slots.get(key);
      if (slot === undefined) {
        slot = counts.length;
        slots.set(key, slot);
        counts.push(0);
      }
      counts[slot]!++;
      listedSlots.push(slot);
      listedItems.push(item);
    });
  });
  const starts = new Int32Array(counts.length + 1);
  counts.forEach((count, slot) => {
    starts[slot + 1] = starts[slot]! + count;
  });
  const next = starts.slice();
  const items = new Int32Array(listedItems.length);
  listedItems.forEach((item, i) => {
    items[next[listedSlots[i]!]!++] = item;
  });
  return { near: nearIn({ slots, starts, items }, cell, segments.length) };
}

interface Cells {
  readonly slots: ReadonlyMap<number, number>;
  /** Where the items of each slot start in `items`. */
  readonly starts: Int32Array;
  readonly items: Int32Array;
}

function nearIn({ slots, starts, items }: Cells, cell: number, count: number): GridIndex["near"] {
  const seen = new Int32Array(count);
  let round = 0;
  return (a, b, reach) => {
    round++;
    const found: number[] = [];
    visitCells(a, b, { cell, reach }, (key) => {
      const slot = slots.get(key);
      if (slot === undefined) return;
      for (let i = starts[slot]!; i < starts[slot + 1]!; i++) {
        const item = items[i]!;
        if (seen[item] === round) continue;
        seen[item] = round;
        found.push(item);
      }
    });
    return found.length > 1 ? found.sort((p, q) => p - q) : found;
  };
}

function visitCells(a: Point, b: Point, grid: { cell: number; reach: number }, visit: (key: number) => void) {
  const { cell, reach } = grid;
  const [left, right] = a[0] <= b[0] ? [a, b] : [b, a];
  const slope = right[0] > left[0] ? (right[1] - left[1]) / (right[0] - left[0]) : 0;
  const low = Math.min(a[1], b[1]);
  const high = Math.max(a[1], b[1]);
  const first = Math.floor((left[0] - reach) / cell);
  const last = Math.floor((right[0] + reach) / cell);
  for (let column = first; column <= last; column++) {
    let [from, to] = [low, high];
    if (slope !== 0) {
      const enter = left[1] + slope * (Math.max(left[0], column * cell - reach) - left[0]);
      const leave = left[1] + slope * (Math.min(right[0], (column + 1) * cell + reach) - left[0]);
      from = Math.max(low, Math.min(enter, leave));
      to = Math.min(high, Math.max(enter, leave));
    }
    const top = Math.floor((to + reach) / cell);
    for (let row = Math.floor((from - reach) / cell); row <= top; row++) visit(column * ROW + row);
  }
}
