// The one door to snapping: a query and an index in, a place with its reason out.

import { snapOpen, wholePlace } from "./openSnap.ts";
import type { PlanIndex } from "./planIndex.ts";
import { snapOnRail, wholeOnRail } from "./railSnap.ts";
import type { Snap, SnapQuery } from "./snap.ts";

/** Where the pointer is taken to be. With snapping suspended, the whole millimetre (on the rail if there is one). */
export function snapTo(index: PlanIndex, query: SnapQuery): Snap {
  const { rail } = query;
  if (query.isFree) {
    return { at: rail === null ? wholePlace(query.at) : wholeOnRail(query.at, rail), reason: null };
  }
  return rail === null ? snapOpen(index, query) : snapOnRail(index, query, rail);
}
