// Wall-to-slab connectors by height, and their corners.
//
//     depth
//   --------+ soffit
//           | height
//
// A kit may have one height in several depths. The least depth is then used throughout, so that straight pieces and
// corners of one height always fit each other.

import type { Mm } from "../units.ts";
import { familyOf } from "./byFamily.ts";
import type { ConnectorCorner, Kit, Turn, WallSlabConnector } from "./kit.ts";
import { lengthsOf } from "./pieceLengths.ts";
import { comparePreference } from "./preference.ts";

/** Heights for which there are straight connectors, each once, tallest first, mm. */
export function connectorHeights(kit: Kit): readonly Mm[] {
  const heights = familyOf(kit, "wall-slab-connector").map((connector) => connector.height);
  return [...new Set(heights)].sort((a, b) => b - a);
}

/** How far connectors of this height reach over the soffit, mm; null where the kit has none. */
export function connectorDepth(kit: Kit, height: Mm): Mm | null {
  let least: Mm | null = null;
  for (const connector of familyOf(kit, "wall-slab-connector")) {
    if (connector.height === height && (least === null || connector.depth < least)) least = connector.depth;
  }
  return least;
}

/** Straight connectors of this height and its depth, one for each length, longest first. */
export function connectorsOf(kit: Kit, height: Mm): readonly WallSlabConnector[] {
  const depth = connectorDepth(kit, height);
  return lengthsOf(kit, "wall-slab-connector", (one) => one.height === height && one.depth === depth);
}

/**
 * Corners for connectors of this height, as deep as these, the one to take first: the shortest legs, then standard,
 * then lighter, then by code. A kit with corners only has them in any depth.
 */
export function connectorCornersOf(kit: Kit, turn: Turn, height: Mm): readonly ConnectorCorner[] {
  const depth = connectorDepth(kit, height);
  const corners = familyOf(kit, "connector-corner").filter(
    (corner) =>
      corner.turn === turn && corner.height === height && (depth === null || corner.depth === depth),
  );
  return corners.sort((a, b) => reach(a) - reach(b) || comparePreference(a, b));
}

function reach(corner: ConnectorCorner): Mm {
  return corner.legs[0] + corner.legs[1];
}
