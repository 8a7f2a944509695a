// The three languages of page and sheets against each other: nothing missing, the same values in each, no English left.

import { describe, expect, it } from "vitest";
import { LANGUAGE_TAGS, LANGUAGES, preferredLanguage } from "../../src/editor/words/catalogues.ts";
import { english, type WordKey } from "../../src/editor/words/en.ts";
import { say, speechOf, words } from "../../src/editor/words/say.ts";
import { CATALOGUES, SHEET_WORDS, sheetTexts, spokenTexts, textsOf } from "../support/spokenTexts.ts";

const keys = Object.keys(english) as WordKey[];
const FOREIGN = ["es", "pt"] as const;

function braces(text: string): readonly string[] {
  return [...new Set(text.match(/\{[a-z]+\}/g) ?? [])].sort();
}

describe.each(FOREIGN)("the page in %s", (language) => {
  const catalogue = CATALOGUES[language];

  it("has every message, and no other", () => {
    expect(Object.keys(catalogue).sort()).toEqual([...keys].sort());
    for (const key of keys) for (const text of textsOf(catalogue[key])) expect(text.trim()).not.toBe("");
  });

  it("puts in the same values as English", () => {
    for (const key of keys) {
      const names = braces(textsOf(english[key]).join());
      expect([key, braces(textsOf(catalogue[key]).join())]).toEqual([key, names]);
    }
  });

  it("tells one from many wherever English does", () => {
    const pairs = keys.filter((key) => typeof english[key] !== "string");
    expect(keys.filter((key) => typeof catalogue[key] !== "string")).toEqual(pairs);
  });

  it("ends a sentence where English does", () => {
    for (const key of keys) {
      const ends = textsOf(english[key]).map((text) => text.endsWith("."));
      expect([key, textsOf(catalogue[key]).map((text) => text.endsWith("."))]).toEqual([key, ends]);
    }
  });

  it("repeats the English only where the two are alike", () => {
    const same = keys.filter((key) => JSON.stringify(catalogue[key]) === JSON.stringify(english[key]));
    const values = keys.filter((key) =>
      textsOf(english[key]).every((text) => /^[^\p{L}]*$/u.test(bare(text))),
    );
    expect(same.filter((key) => !values.includes(key)).sort()).toEqual(
      language === "es"
        ? ["kit.title", "piece.panel", "place.kit", "readout.at", "readout.scale", "underlay.size"]
        : ["kit.title", "place.kit", "readout.at", "readout.scale", "underlay.size"],
    );
  });
});

function bare(text: string): string {
  return text.replaceAll(/\{[a-z]+\}/g, "");
}

describe("Portuguese, which takes the singular for none", () => {
  it("shows the figure in both forms", () => {
    for (const key of keys) {
      const phrase = CATALOGUES.pt[key];
      // A file that cannot be opened has a fault at least.
      if (typeof phrase === "string" || key === "file.not-a-project") continue;
      expect([key, braces(phrase.one)]).toEqual([key, braces(phrase.other)]);
    }
    expect(say(speechOf("pt", CATALOGUES), words("problems.count", { count: 0 }))).toBe("0 problema");
  });
});

describe("the sheets", () => {
  it("have their words found", () => {
    expect(SHEET_WORDS.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["words.ts WORDS", "familyWords.ts FAMILY_WORDS", "frameWords.ts FRAME_WORDS"]),
    );
  });

  it.each(SHEET_WORDS)("say the same with the same values: $name", ({ words: all }) => {
    const marks = (text: string) => [...new Set(text.match(/⟦\d⟧/g) ?? [])].sort();
    const shape = (language: "en" | "es" | "pt") =>
      sheetTexts(all[language]).map(({ path, text }) => [path, text === "", marks(text)]);
    for (const language of FOREIGN) expect(shape(language)).toEqual(shape("en"));
  });
});

function anyOf(words: string): RegExp {
  return new RegExp(`(?<![\\p{L}-])(?:${words})(?![\\p{L}-])`, "iu");
}

const ENGLISH_WORDS = anyOf(
  "the|an|of|and|or|not|with|from|is|are|this|that|to|by|wall|room|sheet|corner|tie|pin|joint|slab|close|open|undo|height|width",
);

/** Spellings that give a slip away: no dictionary, a net. */
const SLIPS: Readonly<Record<(typeof FOREIGN)[number], readonly RegExp[]>> = {
  es: [
    anyOf("\\p{L}+(?:cion|sion)"),
    anyOf("angulo|linea|pagina|codigo|maximo|minimo|aqui|tambien|despues|numero|cuna|union|mensula"),
    anyOf("não|uma|ou|parede|laje"),
    /[ãõçâêô]/i,
  ],
  pt: [
    anyOf("\\p{L}+(?:cao|coes|soes)"),
    anyOf("nao|vao|pecas?|angulo|pagina|codigo|maximo|minimo|comodo|paineis|numero|juncao"),
    anyOf("el|los|las|muro|losa|una"),
    /[ñ¿¡]/i,
  ],
};

describe.each(FOREIGN)("every text in %s", (language) => {
  // Each language is named in its own words as well, and words of the file are quoted.
  const texts = spokenTexts(language).map((text) =>
    text.replace(/ \((English|Español|Português)\)/, "").replaceAll(/“(room|open)”/g, ""),
  );

  it("has no English left in it", () => {
    expect(texts.filter((text) => ENGLISH_WORDS.test(bare(text)))).toEqual([]);
  });

  it("has its accents, and none of its neighbour's words", () => {
    expect(texts.filter((text) => SLIPS[language].some((slip) => slip.test(bare(text))))).toEqual([]);
  });

  it("never promises what only the engineer can", () => {
    expect(texts.filter((text) => /segur[oa]|safe/i.test(text))).toEqual([]);
  });
});

describe("the language of somebody who comes for the first time", () => {
  it.each([
    { why: "the first that is spoken", wanted: ["fr-FR", "pt-BR", "es"], language: "pt" },
    { why: "the country does not matter", wanted: ["es-CO"], language: "es" },
    { why: "case does not matter", wanted: ["ES"], language: "es" },
    { why: "a tag that only begins alike is another language", wanted: ["est"], language: "en" },
    { why: "nothing wished, nothing known", wanted: [], language: "en" },
  ])("$why", ({ wanted, language }) => {
    expect(preferredLanguage(wanted)).toBe(language);
  });

  it("has a tag the browser knows", () => {
    for (const language of LANGUAGES) {
      expect(Intl.getCanonicalLocales(LANGUAGE_TAGS[language])).toEqual([LANGUAGE_TAGS[language]]);
    }
  });
});
