// The words of the view of checks in the languages of a project. They come with the view, so the page opens without them.

import type { Language } from "../../plan/project.ts";
import type { Phrase } from "../words/en.ts";
import { ENGLISH } from "./wordsEn.ts";
import { SPANISH } from "./wordsEs.ts";
import { PORTUGUESE } from "./wordsPt.ts";

export type ChecksWord = keyof typeof ENGLISH;

export const CHECKS_VIEW_WORDS: Readonly<Record<Language, Readonly<Record<ChecksWord, Phrase>>>> = {
  en: ENGLISH,
  es: SPANISH,
  pt: PORTUGUESE,
};

/** The word of a kind, a choice or a step, where there is one. */
export function isChecksWord(text: string): text is ChecksWord {
  return Object.hasOwn(ENGLISH, text);
}
