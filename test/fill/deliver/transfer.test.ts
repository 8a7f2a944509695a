// What goes where from one day to the next: by hand, and against every way there is.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Spot } from "../../../src/fill/deliver/homes.ts";
import { type Heap, type Transfer, transfer } from "../../../src/fill/deliver/transfer.ts";

const at = (place: number): Spot => ({ pour: 0, place });
const heaps = (counts: readonly number[]): readonly Heap[] =>
  counts.flatMap((count, place) => (count === 0 ? [] : [{ ...at(place), count }]));

/** A room's own is the room of its index; sizes by index. */
function carried(supply: readonly number[], demand: readonly number[], sizes: readonly number[]): Transfer {
  return transfer(heaps(supply), heaps(demand), {
    ownOf: ({ place }) => at(place),
    isEqual: (a, b) => sizes[a.place] === sizes[b.place],
  });
}

const sum = (counts: readonly { readonly count: number }[]) =>
  counts.reduce((all, { count }) => all + count, 0);

const told = ({ moves, fetched, returned }: Transfer) => ({
  moves: moves.map(({ from, to, count, kind }) => `${count} ${from.place}→${to.place} ${kind}`),
  fetched: fetched.map(({ place, count }) => `${count} ${place}`),
  returned: returned.map(({ place, count }) => `${count} ${place}`),
});

describe("the pieces of one kind", () => {
  it.each([
    {
      why: "the same unit again: all go along",
      supply: [4, 2],
      demand: [4, 2],
      sizes: [8, 4],
      moves: ["4 0→0 own-room", "2 1→1 own-room"],
    },
    {
      why: "more than before",
      supply: [4, 0],
      demand: [6, 1],
      sizes: [8, 4],
      moves: ["4 0→0 own-room"],
      fetched: ["2 0", "1 1"],
    },
    {
      why: "fewer than before",
      supply: [4, 2],
      demand: [1, 0],
      sizes: [8, 4],
      moves: ["1 0→0 own-room"],
      returned: ["3 0", "2 1"],
    },
    {
      why: "what one room has too many another lacks",
      supply: [4, 1],
      demand: [2, 3],
      sizes: [8, 4],
      moves: ["2 0→0 own-room", "1 1→1 own-room", "2 0→1 other-room"],
    },
    {
      why: "a room of equal size before a nearer one",
      supply: [3, 0, 0],
      demand: [1, 1, 2],
      sizes: [8, 4, 8],
      moves: ["1 0→0 own-room", "2 0→2 equal-room"],
      fetched: ["1 1"],
    },
    {
      why: "nothing before",
      supply: [0, 0],
      demand: [1, 2],
      sizes: [1, 1],
      moves: [],
      fetched: ["1 0", "2 1"],
    },
    {
      why: "nothing after",
      supply: [1, 2],
      demand: [0, 0],
      sizes: [1, 1],
      moves: [],
      returned: ["1 0", "2 1"],
    },
  ])("$why", ({ supply, demand, sizes, moves, fetched = [], returned = [] }) => {
    expect(told(carried(supply, demand, sizes))).toEqual({ moves, fetched, returned });
  });

  const counts = fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 3, maxLength: 3 });
  const sizes = fc.array(fc.integer({ min: 1, max: 2 }), { minLength: 3, maxLength: 3 });

  it("go the way that no other betters: fewest by the store, then from room to room, then between sizes", () => {
    fc.assert(
      fc.property(counts, counts, sizes, (supply, demand, sizes) => {
        const { moves, fetched, returned } = carried(supply, demand, sizes);
        const away = moves.filter(({ kind }) => kind !== "own-room");
        const unequal = away.filter(({ kind }) => kind === "other-room");
        const own = [sum(fetched) + sum(returned), sum(away), sum(unequal)];
        expect(own).toEqual(leastOf(supply, demand, sizes));
      }),
      { seed: 20_261_127, numRuns: 60 },
    );
  });

  it("are all accounted for, place by place", () => {
    fc.assert(
      fc.property(counts, counts, sizes, (supply, demand, sizes) => {
        const { moves, fetched, returned } = carried(supply, demand, sizes);
        supply.forEach((count, place) => {
          const gone = moves.filter(({ from }) => from.place === place);
          expect(sum(gone) + sum(returned.filter((heap) => heap.place === place))).toBe(count);
        });
        demand.forEach((count, place) => {
          const come = moves.filter(({ to }) => to.place === place);
          expect(sum(come) + sum(fetched.filter((heap) => heap.place === place))).toBe(count);
        });
      }),
      { seed: 20_261_128, numRuns: 200 },
    );
  });
});

/** The least of every way to carry, the first number before the second, the second before the third. */
function leastOf(supply: readonly number[], demand: readonly number[], sizes: readonly number[]): number[] {
  let best = [Number.POSITIVE_INFINITY, 0, 0];
  const try_ = (
    k: number,
    left: readonly number[],
    lack: readonly number[],
    away: number,
    unequal: number,
  ) => {
    if (k === supply.length * demand.length) {
      const byStore = [...left, ...lack].reduce((all, each) => all + each, 0);
      const found = [byStore, away, unequal];
      const at = found.findIndex((each, place) => each !== best[place]);
      if (at >= 0 && found[at]! < best[at]!) best = found;
      return;
    }
    const [from, to] = [Math.floor(k / demand.length), k % demand.length];
    for (let count = 0; count <= Math.min(left[from]!, lack[to]!); count++) {
      const isAway = from !== to;
      const isUnequal = isAway && sizes[from] !== sizes[to];
      try_(
        k + 1,
        left.map((each, place) => (place === from ? each - count : each)),
        lack.map((each, place) => (place === to ? each - count : each)),
        away + (isAway ? count : 0),
        unequal + (isUnequal ? count : 0),
      );
    }
  };
  try_(0, supply, demand, 0, 0);
  return best;
}
