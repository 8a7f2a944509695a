// The sections on striking: the strength that is needed beside the one there is, how it was estimated from the log of
// temperatures, and the times and strengths of several rules side by side.

import type { Check, StrikingRow } from "../../assess/checkDocument.ts";
import { equivalentAge, type Interval, intervalsUpTo } from "../../check/maturity.ts";
import { MEAN_OVER_CHARACTERISTIC } from "../../check/strengthGain.ts";
import { checkText } from "../checkWords/checkText.ts";
import { textWidth } from "../lettering.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { SMALL } from "../lists/listText.ts";
import { plainText } from "../plainText.ts";
import { type Calculation, ofKind } from "./calculation.ts";
import { carried, stated, worked } from "./figures.ts";
import type { Step } from "./numbersIn.ts";
import {
  headStrip,
  rowStrip,
  section,
  signedStrip,
  stepStrip,
  type TableColumn,
  wordsStrip,
} from "./strips.ts";
import { inputsStrip, NOTHING_SAID, reasonStrips, sourceStrip, verdictStrip } from "./written.ts";

/** Longer logs are summed up only: the project file has them all. */
const MOST_INTERVALS = 30;
/** Paper that a figure of a rule takes with its unit and the number of its note, mm. */
const FIGURE = 25;

export function strikingSections(calculation: Calculation): readonly Section[] {
  const [check] = ofKind(calculation, "striking-strength");
  if (check === undefined) return [];
  const { words, width, continued } = calculation;
  const rows: readonly Strip[] = [
    ...neededSteps(check, calculation).map((step) => stepStrip(step, width)),
    ...ageSteps(check, calculation).map((step) => stepStrip(step, width)),
    verdictStrip(check, calculation),
    ...reasonStrips(check, calculation),
    ...inputsStrip(check.inputs, NOTHING_SAID, calculation),
    sourceStrip(check.source, calculation),
  ];
  return [
    section(words.kindOf("striking-strength"), rows, { continued, isWhole: false }),
    ...maturitySections(calculation),
  ];
}

function numberOf({ inputs }: Check, name: string): number | null {
  const value = inputs.find((each) => each.name === name)?.value;
  return typeof value === "number" ? value : null;
}

function neededSteps(check: Check, { language }: Calculation): readonly Step[] {
  const fig = (value: number) => carried(value, language);
  const [self, extra, load, service, strength, ciria] = [
    numberOf(check, "self-weight of the slab"),
    numberOf(check, "load while striking"),
    numberOf(check, "load at striking"),
    numberOf(check, "service load in all"),
    numberOf(check, "strength at 28 days"),
    numberOf(check, "strength needed by CIRIA 136"),
  ];
  if (self === null || extra === null || load === null) return [];
  const steps: Step[] = [
    { formula: "w", numbers: `${fig(self)} + ${fig(extra)}`, result: `${worked(load, language)} kPa` },
  ];
  if (service === null || strength === null || ciria === null || check.value === null) return steps;
  return [
    ...steps,
    {
      formula: "f_c ≥ f_cu·(w/w_s)^(1/0.6)",
      numbers: `${fig(strength)} × (${fig(load)}/${fig(service)})^(1/${fig(0.6)})`,
      result: `${worked(ciria, language)} MPa`,
    },
    {
      formula: "f_c",
      numbers: `max(${worked(ciria, language)}; 10)`,
      result: `${worked(check.value, language)} MPa`,
    },
  ];
}

const GROWTH = { R: 0.2, N: 0.25, S: 0.38 } as const;

