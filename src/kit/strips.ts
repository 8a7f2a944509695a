// Shoring strips: the lines that stay under a young slab when its panels have gone.

import type { Mm } from "../units.ts";
import { familyOf } from "./byFamily.ts";
import type { Kit } from "./kit.ts";

/** Widths in which the kit has strips, each once, narrowest first, mm. */
export function shoringStripWidths(kit: Kit): readonly Mm[] {
  const widths = familyOf(kit, "shoring-strip").map((strip) => strip.width);
  return [...new Set(widths)].sort((a, b) => a - b);
}
