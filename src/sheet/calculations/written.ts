// A check written out: its formula, the formula with its numbers, what comes out beside the limit, and the sources.

import type { Check, CheckInput } from "../../assess/checkDocument.ts";
import { checkText } from "../checkWords/checkText.ts";
import { textWidth } from "../lettering.ts";
import type { Strip } from "../lists/flow.ts";
import { SMALL, SMALL_STRONG, textLine } from "../lists/listText.ts";
import type { Mark } from "../mark.ts";
import { type Calculation, placeText, valueText } from "./calculation.ts";
import { localFormula, percent, stated } from "./figures.ts";
import { formulaParts, inOrder, stepOf } from "./numbersIn.ts";
import { fixedStrip, signedStrip, stepStrip, usageMarks, wordsStrip } from "./strips.ts";

const BAR = 34;

/** "5.468 kN of 25.04 kN   21.8 %   within the stated limit" under a bar; without a limit the value and why. */
export function verdictStrip(check: Check, calculation: Calculation): Strip {
  const { language, words, width } = calculation;
  const status = words.status[check.status];
  const value = valueText(check.value, check.unit, calculation);
  if (check.utilisation === null) {
    const text = check.value === null ? status : `${value}, ${status}`;
    return fixedStrip(textLine(text, SMALL_STRONG, { x: 0, y: 4.2 }), 5.8);
  }
  const limit = valueText(check.limit, check.unit, calculation);
  const text = words.ofLimit(value, limit);
  const share = percent(check.utilisation, language);
  const at = BAR + 3 + textWidth(text, SMALL_STRONG) + 4;
  const verdict = `${share}, ${status}`;
  const lettering = check.status === "over" ? SMALL_STRONG : SMALL;
  // A long verdict in a narrow column has a line of its own.
  const isBeside = at + textWidth(verdict, lettering) <= width;
  const place = isBeside ? { x: at, y: 4.2 } : { x: BAR + 3, y: 8.2 };
  const marks: readonly Mark[] = [
    ...usageMarks(check.utilisation, { x: 0, y: 1.6, width: BAR, height: 2.8 }),
    ...textLine(text, SMALL_STRONG, { x: BAR + 3, y: 4.2 }),
    ...textLine(verdict, lettering, place),
  ];
  return fixedStrip(marks, isBeside ? 6.2 : 10.2);
}

/** Why there is no verdict, or what is over; nothing where the check says no more. */
export function reasonStrips(check: Check, { language, width }: Calculation): readonly Strip[] {
  if (check.reason === undefined) return [];
  return [wordsStrip(asSentence(checkText(check.reason, language)), width)];
}

/** A text that begins a line, with a capital. */
export function asSentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Sources that are not said yet, in one paragraph. Citations stay as they are. */
export function sourceStrip(source: string, { language, words, width }: Calculation): Strip {
  return signedStrip(`${words.source}: ${checkText(source, language)}`, width, "soft");
}

export function placeStrip(check: Check, calculation: Calculation): Strip {
  return wordsStrip(placeText(check, calculation), calculation.width, { lettering: SMALL_STRONG });
}

/** What another section has said already: equations and inputs. */
export interface Said {
  readonly parts: ReadonlySet<string>;
  readonly inputs: ReadonlySet<string>;
}

export const NOTHING_SAID: Said = { parts: new Set(), inputs: new Set() };

export function inputKey({ sign, name, value }: CheckInput): string {
  return `${sign}|${name}|${value}`;
}

/** The inputs of a check as one paragraph: "q 4.5 kPa, load on the form; A 1.215 m², area carried by the prop". */
export function inputsStrip(
  inputs: readonly CheckInput[],
  said: Said,
  calculation: Calculation,
): readonly Strip[] {
  const { words, width } = calculation;
  const texts = inputs
    .filter((each) => !said.inputs.has(inputKey(each)) && each.value !== "")
    .map((each) => inputText(each, calculation));
  return texts.length === 0 ? [] : [signedStrip(`${words.given}: ${texts.join("; ")}`, width)];
}

function inputText({ sign, name, value, unit }: CheckInput, { language }: Calculation): string {
  const figure =
    typeof value === "number"
      ? `${stated(value, language)} ${checkText(unit, language)}`.trim()
      : checkText(value, language);
  const shown = checkText(name, language);
  return sign === "" ? `${shown}: ${figure}` : `${sign} = ${figure}, ${shown}`;
}

/** Place, equations with numbers, verdict, inputs and source of one check. */
export function writtenStrips(check: Check, said: Said, calculation: Calculation): readonly Strip[] {
  return [
    placeStrip(check, calculation),
    ...equationStrips(check, said, calculation),
    verdictStrip(check, calculation),
    ...reasonStrips(check, calculation),
    ...inputsStrip(check.inputs, said, calculation),
    sourceStrip(check.source, calculation),
  ];
}

/** The equations of a check that are not said yet; what is only words stands in small letters. */
export function equationStrips(check: Check, said: Said, calculation: Calculation): readonly Strip[] {
  const { language, width } = calculation;
  const parts = formulaParts(check.formula).filter((part) => !said.parts.has(part));
  return inOrder(parts).map((part) => {
    const isFormula = / [=≤≥] /u.test(part) && (part.match(/(?<!_)\p{Ll}{4,}/gu) ?? []).length < 3;
    const step = stepOf(part, check, language);
    if (!isFormula && step.numbers === undefined)
      return signedStrip(asSentence(checkText(part, language)), width);
    return stepStrip({ ...step, formula: localFormula(checkText(part, language), language) }, width);
  });
}
