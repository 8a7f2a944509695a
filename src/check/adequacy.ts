// Does a value stay within its limit, and how much of the limit does it use?

import { roundSignificant } from "../units.ts";

export interface Adequacy {
  /** Value over limit: more than 1 where it is over, and nowhere else. */
  readonly utilisation: number;
  readonly status: "within" | "over";
}

/**
 * Sets a value against a limit in the same unit. It is within where it is not greater, both to the six digits in which
 * they are printed: what a person reads and what the program says never differ by binary noise.
 *
 * @throws {RangeError} if the limit is not positive or a number is not finite
 */
export function adequacy(value: number, limit: number): Adequacy {
  if (!(limit > 0)) throw new RangeError("a limit must be positive");
  const isWithin = roundSignificant(value) <= roundSignificant(limit);
  const part = value / limit;
  return isWithin
    ? { utilisation: Math.min(1, part), status: "within" }
    : { utilisation: part, status: "over" };
}
