// How far may a form bend between its supports?

import type { Mm } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

const SPAN = { input: "span", least: 1, greatest: 20_000, unit: "mm" } as const;
const PART = { input: "span over deflection", least: 50, greatest: 1000, unit: "" } as const;

/**
 * Span over 360 (plywood tables, Univ. of Florida BCN4423C) or 270 (CSA S269.3, 6.3.5, at fwhb.ca), mm.
 *
 * @param span - 1 to 20 000 mm
 * @param part - 50 to 1000; outside these the input is refused
 */
export function deflectionLimit(span: Mm, part: number): Answer<Mm> {
  return refusalOf([span, SPAN], [part, PART]) ?? computed(span / part);
}