// From the age at 20 °C to the strength that counts.
function ageSteps(check: Check, calculation: Calculation): readonly Step[] {
  const { entry, language } = calculation;
  const fig = (value: number) => carried(value, language);
  const { cementClass } = entry.concrete;
  const [age, mean, strength] = [
    numberOf(check, "equivalent age at 20 °C"),
    numberOf(check, "mean strength estimated"),
    numberOf(check, "strength at 28 days"),
  ];
  if (entry.concrete.strengthTests.length > 0) return testSteps(check, calculation);
  if (age === null || mean === null || strength === null || cementClass === null) return [];
  const gain = mean / (strength + MEAN_OVER_CHARACTERISTIC);
  const days = age / 24;
  const steps: readonly Step[] = [
    { formula: "t = t_e/24", numbers: `${fig(age)}/24`, result: `${worked(days, language)} d` },
    {
      formula: "β_cc = exp(s·(1 − √(28/t)))",
      numbers: `exp(${fig(GROWTH[cementClass])} × (1 − √(28/${fig(days)})))`,
      result: worked(gain, language),
    },
    {
      formula: "f_cm(t) = β_cc·(f_ck + 8)",
      numbers: `${fig(gain)} × (${fig(strength)} + 8)`,
      result: `${worked(mean, language)} MPa`,
    },
  ];
  return [...steps, ...marginSteps(check, mean, calculation)];
}

function marginSteps({ limit }: Check, mean: number, { language }: Calculation): readonly Step[] {
  if (limit === null || limit === 0) return [];
  const numbers = `${worked(mean, language)} − ${carried(3.45, language)}`;
  return [{ formula: "f_c", numbers, result: `${worked(limit, language)} MPa` }];
}

// From the maturity to the strength that counts, straight from one test of the mix to the next.
function testSteps(check: Check, calculation: Calculation): readonly Step[] {
  const { entry, language } = calculation;
  const fig = (value: number) => carried(value, language);
  const [maturity, mean] = [numberOf(check, "maturity"), numberOf(check, "mean strength estimated")];
  if (maturity === null || mean === null) return [];
  const tests = entry.concrete.strengthTests;
  const k = Math.max(
    1,
    tests.findIndex(([at]) => maturity <= at),
  );
  const [low, high] = [tests[k - 1], tests[k]];
  if (low === undefined || high === undefined) return [];
  const rise = `(${fig(high[1])} − ${fig(low[1])}) × (${fig(maturity)} − ${fig(low[0])})`;
  return [
    {
      formula: "f_cm(t) = f_1 + (f_2 − f_1)·(M − M_1)/(M_2 − M_1)",
      numbers: `${fig(low[1])} + ${rise}/(${fig(high[0])} − ${fig(low[0])})`,
      result: `${worked(mean, language)} MPa`,
    },
    ...marginSteps(check, mean, calculation),
  ];
}

function maturitySections(calculation: Calculation): readonly Section[] {
  const { entry, words, width, language, continued } = calculation;
  const { log, strikeAt, datum } = entry.concrete;
  const intervals = strikeAt === null ? null : intervalsUpTo(log, strikeAt);
  if (intervals === null || intervals.length === 0) return [];
  const columns = [0.12, 0.27, 0.45, 0.63, 0.8, 0.98].map(
    (part): TableColumn => ({ x: part * width, anchor: "end" }),
  );
  const parts = intervals.map((interval) => maturityPart(interval, datum));
  const sum = (of: (part: MaturityPart) => number) => parts.reduce((total, part) => total + of(part), 0);
  const shown = parts.length > MOST_INTERVALS ? [] : parts;
  const totals = [
    stated(
      sum(({ interval }) => interval.hours),
      language,
    ),
    "∑",
    worked(
      sum(({ maturity }) => maturity),
      language,
    ),
    "",
    "",
    worked(
      sum(({ age }) => age),
      language,
    ),
  ];
  const rows = [
    ...shown.map((part) => rowStrip(maturityCells(part, calculation), columns, { width })),
    rowStrip(totals, columns, { width, isStrong: true }),
    signedStrip(words.maturityText(stated(datum, language), parts.length), width),
  ];
  const under = headStrip(["∆t, h", "T, °C", "M, °C·h", "E, kJ/mol", "exp", "t, h, 20 °C"], columns, width);
  return [section(words.maturity, rows, { continued, under })];
}

