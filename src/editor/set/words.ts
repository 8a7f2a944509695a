// The words of pours and set in the languages of a project. They come with the view, so the page opens without them.

import type { Language } from "../../plan/project.ts";
import type { SetWords } from "./setWord.ts";
import { setEnglish } from "./wordsEn.ts";
import { setSpanish } from "./wordsEs.ts";
import { setPortuguese } from "./wordsPt.ts";

export const SET_VIEW_WORDS: Readonly<Record<Language, SetWords>> = {
  en: setEnglish,
  es: setSpanish,
  pt: setPortuguese,
};
