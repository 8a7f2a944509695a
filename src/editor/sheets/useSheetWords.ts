// How the view of sheets speaks: in the language of the project, with words of its own.

import { useMemo } from "react";
import { useSpeech } from "../live/useWorkbench.tsx";
import { sayPhrase, type WordValues } from "../words/say.ts";
import { SHEETS_VIEW_WORDS, type SheetsWord } from "./words.ts";

export type SayOfSheets = (key: SheetsWord, values?: WordValues) => string;

export function useSheetWords(): SayOfSheets {
  const { speech } = useSpeech();
  return useMemo(() => {
    const catalogue = SHEETS_VIEW_WORDS[speech.language];
    return (key, values = {}) => sayPhrase(speech, catalogue[key], values);
  }, [speech]);
}
