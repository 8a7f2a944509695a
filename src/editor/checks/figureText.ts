// How a figure of a check stands on the screen: to so many digits, with the signs of the language.

import type { Check } from "../../assess/checkDocument.ts";
import type { Language } from "../../plan/project.ts";
import { formatNumber, THIN_SPACE } from "../words/numbers.ts";

const DIGITS = 5;
const DIGITS_IN_LIST = 4;
const MOST_DECIMALS = 6; // of a number written for the screen

/** 62.5, 14.065, 2 300, 0.00125. */
export function figureText(value: number, language: Language, digits = DIGITS): string {
  const size = Math.abs(value);
  const whole = size < 1 ? 0 : Math.floor(Math.log10(size)) + 1;
  const most = size < 0.01 && size > 0 ? MOST_DECIMALS : digits - 1;
  return formatNumber(value, language, Math.max(0, Math.min(most, digits - whole)));
}

/** "62.5 / 70 kPa", "5 mm", "–". A count of which none is allowed stands alone. */
export function valueText(
  { value, limit, unit }: Pick<Check, "value" | "limit" | "unit">,
  language: Language,
): string {
  if (value === null) return "–";
  const text = (number: number) => figureText(number, language, DIGITS_IN_LIST);
  const behind = unit === "" ? "" : `${THIN_SPACE}${unit}`;
  return limit === null || limit === 0
    ? `${text(value)}${behind}`
    : `${text(value)} / ${text(limit)}${behind}`;
}

/** Of the limit, whole per cents; never 100 where it is more. */
export function shareText(utilisation: number, language: Language): string {
  const per = utilisation * 100;
  const rounded = utilisation > 1 ? Math.ceil(per - 1e-9) : Math.round(per);
  return formatNumber(Math.max(rounded, utilisation > 1 ? 101 : 0), language);
}