interface MaturityPart {
  readonly interval: Interval;
  readonly maturity: number;
  /** Equivalent age at 20 °C, h. */
  readonly age: number;
}

function maturityPart(interval: Interval, datum: number): MaturityPart {
  const age = equivalentAge([interval], "variable");
  return {
    interval,
    maturity: Math.max(interval.temperature - datum, 0) * interval.hours,
    age: age.status === "refused" ? 0 : age.value,
  };
}

function maturityCells({ interval, maturity, age }: MaturityPart, { language }: Calculation) {
  const { hours, temperature } = interval;
  const energy = 33.5 + (temperature < 20 ? 1.47 * (20 - temperature) : 0);
  return [
    stated(hours, language),
    worked(temperature, language),
    worked(maturity, language),
    worked(energy, language),
    worked(age / hours, language),
    worked(age, language),
  ];
}

/** Rules in columns, members in rows: hours, or MPa where the rule gives a strength. */
export function strikingTable(calculation: Calculation, width: number): readonly Section[] {
  const { document, entry, words, language, continued } = calculation;
  const own = document.striking.filter(({ unit }) => unit === entry.name);
  if (own.length === 0) return [];
  const rules = [...new Set(own.map(({ rule }) => rule))];
  const heads = rules.map((rule) => checkText(rule, language));
  const widths = heads.map((head) => Math.max(FIGURE, textWidth(head, SMALL) + 3));
  const ends = widths.map((_, k) => width - widths.slice(k + 1).reduce((sum, each) => sum + each, 0));
  const left = width - widths.reduce((sum, each) => sum + each, 0);
  const columns: readonly TableColumn[] = [
    { x: 0, anchor: "start", room: left * 0.46 },
    { x: left * 0.48, anchor: "start", room: left * 0.36 },
    { x: left, anchor: "end" },
    ...ends.map((x): TableColumn => ({ x, anchor: "end" })),
  ];
  const members = [...new Set(own.map(({ room, part }) => `${part}|${room}`))];
  const notes = [...new Set(own.map(noteOf).filter((note) => note !== ""))];
  const rows = members.map((member) => {
    const [part = "", room = ""] = member.split("|");
    const cells = rules.map((rule) => {
      const row = own.find((some) => some.rule === rule && some.part === part && some.room === room);
      if (row === undefined) return "";
      const number = noteOf(row) === "" ? "" : ` (${notes.indexOf(noteOf(row)) + 1})`;
      return `${figureOf(row, calculation)}${number}`;
    });
    const span = own.flatMap((row) => (row.part === part && row.room === room ? (spanOf(row) ?? []) : []))[0];
    return rowStrip([checkText(part, language), plainText(room), span ?? "", ...cells], columns, { width });
  });
  const sources = [...new Set(own.map(({ source }) => source))];
  return [
    section(
      words.rulesSideBySide,
      [
        ...rows,
        ...notes.map((note, k) => wordsStrip(`(${k + 1}) ${checkText(note, language)}`, width)),
        ...sources.map((source) => sourceStrip(source, { ...calculation, width })),
      ],
      {
        continued,
        isWhole: false,
        under: headStrip([words.member, words.room, words.span, ...heads], columns, width),
      },
    ),
  ];
}

const SPAN = /^span (\d+) mm(?:, )?/u;

/** What a rule remarks, without the span, which has a column of its own. */
function noteOf({ note }: StrikingRow): string {
  return note.replace(SPAN, "");
}

function spanOf({ note }: StrikingRow): string | null {
  return SPAN.exec(note)?.[1] ?? null;
}

function figureOf({ hours, strength }: StrikingRow, { language }: Calculation): string {
  if (hours !== null) return `${worked(hours, language)} h`;
  return strength === null ? "–" : `${worked(strength, language)} MPa`;
}
