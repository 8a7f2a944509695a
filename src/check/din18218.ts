// How hard does fresh concrete press on its forms? DIN 18218:2010-01, characteristic values.

import type { Hour, KiloNewtonPerCubicMetre, KiloPascal, MetrePerHour, Mm } from "../units.ts";
import { type Envelope, envelopeOf, liquidHead, refusedSize } from "./envelope.ts";
import { type Answer, computed, type Refusal, refusalOf } from "./range.ts";
import { ALLOWABLE, ANY_RATE, NO_RATE, type RateLimit, upTo } from "./rateLimit.ts";

/** Class of consistence of the fresh concrete; "SCC": self-compacting. */
export type Consistence = "F1" | "F2" | "F3" | "F4" | "F5" | "F6" | "SCC";

export interface DinInput {
  readonly density: KiloNewtonPerCubicMetre;
  readonly height: Mm;
  readonly rate: MetrePerHour;
  readonly consistence: Consistence;
  /** t_E: when setting ends, at the lowest temperature the fresh concrete may have. */
  readonly settingEnd: Hour;
}

/**
 * Stiffer classes: (base + slope·v)·K1, K1 = 1 + growth·(t_E − 5). Flowing ones: base + slope·v·t_E, and no K1. Both at
 * the reference weight of 25 kN/m³. `least` is a floor.
 */
interface Row {
  readonly base: KiloPascal;
  readonly slope: number;
  readonly growth: number | null;
  readonly least: KiloPascal;
}
const ROWS: Readonly<Record<Consistence, Row>> = {
  F1: { base: 21, slope: 5, growth: 0.03, least: 25 },
  F2: { base: 19, slope: 10, growth: 0.053, least: 25 },
  F3: { base: 18, slope: 14, growth: 0.077, least: 25 },
  F4: { base: 17, slope: 17, growth: 0.14, least: 25 },
  F5: { base: 25, slope: 30 / 5, growth: null, least: 30 },
  F6: { base: 25, slope: 38 / 5, growth: null, least: 30 },
  SCC: { base: 25, slope: 0.26 * 25, growth: null, least: 30 },
};
const REFERENCE: KiloNewtonPerCubicMetre = 25;
const EARLIEST: Hour = 5;

const RATE = { input: "rate of placing", least: 0.01, greatest: 7, unit: "m/h" } as const;
const SETTING = { input: "end of setting", least: EARLIEST, greatest: 20, unit: "h" } as const;

export const DIN18218_SOURCE =
  "DIN 18218:2010-01: table from memory, with K1 by its general form; self-compacting concrete from Concrete " +
  "International, DIN Standard on Formwork Pressures Updated; full head as ceiling from beton.wiki, Frischbetondruck";

/** The formula of a class, in the signs of this folder: the standard writes σ, v and γ for P_max, R and w. */
export function din18218Formula(consistence: Consistence): string {
  const { base, slope, growth, least } = ROWS[consistence];
  const middle =
    consistence === "SCC"
      ? "(1.0 + 0.26·R·t_E)·w"
      : growth === null
        ? `(${base} + ${slope * EARLIEST}·R·t_E/5)·w/25`
        : `(${slope}·R + ${base})·(1 + ${growth}·(t_E − 5))·w/25`;
  return `P_max = ${middle}, at least ${least}, at most w·H`;
}

/**
 * Characteristic pressure on a vertical form, kPa, without a load factor (1.5 for the design value, from memory of the
 * same): internal vibrators no deeper than the knee, placed from above.
 *
 * @param input - rate 0.01 to 7 m/h, end of setting 5 to 20 h, height 50 to 10 000 mm, density 8 to 40 kN/m³; outside
 *   these the input is refused
 */
export function din18218(input: DinInput): Answer<Envelope> {
  const refusal = refused(input) ?? refusalOf([input.rate, RATE]);
  if (refusal !== null) return refusal;
  const row = ROWS[input.consistence];
  const { base, slope } = lineOf(row, input);
  const pressure = Math.max(base + slope * input.rate, row.least);
  return computed(envelopeOf(input.density, input.height, pressure));
}

/** Greatest rate, m/h, that keeps an allowable pressure of 1 to 500 kPa; never over 7 m/h, where the standard ends. */
export function din18218Rate(input: Omit<DinInput, "rate">, allowable: KiloPascal): Answer<RateLimit> {
  const refusal = refused(input) ?? refusalOf([allowable, ALLOWABLE]);
  if (refusal !== null) return refusal;
  const row = ROWS[input.consistence];
  if (allowable >= liquidHead(input.density, input.height)) return computed(ANY_RATE);
  if (allowable < row.least) return computed(NO_RATE);
  const { base, slope } = lineOf(row, input);
  const rate = (allowable - base) / slope;
  return computed(rate > 0 ? upTo(Math.min(rate, RATE.greatest)) : NO_RATE);
}

// Pressure without floor and ceiling is base + slope·v.
function lineOf(row: Row, { density, settingEnd }: Omit<DinInput, "rate">) {
  const scale = density / REFERENCE;
  if (row.growth === null) return { base: row.base * scale, slope: row.slope * settingEnd * scale };
  const late = 1 + row.growth * (settingEnd - EARLIEST);
  return { base: row.base * late * scale, slope: row.slope * late * scale };
}

function refused({ density, height, settingEnd }: Omit<DinInput, "rate">): Refusal | null {
  return refusedSize(density, height) ?? refusalOf([settingEnd, SETTING]);
}
