// With what does the concrete of an entry press, for the pictures and the equations of its calculation sheet?

import type { CheckedEntry } from "../../assess/entry.ts";
import { pourPressure } from "../../assess/pourPressure.ts";
import { surfaceOf } from "../../assess/tieChecks.ts";
import type { Envelope } from "../../check/envelope.ts";

/** The pressure of the entry's placing; null where the method does not hold. */
export function envelopeOf(entry: CheckedEntry): Envelope | null {
  const pressure = pourPressure(entry.concrete, surfaceOf(entry));
  return pressure.status === "refused" ? null : pressure.value.envelope;
}
