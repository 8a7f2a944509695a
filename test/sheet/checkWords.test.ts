// Whatever a check can say has its Spanish and its Portuguese: what the samples make it say, and what is written down in
// the files of formulas and checks.

import { describe, expect, it } from "vitest";
import type { CheckDocument } from "../../src/assess/checkDocument.ts";
import { CHECK_SENTENCES, checkText, known } from "../../src/sheet/checkWords/checkText.ts";
import { KIND_WORDS, kindText } from "../../src/sheet/checkWords/kinds.ts";
import { assessed } from "../support/assessed.ts";
import { CONCRETE, LOADS, ratedKit } from "../support/calculated.ts";
import { spokenBy, writtenDown } from "../support/checkTexts.ts";
import { samples } from "../support/samples.ts";

const documents: readonly CheckDocument[] = samples().flatMap(({ project, fill }) => [
  assessed({ project, fill }),
  assessed({
    project: {
      ...project,
      concrete: { ...CONCRETE, log: [...CONCRETE.log.map((each) => [...each])] },
      loads: LOADS,
    },
    fill,
    kit: ratedKit,
  }),
]);

function untold(texts: Iterable<string>, language: "es" | "pt"): readonly string[] {
  return [...texts].filter((text) => known(text, language) === null);
}

/** Written the same in every language: standards, a name of a room, what a kit says of itself. */
const SAME = /^(?:[A-Z]{2,}[ \d.]*[\w.: -]*|Eurocode 2|kit|Duct|invented for the test)$/;

describe.each(["es", "pt"] as const)("the words of the checks in %s", (language) => {
  it("tell everything that the samples say", () => {
    const texts = new Set(documents.flatMap((document) => [...spokenBy(document)]));
    expect(texts.size).toBeGreaterThan(100);
    expect(untold(texts, language).filter((text) => !SAME.test(text))).toEqual([]);
  });

  it("tell everything that is written down", () => {
    const written = writtenDown();
    expect(written.length).toBeGreaterThan(150);
    const lacking = written.filter(({ texts }) => texts.every((text) => known(text, language) === null));
    expect(lacking.map(({ file, texts }) => `${file}: ${texts[0]}`)).toEqual([]);
  });

  it("have a name for every kind", () => {
    const kinds = new Set(documents.flatMap(({ checks }) => checks.map(({ kind }) => kind)));
    expect([...kinds].filter((kind) => !Object.hasOwn(KIND_WORDS, kind))).toEqual([]);
  });

  it("put in the values that English puts in", () => {
    const braces = (text: string) => (text.match(/\{[a-z]+\}/g) ?? []).sort().join();
    for (const sentence of CHECK_SENTENCES) {
      expect([sentence.en, braces(sentence[language])]).toEqual([sentence.en, braces(sentence.en)]);
    }
  });
});

describe("the words of the checks", () => {
  it("tell no text in two ways", () => {
    const texts = CHECK_SENTENCES.map(({ en }) => en);
    expect(texts.filter((text, index) => texts.indexOf(text) !== index)).toEqual([]);
  });

  it.each([
    {
      why: "a figure takes the decimal sign",
      text: "mean surface temperature 15.2 °C",
      es: "temperatura superficial media 15,2 °C",
    },
    {
      why: "a formula outside its range: the input is told, too",
      text: "the slab thickness is 20 mm; the figure holds from 50 to 3000 mm",
      es: "espesor de la losa: 20 mm; la cifra vale de 50 a 3000 mm",
    },
    {
      why: "a list, part by part",
      text: "face H/f3; tie 4 at 150 mm; and 2 more",
      es: "cara H/f3; corbata 4 a 150 mm; y 2 más",
    },
    { why: "somebody's name is not told again", text: "soffit of props", es: "fondo de losa de props" },
    { why: "a text nobody knows stays", text: "the moon is full", es: "the moon is full" },
    { why: "nothing stays nothing", text: "", es: "" },
  ])("$why", ({ text, es }) => {
    expect(checkText(text, "es")).toBe(es);
    expect(checkText(text, "en")).toBe(text);
  });

  it("call a kind that nobody foresaw by its own name", () => {
    expect(kindText("wind-on-forms", "pt")).toBe("Wind on forms");
    expect(kindText("constructor", "es")).toBe("Constructor");
  });
});
