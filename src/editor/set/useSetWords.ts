// How the view of pours and set speaks: in the language of the project, with words and amounts of its own.

import { useMemo } from "react";
import type { PanelSet } from "../../fill/result.ts";
import type { Language } from "../../plan/project.ts";
import { useSpeech } from "../live/useWorkbench.tsx";
import { formatNumber } from "../words/numbers.ts";
import { sayPhrase, type WordValues } from "../words/say.ts";
import type { SetWord } from "./setWord.ts";
import { SET_VIEW_WORDS } from "./words.ts";

export type SayOfSet = (key: SetWord, values?: WordValues) => string;

export function useSetWords(): SayOfSet {
  const { speech } = useSpeech();
  return useMemo(() => {
    const catalogue = SET_VIEW_WORDS[speech.language];
    return (key, values = {}) => sayPhrase(speech, catalogue[key], values);
  }, [speech]);
}

/** An amount with what it is counted in. */
export type SayAmount = (value: number, decimals?: number) => string;

/** @param currency - of the kit; without one amounts stand alone, as the kit's prices do */
export function useAmounts(countedBy: PanelSet["countedBy"], currency: string | null): SayAmount {
  const { speech } = useSpeech();
  return useMemo(() => {
    const unit = { price: currency ?? "", mass: "kg", area: "m²" }[countedBy];
    return (value, decimals = 0) =>
      `${fixed(value, speech.language, decimals)}${unit === "" ? "" : `\u00a0${unit}`}`;
  }, [speech, countedBy, currency]);
}

/** A number with all of its decimals, zeros as well: amounts under one another stay in line. */
function fixed(value: number, language: Language, decimals: number): string {
  const text = formatNumber(value, language, decimals);
  if (decimals === 0) return text;
  const sign = language === "en" ? "." : ",";
  const [whole = "", part = ""] = text.split(sign);
  return `${whole}${sign}${part.padEnd(decimals, "0")}`;
}
