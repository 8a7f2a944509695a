// Slab-edge caps by height, and their corners.

import type { Mm } from "../units.ts";
import { familyOf } from "./byFamily.ts";
import type { CapCorner, Kit, SlabEdgeCap, Turn } from "./kit.ts";
import { lengthsOf } from "./pieceLengths.ts";
import { comparePreference } from "./preference.ts";

/** Heights for which there are straight caps, each once, tallest first, mm. */
export function capHeights(kit: Kit): readonly Mm[] {
  const heights = familyOf(kit, "slab-edge-cap").map((cap) => cap.height);
  return [...new Set(heights)].sort((a, b) => b - a);
}

/** Straight caps of this height, one for each length, longest first. */
export function capsOf(kit: Kit, height: Mm): readonly SlabEdgeCap[] {
  return lengthsOf(kit, "slab-edge-cap", (cap) => cap.height === height);
}

/** Corners for caps of this height, the one to take first: the shortest legs, then standard, then lighter, then by code. */
export function capCornersOf(kit: Kit, turn: Turn, height: Mm): readonly CapCorner[] {
  const corners = familyOf(kit, "cap-corner").filter(
    (corner) => corner.turn === turn && corner.height === height,
  );
  return corners.sort((a, b) => reach(a) - reach(b) || comparePreference(a, b));
}

function reach(corner: CapCorner): Mm {
  return corner.legs[0] + corner.legs[1];
}
