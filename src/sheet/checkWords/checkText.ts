// What a check says in the language of the reader. Checks speak English: names of inputs, reasons, rules, assumptions,
// cautions. A text that is not in the tables stays as it is, so that nothing is left unsaid; citations always do.

import type { Language } from "../../plan/project.ts";
import { retold, type Sentence } from "../retold.ts";
import { CAUTION_SENTENCES } from "./cautionSentences.ts";
import { FAULT_SENTENCES } from "./faults.ts";
import { FORMULA_SENTENCES } from "./formulas.ts";
import { GRANTED_SENTENCES } from "./granted.ts";
import { NAME_SENTENCES } from "./names.ts";
import { RANGE_SENTENCES } from "./ranges.ts";
import { REASON_SENTENCES } from "./reasons.ts";

/** Every text of the checks that the tables know. */
export const CHECK_SENTENCES: readonly Sentence[] = [
  ...NAME_SENTENCES,
  ...REASON_SENTENCES,
  ...FAULT_SENTENCES,
  ...RANGE_SENTENCES,
  ...FORMULA_SENTENCES,
  ...GRANTED_SENTENCES,
  ...CAUTION_SENTENCES,
];

const EXACT = new Map(CHECK_SENTENCES.filter(({ en }) => !en.includes("{")).map((each) => [each.en, each]));
/** What stands in these braces is a text of the tables itself; in all others it is a figure or somebody's name. */
const INNER: readonly string[] = ["input", "what"];
const FORMS = CHECK_SENTENCES.filter(({ en }) => en.includes("{"));

/** A text of a check, told again in a language; lists that semicolons divide, part by part. */
export function checkText(text: string, language: Language): string {
  return language === "en" || text === "" ? text : (known(text, language) ?? text);
}

/** null: no table has the text, nor any part of it. */
export function known(text: string, language: Language): string | null {
  const parts = text.split("; ");
  // A form that has no semicolon of its own would swallow the rest of a list.
  const forms = parts.length < 2 ? FORMS : FORMS.filter(({ en }) => en.includes("; "));
  const inner = (name: string, value: string) => (INNER.includes(name) ? known(value, language) : null);
  const whole = EXACT.get(text)?.[language] ?? retold(text, forms, language, inner);
  if (whole !== null || parts.length < 2) return whole;
  const told = parts.map((part) => known(part, language));
  return told.every((part) => part === null) ? null : told.map((part, k) => part ?? parts[k]!).join("; ");
}
