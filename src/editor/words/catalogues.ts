// The languages of the page: English is there from the start, the others are loaded when a project first speaks them.

import type { Language } from "../../plan/project.ts";
import type { Catalogue } from "./en.ts";

/** Every language by its own name, so that whoever landed in a foreign one finds the way back. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = {
  en: "English",
  es: "Español",
  pt: "Português",
};

/** What the choice of a language is called, in all of them at once, for the same reason. */
export const LANGUAGE_LABEL = "Language / Idioma / Língua";

/** As the page's `lang` attribute names it. */
export const LANGUAGE_TAGS: Readonly<Record<Language, string>> = { en: "en", es: "es-419", pt: "pt-BR" };

export const LANGUAGES: readonly Language[] = ["en", "es", "pt"];

/** Fetches the words of a language. Fails where the part of the program that holds them does not come. */
export async function loadCatalogue(language: Exclude<Language, "en">): Promise<Catalogue> {
  return language === "es" ? (await import("./es.ts")).spanish : (await import("./pt.ts")).portuguese;
}

/** The first language of the person's own list that the program speaks; English where there is none. */
export function preferredLanguage(wanted: readonly string[]): Language {
  for (const tag of wanted) {
    const language = LANGUAGES.find((each) => tag.toLowerCase().split("-")[0] === each);
    if (language !== undefined) return language;
  }
  return "en";
}
