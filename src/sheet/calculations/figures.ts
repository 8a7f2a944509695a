// How a calculation sheet writes its figures: what was given as it was given, what was worked out to four digits.

import type { Language } from "../../plan/project.ts";
import { roundSignificant, roundTo } from "../../units.ts";

const DIGITS = 4;
/** What is left of sums that come to nothing. */
const NOTHING = 1e-9;

/** A figure worked out, to four significant digits: 62.50, 8.062, 0.2183. */
export function worked(value: number, language: Language): string {
  const size = Math.abs(value);
  if (size < NOTHING) return "0";
  let decimals = DIGITS - 1;
  for (let scale = 10; size >= scale && decimals > 0; scale *= 10) decimals--;
  for (let scale = 1; size < scale && decimals < 6; scale /= 10) decimals++;
  return written(roundTo(value, decimals).toFixed(decimals), language);
}

/** A figure as somebody stated it, six digits at most: 25, 0.1, 2250. */
export function stated(value: number, language: Language): string {
  return written(`${roundSignificant(value)}`, language);
}

/** A figure that goes on into the next line: as it is where it is short, else to four digits. */
export function carried(value: number, language: Language): string {
  const whole = stated(value, language);
  return whole.replaceAll(/^0\D0*|\D/gu, "").length > DIGITS + 1 ? worked(value, language) : whole;
}

/** A formula with the decimal sign of the language; what divides the parts of a list is then a semicolon. */
export function localFormula(formula: string, language: Language): string {
  const listed = formula.replace(/(min|max)\(([^()]*), /gu, "$1($2; ");
  return language === "en" ? listed : listed.replaceAll(/(\d)\.(?=\d)/gu, "$1,");
}

/** A part of a limit: "21.8 %"; never 100.0 where it is more. */
export function percent(part: number, language: Language): string {
  const least = part > 1 ? 100.1 : 0;
  return `${written(Math.max(least, roundTo(part * 100, 1)).toFixed(1), language)} %`;
}

function written(digits: string, language: Language): string {
  const [whole = "", part] = digits.replace("-", "−").split(".");
  const grouped = whole.length < 5 ? whole : whole.replaceAll(/\B(?=(?:\d{3})+$)/g, " ");
  return part === undefined ? grouped : `${grouped}${language === "en" ? "." : ","}${part}`;
}
