// The edits by which a choice of the engineer's becomes the plan's: one undo step each.

import { type FilledWith, pinsOn } from "../../fill/choices.ts";
import type { SeenStretch } from "../../fill/stretchPieces.ts";
import { type ItemRef, listed, type UnitDocument } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import type { Pinned } from "../../plan/project.ts";

/** The pins that lie on a stretch. */
export function pinsOf(seen: SeenStretch, given: FilledWith, unit: UnitDocument): readonly ItemRef[] {
  const pins = listed(unit.pinned);
  return pinsOn(seen, given).flatMap((index): readonly ItemRef[] => {
    const pin = pins[index];
    return pin === undefined ? [] : [{ bucket: "pinned", id: pin.id }];
  });
}

/** Takes the pins of a stretch away and sets another; null = none. An interval keeps one pin at most. */
export function pinEdits(old: readonly ItemRef[], unit: string, pinned: Pinned | null): readonly Edit[] {
  const away: readonly Edit[] = old.length === 0 ? [] : [{ kind: "delete", unit, items: old }];
  return pinned === null ? away : [...away, { kind: "pin", unit, pinned }];
}
