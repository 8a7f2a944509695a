// How hard does fresh concrete press on its forms? CIRIA Report 108 (1985), also used through BS 5975.
//
//   P_max = w·( C1·√R + C2·K·√(H − C1·√R) ),  K = (36/(T + 16))²,  at most w·h
//
// w is the density, D in the report, H the height of the form, h that of the placing. Where C1·√R is more than H the whole placing is liquid.

import type { Celsius, KiloNewtonPerCubicMetre, KiloPascal, MetrePerHour, Mm } from "../units.ts";
import type { Cement } from "./aci347Coefficients.ts";
import { type Envelope, envelopeOf, HEIGHT, liquidHead, refusedSize } from "./envelope.ts";
import { type Answer, computed, type Refusal, refusalOf } from "./range.ts";
import { ALLOWABLE, ANY_RATE, NO_RATE, type RateLimit, upTo } from "./rateLimit.ts";

export interface CiriaInput {
  readonly density: KiloNewtonPerCubicMetre;
  /** Of the form, from its foot to its top edge: at least that of the placing. */
  readonly formHeight: Mm;
  readonly height: Mm;
  /** Of the concrete as placed. */
  readonly temperature: Celsius;
  readonly rate: MetrePerHour;
  readonly cement: Cement;
  readonly isRetarded: boolean;
  /** A form of which width and breadth are both under 2 m. */
  readonly isColumn: boolean;
}

/** C2: 0.30 plain, 0.45 where one thing slows the setting, 0.60 where two do or a blend is very slow. */
const SLOWNESS: Readonly<Record<Cement, readonly [plain: number, retarded: number]>> = {
  portland: [0.3, 0.45],
  blend: [0.45, 0.6],
  "slow-blend": [0.6, 0.6],
};

const TEMPERATURE = { input: "temperature of the concrete", least: 5, greatest: 35, unit: "°C" } as const;
const RATE = { input: "rate of placing", least: 0.01, greatest: 50, unit: "m/h" } as const;
const FORM_HEIGHT = { ...HEIGHT, input: "height of the form" };

export const CIRIA108_FORMULA =
  "P_max = w·(C1·√R + C2·K·√(H − C1·√R)), K = (36/(T + 16))², at most w·h; w·h where C1·√R > H";
export const CIRIA108_SOURCE =
  "CIRIA Report 108 (1985), equation as given in 1library.co/article/zkwr4e5m and in a project sheet of 2005 " +
  "(scribd.com/document/677832762); groups of C2 from engineersedge.com, what belongs to each from memory";

export interface Ciria108 {
  readonly c1: number;
  readonly c2: number;
  readonly k: number;
  readonly envelope: Envelope;
}

/**
 * Pressure on a wall or column form, kPa.
 *
 * @param input - temperature 5 to 35 °C, rate 0.01 to 50 m/h, heights 50 to 10 000 mm, density 8 to 40 kN/m³; outside
 *   these the input is refused
 */
export function ciria108(input: CiriaInput): Answer<Ciria108> {
  const refusal = refused(input) ?? refusalOf([input.rate, RATE]);
  if (refusal !== null) return refusal;
  const { c1, c2, k } = factorsOf(input);
  const fluid = c1 * Math.sqrt(input.rate);
  const form = input.formHeight / 1000;
  const pressure =
    fluid > form ? Number.POSITIVE_INFINITY : input.density * (fluid + c2 * k * Math.sqrt(form - fluid));
  return computed({ c1, c2, k, envelope: envelopeOf(input.density, input.height, pressure) });
}

/**
 * Greatest rate, m/h, that keeps an allowable pressure of 1 to 500 kPa: the equation solved for R.
 */
export function ciria108Rate(input: Omit<CiriaInput, "rate">, allowable: KiloPascal): Answer<RateLimit> {
  const refusal = refused(input) ?? refusalOf([allowable, ALLOWABLE]);
  if (refusal !== null) return refusal;
  const { c1, c2, k } = factorsOf(input);
  const form = input.formHeight / 1000;
  if (allowable >= liquidHead(input.density, input.height)) return computed(ANY_RATE);
  const q = allowable / input.density;
  const a = c2 * k;
  const fluid = q - (a * a) / 2 - (a / 2) * Math.sqrt(a * a + 4 * (form - q));
  return computed(fluid > 0 ? upTo((fluid / c1) * (fluid / c1)) : NO_RATE);
}

function refused(input: Omit<CiriaInput, "rate">): Refusal | null {
  const { density, formHeight, height, temperature } = input;
  const least = { ...FORM_HEIGHT, least: Math.max(height, HEIGHT.least) };
  return refusedSize(density, height) ?? refusalOf([formHeight, least], [temperature, TEMPERATURE]);
}

function factorsOf({ temperature, cement, isRetarded, isColumn }: Omit<CiriaInput, "rate">) {
  const warmth = 36 / (temperature + 16);
  return { c1: isColumn ? 1.5 : 1, c2: SLOWNESS[cement][isRetarded ? 1 : 0], k: warmth * warmth };
}
