// Ties and sleeves by the wall thickness they are made for.

import type { Mm } from "../units.ts";
import { familyOf } from "./byFamily.ts";
import type { Kit, Tie, TieSleeve } from "./kit.ts";
import { preferred } from "./preference.ts";

/** The tie for walls of this thickness. */
export function tieOf(kit: Kit, thickness: Mm): Tie | null {
  return preferred(familyOf(kit, "tie").filter((tie) => tie.length === thickness));
}

/** The sleeve for ties through walls of this thickness. */
export function sleeveOf(kit: Kit, thickness: Mm): TieSleeve | null {
  return preferred(familyOf(kit, "tie-sleeve").filter((sleeve) => sleeve.length === thickness));
}
