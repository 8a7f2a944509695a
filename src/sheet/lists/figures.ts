// Figures on sheets: the decimal sign of the language, four digits closed, a gap between thousands from five on.

import type { Language } from "../../plan/project.ts";
import { roundTo } from "../../units.ts";

const DECIMAL_SIGN: Readonly<Record<Language, string>> = { en: ".", es: ",", pt: "," };

const SCALES = [1, 10, 100] as const;

/** A whole number from 0 on: 2850, 11 000, 1 250 000. */
export function grouped(value: number): string {
  const digits = `${value}`;
  return digits.length < 5 ? digits : digits.replaceAll(/\B(?=(?:\d{3})+$)/g, " ");
}

/** The number with exactly `decimals` places: 2850, 11 000, 29.7. Negative numbers do not occur on a list. */
export function figure(value: number, decimals: 0 | 1 | 2, language: Language): string {
  const scale = SCALES[decimals];
  const parts = roundTo(value * scale, 0);
  const whole = grouped(Math.floor(parts / scale));
  const part = `${parts % scale}`.padStart(decimals, "0");
  return decimals === 0 ? whole : `${whole}${DECIMAL_SIGN[language]}${part}`;
}

/** A mass or an area to 0.1, below 1 to 0.01, so that a light thing does not read as nothing. */
export function measure(value: number, language: Language): string {
  return figure(value, roundTo(value, 2) < 1 ? 2 : 1, language);
}
