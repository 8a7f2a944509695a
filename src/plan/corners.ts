// How the outline turns from face to face.

import { angleBetween } from "../geom/angle.ts";
import { type Mm, roundTo } from "../units.ts";
import type { Corner } from "./face.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { TIE_TOLERANCE } from "./tolerance.ts";

/** Length over which a corner must be true, mm: the leg of a common inside corner. Common practice, no source. */
const CORNER_LEG: Mm = 150;

/** The corner at the end of `before` and the beginning of `after`. */
export function cornerBetween(before: FaceDraft, after: FaceDraft): Corner {
  const [a, b] = [before.line, after.line];
  // The concrete is on the left: walking straight on leaves 180° of it, each degree turned to the left takes one away.
  const concrete = angleBetween(b.ux, b.uy, -a.ux, -a.uy);
  const lean = Math.abs(a.ux * b.ux + a.uy * b.uy) * CORNER_LEG;
  return {
    turn: concrete > 180 ? "inside" : "outside",
    angle: roundTo(concrete, 3),
    isSquare: lean <= TIE_TOLERANCE,
  };
}
