// Closure strips: made to measure, so a kit offers ranges of width.

import type { Mm } from "../units.ts";
import { familyOf } from "./byFamily.ts";
import type { ClosureStrip, Kit } from "./kit.ts";
import { preferred } from "./preference.ts";

/** Whole widths from `least` to `greatest`, both included, mm. */
export interface ClosureRange {
  readonly least: Mm;
  readonly greatest: Mm;
}

/** The widths in which closures can be had: ranges that neither meet nor overlap, narrowest first. */
export function closureRanges(kit: Kit): readonly ClosureRange[] {
  const strips = familyOf(kit, "closure-strip").map(({ least, greatest }) => ({ least, greatest }));
  strips.sort((a, b) => a.least - b.least);
  const ranges: ClosureRange[] = [];
  for (const strip of strips) {
    const last = ranges.at(-1);
    if (last === undefined || strip.least > last.greatest + 1) ranges.push(strip);
    else ranges[ranges.length - 1] = { ...last, greatest: Math.max(last.greatest, strip.greatest) };
  }
  return ranges;
}

/** The strip to make a closure of this width from. */
export function closureStripOf(kit: Kit, width: Mm): ClosureStrip | null {
  const strips = familyOf(kit, "closure-strip");
  return preferred(strips.filter((strip) => strip.least <= width && width <= strip.greatest));
}
