// At which hour of a log has a measure of maturity come to what is needed? The other way round of summing a log up.

import type { Celsius, Hour } from "../units.ts";
import { type Interval, intervalsUpTo } from "./maturity.ts";
import { type Answer, computed } from "./range.ts";

/** A sum over intervals, such as maturity or an equivalent age: each interval adds its own part. */
export type Measure = (intervals: readonly Interval[]) => Answer<number>;

export interface HourReached {
  readonly hour: Hour;
  /** false: the log ends before; the slab is taken to stay as cold as the log ever was. */
  readonly isLogged: boolean;
}

/** Halvings of an interval of the log: to less than a billionth of it. */
const HALVINGS = 40;

/**
 * The first hour at which the measure is `needed`; after the end of the log by its coldest reading. null where it never is:
 * no log, or one so cold that nothing is gained.
 *
 * @param log - readings [hours since placing, °C], rising
 */
export function hourReached(
  log: readonly (readonly [hour: Hour, temperature: Celsius])[],
  needed: number,
  measure: Measure,
): Answer<HourReached | null> {
  const last = log[log.length - 1];
  if (last === undefined) return computed(null);
  if (needed <= 0) return computed({ hour: 0, isLogged: true });
  let [hour, reached] = [0, 0];
  for (const interval of intervalsUpTo(log, last[0]) ?? []) {
    const part = measure([interval]);
    if (part.status === "refused") return part;
    if (reached + part.value >= needed) return computed(inside(hour, hour + interval.hours));
    [hour, reached] = [hour + interval.hours, reached + part.value];
  }
  const coldest = log.reduce((least, [, temperature]) => Math.min(least, temperature), last[1]);
  const anHour = measure([{ hours: 1, temperature: coldest }]);
  if (anHour.status === "refused") return anHour;
  if (!(anHour.value > 0)) return computed(null);
  return computed({ hour: last[0] + (needed - reached) / anHour.value, isLogged: false });

  function inside(from: Hour, to: Hour): HourReached {
    let [low, high] = [from, to];
    for (let k = 0; k < HALVINGS; k++) {
      const middle = (low + high) / 2;
      const then = measure(intervalsUpTo(log, middle) ?? []);
      if (then.status === "computed" && then.value < needed) low = middle;
      else high = middle;
    }
    return { hour: high, isLogged: true };
  }
}
