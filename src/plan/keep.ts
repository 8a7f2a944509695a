// Rounding noise goes, the drawing stays.

import type { Mm } from "../units.ts";

/** A measured length, to 1e-6 mm. */
export function keepLength(length: Mm): Mm {
  return Math.round(length * 1e6) / 1e6 + 0;
}

/** A place along a face, to 1e-6 mm, and exactly on the end of the face where it is within 1e-4 mm of it. */
export function keepPlace(along: Mm, length: Mm): Mm {
  if (along < 1e-4) return 0;
  return keepLength(along > length - 1e-4 ? length : along);
}
