// How fast does concrete rise for the volume that comes, and how much comes from a mixer? One unit of length throughout.

import { type Answer, computed, refusalOf } from "./range.ts";

const VOLUME = { input: "volume placed in an hour", least: 0, greatest: 10_000, unit: "" } as const;
const AREA = { input: "plan area of the forms", least: 0.01, greatest: 100_000, unit: "" } as const;
const RATE = { input: "rate of placing", least: 0, greatest: 200, unit: "" } as const;
const BATCH = { input: "volume of a batch", least: 0, greatest: 10_000, unit: "" } as const;
const MINUTES = { input: "time of a batch", least: 0.1, greatest: 1440, unit: "min" } as const;

/** Rate of rise R = Q/A: m³/h over m² gives m/h, ft³/h over ft² gives ft/h. */
export function placingRate(volumePerHour: number, planArea: number): Answer<number> {
  return refusalOf([volumePerHour, VOLUME], [planArea, AREA]) ?? computed(volumePerHour / planArea);
}

/** Volume in an hour that makes concrete rise at a rate: Q = R·A. @param rate - 0 to 200, in the unit of length an hour */
export function placingVolume(rate: number, planArea: number): Answer<number> {
  return refusalOf([rate, RATE], [planArea, AREA]) ?? computed(rate * planArea);
}

/** Volume in an hour from batches that take so many minutes each. */
export function volumePerHour(batch: number, minutes: number): Answer<number> {
  return refusalOf([batch, BATCH], [minutes, MINUTES]) ?? computed((batch * 60) / minutes);
}
