// How does a check come to its verdict? One way for every kind: within or over, not checked with a reason, or nothing to
// check.

import { adequacy } from "../check/adequacy.ts";
import type { Check, CheckInput, CheckPlace } from "./checkDocument.ts";

/** A check before its verdict. */
export type Unjudged = Omit<Check, "status" | "reason">;

/** A check with nothing known but what it is of. */
export function unjudged(
  given: Pick<Check, "id" | "kind" | "where" | "unit" | "formula" | "source"> & {
    readonly inputs?: readonly CheckInput[];
  },
): Unjudged {
  return { value: null, limit: null, utilisation: null, inputs: [], ...given };
}

/** A place that is the whole unit, with whatever more is known. */
export function placeIn(unit: string, more: Partial<CheckPlace> = {}): CheckPlace {
  return { unit, room: "", piece: "", code: "", at: null, ...more };
}

/** The verdict on a value beside a positive limit. */
export function judgedBy(start: Unjudged, value: number, limit: number): Check {
  return { ...start, value, limit, ...adequacy(value, limit) };
}

/** A count of faults, of which none is allowed. The reason names the first ones. */
export function faultless(start: Unjudged, faults: readonly string[]): Check {
  const status = faults.length === 0 ? "within" : "over";
  const reason = listed(faults);
  return { ...start, value: faults.length, limit: 0, status, ...(reason !== "" && { reason }) };
}

const MOST_NAMED = 5;

function listed(faults: readonly string[]): string {
  const more = faults.length - MOST_NAMED;
  const named = faults.slice(0, MOST_NAMED).join("; ");
  return more > 0 ? `${named}; and ${more} more` : named;
}

export function notChecked(start: Unjudged, reason: string): Check {
  return { ...start, status: "not-checked", reason };
}

export function notApplicable(start: Unjudged, reason: string): Check {
  return { ...start, status: "not-applicable", reason };
}

/** An input as a check lists it. */
export function input(sign: string, name: string, value: number | string, unit = ""): CheckInput {
  return { sign, name, value, unit };
}
