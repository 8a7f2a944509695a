// How far has concrete come, by the temperatures it has had? Five measures, each with its datum or its activation energy.
//
//   Nurse-Saul      M  = Σ (T − T_0)·Δt                            °C·h
//   Arrhenius       t_e = Σ exp(−(E/R)·(1/(273 + T) − 1/(273 + T_r)))·Δt      h at T_r
//   Eurocode 2      t_e = Σ exp(13.65 − 4000/(273 + T))·Δt         h at 20 °C
//   Sadgrove        t_e = Σ ((T + 16)/36)²·Δt                      h at 20 °C

import type { Celsius, Hour } from "../units.ts";
import { exponential } from "./power.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

/** A stretch of time at one mean temperature. */
export interface Interval {
  readonly hours: Hour;
  readonly temperature: Celsius;
}

const HOURS = { input: "length of an interval", least: 0, greatest: 10_000, unit: "h" } as const;
const DATUM = { input: "datum temperature", least: -12, greatest: 5, unit: "°C" } as const;
/** Below, water freezes and these sums mean nothing; above, early heat harms. */
const CURING = { input: "temperature of the concrete", least: 0, greatest: 60, unit: "°C" } as const;
const LOGGED = { input: "temperature of the concrete", least: -40, greatest: 100, unit: "°C" } as const;
const REFERENCE = { input: "reference temperature", least: 15, greatest: 30, unit: "°C" } as const;

const KELVIN = 273;
const GAS = 8.314; // J/(mol·K)
const REFERENCE_20: Celsius = 20;

export const NURSE_SAUL_FORMULA = "M = Σ (T − T_0)·Δt, colder intervals left out";
export const NURSE_SAUL_SOURCE =
  "Nurse-Saul maturity, civinnovate.com and civilmint.com/maturity-of-concrete";
export const EQUIVALENT_AGE_FORMULA =
  "t_e = Σ exp(−(E/R)·(1/(273 + T) − 1/293))·Δt, E = 33.5 kJ/mol, below 20 °C 33.5 + 1.47·(20 − T)";
export const EQUIVALENT_AGE_SOURCE =
  "equivalent age after Freiesleben Hansen and Pedersen, form in Danish Technological Institute TI-B 103, constants from memory";

/** Nurse-Saul maturity, °C·h, over a datum of −12 to 5 °C; intervals colder than the datum count nothing. */
export function nurseSaul(intervals: readonly Interval[], datum: Celsius): Answer<number> {
  const refusal =
    refusalOf([datum, DATUM]) ??
    refusalOf(
      ...intervals.flatMap(({ hours, temperature }) => [
        [hours, HOURS] as const,
        [temperature, LOGGED] as const,
      ]),
    );
  if (refusal !== null) return refusal;
  return computed(
    intervals.reduce((sum, { hours, temperature }) => sum + Math.max(temperature - datum, 0) * hours, 0),
  );
}

/** How the activation energy goes with the temperature: the same, or greater below 20 °C. */
export type Activation = "constant" | "variable";

/**
 * Equivalent age at 20 °C, h. "variable" counts cold hours for less: take it where the pour was cold.
 *
 * @param intervals - 0 to 60 °C; outside that the input is refused
 */
export function equivalentAge(intervals: readonly Interval[], activation: Activation): Answer<Hour> {
  return summed(intervals, (temperature) => {
    const isCold = activation === "variable" && temperature < REFERENCE_20;
    const energy = 33_500 + (isCold ? 1470 * (REFERENCE_20 - temperature) : 0);
    return exponential((-energy / GAS) * (1 / (KELVIN + temperature) - 1 / (KELVIN + REFERENCE_20)));
  });
}

/** Equivalent age, h, of ASTM C1074 with Q = 5000 K (Portland cement type I), from memory of it. */
export function astmAge(intervals: readonly Interval[], reference: Celsius): Answer<Hour> {
  const refusal = refusalOf([reference, REFERENCE]);
  if (refusal !== null) return refusal;
  return summed(intervals, (temperature) =>
    exponential(-5000 * (1 / (KELVIN + temperature) - 1 / (KELVIN + reference))),
  );
}

/** Temperature-adjusted age, h, of EN 1992-1-1:2004 annex B, expression B.10, from memory of it. */
export function eurocodeAge(intervals: readonly Interval[]): Answer<Hour> {
  return summed(intervals, (temperature) => exponential(13.65 - 4000 / (KELVIN + temperature)));
}

/** Sadgrove's equivalent age at 20 °C, h, as CIRIA Report 136 uses it; from memory of it. */
export function sadgroveAge(intervals: readonly Interval[]): Answer<Hour> {
  return summed(intervals, (temperature) => {
    const part = (temperature + 16) / 36;
    return part * part;
  });
}

function summed(intervals: readonly Interval[], rate: (temperature: Celsius) => number): Answer<Hour> {
  const refusal = refusalOf(
    ...intervals.flatMap(({ hours, temperature }) => [
      [hours, HOURS] as const,
      [temperature, CURING] as const,
    ]),
  );
  if (refusal !== null) return refusal;
  return computed(intervals.reduce((sum, { hours, temperature }) => sum + rate(temperature) * hours, 0));
}

/**
 * Intervals of a log up to an hour, each at the mean of the two readings it lies between; the first reading counts back to
 * placing. null where the log ends before that hour: nothing is guessed beyond it.
 *
 * @param log - readings [hours since placing, °C], rising
 */
export function intervalsUpTo(
  log: readonly (readonly [hour: Hour, temperature: Celsius])[],
  until: Hour,
): readonly Interval[] | null {
  const [first] = log;
  const last = log[log.length - 1];
  if (first === undefined || last === undefined || last[0] < until) return null;
  const found: Interval[] = [{ hours: Math.min(first[0], until), temperature: first[1] }];
  for (let k = 1; k < log.length; k++) {
    const [from, cold] = log[k - 1]!;
    const [to, warm] = log[k]!;
    if (from >= until) break;
    const end = Math.min(to, until);
    const atEnd = cold + ((warm - cold) * (end - from)) / (to - from);
    found.push({ hours: end - from, temperature: (cold + atEnd) / 2 });
  }
  return found.filter(({ hours }) => hours > 0);
}
