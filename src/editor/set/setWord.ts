// The keys of the words of pours and set, which every language has.

import type { Phrase } from "../words/en.ts";
import type { setEnglish } from "./wordsEn.ts";

export type SetWord = keyof typeof setEnglish;

export type SetWords = { readonly [Key in SetWord]: Phrase };
