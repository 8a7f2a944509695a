// How a length reads on a sheet that is measured from: whole millimetres, up to four digits closed, from five a gap.

import type { Mm } from "../../units.ts";

/** "8600", "11 000". */
export function numberText(length: Mm): string {
  const digits = `${Math.round(Math.abs(length))}`;
  const sign = length < 0 && digits !== "0" ? "−" : "";
  return sign + (digits.length < 5 ? digits : `${digits.slice(0, -3)} ${digits.slice(-3)}`);
}
