// The words of the calculation sheets in the languages of a project.

import type { Language } from "../../plan/project.ts";
import type { CalcWords } from "./calcWords.ts";
import { CALC_WORDS_EN } from "./wordsEn.ts";
import { CALC_WORDS_ES } from "./wordsEs.ts";
import { CALC_WORDS_PT } from "./wordsPt.ts";

export const CALC_WORDS: Readonly<Record<Language, CalcWords>> = {
  en: CALC_WORDS_EN,
  es: CALC_WORDS_ES,
  pt: CALC_WORDS_PT,
};
