// What to call the entries of a fill, where one unit may stand several times, once for each storey height.

import type { FillDocument } from "./result.ts";

/**
 * One name for each entry of `fill.units`, in order, as the ids of its faces begin: the unit's id, and from its
 * second storey on with a number behind: "A", "A@2", "A@3".
 */
export function entryNames(fill: Pick<FillDocument, "units">): readonly string[] {
  const seen = new Map<string, number>();
  return fill.units.map(({ unit }) => {
    const number = (seen.get(unit) ?? 0) + 1;
    seen.set(unit, number);
    return number === 1 ? unit : `${unit}@${number}`;
  });
}
