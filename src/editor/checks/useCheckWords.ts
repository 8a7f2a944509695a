// How the view of checks speaks: in the language of the project, with words of its own.

import { useMemo } from "react";
import type { Language } from "../../plan/project.ts";
import { checkText } from "../../sheet/checkWords/checkText.ts";
import { kindText } from "../../sheet/checkWords/kinds.ts";
import { useSpeech } from "../live/useWorkbench.tsx";
import { sayPhrase, type WordValues } from "../words/say.ts";
import { figureText } from "./figureText.ts";
import { CHECKS_VIEW_WORDS, type ChecksWord, isChecksWord } from "./words.ts";

const ROUGH = 3; // digits

export interface CheckSpeech {
  readonly language: Language;
  readonly w: (key: ChecksWord, values?: WordValues) => string;
  /** A figure as it stands on the screen. */
  readonly figure: (value: number) => string;
  /** To three digits: in pictures, and what is no more exact than that. */
  readonly rough: (value: number) => string;
  /** What a kind of check is called, as on the sheets. */
  readonly kind: (kind: string) => string;
  /** What a word of the forms is called. Itself where the view has no word for it. */
  readonly called: (sort: "choice" | "field", word: string) => string;
  /** A text of the checks themselves: the name of an input, a reason, a caution. */
  readonly told: (text: string) => string;
  /** What a choice of a field is called: in this field, else anywhere. */
  readonly chosen: (field: string, word: string) => string;
}

export function useCheckWords(): CheckSpeech {
  const { speech } = useSpeech();
  return useMemo(() => {
    const { language } = speech;
    const catalogue = CHECKS_VIEW_WORDS[language];
    const figure = (value: number) => figureText(value, language);
    const rough = (value: number) => figureText(value, language, ROUGH);
    const own = { language, write: figure };
    const w: CheckSpeech["w"] = (key, values = {}) => sayPhrase(own, catalogue[key], values);
    const called: CheckSpeech["called"] = (sort, word) => {
      const key = `${sort}.${word}`;
      return isChecksWord(key) ? w(key) : word;
    };
    const chosen: CheckSpeech["chosen"] = (field, word) => {
      const key = `choice.${field}.${word}`;
      return isChecksWord(key) ? w(key) : called("choice", word);
    };
    const told: CheckSpeech["told"] = (text) => checkText(text, language);
    const kind: CheckSpeech["kind"] = (word) => kindText(word, language);
    return { language, w, figure, rough, kind, called, chosen, told };
  }, [speech]);
}
