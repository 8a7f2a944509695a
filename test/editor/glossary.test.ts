// The table of the trade's words, and every text of page and sheets held to it.

import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Language } from "../../src/plan/project.ts";
import { spokenTexts } from "../support/spokenTexts.ts";

interface Entry {
  readonly term: Readonly<Record<Language, string>>;
  readonly banned: Readonly<Record<Language, readonly string[]>>;
}

const table = readFileSync(new URL("../../docs/words.md", import.meta.url), "utf8")
  .split("\n")
  .filter((line) => line.startsWith("|"))
  .slice(2)
  .map((line) => line.split("|").map((cell) => cell.trim()));

const entries: readonly Entry[] = table.map(([, en = "", es = "", pt = "", notEs = "", notPt = ""]) => ({
  term: { en, es, pt },
  banned: { en: [], es: list(notEs), pt: list(notPt) },
}));

function list(cell: string): readonly string[] {
  return cell.split(",").flatMap((word) => (word.trim() === "" ? [] : [word.trim()]));
}

/** The words in a row, each in the singular or a plural that only adds to it, with nothing of a word at either side. */
function asWords(term: string): RegExp {
  const parts = term
    .split(" ")
    .map((word) => (word.endsWith("m") ? `${word.slice(0, -1)}(?:m|ns)` : `${word}(?:e?s)?`));
  return new RegExp(`(?<![\\p{L}-])${parts.join(" ")}(?![\\p{L}-])`, "iu");
}

/** A label that has no room for the word: "Concret." for "concretagem". */
function abbreviates(text: string, term: string): boolean {
  return /^\p{L}{5,}\.$/u.test(text) && term.startsWith(text.slice(0, -1).toLowerCase());
}

describe("the glossary", () => {
  it("has every term in every language, each once", () => {
    expect(entries.length).toBeGreaterThan(40);
    for (const language of ["en", "es", "pt"] as const) {
      const terms = entries.map(({ term }) => term[language]);
      expect(terms.filter((term) => term === "")).toEqual([]);
      expect(terms.filter((term, index) => terms.indexOf(term) !== index)).toEqual([]);
    }
  });

  it("bans no word that it teaches", () => {
    for (const language of ["es", "pt"] as const) {
      const banned = entries.flatMap((entry) => entry.banned[language]);
      for (const { term } of entries) {
        expect(banned.filter((word) => asWords(word).test(term[language]))).toEqual([]);
      }
    }
  });

  it.each(["en", "es", "pt"] as const)("is what page and sheets speak: %s", (language) => {
    const texts = spokenTexts(language);
    const unused = entries.flatMap(({ term }) =>
      texts.some((text) => asWords(term[language]).test(text) || abbreviates(text, term[language]))
        ? []
        : [term[language]],
    );
    expect(unused).toEqual([]);
  });

  it.each(["es", "pt"] as const)("allows no second word for a thing: %s", (language) => {
    const texts = spokenTexts(language);
    const found = entries.flatMap(({ banned }) =>
      banned[language].flatMap((word) =>
        texts.filter((text) => asWords(word).test(text)).map((text) => `${word}: ${text}`),
      ),
    );
    expect(found).toEqual([]);
  });
});
