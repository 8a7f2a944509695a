// How long do forms and props stay at least, by the table of IS 456?

import type { Hour, Mm } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

/** "slab-soffit" and "beam-soffit": the forms alone, props put back at once. Arches count as beams. */
export type Is456Member = "vertical-face" | "slab-soffit" | "beam-soffit" | "slab-props" | "beam-props";

/** `from` and `to` differ where the table gives a range. */
export interface Is456Time {
  readonly from: Hour;
  readonly to: Hour;
}

interface Row {
  /** Spans up to this one take `upTo`, longer ones `over`. */
  readonly limit: Mm;
  readonly upTo: Is456Time;
  readonly over: Is456Time;
}

const days = (count: number): Is456Time => ({ from: 24 * count, to: 24 * count });
const anySpan = (time: Is456Time): Row => ({ limit: 0, upTo: time, over: time });

const TABLE: Readonly<Record<Is456Member, Row>> = {
  "vertical-face": anySpan({ from: 16, to: 24 }),
  "slab-soffit": anySpan(days(3)),
  "beam-soffit": anySpan(days(7)),
  "slab-props": { limit: 4500, upTo: days(7), over: days(14) },
  "beam-props": { limit: 6000, upTo: days(14), over: days(21) },
};

export const IS456_SOURCE =
  "IS 456:2000, 11.3.1, at dreamhomeguide.in; ordinary Portland cement, not under 15 °C from memory of it";

/** Longer spans are struck by analysis, not by a table. */
const SPAN = { input: "span", least: 1, greatest: 30_000, unit: "mm" } as const;

/**
 * Least time before striking, hours, where the cement is ordinary Portland and the concrete does not fall under 15 °C:
 * a time is no proof of strength.
 *
 * @param span - 1 to 30 000 mm; only props ask for it; outside it the input is refused
 * @see IS 456:2000, 11.3.1, read at dreamhomeguide.in/stripping-time-of-formworks; temperature from memory of the same
 */
export function is456Striking(member: Is456Member, span: Mm): Answer<Is456Time> {
  const { limit, upTo, over } = TABLE[member];
  return refusalOf([span, SPAN]) ?? computed(span <= limit ? upTo : over);
}
