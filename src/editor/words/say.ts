// Words with their values put in, in the language of the project.

import type { Language } from "../../plan/project.ts";
import { type Catalogue, english, type Phrase, type WordKey } from "./en.ts";
import { formatMm } from "./numbers.ts";

type Braces<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}`
  ? Name | Braces<Rest>
  : never;
type NamesIn<P> = P extends string
  ? Braces<P>
  : P extends { readonly one: infer One extends string; readonly other: infer Other extends string }
    ? Braces<One> | Braces<Other> | "count"
    : never;

/** The names of the values that the phrase of a key takes. */
export type ValueNames<Key extends WordKey> = NamesIn<(typeof english)[Key]>;

/** The values of a phrase. `count` chooses between its two texts. */
export type WordValues = { readonly [name: string]: string | number };

/** Something to say, kept as data until the language is known. */
export interface Words {
  readonly key: WordKey;
  readonly values: WordValues;
}

/** Makes {@link Words}; the compiler asks for exactly the values the English phrase names. */
export function words<Key extends WordKey>(
  key: Key,
  ...rest: [ValueNames<Key>] extends [never]
    ? []
    : [values: { readonly [Name in ValueNames<Key>]: string | number }]
): Words {
  const [values] = rest;
  return { key, values: values ?? {} };
}

/** A language as the page speaks it. */
export interface Speech {
  readonly language: Language;
  readonly catalogue: Catalogue;
  /** How a number stands in a phrase. */
  readonly write: (value: number) => string;
}

/** Catalogues by language. A language that has none yet is spoken in English. */
export type Catalogues = { readonly [L in Language]?: Catalogue };

/** The speech of a language: its words where there are any, its way of writing numbers always. */
export function speechOf(language: Language, catalogues: Catalogues): Speech {
  const catalogue = catalogues[language] ?? english;
  return { language, catalogue, write: (value) => formatMm(value, language) };
}

/** The text of `said`. A value the phrase does not name is left out; one that is missing stays in its braces. */
export function say(speech: Speech, said: Words): string {
  return sayPhrase(speech, speech.catalogue[said.key], said.values);
}

/** The same for a phrase of no catalogue. */
export function sayPhrase(speech: Omit<Speech, "catalogue">, phrase: Phrase, values: WordValues): string {
  return chosen(phrase, speech.language, values.count).replaceAll(/\{([a-z]+)\}/g, (braces, name: string) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    if (value === undefined) return braces;
    return typeof value === "number" ? speech.write(value) : value;
  });
}

function chosen(phrase: Phrase, language: Language, count: string | number | undefined): string {
  if (typeof phrase === "string") return phrase;
  return typeof count === "number" && isSingular(language, count) ? phrase.one : phrase.other;
}

// Portuguese takes the singular for none, too.
function isSingular(language: Language, count: number): boolean {
  return count === 1 || (language === "pt" && count === 0);
}
