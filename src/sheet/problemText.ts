// What a problem says in the language of the reader. The fill says it in English; a sentence that is not in the table
// stays as it is, so that nothing is ever left unsaid.

import type { Language } from "../plan/project.ts";
import { PHRASE_NAMES, PHRASES, SENTENCES } from "./problemSentences.ts";
import { retold } from "./retold.ts";

/** The sentence of a problem, told again in a language. Cost grows with its length times the length of the table. */
export function problemText(message: string, language: Language): string {
  return language === "en" ? message : (retold(message, SENTENCES, language, phrase(language)) ?? message);
}

function phrase(language: Language): (name: string, value: string) => string | null {
  return (name, value) =>
    PHRASE_NAMES.has(name) ? retold(value, PHRASES, language, phrase(language)) : null;
}
