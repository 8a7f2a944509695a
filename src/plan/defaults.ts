// What stands for a member that a project file leaves out.

import type { Mm } from "../units.ts";
import type { Forming, Objective } from "./project.ts";

/** Weights of the common choice, in the kit's currency. Invented for the demo kit; a firm has its own. */
export const DEFAULT_OBJECTIVE: Objective = {
  handling: 0.6,
  closure: 500,
  closurePerMm: 0.3,
  distinctSize: 0,
};

/** No pin and no tie nearer to a service than this, mm. Common practice, no source. */
export const DEFAULT_CLEARANCE: Mm = 60;

/** Up to this width and height an opening clear of the floor is boxed out inside unbroken panels, mm. */
const BOX_LIMIT: Mm = 600;

/** How an opening is formed where the file does not say. */
export function usualForming(opening: { readonly width: Mm; readonly sill: Mm; readonly head: Mm }): Forming {
  const isSmall = opening.width <= BOX_LIMIT && opening.head - opening.sill <= BOX_LIMIT;
  return isSmall && opening.sill > 0 ? "box" : "band";
}
