// A log of temperatures from a text: what a logger exports or a person pastes, one reading a line.
//
//   hours;°C            0;18.5     1,5;21     0:30;19
//   date and time, °C   2026-03-04 07:00, 18.5     counted in hours from the first line
//
// Nothing is guessed: a line that is no reading is told with its number, and nothing is taken.

import { LOG_RANGES, MOST_READINGS, type Reading } from "../../plan/concrete.ts";
import { columnsOf, figureOf, quotedLine } from "./pairLines.ts";

/** Why a text is no log: the line, from 1, its text, and what is wrong with it. */
export interface LogFault {
  readonly line: number;
  readonly text: string;
  readonly reason: "form" | "mixed" | "hour" | "temperature" | "order" | "many" | "empty";
}

export type LogRead =
  | { readonly status: "read"; readonly readings: readonly Reading[] }
  | { readonly status: "refused"; readonly fault: LogFault };

interface TimedReading {
  /** Hours; since placing, or since the year 0 for a date. */
  readonly hour: number;
  readonly isDate: boolean;
  readonly temperature: number;
}

export function readTemperatureLog(text: string): LogRead {
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/);
  const found: { readonly line: number; readonly text: string; readonly reading: TimedReading }[] = [];
  for (const [index, raw] of lines.entries()) {
    const own = raw.trim();
    if (own === "") continue;
    const at = { line: index + 1, text: quotedLine(own) };
    const reading = readingOf(own);
    // One heading may stand over the readings: words, no figures in both columns.
    if (reading === null && found.length === 0 && index === 0 && /\p{L}/u.test(own) && !/\d.*\d/.test(own))
      continue;
    if (reading === null) return refused(at, "form");
    if (found.length === MOST_READINGS) return refused(at, "many");
    found.push({ ...at, reading });
  }
  const [first] = found;
  if (first === undefined) return refused({ line: 1, text: "" }, "empty");
  const readings: Reading[] = [];
  for (const { reading, ...at } of found) {
    if (reading.isDate !== first.reading.isDate) return refused(at, "mixed");
    const hour = rounded(reading.isDate ? reading.hour - first.reading.hour : reading.hour);
    const { temperature } = reading;
    if (!isIn(temperature, LOG_RANGES.temperature)) return refused(at, "temperature");
    const last = readings.at(-1);
    if (last !== undefined && hour <= last[0]) return refused(at, "order");
    if (!isIn(hour, LOG_RANGES.hour)) return refused(at, "hour");
    readings.push([hour, temperature]);
  }
  return { status: "read", readings };
}

function refused(at: Pick<LogFault, "line" | "text">, reason: LogFault["reason"]): LogRead {
  return { status: "refused", fault: { ...at, reason } };
}

function isIn(
  value: number,
  { least, greatest }: { readonly least: number; readonly greatest: number },
): boolean {
  return value >= least && value <= greatest;
}

// To the second, so that dates give no long tails of digits.
function rounded(hour: number): number {
  return Math.round(hour * 3600) / 3600;
}

function readingOf(line: string): TimedReading | null {
  const parts = columnsOf(line);
  if (parts === null) return null;
  const [time, degrees] = parts;
  const temperature = figureOf(degrees);
  const hour = clockOf(time) ?? figureOf(time);
  if (temperature === null) return null;
  if (hour !== null) return { hour, isDate: false, temperature };
  const date = dateOf(time);
  return date === null ? null : { hour: date, isDate: true, temperature };
}

/** Hours and minutes: 26:30. */
function clockOf(text: string): number | null {
  const found = /^(\d{1,4}):([0-5]\d)(?::([0-5]\d))?$/.exec(text);
  return found === null ? null : Number(found[1]) + Number(found[2]) / 60 + Number(found[3] ?? 0) / 3600;
}

const DATE = /^(\d{4})-(\d\d)-(\d\d)[T ]+([01]\d|2[0-3]):([0-5]\d)(?::([0-5]\d)(?:\.\d+)?)?Z?$/;
const DAYS_IN_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** The year first, as ISO 8601 has it: other orders of day and month are anybody's guess. */
function dateOf(text: string): number | null {
  const found = DATE.exec(text);
  if (found === null) return null;
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = found
    .slice(1)
    .map((part) => Number(part ?? 0));
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const length = month === 2 && isLeap ? 29 : (DAYS_IN_MONTH[month - 1] ?? 0);
  if (day < 1 || day > length) return null;
  return Date.UTC(year, month - 1, day, hour, minute, second) / 3_600_000;
}
