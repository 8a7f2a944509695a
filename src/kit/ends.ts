// Pieces as wide as a wall is thick: stop-ends at free ends and jambs, closures and corners of reveals.

import type { Mm } from "../units.ts";
import { familyOf } from "./byFamily.ts";
import type { Kit, RevealClosure, RevealCorner, StopEnd } from "./kit.ts";
import { lengthsOf, onePerSize } from "./pieceLengths.ts";
import { preferred } from "./preference.ts";

/** Stop-ends for a wall thickness, one for each height, tallest first. */
export function stopEndsOf(kit: Kit, thickness: Mm): readonly StopEnd[] {
  const ends = familyOf(kit, "stop-end").filter((end) => end.width === thickness);
  return onePerSize(ends, (end) => end.height);
}

/** Closures of lintel soffits and sills for a wall thickness, one for each length, longest first. */
export function revealClosuresOf(kit: Kit, thickness: Mm): readonly RevealClosure[] {
  return lengthsOf(kit, "reveal-closure", (closure) => closure.width === thickness);
}

/** The corner between jamb and lintel for a wall thickness; null where the kit has the pieces run through. */
export function revealCornerOf(kit: Kit, thickness: Mm): RevealCorner | null {
  return preferred(familyOf(kit, "reveal-corner").filter((corner) => corner.width === thickness));
}
