// The section on when the slab is strong enough to be struck, as the log of its temperature lets expect, and how strong it
// is at each reading of the log.

import type { MaturityPoint, StrikingPrediction } from "../../assess/checkDocument.ts";
import { checkText } from "../checkWords/checkText.ts";
import type { Section, Strip } from "../lists/flow.ts";
import type { Calculation } from "./calculation.ts";
import { stated, worked } from "./figures.ts";
import {
  headStrip,
  pairStrip,
  rowStrip,
  section,
  signedStrip,
  type TableColumn,
  wordsStrip,
} from "./strips.ts";
import { asSentence } from "./written.ts";

/** Of longer logs some readings only are shown, the last one always: the project file has them all. */
const MOST_READINGS = 24;

/** None where the document predicts nothing for this entry. */
export function predictionSections(calculation: Calculation): readonly Section[] {
  const { document, entry, words, continued } = calculation;
  const own = document.predictions.filter(({ unit }) => unit === entry.name);
  if (own.length === 0) return [];
  const rows = own.flatMap((each) => predictionRows(each, calculation));
  return [section(words.prediction, rows, { continued }), ...readingSections(calculation)];
}

function predictionRows(
  { needed, strength, hour, isLogged, margin, note }: StrikingPrediction,
  { words, language, width }: Calculation,
): readonly Strip[] {
  const told = (value: number | null, unit: string) =>
    value === null ? "–" : `${worked(value, language)} ${unit}`;
  const from = isLogged ? "by the log" : "after the log, as cold as it ever was";
  const expected = hour === null ? words.strongAfter : `${words.strongAfter}, ${checkText(from, language)}`;
  return [
    pairStrip(words.strengthNeeded, told(needed, "MPa"), width),
    pairStrip(words.strengthThen, told(strength, "MPa"), width),
    pairStrip(expected, told(hour, "h"), width),
    ...(margin === null ? [] : [pairStrip(words.fromThen, told(margin, "h"), width)]),
    ...(note === "" ? [] : [wordsStrip(asSentence(checkText(note, language)), width)]),
  ];
}

function readingSections(calculation: Calculation): readonly Section[] {
  const { document, words, continued, width } = calculation;
  const points = shown(document.maturity);
  if (points.length === 0) return [];
  const columns = [0.14, 0.34, 0.56, 0.78, 0.98].map(
    (part): TableColumn => ({ x: part * width, anchor: "end" }),
  );
  const rows = points.map((point) => rowStrip(readingCells(point, calculation), columns, { width }));
  const under = headStrip([words.hour, "T, °C", "M, °C·h", "t, h, 20 °C", "f, MPa"], columns, width);
  return [
    section(words.atReadings, [...rows, signedStrip(words.atReadingsText, width)], { continued, under }),
  ];
}

function shown(points: readonly MaturityPoint[]): readonly MaturityPoint[] {
  const every = Math.ceil(points.length / MOST_READINGS);
  const last = points.length - 1;
  return points.filter((_, k) => k % every === 0 || k === last);
}

function readingCells(
  { hour, temperature, maturity, age, strength }: MaturityPoint,
  { language }: Calculation,
): readonly string[] {
  const told = (value: number | null) => (value === null ? "–" : worked(value, language));
  return [stated(hour, language), stated(temperature, language), told(maturity), told(age), told(strength)];
}
