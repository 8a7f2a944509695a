// The section on lifting: the recommended weight of each sort of lift with its numbers, every piece with its index, and
// the pieces that two people carry.

import type { Check } from "../../assess/checkDocument.ts";
import { LIFTS } from "../../assess/liftChecks.ts";
import { type Lift, nioshLimit } from "../../check/nioshLift.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { plainText } from "../plainText.ts";
import { type Calculation, ofKind, worstOf } from "./calculation.ts";
import { carried, localFormula, percent, stated, worked } from "./figures.ts";
import { asProduct } from "./numbersIn.ts";
import { headStrip, rowStrip, section, stepStrip, type TableColumn, wordsStrip } from "./strips.ts";
import { reasonStrips, sourceStrip, verdictStrip } from "./written.ts";

export function liftSections(calculation: Calculation): readonly Section[] {
  const checks = ofKind(calculation, "lift");
  const worst = worstOf(checks);
  if (worst === null) return [];
  const { words, continued, width } = calculation;
  const { columns, heads } = tableOf(calculation);
  const rows = [...checks]
    .sort((a, b) => (b.value ?? 0) - (a.value ?? 0))
    .map((check) => liftRow(check, columns, calculation));
  return [
    section(words.kindOf("lift"), explained(worst, calculation), { continued }),
    section(words.everyPiece, rows, { continued, isWhole: false, under: headStrip(heads, columns, width) }),
    ...twoPersons(calculation),
  ];
}

/** Lengths in cm, as the equation takes them. */
function explained(worst: Check, calculation: Calculation): readonly Strip[] {
  const { words, language, width } = calculation;
  const fig = (value: number) => stated(value, language);
  const cm = (value: number) => fig(value / 10);
  const kinds: readonly (readonly [keyof typeof LIFTS, Lift])[] = [
    ["stack", LIFTS.stack],
    ["wall", LIFTS.wall],
    ["overhead", LIFTS.overhead],
  ];
  const formula = "RWL = 23·(25/H)·(1 − 0.003·|V − 75|)·(0.82 + 4.5/D)·(1 − 0.0032·A)·FM·CM";
  const steps = kinds.flatMap(([kind, { reach, height, travel, twist, frequency, coupling }]) => {
    const limit = nioshLimit(LIFTS[kind]);
    if (limit.status === "refused") return [];
    const numbers = asProduct(
      `23·(25/${cm(Math.max(reach, 250))})·(1 − ${fig(0.003)}·|${cm(height)} − 75|)·(${fig(0.82)} + ${fig(4.5)}/${cm(Math.max(travel, 250))})·(1 − ${fig(0.0032)}·${fig(twist)})·${fig(frequency)}·${fig(coupling)}`,
    );
    const result = `${worked(limit.value, language)} kg`;
    return [stepStrip({ formula: words.lift[kind], numbers, result }, width)];
  });
  const people = numberOf(worst, "people") ?? 1;
  return [
    stepStrip({ formula: localFormula(formula, language) }, width),
    wordsStrip(words.liftSigns, width),
    ...steps,
    wordsStrip(words.mostOfLimit(plainText(worst.where.code)), width),
    ...(people === 2 ? [teamStep(worst, calculation)] : []),
    verdictStrip(worst, calculation),
    ...reasonStrips(worst, calculation),
    sourceStrip(worst.source, calculation),
  ];
}

function teamStep(check: Check, { language, width }: Calculation): Strip {
  const one = numberOf(check, "limit of one person") ?? 0;
  const numbers = asProduct(`2·${stated(one, language)}·2/3`);
  return stepStrip({ formula: "2·m_1·2/3", numbers, result: `${worked((4 * one) / 3, language)} kg` }, width);
}

function numberOf({ inputs }: Check, name: string): number | null {
  const value = inputs.find((each) => each.name === name)?.value;
  return typeof value === "number" ? value : null;
}

function tableOf({ words, width }: Calculation): {
  readonly columns: readonly TableColumn[];
  readonly heads: readonly string[];
} {
  const columns: readonly TableColumn[] = [
    { x: 0, anchor: "start", room: width - 95 },
    ...[82, 71, 61, 51, 33, 17, 0].map((end): TableColumn => ({ x: width - end, anchor: "end" })),
  ];
  const { lift } = words;
  const heads = [
    words.piece,
    words.number,
    "m, kg",
    words.people,
    "%",
    `LI ${lift.stack}`,
    lift.wall,
    lift.overhead,
  ];
  return { columns, heads };
}

function liftRow(check: Check, columns: readonly TableColumn[], { language, width }: Calculation): Strip {
  const index = (kind: string) => {
    const found = numberOf(check, `lifting index, ${kind} lift`);
    return found === null ? "" : worked(found, language);
  };
  const people = numberOf(check, "people");
  const cells = [
    plainText(check.where.code),
    `${numberOf(check, "pieces in the bill") ?? ""}`,
    check.value === null ? "–" : carried(check.value, language),
    people === null ? "–" : `${people}`,
    check.utilisation === null ? "–" : percent(check.utilisation, language).replace(" %", ""),
    index("stack"),
    index("wall"),
    index("overhead"),
  ];
  return rowStrip(cells, columns, { width, isStrong: people === 2 });
}

function twoPersons(calculation: Calculation): readonly Section[] {
  const { document, entry, words, width, continued, language } = calculation;
  const own = document.twoPersons.filter(({ unit }) => unit === entry.name);
  if (own.length === 0) return [];
  const columns: readonly TableColumn[] = [
    { x: 0, anchor: "start", room: width - 50 },
    { x: width - 30, anchor: "end" },
    { x: width, anchor: "end" },
  ];
  const rows = own.map(({ code, mass, quantity }) =>
    rowStrip([plainText(code), `${quantity}`, carried(mass, language)], columns, { width }),
  );
  const under = headStrip([words.piece, words.number, "m, kg"], columns, width);
  return [section(words.twoPersons, rows, { continued, under })];
}
