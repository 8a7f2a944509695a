// How strong is concrete at an age, as a part of its strength at 28 days? Models of two standards and of maturity, each
// with the ages for which it was made. Younger than that a model gives a figure and says that it does not hold.

import type { Celsius, Hour, MegaPascal } from "../units.ts";
import { decimalLogarithm, exponential, logarithm } from "./power.ts";
import { type Answer, type Bounds, computed, refusalOf } from "./range.ts";

/** Slow, normal and rapid cement of Eurocode 2. */
export type CementClass = "S" | "N" | "R";

const GROWTH: Readonly<Record<CementClass, number>> = { R: 0.2, N: 0.25, S: 0.38 };
const DAYS = { input: "age at 20 °C", least: 0.25, greatest: 365, unit: "d" } as const;
/** From lean to high-strength concrete: a slip of the pen is no strength. */
export const STRENGTH: Bounds = { input: "strength at 28 days", least: 5, greatest: 130, unit: "MPa" };
const PART = { input: "part of the strength at 28 days", least: 0.05, greatest: 1, unit: "" } as const;

/** From this age on each model was fitted, days. */
export const EUROCODE_FROM_DAYS = 3;
export const ACI209_FROM_DAYS = 1;

/** f_cm − f_ck, MPa, of EN 1992-1-1:2004, table 3.1, from memory of it. */
export const MEAN_OVER_CHARACTERISTIC: MegaPascal = 8;
export const EUROCODE_GAIN_FORMULA = `f_cm(t) = f_cm·exp(s·(1 − √(28/t))), f_cm = f_ck + ${MEAN_OVER_CHARACTERISTIC}`;
export const EUROCODE_GAIN_SOURCE =
  "EN 1992-1-1:2004, 3.1.2(6): s 0.20 R, 0.25 N, 0.38 S as quoted at acrylatex.com, expression from memory; holds from 3 days on";

/** β_cc of EN 1992-1-1:2004, 3.1.2(6), at an age of 0.25 to 365 days at 20 °C. Made for 3 days and more. */
export function eurocodeGain(days: number, cement: CementClass): Answer<number> {
  return refusalOf([days, DAYS]) ?? computed(exponential(GROWTH[cement] * (1 - Math.sqrt(28 / days))));
}

/** Age at 20 °C, days, at which β_cc reaches a part of 0.05 to 1: t = 28/(1 − ln(part)/s)². */
export function eurocodeAgeFor(part: number, cement: CementClass): Answer<number> {
  const refusal = refusalOf([part, PART]);
  if (refusal !== null) return refusal;
  const root = 1 - logarithm(part) / GROWTH[cement];
  return computed(28 / (root * root));
}

const CHARACTERISTIC_AGE = { input: "age", least: 3, greatest: 28, unit: "d" } as const;

/** f_ck(t) = f_cm(t) − 8, MPa, from 3 to 28 days, otherwise refused: younger needs tests (3.1.2(5), from memory). */
export function eurocodeCharacteristic(
  cylinder: MegaPascal,
  days: number,
  cement: CementClass,
): Answer<MegaPascal> {
  const refusal = refusalOf([days, CHARACTERISTIC_AGE], [cylinder, STRENGTH]);
  if (refusal !== null) return refusal;
  const gain = eurocodeGain(days, cement);
  if (gain.status === "refused") return gain;
  return computed(gain.value * (cylinder + MEAN_OVER_CHARACTERISTIC) - MEAN_OVER_CHARACTERISTIC);
}

/** ACI 209 for moist curing: t/(a + b·t), types I and III; from memory of it. Made for 1 day and more. */
export function aci209Gain(days: number, cement: "I" | "III"): Answer<number> {
  const [a, b] = cement === "I" ? [4.0, 0.85] : [2.3, 0.92];
  return refusalOf([days, DAYS]) ?? computed(days / (a + b * days));
}

/** Plowman's constants by strength at 28 days, MPa, for M in °C·h over −11 °C. */
const PLOWMAN: readonly { readonly under: MegaPascal; readonly a: number; readonly b: number }[] = [
  { under: 17.5, a: 10, b: 68 },
  { under: 35, a: 21, b: 61 },
  { under: 52.5, a: 32, b: 54 },
  { under: 70, a: 42, b: 46.5 },
];
export const PLOWMAN_DATUM: Celsius = -11;
const MATURITY = { input: "maturity", least: 1000, greatest: 30_000, unit: "°C·h" } as const;
const PLOWMAN_STRENGTH = { input: "strength at 28 days", least: 5, greatest: 69.9, unit: "MPa" } as const;

/**
 * Part of the strength at a maturity of 19 800 °C·h (28 days at 18 °C): (A + B·log(M/1000))/100.
 *
 * @see Plowman; classes to 35 MPa at talktorashid.blogspot.com/2022/05/maturity-of-concrete.html, above from memory
 */
export function plowmanGain(maturity: number, strength: MegaPascal): Answer<number> {
  const refusal = refusalOf([maturity, MATURITY], [strength, PLOWMAN_STRENGTH]);
  if (refusal !== null) return refusal;
  const { a, b } = PLOWMAN.find(({ under }) => strength < under)!;
  return computed((a + b * decimalLogarithm(maturity / 1000)) / 100);
}

/** An age in days from hours. */
export function daysOf(hours: Hour): number {
  return hours / 24;
}
