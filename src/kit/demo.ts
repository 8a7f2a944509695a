// The shipped kit "demo": a full set of pieces and rules on a 50 mm grid, invented for this project.
//
// No maker's pieces, codes, masses or prices are behind it. It is there so that a plan can be filled before anybody has
// entered a kit, and as the start of a kit of one's own. It has no handed pieces: every piece is its own mirror image.

import type { JsonObject } from "../json/value.ts";
import { DEMO_RULES } from "./demo/rules.ts";
import { SLAB_PIECES } from "./demo/slabPieces.ts";
import { SMALL_PIECES } from "./demo/smallPieces.ts";
import { WALL_PIECES } from "./demo/wallPieces.ts";
import type { Kit } from "./kit.ts";
import { serializeKit } from "./serialize.ts";

export const demoKit: Kit = {
  name: "demo",
  currency: "EUR",
  pieces: [...WALL_PIECES, ...SLAB_PIECES, ...SMALL_PIECES],
  rules: DEMO_RULES,
};

/** The same kit as a project could carry it: what a kit of one's own starts from. */
export const demoKitJson: JsonObject = serializeKit(demoKit);
