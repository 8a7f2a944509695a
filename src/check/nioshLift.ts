// What may one person lift, and how does a load compare? The revised lifting equation of NIOSH, metric.
//
//   RWL = LC · HM · VM · DM · AM · FM · CM        LI = load / RWL

import type { Kg, Mm } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

export interface Lift {
  /** Hands from the middle between the ankles. */
  readonly reach: Mm;
  /** Hands above the floor, where it is hardest. */
  readonly height: Mm;
  /** How far up or down. */
  readonly travel: Mm;
  /** Twist of the body, degrees. */
  readonly twist: number;
  /** FM and CM, from the tables of the method: 0 to 1. */
  readonly frequency: number;
  readonly coupling: number;
}

/** LC, kg. */
const LOAD_CONSTANT: Kg = 23;
const CLOSEST: Mm = 250;
const SHORTEST_TRAVEL: Mm = 250;
const KNUCKLE: Mm = 750;

const REACH = { input: "reach of the hands", least: 0, greatest: 630, unit: "mm" } as const;
const HEIGHT = { input: "height of the hands", least: 0, greatest: 1750, unit: "mm" } as const;
const TRAVEL = { input: "travel of the lift", least: 0, greatest: 1750, unit: "mm" } as const;
const TWIST = { input: "twist of the body", least: 0, greatest: 135, unit: "°" } as const;
const FREQUENCY = { input: "frequency multiplier", least: 0.01, greatest: 1, unit: "" } as const;
const COUPLING = { input: "coupling multiplier", least: 0.9, greatest: 1, unit: "" } as const;

export const NIOSH_FORMULA =
  "LI = m/RWL, RWL = 23·(25/H)·(1 − 0.003·|V − 75|)·(0.82 + 4.5/D)·(1 − 0.0032·A)·FM·CM, lengths in cm";
export const NIOSH_SOURCE =
  "revised NIOSH lifting equation, LC, HM, VM and DM read at what-when-how.com, ergonomics tutorial; AM from memory of it";

/**
 * Recommended weight limit, kg, under which nearly all healthy people may lift through a shift.
 *
 * @param lift - reach up to 630 mm (under 250 counts as 250), height and travel 0 to 1750 mm (a travel under 250 counts
 *   as 250), twist 0 to 135°; outside these the input is refused: the method gives no limit there
 */
export function nioshLimit(lift: Lift): Answer<Kg> {
  const { reach, height, travel, twist, frequency, coupling } = lift;
  const refusal = refusalOf(
    [reach, REACH],
    [height, HEIGHT],
    [travel, TRAVEL],
    [twist, TWIST],
    [frequency, FREQUENCY],
    [coupling, COUPLING],
  );
  if (refusal !== null) return refusal;
  const horizontal = CLOSEST / Math.max(reach, CLOSEST);
  const vertical = 1 - (0.003 * Math.abs(height - KNUCKLE)) / 10;
  const distance = 0.82 + 45 / Math.max(travel, SHORTEST_TRAVEL);
  const turned = 1 - 0.0032 * twist;
  return computed(
    LOAD_CONSTANT * horizontal * vertical * Math.min(distance, 1) * turned * frequency * coupling,
  );
}
