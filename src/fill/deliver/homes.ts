// Which room of the next pour is a room's own: whose crew goes there, and whose pieces go along.
//
//   pour of the same unit ──▶ the same room          another unit ──▶ the room of that name, else by size
//
// A pour hands on to one pour of the day that its pieces go to: one of the same unit if there is one.

import type { PourNeed } from "./pourNeeds.ts";

/** A place of a pour: the pour's index in its day, and the index of the place. */
export interface Spot {
  readonly pour: number;
  readonly place: number;
}

/** By pour of `before`: the index of the pour of `after` that it hands on to. */
export function followers(before: readonly PourNeed[], after: readonly PourNeed[]): readonly number[] {
  const taken = new Set<number>();
  const next = before.map(() => -1);
  const take = (k: number, at: number) => {
    if (at < 0) return;
    next[k] = at;
    taken.add(at);
  };
  const each = (find: (pour: PourNeed) => number) => {
    before.forEach((pour, k) => {
      if (next[k] === -1) take(k, find(pour));
    });
  };
  each(({ entry }) => after.findIndex((pour, at) => pour.entry === entry && !taken.has(at)));
  each(({ unit }) => after.findIndex((pour, at) => pour.unit === unit && !taken.has(at)));
  each(() => after.findIndex((_, at) => !taken.has(at)));
  each(({ unit }) => after.findIndex((pour) => pour.unit === unit));
  each(() => after.length - 1);
  return next;
}

/**
 * By place of `before`: its own place in `after`, or −1. Rooms of one unit by their order, storey over storey; of another
 * unit by their names, those left over by their size, the largest to the largest.
 */
export function ownPlaces(before: PourNeed, after: PourNeed): readonly number[] {
  const own = before.places.map(() => -1);
  const isRoom = ({ kind }: PourNeed["places"][number]) => kind === "room";
  const isSame = before.unit === after.unit && sameRooms(before, after);
  if (isSame) return before.places.map((_, place) => place);
  const taken = new Set<number>();
  const pair = (place: number, other: number) => {
    own[place] = other;
    taken.add(other);
  };
  before.places.forEach(({ kind, name }, place) => {
    const other = after.places.findIndex(
      (each, at) =>
        each.kind === kind && each.name === name && (kind !== "room" || name !== "") && !taken.has(at),
    );
    if (other >= 0) pair(place, other);
  });
  const bySize = ({ places }: PourNeed, isFree: (place: number) => boolean) =>
    places
      .flatMap((each, place) => (isRoom(each) && isFree(place) ? [place] : []))
      .sort((a, b) => places[b]!.area - places[a]!.area || a - b);
  const left = bySize(before, (place) => own[place] === -1);
  const free = bySize(after, (place) => !taken.has(place));
  for (const [k, place] of left.slice(0, free.length).entries()) pair(place, free[k]!);
  return own;
}

function sameRooms(a: PourNeed, b: PourNeed): boolean {
  return (
    a.places.length === b.places.length &&
    a.places.every(
      ({ kind, name }, place) => b.places[place]!.kind === kind && b.places[place]!.name === name,
    )
  );
}

/** Rooms of equal size: 0.01 m² is less than anybody sees. Null for what is no room. */
export function sizeClass({ places }: PourNeed, place: number): number | null {
  const { kind, area } = places[place]!;
  return kind === "room" && area > 0 ? Math.round(area * 100) : null;
}
