// What a problem says in the language of the reader. The fill says it in English; a sentence that is not in the table
// stays as it is, so that nothing is ever left unsaid.

import type { Language } from "../plan/project.ts";
import { PHRASE_NAMES, PHRASES, SENTENCES, type Sentence } from "./problemSentences.ts";

/** The sentence of a problem, told again in a language. Cost grows with its length times the length of the table. */
export function problemText(message: string, language: Language): string {
  return language === "en" ? message : (retold(message, SENTENCES, language) ?? message);
}

function retold(text: string, among: readonly Sentence[], language: Language): string | null {
  for (const sentence of among) {
    const values = valuesIn(text, sentence.en);
    if (values === null) continue;
    return sentence[language].replaceAll(/\{([a-z]+)\}/g, (_, name: string) => {
      const value = values.get(name) ?? "";
      const phrase = PHRASE_NAMES.has(name) ? retold(value, PHRASES, language) : null;
      return phrase ?? withComma(value);
    });
  }
  return null;
}

/** A figure with the decimal sign of Spanish and Portuguese; anything else is data. */
function withComma(value: string): string {
  return /^\d+\.\d+$/.test(value) ? value.replace(".", ",") : value;
}

/**
 * What stands in the braces of a form, or null where the text has not that form. Each value ends where the next words
 * of the form first come; no text is read twice, whatever names it holds.
 */
function valuesIn(text: string, form: string): ReadonlyMap<string, string> | null {
  const [first = "", ...parts] = form.split("{");
  if (!text.startsWith(first)) return null;
  const values = new Map<string, string>();
  let at = first.length;
  for (const [index, part] of parts.entries()) {
    const [name = "", words = ""] = part.split("}");
    const isLast = index === parts.length - 1;
    const end = isLast ? text.length - words.length : text.indexOf(words, at);
    if (end < at || !text.startsWith(words, end)) return null;
    values.set(name, text.slice(at, end));
    at = end + words.length;
  }
  return at === text.length ? values : null;
}
