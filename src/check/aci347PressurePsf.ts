// How hard does fresh concrete press on its forms? ACI 347-04 / 347R-14, inch-pound: feet, hours, °F, psf, lb/ft³.

import {
  type Aci347Equation,
  type Aci347Figures,
  type Aci347Form,
  aci347Allowable,
  aci347Base,
  aci347Equation,
  aci347Greatest,
} from "./aci347Branches.ts";
import {
  ACI347_COEFFICIENTS_SOURCE,
  aci347Chemistry,
  aci347WeightPcf,
  type Cement,
  DENSITY_PCF,
} from "./aci347Coefficients.ts";
import { type Answer, computed, type Refusal, refusalOf } from "./range.ts";
import type { RateLimit } from "./rateLimit.ts";

export interface Aci347PsfInput {
  readonly densityPcf: number;
  readonly heightFeet: number;
  readonly temperatureF: number;
  readonly rateFeet: number;
  readonly cement: Cement;
  readonly isRetarded: boolean;
  readonly slumpInches: number;
  readonly vibrationFeet: number;
  readonly isColumn: boolean;
}

export interface Aci347Psf {
  readonly equation: Aci347Equation;
  readonly weight: number;
  readonly chemistry: number;
  readonly greatestPsf: number;
  /** Depth at which it is reached. */
  readonly kneeFeet: number;
}

const FIGURES: Aci347Figures = {
  constant: 150,
  slope1: 9000,
  constant2: 43_400,
  slope2: 2800,
  temperatureShift: 0,
  slowRate: 7,
  lowHeight: 14,
  fastRate: 15,
  least: 600,
};
const STIFF_SLUMP = 7;
const SHALLOW = 4;

const TEMPERATURE = { input: "temperature of the concrete", least: 40, greatest: 90, unit: "°F" } as const;
const RATE = { input: "rate of placing", least: 0.03, greatest: 160, unit: "ft/h" } as const;
const HEIGHT = { input: "height of the placing", least: 0.2, greatest: 33, unit: "ft" } as const;
const SLUMP = { input: "slump", least: 0, greatest: 12, unit: "in" } as const;
const DEPTH = { input: "depth of vibration", least: 0, greatest: 33, unit: "ft" } as const;
const ALLOWABLE = { input: "allowable pressure", least: 20, greatest: 10_000, unit: "psf" } as const;

export const ACI347_PSF_SOURCE =
  "ACI 347-04 / 347R-14, inch-pound: equations in Univ. of Florida BCN4423C, week 7; their ranges in M. K. Hurd, " +
  `"Use updated wall pressure formulas", concreteconstruction.net; ${ACI347_COEFFICIENTS_SOURCE}`;

/**
 * Pressure on a wall or column form, psf. Full liquid head without coefficients where a wall rises faster than 15 ft/h,
 * the slump is over 7 in or the concrete is vibrated deeper than 4 ft.
 *
 * @param input - 40 to 90 °F, 0.03 to 160 ft/h, 0.2 to 33 ft, 50 to 255 lb/ft³; outside these the input is refused
 * @see ACI 347-04 / 347R-14; equations also in Univ. of Florida BCN4423C, week 7; 14 ft, 7 and 15 ft/h, 7 in and "no
 *   coefficients on full head" in M. K. Hurd, "Use updated wall pressure formulas", concreteconstruction.net
 */
export function aci347PressurePsf(input: Aci347PsfInput): Answer<Aci347Psf> {
  const refusal = refused(input) ?? refusalOf([input.rateFeet, RATE]);
  if (refusal !== null) return refusal;
  const form = formOf(input);
  const greatestPsf = aci347Greatest(FIGURES, form, input.rateFeet);
  return computed({
    equation: aci347Equation(FIGURES, form, input.rateFeet),
    weight: form.weight,
    chemistry: form.chemistry,
    greatestPsf,
    kneeFeet: greatestPsf / input.densityPcf,
  });
}

/** Greatest rate, ft/h, that keeps 20 to 10 000 psf; the rest as in {@link aci347PressurePsf}. */
export function aci347RatePsf(
  input: Omit<Aci347PsfInput, "rateFeet">,
  allowablePsf: number,
): Answer<RateLimit> {
  const refusal = refused(input) ?? refusalOf([allowablePsf, ALLOWABLE]);
  return refusal ?? computed(aci347Allowable(FIGURES, formOf(input), allowablePsf));
}

/** E1 or E2 by itself, psf, as printed tables give it: without coefficients, least pressure and full head. */
export function aci347BasePsf(
  equation: "E1" | "E2",
  { rateFeet, temperatureF }: { readonly rateFeet: number; readonly temperatureF: number },
): Answer<number> {
  const refusal = refusalOf([rateFeet, RATE], [temperatureF, TEMPERATURE]);
  return refusal ?? computed(aci347Base(FIGURES, equation, { rate: rateFeet, temperature: temperatureF }));
}

function refused(input: Omit<Aci347PsfInput, "rateFeet">): Refusal | null {
  return refusalOf(
    [input.densityPcf, DENSITY_PCF],
    [input.heightFeet, HEIGHT],
    [input.temperatureF, TEMPERATURE],
    [input.slumpInches, SLUMP],
    [input.vibrationFeet, DEPTH],
  );
}

function formOf(input: Omit<Aci347PsfInput, "rateFeet">): Aci347Form {
  const { densityPcf, heightFeet, temperatureF, cement, isRetarded, isColumn } = input;
  return {
    isColumn,
    height: heightFeet,
    temperature: temperatureF,
    weight: aci347WeightPcf(densityPcf),
    chemistry: aci347Chemistry(cement, isRetarded),
    head: densityPcf * heightFeet,
    isLiquid: input.slumpInches > STIFF_SLUMP || input.vibrationFeet > SHALLOW,
  };
}
