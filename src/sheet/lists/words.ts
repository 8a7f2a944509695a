// The words of bill, packing list and accessory schedule in the languages of a project.

import type { Language } from "../../plan/project.ts";
import type { ListWords } from "./listWords.ts";
import { LIST_WORDS_EN } from "./wordsEn.ts";
import { LIST_WORDS_ES } from "./wordsEs.ts";
import { LIST_WORDS_PT } from "./wordsPt.ts";

export const LIST_WORDS: Readonly<Record<Language, ListWords>> = {
  en: LIST_WORDS_EN,
  es: LIST_WORDS_ES,
  pt: LIST_WORDS_PT,
};
