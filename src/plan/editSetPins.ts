// Pins that the common choice made, put into a unit all at once or taken out again. The engineer's own stay as they are.

import { drop, find, freshId, ID_PREFIX, nextRank, put, type UnitDraft } from "./document.ts";
import { done, type EditOutcome, refused } from "./editOutcome.ts";
import type { Pinned } from "./project.ts";

/** Puts `pinned` in place of all pins of the unit that the common choice made; none takes them out. */
export interface SetPins {
  readonly kind: "set-pins";
  readonly unit: string;
  readonly pinned: readonly Pinned[];
}

export function setPins(unit: UnitDraft, { pinned }: SetPins): EditOutcome {
  const astray = pinned.find(({ wall }) => find(unit.walls, wall) === undefined);
  if (astray !== undefined) return refused("no-such-item", astray.wall);
  for (const pin of Object.values(unit.pinned)) if (pin.by === "set") drop(unit.pinned, pin.id);
  for (const pin of pinned) {
    const id = freshId(unit.pinned, ID_PREFIX.pinned);
    put(unit.pinned, { ...pin, id, rank: nextRank(unit.pinned) });
  }
  return done();
}
