// Where the pieces of one kind go from one day to the next: from room to room, to the store, from the store.
//
// As many as are needed again go straight on; of these as many as can to their own room; of the rest as many as can to a
// room of equal size. So no other way carries fewer pieces to and from the store, of these none fewer from room to room, and
// of these none fewer between rooms of different size. (Where two pours hand on to one, two rooms may have one own room: the
// first of them fills it first, whatever the other then misses.)

import type { Spot } from "./homes.ts";

export interface Heap extends Spot {
  readonly count: number;
}

export type MoveKind = "own-room" | "equal-room" | "other-room";

export interface Move {
  readonly from: Spot;
  readonly to: Spot;
  readonly count: number;
  readonly kind: MoveKind;
}

export interface Transfer {
  readonly moves: readonly Move[];
  /** From the store, and to the store. */
  readonly fetched: readonly Heap[];
  readonly returned: readonly Heap[];
}

export interface Neighbours {
  /** Own place of a place of the day before, or null. */
  readonly ownOf: (from: Spot) => Spot | null;
  /** Whether two rooms are of equal size. */
  readonly isEqual: (from: Spot, to: Spot) => boolean;
}

/** @param supply, demand - each place once at most, counts from 1 on */
export function transfer(
  supply: readonly Heap[],
  demand: readonly Heap[],
  { ownOf, isEqual }: Neighbours,
): Transfer {
  const given = supply.map((heap) => ({ heap, left: heap.count }));
  const wanted = demand.map((heap) => ({ heap, left: heap.count }));
  const moves: Move[] = [];
  const carry = (kind: MoveKind, goes: (from: Spot, to: Spot) => boolean) => {
    // Heaps that fit each other whole first: fewer errands.
    for (const isWhole of [true, false]) {
      for (const from of given) {
        for (const to of wanted) {
          if (from.left === 0) break;
          if (to.left === 0 || (isWhole && from.left !== to.left) || !goes(from.heap, to.heap)) continue;
          const count = Math.min(from.left, to.left);
          from.left -= count;
          to.left -= count;
          moves.push({ from: spotOf(from.heap), to: spotOf(to.heap), count, kind });
        }
      }
    }
  };
  carry("own-room", (from, to) => {
    const own = ownOf(from);
    return own !== null && own.pour === to.pour && own.place === to.place;
  });
  carry("equal-room", isEqual);
  carry("other-room", () => true);
  const rest = (heaps: typeof given) =>
    heaps.flatMap(({ heap, left }) => (left === 0 ? [] : [{ ...heap, count: left }]));
  return { moves, fetched: rest(wanted), returned: rest(given) };
}

function spotOf({ pour, place }: Heap): Spot {
  return { pour, place };
}
