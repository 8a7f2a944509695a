// What a check says in the language of the reader. Checks speak English: names of inputs, reasons, rules, assumptions,
// cautions. A text that is not in the tables stays as it is, so that nothing is left unsaid; citations always do.

import type { Language } from "../../plan/project.ts";
import { retold, type Sentence } from "../retold.ts";

/** Every text of the checks that the tables know, forms with braces last. */
export const CHECK_SENTENCES: readonly Sentence[] = [];

const EXACT = new Map(CHECK_SENTENCES.filter(({ en }) => !en.includes("{")).map((each) => [each.en, each]));
const FORMS = CHECK_SENTENCES.filter(({ en }) => en.includes("{"));

/** A text of a check, told again in a language; lists that semicolons divide, part by part. */
export function checkText(text: string, language: Language): string {
  return language === "en" || text === "" ? text : (known(text, language) ?? text);
}

/** null: no table has the text, nor any part of it. */
export function known(text: string, language: Language): string | null {
  const whole =
    EXACT.get(text)?.[language] ?? retold(text, FORMS, language, (_, value) => known(value, language));
  if (whole !== null) return whole;
  const parts = text.split("; ");
  if (parts.length < 2) return null;
  const told = parts.map((part) => known(part, language));
  return told.every((part) => part === null) ? null : told.map((part, k) => part ?? parts[k]!).join("; ");
}
