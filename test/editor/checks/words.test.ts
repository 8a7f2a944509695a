// The words of the view against each other, and against the checks they name. That none is missing the compiler sees; that
// they are the glossary's, test/editor/glossary.test.ts.

import { describe, expect, it } from "vitest";
import { ticksBetween, ticksTo } from "../../../src/editor/checks/axis.ts";
import { figureText, shareText, valueText } from "../../../src/editor/checks/figureText.ts";
import { CHECKS_VIEW_WORDS, type ChecksWord, isChecksWord } from "../../../src/editor/checks/words.ts";
import { CONCRETE_CHOICES } from "../../../src/plan/concrete.ts";
import { LOAD_CHOICES } from "../../../src/plan/loads.ts";
import { textsOf } from "../../support/spokenTexts.ts";

const { en } = CHECKS_VIEW_WORDS;
const keys = Object.keys(en).filter(isChecksWord);

function braces(key: ChecksWord, language: "en" | "es" | "pt"): readonly string[] {
  const texts = textsOf(CHECKS_VIEW_WORDS[language][key]);
  return [...new Set(texts.flatMap((text) => text.match(/\{[a-z]+\}/g) ?? []))].sort();
}

describe.each(["es", "pt"] as const)("the view of checks in %s", (language) => {
  const words = CHECKS_VIEW_WORDS[language];

  it("puts in the same values as English, and ends a sentence where it does", () => {
    for (const key of keys) {
      const own = braces(key, language).filter((brace) => brace !== "{count}");
      expect([key, own]).toEqual([key, braces(key, "en").filter((brace) => brace !== "{count}")]);
      expect([key, typeof words[key]]).toEqual([key, typeof en[key]]);
      const ends = (phrase: (typeof words)[ChecksWord]) => textsOf(phrase).map((text) => /[.:]$/.test(text));
      expect([key, ends(words[key])]).toEqual([key, ends(en[key])]);
    }
  });

  it("never promises more than the limit says", () => {
    const texts = keys.flatMap((key) => textsOf(words[key]));
    expect(texts.filter((text) => /segur[oa]/i.test(text))).toEqual([]);
  });
});

describe("the view of checks", () => {
  it("never says safe", () => {
    expect(keys.flatMap((key) => textsOf(en[key])).filter((text) => /\bsafe/i.test(text))).toEqual([]);
  });

  it("has a name for every choice", () => {
    const choices = [...Object.values(CONCRETE_CHOICES), ...Object.values(LOAD_CHOICES)].flat();
    // A code that says itself needs no other word.
    const open = choices.filter((word) => !isChecksWord(`choice.${word}`));
    expect(open).toEqual(["F1", "F2", "F3", "F4", "F5", "F6", "SCC", "EN 12812"]);
  });
});

describe("figures on the screen", () => {
  it.each([
    { value: 14.0649, wanted: "14.065" },
    { value: 2300, wanted: "2\u202f300" },
    { value: 123_456.7, wanted: "123\u202f457" },
    { value: 0.00125, wanted: "0.00125" },
    { value: -0.5, wanted: "\u22120.5" },
    { value: 0, wanted: "0" },
  ])("$value is $wanted", ({ value, wanted }) => {
    expect(figureText(value, "en")).toBe(wanted);
  });

  it("stand beside their limit, but for counts of which none is allowed", () => {
    const text = (value: number | null, limit: number | null) =>
      valueText({ value, limit, unit: "kN" }, "es");
    expect(text(5.4675, 25.04)).toBe("5,468 / 25,04\u202fkN");
    expect(text(3, 0)).toBe("3\u202fkN");
    expect(text(null, 3)).toBe("–");
  });

  it("never tell a share over the limit as all of it", () => {
    expect([0.994, 1, 1.0001, 1.5].map((share) => shareText(share, "en"))).toEqual([
      "99",
      "100",
      "101",
      "150",
    ]);
  });
});

describe("the figures of an axis", () => {
  it.each([
    { why: "a pressure", greatest: 75.6, wanted: [0, 20, 40, 60, 80] },
    { why: "a height", greatest: 2.5, wanted: [0, 0.5, 1, 1.5, 2, 2.5] },
    { why: "nothing", greatest: 0, wanted: [0, 1] },
  ])("reach over $why", ({ greatest, wanted }) => {
    expect(ticksTo(greatest)).toEqual(wanted);
  });

  it("go from below the least to over the greatest", () => {
    expect(ticksBetween(22, 38)).toEqual([20, 25, 30, 35, 40]);
    expect(ticksBetween(-3, 4)).toEqual([-4, -2, 0, 2, 4]);
    expect(ticksBetween(7, 7)).toEqual([7, 8]);
  });
});
