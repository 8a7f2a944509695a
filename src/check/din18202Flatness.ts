// How flat must a wall or soffit be, by the distance between two measuring points? DIN 18202, table 3.

import type { Mm } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

/** Line of the table: 5 unfinished walls and soffits, 6 finished ones, 7 finished ones with increased requirement. */
export type FlatnessLine = 5 | 6 | 7;

const DISTANCES: readonly Mm[] = [100, 1000, 4000, 10_000, 15_000];
const LIMITS: Readonly<Record<FlatnessLine, readonly Mm[]>> = {
  5: [5, 10, 15, 25, 30],
  6: [3, 5, 10, 20, 25],
  7: [2, 3, 8, 15, 20],
};
const DISTANCE = {
  input: "distance between measuring points",
  least: 100,
  greatest: 15_000,
  unit: "mm",
} as const;

export const DIN18202_SOURCE =
  "DIN 18202, table 3, quoted from a trade handbook at deploy.doczz.net/doc/5839552";

/**
 * Greatest gap under a straightedge, whole mm, on straight lines between the printed distances. A limit on the surface, not
 * on how far a form may bend: bending uses up part of it.
 *
 * @param distance - 100 to 15 000 mm, otherwise refused
 * @see DIN18202_SOURCE
 */
export function din18202Flatness(line: FlatnessLine, distance: Mm): Answer<Mm> {
  const refusal = refusalOf([distance, DISTANCE]);
  if (refusal !== null) return refusal;
  const limits = LIMITS[line];
  const k = Math.max(
    1,
    DISTANCES.findIndex((each) => each >= distance),
  );
  const [from, to] = [DISTANCES[k - 1]!, DISTANCES[k]!];
  const [low, high] = [limits[k - 1]!, limits[k]!];
  return computed(Math.floor(low + ((high - low) * (distance - from)) / (to - from) + 0.5));
}
