// How a length reads on a sheet that is measured from: whole millimetres, up to four digits closed, from five a gap.

import type { Mm } from "../../units.ts";
import { grouped } from "../lists/figures.ts";

/** "8600", "11 000". */
export function numberText(length: Mm): string {
  const whole = Math.round(Math.abs(length));
  return (length < 0 && whole > 0 ? "−" : "") + grouped(whole);
}
