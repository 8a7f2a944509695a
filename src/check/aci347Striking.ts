// How long do forms and their supports stay at least, by the table of ACI 347?
//
// One printed copy of this table carries the heads of its two columns the wrong way round. They stand here as another
// page states them (a slab of 10 to 20 ft whose live load is less than its dead load: 7 days): a member designed for
// little live load has little strength to spare when its own weight comes on it, so it stays longer.

import type { Hour, Mm } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

/** "vertical": walls, columns, beam sides, where the form holds up nothing else; otherwise slab or beam governs. */
export type Aci347Member =
  | "vertical"
  | "joist-form-to-30-in"
  | "joist-form-over-30-in"
  | "beam-soffit"
  | "one-way-slab";

export interface Aci347StrikingInput {
  readonly member: Aci347Member;
  /** Clear span between supports; only beam soffits and slabs ask for it. */
  readonly span: Mm;
  /** Whether the specified live load is greater than the dead load. */
  readonly isLiveGreater: boolean;
  /** Whether the forms come off while the shores stay as they are. */
  readonly shoresUndisturbed: boolean;
}

type DaysBySpan = readonly [short: number, middle: number, long: number];

/** Longest spans of the first two rows: 10 and 20 ft as the metric table gives them. */
const SHORT: Mm = 3000;
const MIDDLE: Mm = 6000;

const BY_SPAN: Readonly<
  Record<"beam-soffit" | "one-way-slab", { readonly liveLess: DaysBySpan; readonly liveGreater: DaysBySpan }>
> = {
  "beam-soffit": { liveLess: [7, 14, 21], liveGreater: [4, 7, 14] },
  "one-way-slab": { liveLess: [4, 7, 10], liveGreater: [3, 4, 7] },
};
const ANY_SPAN: Readonly<Record<"vertical" | "joist-form-to-30-in" | "joist-form-over-30-in", Hour>> = {
  vertical: 12,
  "joist-form-to-30-in": 3 * 24,
  "joist-form-over-30-in": 4 * 24,
};

export const ACI347_STRIKING_SOURCE =
  "ACI 347, removal times, at concreteconstruction.net (when-to-strip-forms, safe-time-to-strip-a-slab); hours above 10 °C";

/** Halved times are not under this. */
const LEAST_HALVED_DAYS = 3;
const SPAN = { input: "clear span", least: 1, greatest: 30_000, unit: "mm" } as const;

/**
 * Least time before striking, hours in which the concrete was above 10 °C (50 °F); colder hours do not count, and no
 * construction load may lie on the member. A time is no proof of strength.
 *
 * Times of the column "live load less" are halved, to 3 days at least, where the shores are not disturbed.
 *
 * @param input - clear span 1 to 30 000 mm; outside it the input is refused
 * @see ACI 347, removal times, read at concreteconstruction.net/how-to/when-to-strip-forms_o, the order of the columns
 *   at safe-time-to-strip-a-slab_o there; 12 h and the 3 days at least from memory of ACI 347
 */
export function aci347Striking(input: Aci347StrikingInput): Answer<Hour> {
  const { member, span, isLiveGreater, shoresUndisturbed } = input;
  const refusal = refusalOf([span, SPAN]);
  if (refusal !== null) return refusal;
  if (member !== "beam-soffit" && member !== "one-way-slab") return computed(ANY_SPAN[member]);
  const column = BY_SPAN[member][isLiveGreater ? "liveGreater" : "liveLess"];
  const row = span < SHORT ? 0 : span <= MIDDLE ? 1 : 2;
  const days = column[row];
  const isHalved = shoresUndisturbed && !isLiveGreater;
  return computed(24 * (isHalved ? Math.max(days / 2, LEAST_HALVED_DAYS) : days));
}
