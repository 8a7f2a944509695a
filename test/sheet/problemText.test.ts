// Problems told again in Spanish and Portuguese: every sentence of the samples, with all its figures and names.

import { describe, expect, it, vi } from "vitest";
import { optimiseProject } from "../../src/fill/optimise/optimiseProject.ts";
import type { FillDocument } from "../../src/fill/result.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { PHRASES, SENTENCES } from "../../src/sheet/problemSentences.ts";
import { problemText } from "../../src/sheet/problemText.ts";
import { loadHighs } from "../../src/solver/highs.ts";
import { filled, sampleProject } from "../support/samples.ts";

// The machine may be busy with other things.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const SAMPLES = ["awkward", "mirrored-pair", "one-room", "row-of-three", "two-bedroom"] as const;
const messages = [
  ...new Set(
    SAMPLES.flatMap((name) =>
      filled(sampleProject(name)).units.flatMap(({ problems }) => problems.map(({ message }) => message)),
    ),
  ),
];

const solver = await loadHighs();
const union = await loadUnion();

function chosenFill(name: string): FillDocument {
  const work = optimiseProject({ project: sampleProject(name), kit: demoKit, union, solver, proofSteps: 1 });
  let step = work.next();
  while (step.done !== true) step = work.next();
  return step.value;
}

/** Why fillers and closures are there, by piece and by cause, filled wall by wall and as chosen for all pours. */
function reasonsOf({ units, set }: FillDocument): readonly string[] {
  const pieces = units.flatMap(({ faces }) => faces).flatMap((face) => face.pieces);
  return [
    ...pieces.flatMap(({ reason }) => (reason === undefined ? [] : [reason])),
    ...units.flatMap(({ causes }) => causes.map(({ message }) => message)),
    ...(set?.changes?.intervals.map(({ because }) => because) ?? []),
    ...(set?.changes?.causes.map(({ message }) => message) ?? []),
  ];
}

const reasons = [
  ...new Set([
    ...SAMPLES.flatMap((name) => reasonsOf(filled(sampleProject(name)))),
    ...["two-bedroom", "row-of-three"].flatMap((name) => reasonsOf(chosenFill(name))),
  ]),
];

function figures(text: string): readonly string[] {
  return (text.replaceAll(/(\d),(\d)/g, "$1.$2").match(/\d+(?:\.\d+)?/g) ?? []).toSorted();
}

describe.each(["es", "pt"] as const)("the problems of the samples in %s", (language) => {
  it("are all told again", () => {
    expect(messages.length).toBeGreaterThan(30);
    expect(messages.filter((message) => problemText(message, language) === message)).toEqual([]);
  });

  it("are told again with their reasons", () => {
    expect(reasons.length).toBeGreaterThan(100);
    expect(reasons.filter((reason) => problemText(reason, language) === reason)).toEqual([]);
    expect(reasons.filter((reason) => / (and|between|the) /.test(problemText(reason, language)))).toEqual([]);
  });

  it("keep every figure, and leave no brace open", () => {
    for (const message of [...messages, ...reasons]) {
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
      why: "a reason with its joints and what the set would need",
      message:
        "1600 between the corner leg and the jamb of d1: 1 standard panel takes 600, 1000 left; filled by itself, the set would need 2 W600x2250 (p5, p6) more and 2 W550x2250 less",
      told: "1600 entre el ala del esquinero y la jamba de d1: 1 panel estándar toma 600, quedan 1000; combinado por sí solo, el conjunto pediría 2 W600x2250 (p5, p6) más y 2 W550x2250 menos",
    },
    {
      why: "a cause with a list of widths, one place and many closures",
      message:
        "Wall 160 with a 150 leg asks for 310 and 460 at 1 corner or joining wall: adding 310 and 460 to the kit removes 2 closures.",
      told: "El muro de 160 con ala de 150 pide 310 y 460 en 1 esquina o muro que llega: agregar 310 y 460 al kit quita 2 cierres.",
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
