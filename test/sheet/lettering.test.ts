import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { overlaps } from "../../src/sheet/box.ts";
import { CAPITAL_HEIGHT, CHARACTERS_BY_WIDTH } from "../../src/sheet/fontWidths.ts";
import { cutToWidth, textBox, textWidth, typeSize, wrapped } from "../../src/sheet/lettering.ts";
import type { TextMark } from "../../src/sheet/mark.ts";

const WEIGHTS = [400, 600, 700] as const;
const lettering = { height: 3.5, weight: 400 } as const;
const sentences = fc
  .array(fc.string({ minLength: 1, maxLength: 30 }), { maxLength: 12 })
  .map((words) => words.join(" "));

describe("the table of advance widths", () => {
  it.each(WEIGHTS)("gives all digits of weight %i one width, so that figures stand in columns", (weight) => {
    const widths = new Set([..."0123456789"].map((digit) => textWidth(digit, { height: 10, weight })));
    expect(widths.size).toBe(1);
  });

  it.each(WEIGHTS)("holds every letter of English, Spanish and Portuguese in weight %i, once", (weight) => {
    const all = CHARACTERS_BY_WIDTH[weight].flatMap(([, characters]) => [...characters]);
    expect(new Set(all).size).toBe(all.length);
    for (const letter of "ABCXYZabcxyzÁÉÍÑÓÚÜÇÃÕÂÊÔÀáéíñóúüçãõâêôà¿¡×±²–…’·→←") expect(all).toContain(letter);
  });

  it("makes capitals as tall as they are named", () => {
    // A type size of 1000 has capitals of CAPITAL_HEIGHT.
    expect((typeSize(7) * CAPITAL_HEIGHT) / 1000).toBeCloseTo(7, 12);
  });
});

describe("fitting a text", () => {
  it("cuts to the width, and only what does not fit", () => {
    fc.assert(
      fc.property(sentences, fc.double({ min: 0, max: 120, noNaN: true }), (text, width) => {
        const shown = cutToWidth(text, width, lettering);
        expect(textWidth(shown, lettering)).toBeLessThanOrEqual(width);
        if (textWidth(text, lettering) <= width) expect(shown).toBe(text);
      }),
      { seed: 3 },
    );
  });

  it("wraps into lines that fit and lose no letter", () => {
    fc.assert(
      fc.property(sentences, (text) => {
        const lines = wrapped(text, 20, lettering);
        for (const line of lines) expect(textWidth(line, lettering)).toBeLessThanOrEqual(20);
        expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
      }),
      { seed: 4 },
    );
  });

  it.each([
    { why: "side by side", at: [24, 10] as const, isOver: false },
    { why: "one in the other", at: [12, 10] as const, isOver: true },
    { why: "the tail of the upper line meets the lower", at: [10, 13.8] as const, isOver: true },
    { why: "lines apart", at: [10, 15] as const, isOver: false },
  ])("tells whether texts cover each other: $why", ({ at, isOver }) => {
    const text: TextMark = {
      kind: "text",
      at: [10, 10],
      text: "pag",
      ...lettering,
      ink: "ink",
      anchor: "start",
    };
    expect(textWidth("paging", lettering)).toBeLessThan(14);
    expect(overlaps(textBox(text), textBox({ ...text, at }))).toBe(isOver);
  });
});
