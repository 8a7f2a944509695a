// Fills one unit at one storey, walls and soffits: what is poured together.

import { type FilledUnit, type FillInput, fillWalls } from "./fillWalls.ts";
import { placeSoffits } from "./soffit/placeSoffits.ts";

/** Fills a unit. The same input gives the same result, whatever the order and the names of its walls. */
export function fillUnit(input: FillInput): FilledUnit {
  return fillWalls(input, placeSoffits);
}
