// Inside corners by exact size.

import type { Mm } from "../units.ts";
import { familyOf } from "./byFamily.ts";
import type { InsideCorner, Kit } from "./kit.ts";
import { preferred } from "./preference.ts";

/**
 * The inside corner with these legs, left one first as the person facing the corner sees them, and this height.
 *
 * A corner without hand may be stood on its head, which swaps its legs; one that fits as it stands is taken before it.
 */
export function insideCornerAt(kit: Kit, legs: readonly [Mm, Mm], height: Mm): InsideCorner | null {
  const [left, right] = legs;
  const corners = familyOf(kit, "inside-corner").filter((corner) => corner.height === height);
  const asItStands = corners.filter((corner) => corner.legs[0] === left && corner.legs[1] === right);
  const onItsHead = corners.filter(
    (corner) => corner.hand === null && corner.legs[0] === right && corner.legs[1] === left,
  );
  return preferred(asItStands) ?? preferred(onItsHead);
}
