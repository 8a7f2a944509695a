// How does the pressure of fresh concrete go with depth? The same shape in every method.
//
//   free surface ─┐            p = w·h down to the knee,
//                 │＼          then the greatest pressure to the foot
//   knee ─────────┤  ＼
//                 │    │
//   foot ─────────┴────┘

import type { KiloNewtonPerCubicMetre, KiloPascal, Mm } from "../units.ts";
import { type Bounds, type Refusal, refusalOf } from "./range.ts";

/** Pressure over the height of one placing, without a load factor. */
export interface Envelope {
  readonly density: KiloNewtonPerCubicMetre;
  /** From the free surface to the foot of the form. */
  readonly height: Mm;
  /** Greatest pressure. */
  readonly greatest: KiloPascal;
  /** Depth at which it is reached. */
  readonly knee: Mm;
}

/** Source of the shape, for every method. */
export const ENVELOPE_SOURCE =
  "shape of the pressure: N. J. Gardner, Concrete pressure on formwork, Proc. ICE 80 (1986) 145-159";
export const ENVELOPE_FORMULA = "p(h) = min(w·h, P_max)";

/** The heights this folder takes: from a low upstand to two storeys. */
export const HEIGHT: Bounds = { input: "height of the placing", least: 50, greatest: 10_000, unit: "mm" };
/** From light to heavy concrete, 800 to 4000 kg/m³ (from memory of EN 206). */
const FRESH_DENSITY: Bounds = {
  input: "density of the fresh concrete",
  least: 8,
  greatest: 40,
  unit: "kN/m³",
};

/** Full liquid head, kPa, at a depth below the free surface. */
export function liquidHead(density: KiloNewtonPerCubicMetre, depth: Mm): KiloPascal {
  return (density * depth) / 1000;
}

/** The envelope of a method's pressure, never above the full liquid head. */
export function envelopeOf(
  density: KiloNewtonPerCubicMetre,
  height: Mm,
  pressure: KiloPascal = Number.POSITIVE_INFINITY,
): Envelope {
  const greatest = Math.min(pressure, liquidHead(density, height));
  return { density, height, greatest, knee: (1000 * greatest) / density };
}

/** Refuses heights and densities no method takes. */
export function refusedSize(density: KiloNewtonPerCubicMetre, height: Mm): Refusal | null {
  return refusalOf([density, FRESH_DENSITY], [height, HEIGHT]);
}

/** Pressure, kPa, at a depth below the free surface; nothing above it. */
export function pressureAt({ density, greatest }: Envelope, depth: Mm): KiloPascal {
  return depth <= 0 ? 0 : Math.min(liquidHead(density, depth), greatest);
}

/** Thrust on a strip one metre wide between two depths, kN/m: the area under the envelope. */
export function thrustBetween(envelope: Envelope, from: Mm, to: Mm): number {
  return thrustDownTo(envelope, to) - thrustDownTo(envelope, from);
}

function thrustDownTo({ density, greatest, knee }: Envelope, depth: Mm): number {
  const head = Math.min(Math.max(depth, 0), knee) / 1000;
  const flat = Math.max(depth - knee, 0) / 1000;
  return (density * head * head) / 2 + greatest * flat;
}

/** The thrust on a metre of wall in its two parts, each with the height of its line of action above the foot, m. */
export interface WallThrust {
  readonly flat: number;
  readonly flatLever: number;
  readonly hydrostatic: number;
  readonly hydrostaticLever: number;
}

/** Thrust on a metre run of wall form, kN/m: the flat part below the knee and the triangle above it. */
export function wallThrust(envelope: Envelope): WallThrust {
  const flatHeight = (envelope.height - envelope.knee) / 1000;
  const head = envelope.knee / 1000;
  return {
    flat: envelope.greatest * flatHeight,
    flatLever: flatHeight / 2,
    hydrostatic: (envelope.greatest * head) / 2,
    hydrostaticLever: flatHeight + head / 3,
  };
}
