// How hard does fresh concrete press on its forms? ACI 347-04 / 347R-14, metric.
//
// The inch-pound form of the same guide is in `aci347PressurePsf.ts`: 30 kPa is not 600 psf, 4.2 m is not 14 ft. Editions
// before 2004 switched to full head at 10 ft/h and are not meant here.

import type { Celsius, KiloNewtonPerCubicMetre, KiloPascal, MetrePerHour, Mm } from "../units.ts";
import {
  type Aci347Equation,
  type Aci347Figures,
  type Aci347Form,
  aci347Allowable,
  aci347Equation,
  aci347Greatest,
} from "./aci347Branches.ts";
import {
  ACI347_COEFFICIENTS_SOURCE,
  aci347Chemistry,
  aci347Weight,
  type Cement,
  DENSITY_KG,
} from "./aci347Coefficients.ts";
import { type Envelope, envelopeOf, liquidHead, refusedSize } from "./envelope.ts";
import { type Answer, computed, type Refusal, refusalOf } from "./range.ts";
import { ALLOWABLE, type RateLimit } from "./rateLimit.ts";

export interface Aci347Input {
  readonly density: KiloNewtonPerCubicMetre;
  readonly height: Mm;
  /** Of the concrete as placed, not of the air. */
  readonly temperature: Celsius;
  /** Highest rate while placing, not the mean of a shift. */
  readonly rate: MetrePerHour;
  readonly cement: Cement;
  readonly isRetarded: boolean;
  readonly slump: Mm;
  /** How deep the concrete is vibrated again from inside. */
  readonly vibrationDepth: Mm;
  /** A form without a plan dimension over 2 m. */
  readonly isColumn: boolean;
}

/** Standard gravity, m/s²: from kN/m³ to kg/m³. */
const GRAVITY = 9.80665;
const FIGURES: Aci347Figures = {
  constant: 7.2,
  slope1: 785,
  constant2: 1156,
  slope2: 244,
  temperatureShift: 17.8,
  slowRate: 2.1,
  lowHeight: 4200,
  fastRate: 4.5,
  least: 30,
};
const STIFF_SLUMP: Mm = 175;
const SHALLOW: Mm = 1200;

/** The printed tables go from 40 to 90 °F. */
const TEMPERATURE = { input: "temperature of the concrete", least: 5, greatest: 32, unit: "°C" } as const;
const RATE = { input: "rate of placing", least: 0.01, greatest: 50, unit: "m/h" } as const;
const SLUMP = { input: "slump", least: 0, greatest: 300, unit: "mm" } as const;
const DEPTH = { input: "depth of vibration", least: 0, greatest: 10_000, unit: "mm" } as const;

export const ACI347_FORMULA: Readonly<Record<Aci347Equation, string>> = {
  E1: "P_max = C_w·C_c·(7.2 + 785·R/(T + 17.8)), at least 30·C_w, at most w·H",
  E2: "P_max = C_w·C_c·(7.2 + 1156/(T + 17.8) + 244·R/(T + 17.8)), at least 30·C_w, at most w·H",
  head: "P_max = w·H",
};
export const ACI347_SOURCE =
  `ACI 347-04 / 347R-14, metric equations from memory, their ranges from M. K. Hurd, "Use updated wall pressure ` +
  `formulas", concreteconstruction.net; ${ACI347_COEFFICIENTS_SOURCE}`;

export interface Aci347Pressure {
  readonly equation: Aci347Equation;
  readonly weight: number;
  readonly chemistry: number;
  readonly envelope: Envelope;
}

/**
 * Pressure on a wall or column form, kPa.
 *
 * Full liquid head without coefficients where a wall rises faster than 4.5 m/h, the slump is over 175 mm or the concrete
 * is vibrated deeper than 1.2 m. Pumping from the foot and external vibration are outside these equations altogether.
 *
 * @param input - temperature 5 to 32 °C, rate 0.01 to 50 m/h, height 50 to 10 000 mm, density 8 to 40 kN/m³; outside
 *   these the input is refused
 * @see ACI 347-04 2.2.2, equations 2.1 to 2.3 (numbers from memory)
 */
export function aci347Pressure(input: Aci347Input): Answer<Aci347Pressure> {
  const refusal = refused(input) ?? refusalOf([input.rate, RATE]);
  if (refusal !== null) return refusal;
  const form = formOf(input);
  const greatest = aci347Greatest(FIGURES, form, input.rate);
  return computed({
    equation: aci347Equation(FIGURES, form, input.rate),
    weight: form.weight,
    chemistry: form.chemistry,
    envelope: envelopeOf(input.density, input.height, greatest),
  });
}

/**
 * Greatest rate, m/h, that keeps an allowable pressure.
 *
 * @param allowable - 1 to 500 kPa; the rest as in {@link aci347Pressure}
 */
export function aci347Rate(input: Omit<Aci347Input, "rate">, allowable: KiloPascal): Answer<RateLimit> {
  const refusal = refused(input) ?? refusalOf([allowable, ALLOWABLE]);
  return refusal ?? computed(aci347Allowable(FIGURES, formOf(input), allowable));
}

function refused(input: Omit<Aci347Input, "rate">): Refusal | null {
  const { density, height, temperature, slump, vibrationDepth } = input;
  return (
    refusedSize(density, height) ??
    refusalOf(
      [temperature, TEMPERATURE],
      [slump, SLUMP],
      [vibrationDepth, DEPTH],
      [kilograms(density), DENSITY_KG],
    )
  );
}

function formOf(input: Omit<Aci347Input, "rate">): Aci347Form {
  const { density, height, temperature, cement, isRetarded, isColumn } = input;
  return {
    isColumn,
    height,
    temperature,
    weight: aci347Weight(kilograms(density)),
    chemistry: aci347Chemistry(cement, isRetarded),
    head: liquidHead(density, height),
    isLiquid: input.slump > STIFF_SLUMP || input.vibrationDepth > SHALLOW,
  };
}

function kilograms(density: KiloNewtonPerCubicMetre): number {
  return (density * 1000) / GRAVITY;
}
