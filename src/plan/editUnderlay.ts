// Laying a picture under the drawing of a unit, changing how it lies, taking it away. What the picture's record says is
// not looked into here.

import type { JsonObject } from "../json/value.ts";
import { isSame, type UnitDraft } from "./document.ts";
import { done, type EditOutcome } from "./editOutcome.ts";

/** Sets the whole record; null takes it away. */
export interface SetUnderlay {
  readonly kind: "set-underlay";
  readonly unit: string;
  readonly underlay: JsonObject | null;
}

export function setUnderlay(unit: UnitDraft, { underlay }: SetUnderlay): EditOutcome {
  if (underlay === null) delete unit.underlay;
  else if (!isSame(unit.underlay, underlay)) unit.underlay = underlay;
  return done();
}
