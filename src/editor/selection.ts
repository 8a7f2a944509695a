// What is selected: things of one unit, in the order they were taken.

import { BUCKETS, find, type ItemRef, listed, type UnitDocument } from "../plan/document.ts";

export interface Selection {
  readonly unit: string;
  readonly items: readonly ItemRef[];
}

function isSameItem(a: ItemRef, b: ItemRef): boolean {
  return a.bucket === b.bucket && a.id === b.id;
}

export function isAmong(items: readonly ItemRef[], item: ItemRef): boolean {
  return items.some((other) => isSameItem(other, item));
}

/** The items with `item` taken out if it was among them, else added at the end. */
export function toggled(items: readonly ItemRef[], item: ItemRef): readonly ItemRef[] {
  return isAmong(items, item) ? items.filter((other) => !isSameItem(other, item)) : [...items, item];
}

/** Those of the items that are still there; the same list if all are. */
export function stillThere(unit: UnitDocument, items: readonly ItemRef[]): readonly ItemRef[] {
  const kept = items.filter(({ bucket, id }) => find<unknown>(unit[bucket], id) !== undefined);
  return kept.length === items.length ? items : kept;
}

/** Everything in the unit but its pins, which go with their walls. */
export function allItems(unit: UnitDocument): readonly ItemRef[] {
  return BUCKETS.filter((bucket) => bucket !== "pinned").flatMap((bucket) =>
    listed<{ readonly id: string; readonly rank: number }>(unit[bucket]).map(({ id }) => ({ bucket, id })),
  );
}
