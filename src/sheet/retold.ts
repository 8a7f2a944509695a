// A sentence told again in another language, by a table of forms: "in {room} 1 prop stands" with {room} as it came.

import type { Language } from "../plan/project.ts";

/** One sentence in every language, its values in braces. */
export type Sentence = Readonly<Record<Language, string>>;

/**
 * The text in the words of the first form it has, or null where it has none.
 *
 * @param inner - what stands in the braces of a name, told again; null: as it came
 */
export function retold(
  text: string,
  among: readonly Sentence[],
  language: Language,
  inner: (name: string, value: string) => string | null,
): string | null {
  for (const sentence of among) {
    const values = valuesIn(text, sentence.en);
    if (values === null) continue;
    return sentence[language].replaceAll(/\{([a-z]+)\}/g, (_, name: string) => {
      const value = values.get(name) ?? "";
      return inner(name, value) ?? withComma(value);
    });
  }
  return null;
}

/** A figure with the decimal sign of Spanish and Portuguese; anything else is data. */
function withComma(value: string): string {
  return /^\d+\.\d+$/.test(value) ? value.replace(".", ",") : value;
}

/**
 * What stands in the braces of a form, or null where the text has not that form. Each value ends where the next words
 * of the form first come; no text is read twice, whatever names it holds.
 */
function valuesIn(text: string, form: string): ReadonlyMap<string, string> | null {
  const [first = "", ...parts] = form.split("{");
  if (!text.startsWith(first)) return null;
  const values = new Map<string, string>();
  let at = first.length;
  for (const [index, part] of parts.entries()) {
    const [name = "", words = ""] = part.split("}");
    const isLast = index === parts.length - 1;
    const end = isLast ? text.length - words.length : text.indexOf(words, at);
    if (end < at || !text.startsWith(words, end)) return null;
    values.set(name, text.slice(at, end));
    at = end + words.length;
  }
  return at === text.length ? values : null;
}
