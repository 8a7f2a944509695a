// Figures for the screen: a thin space between thousands, a true minus, the decimal sign of the language. Nothing that
// is written to a file is formatted here.

import type { Language } from "../../plan/project.ts";
import { roundTo } from "../../units.ts";

/** Narrow no-break space. */
export const THIN_SPACE = "\u202f";
/** True minus. */
export const MINUS = "\u2212";
const PLUS_MINUS = "±";

const DECIMAL_SIGN: Readonly<Record<Language, string>> = { en: ".", es: ",", pt: "," };

/** A number with at most `decimals` places, zeros at the end left out: 2 850, −4.5. */
export function formatNumber(value: number, language: Language, decimals = 0): string {
  const rounded = roundTo(Math.abs(value), decimals);
  const [whole = "0", part = ""] = rounded.toFixed(decimals).split(".");
  const grouped = whole.replaceAll(/(?<=\d)(?=(?:\d{3})+$)/g, THIN_SPACE);
  const digits = part.replace(/0+$/, "");
  const sign = value < 0 && rounded !== 0 ? MINUS : "";
  return `${sign}${grouped}${digits === "" ? "" : DECIMAL_SIGN[language] + digits}`;
}

/** A number with its sign always shown, as a change is: +4, −2, ±0. */
export function formatChange(value: number, language: Language, decimals = 0): string {
  const text = formatNumber(value, language, decimals);
  if (text === "0") return `${PLUS_MINUS}0`;
  return value > 0 ? `+${text}` : text;
}

/** A length in millimetres, to 0.1 where it is not whole. */
export function formatMm(value: number, language: Language): string {
  return formatNumber(value, language, 1);
}

/** An area with its unit, one decimal: 11.2 m². */
export function formatArea(squareMetres: number, language: Language): string {
  const text = formatNumber(squareMetres, language, 1);
  const sign = DECIMAL_SIGN[language];
  return `${text.includes(sign) ? text : `${text}${sign}0`} m²`;
}

/**
 * The number somebody typed, or null. Takes both decimal signs, both minus signs, spaces of any kind between the
 * digits.
 */
export function parseTyped(text: string): number | null {
  const plain = text.replaceAll(/\s/g, "").replaceAll(MINUS, "-").replaceAll(",", ".");
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(plain)) return null;
  const value = Number(plain);
  return Number.isFinite(value) ? value + 0 : null;
}
