// Problems told again in Spanish and Portuguese: every sentence of the samples, with all its figures and names.

import { describe, expect, it } from "vitest";
import { PHRASES, SENTENCES } from "../../src/sheet/problemSentences.ts";
import { problemText } from "../../src/sheet/problemText.ts";
import { filled, sampleProject } from "../support/samples.ts";

const SAMPLES = ["awkward", "mirrored-pair", "one-room", "row-of-three", "two-bedroom"] as const;
const messages = [
  ...new Set(
    SAMPLES.flatMap((name) =>
      filled(sampleProject(name)).units.flatMap(({ problems }) => problems.map(({ message }) => message)),
    ),
  ),
];

function figures(text: string): readonly string[] {
  return (text.replaceAll(/(\d),(\d)/g, "$1.$2").match(/\d+(?:\.\d+)?/g) ?? []).toSorted();
}

describe.each(["es", "pt"] as const)("the problems of the samples in %s", (language) => {
  it("are all told again", () => {
    expect(messages.length).toBeGreaterThan(30);
    expect(messages.filter((message) => problemText(message, language) === message)).toEqual([]);
  });

  it("keep every figure, and leave no brace open", () => {
    for (const message of messages) {
      const told = problemText(message, language);
      expect([message, figures(told)]).toEqual([message, figures(message)]);
      expect(told).not.toMatch(/[{}]/);
    }
  });
});

describe("the table", () => {
  it.each([...SENTENCES, ...PHRASES])("has the same values in every language: $en", ({ en, es, pt }) => {
    const braces = (text: string) => [...new Set(text.match(/\{[a-z]+\}/g) ?? [])].sort();
    expect([braces(es), braces(pt)]).toEqual([braces(en), braces(en)]);
  });

  it("has no sentence twice", () => {
    const forms = SENTENCES.map(({ en }) => en);
    expect(new Set(forms).size).toBe(forms.length);
  });
});

describe("a sentence", () => {
  it.each([
    {
      why: "a decimal sign",
      message: "P weighs 29.7 kg, more than one person's limit of 25 kg: two people lift each of the 4.",
      told: "P pesa 29,7 kg, más que el límite de 25 kg para una persona: dos levantan cada una de las 4.",
    },
    {
      why: "names are data, braces and all",
      message: "Walls {one} and $1 have the same ends and thickness: one wall is drawn twice. Delete one.",
      told: "Los muros {one} y $1 tienen los mismos extremos y espesor: un muro está trazado dos veces. Elimine uno.",
    },
    {
      why: "what the table lacks stays English",
      message: "Something new is wrong.",
      told: "Something new is wrong.",
    },
    {
      why: "words behind the end are another sentence",
      message: "Walls a and b have the same ends and thickness: one wall is drawn twice. Delete one. Now.",
      told: "Walls a and b have the same ends and thickness: one wall is drawn twice. Delete one. Now.",
    },
    { why: "an empty text", message: "", told: "" },
  ])("$why", ({ message, told }) => {
    expect(problemText(message, "es")).toBe(told);
    expect(problemText(message, "en")).toBe(message);
  });

  it("is read in a time that does not run away with hostile names", () => {
    const name = " and ".repeat(2000);
    const message = `Walls ${name} and ${name}`;
    expect(problemText(message, "pt")).toBe(message);
  });
});
