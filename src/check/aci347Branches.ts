// Which equation of ACI 347 holds for a form, and what does it give? Shared by the metric and the inch-pound form, each
// of which brings its own figures: they are not exact conversions of one another.
//
//   E1   C_w·C_c·(a + b·R/T')              columns; walls placed slowly and not high
//   E2   C_w·C_c·(a + c/T' + d·R/T')       walls placed slowly and high, or faster
//   head w·h                               everything else
//
// T' is the temperature as the form of the guide takes it. E1 and E2 are at least the least pressure of the guide, and
// never above the full liquid head: in that order.

import { ANY_RATE, NO_RATE, type RateLimit, upTo } from "./rateLimit.ts";

export interface Aci347Figures {
  readonly constant: number;
  /** b of E1; c and d of E2. */
  readonly slope1: number;
  readonly constant2: number;
  readonly slope2: number;
  /** T' = T + this. */
  readonly temperatureShift: number;
  /** Walls slower than this and up to `lowHeight` take E1. */
  readonly slowRate: number;
  readonly lowHeight: number;
  /** Walls faster than this have full liquid head. */
  readonly fastRate: number;
  /** Least pressure over C_w. */
  readonly least: number;
}

export interface Aci347Form {
  readonly isColumn: boolean;
  readonly height: number;
  readonly temperature: number;
  readonly weight: number;
  readonly chemistry: number;
  /** Full liquid head at the foot. */
  readonly head: number;
  /** Slump, depth of vibration or way of placing outside the equations: full liquid head at any rate. */
  readonly isLiquid: boolean;
}

export type Aci347Equation = "E1" | "E2" | "head";

/** Which equation holds at a rate. */
export function aci347Equation(figures: Aci347Figures, form: Aci347Form, rate: number): Aci347Equation {
  if (form.isLiquid) return "head";
  if (form.isColumn) return "E1";
  if (rate > figures.fastRate) return "head";
  return rate < figures.slowRate && form.height <= figures.lowHeight ? "E1" : "E2";
}

/** Greatest pressure at a rate. */
export function aci347Greatest(figures: Aci347Figures, form: Aci347Form, rate: number): number {
  const equation = aci347Equation(figures, form, rate);
  if (equation === "head") return form.head;
  const base = aci347Base(figures, equation, { rate, temperature: form.temperature });
  return Math.min(Math.max(form.weight * form.chemistry * base, figures.least * form.weight), form.head);
}

/** E1 or E2 without coefficients, without least pressure and head. */
export function aci347Base(
  figures: Aci347Figures,
  equation: "E1" | "E2",
  { rate, temperature }: { readonly rate: number; readonly temperature: number },
): number {
  const warmth = temperature + figures.temperatureShift;
  return equation === "E1"
    ? figures.constant + (figures.slope1 * rate) / warmth
    : figures.constant + figures.constant2 / warmth + (figures.slope2 * rate) / warmth;
}

/** How little under a rate at which the pressure jumps is still under it, as a part of the rate. */
const UNDER = 1e-9;

/** Greatest rate that keeps a pressure. */
export function aci347Allowable(figures: Aci347Figures, form: Aci347Form, pressure: number): RateLimit {
  if (pressure >= form.head) return ANY_RATE;
  if (form.isLiquid || pressure < figures.least * form.weight) return NO_RATE;
  const warmth = form.temperature + figures.temperatureShift;
  const base = pressure / (form.weight * form.chemistry) - figures.constant;
  const slow = (base * warmth) / figures.slope1;
  if (form.isColumn) return positive(slow);
  const fast = Math.min((base - figures.constant2 / warmth) * (warmth / figures.slope2), figures.fastRate);
  const isLow = form.height <= figures.lowHeight;
  if (!isLow || fast >= figures.slowRate) return positive(fast);
  return positive(Math.min(slow, figures.slowRate * (1 - UNDER)));
}

function positive(rate: number): RateLimit {
  return rate > 0 ? upTo(rate) : NO_RATE;
}
