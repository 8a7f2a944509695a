// Props and accessories: what has a length to reach, or none.

import type { Mm } from "../units.ts";
import { familyOf, type PieceOf } from "./byFamily.ts";
import type { AccessoryFamily, Kit, Prop } from "./kit.ts";
import { lengthOf, onePerSize } from "./pieceLengths.ts";
import { preferred } from "./preference.ts";

/** The prop that can be set to this extension, mm. */
export function propOf(kit: Kit, extension: Mm): Prop | null {
  const props = familyOf(kit, "prop");
  return preferred(props.filter((prop) => prop.least <= extension && extension <= prop.greatest));
}

/** The accessory of a family in which lengths do not matter: standard, then lighter, then by code. */
export function accessoryOf<F extends AccessoryFamily>(kit: Kit, family: F): PieceOf<F> | null {
  return preferred(familyOf(kit, family));
}

/** The accessories of a family that have a length, one for each length, longest first. */
export function accessoryLengthsOf<F extends AccessoryFamily>(kit: Kit, family: F): readonly PieceOf<F>[] {
  const withLength = familyOf(kit, family).filter((one) => lengthOf(one) !== null);
  return onePerSize(withLength, (one) => lengthOf(one) ?? 0);
}
