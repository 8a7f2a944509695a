// The words of the page and the figures in them.

import { describe, expect, it } from "vitest";
import { degreesToTurn } from "../../src/editor/degrees.ts";
import { english, type WordKey } from "../../src/editor/words/en.ts";
import {
  formatArea,
  formatChange,
  formatMm,
  formatNumber,
  MINUS,
  parseTyped,
  THIN_SPACE,
} from "../../src/editor/words/numbers.ts";
import { say, speechOf, words } from "../../src/editor/words/say.ts";
import { angleBetween } from "../../src/geom/angle.ts";

const speech = speechOf("en", {});

describe("figures", () => {
  it("use the narrow no-break space and the true minus of Unicode", () => {
    expect([THIN_SPACE.codePointAt(0), MINUS.codePointAt(0)]).toEqual([0x202f, 0x2212]);
  });

  it.each([
    { why: "under a thousand no space", value: 999, decimals: 0, text: "999" },
    { why: "a thousand", value: 1000, decimals: 0, text: "1_000" },
    { why: "a million", value: 1234567, decimals: 0, text: "1_234_567" },
    { why: "a true minus", value: -2850, decimals: 0, text: "~2_850" },
    { why: "nothing is never negative", value: -0.4, decimals: 0, text: "0" },
    { why: "half goes away from zero", value: 2.5, decimals: 0, text: "3" },
    { why: "zeros at the end are left out", value: 1.5, decimals: 3, text: "1.5" },
    { why: "no grouping after the point", value: 1234.56789, decimals: 4, text: "1_234.5679" },
  ])("$why", ({ value, decimals, text }) => {
    expect(formatNumber(value, "en", decimals)).toBe(
      text.replaceAll("_", "\u202f").replaceAll("~", "\u2212"),
    );
  });

  it.each([
    { language: "en", text: "1\u202f234.5" },
    { language: "es", text: "1\u202f234,5" },
    { language: "pt", text: "1\u202f234,5" },
  ] as const)("the decimal sign of $language", ({ language, text }) => {
    expect(formatMm(1234.5, language)).toBe(text);
  });

  it.each([
    { value: 4, text: "+4" },
    { value: -2, text: "\u22122" },
    { value: 0, text: "±0" },
    { value: -0.2, text: "±0" },
    { value: 1500, text: "+1\u202f500" },
  ])("a change of $value", ({ value, text }) => {
    expect(formatChange(value, "en")).toBe(text);
  });

  it("areas have one decimal, also when it is nought", () => {
    expect([formatArea(11.24, "en"), formatArea(12, "es")]).toEqual(["11.2 m²", "12,0 m²"]);
  });
});

describe("typed numbers", () => {
  it.each([
    { text: "2400", value: 2400 },
    { text: " 2 400 ", value: 2400 },
    { text: "2\u202f400", value: 2400 },
    { text: "2400,5", value: 2400.5 },
    { text: "2400.5", value: 2400.5 },
    { text: "\u221230", value: -30 },
    { text: "-30", value: -30 },
    { text: ".5", value: 0.5 },
    { text: "12.", value: 12 },
    { text: "", value: null },
    { text: ".", value: null },
    { text: "1,200.5", value: null },
    { text: "1e3", value: null },
    { text: "0x10", value: null },
    { text: "Infinity", value: null },
    { text: "9".repeat(400), value: null },
  ])("$text", ({ text, value }) => {
    expect(parseTyped(text)).toBe(value);
  });

  it("are read back from what is shown", () => {
    for (const value of [0, 7, 999, 1000, -2850, 12345.5]) {
      for (const language of ["en", "es", "pt"] as const)
        expect(parseTyped(formatMm(value, language))).toBe(value);
    }
  });
});

describe("phrases", () => {
  it.each([
    { count: 1, text: "move one thing" },
    { count: 2, text: "move 2 things" },
    { count: 0, text: "move 0 things" },
    { count: 1200, text: "move 1\u202f200 things" },
  ])("a count of $count", ({ count, text }) => {
    expect(say(speech, words("step.move", { count }))).toBe(text);
  });

  it("take the singular for none in Portuguese", () => {
    expect(say(speechOf("pt", {}), words("step.move", { count: 0 }))).toBe("move one thing");
  });

  it("are spoken from the catalogue of the language where it has one", () => {
    const spanish = { ...english, "tool.wall": "Muro" };
    expect(say(speechOf("es", { es: spanish }), words("tool.wall"))).toBe("Muro");
    expect(say(speechOf("pt", { es: spanish }), words("tool.wall"))).toBe("Wall");
  });

  it("put values in once, whatever the values hold", () => {
    expect(say(speech, words("refusal.no-such-unit", { item: "{item}" }))).toBe(
      "The unit “{item}” is not there any more.",
    );
  });

  it("leave a brace whose value is missing, and never read what objects inherit", () => {
    expect(say(speech, { key: "snap.end", values: {} })).toBe("End of wall {wall}");
  });

  it("end messages with a full stop and never say what the trade would not understand", () => {
    for (const key of Object.keys(english) as WordKey[]) {
      const phrase = english[key];
      const texts = typeof phrase === "string" ? [phrase] : [phrase.one, phrase.other];
      for (const text of texts) {
        expect(text).not.toMatch(/invalid|error|safe/i);
        if (/^(message|refusal)\./.test(key)) expect(text).toMatch(/\.$/);
      }
    }
  });
});

describe("typed angles", () => {
  it.each([
    { degrees: 0, cosine: 1, sine: 0 },
    { degrees: 90, cosine: 0, sine: 1 },
    { degrees: 180, cosine: -1, sine: 0 },
    { degrees: -90, cosine: 0, sine: -1 },
    { degrees: 450, cosine: 0, sine: 1 },
  ])("$degrees° is exact", ({ degrees, cosine, sine }) => {
    const turn = degreesToTurn(degrees);
    expect([turn.cosine + 0, turn.sine + 0]).toEqual([cosine, sine]);
  });

  it("agree with the machine's own functions and with the way back", () => {
    for (let degrees = 0; degrees < 360; degrees += 0.5) {
      const { cosine, sine } = degreesToTurn(degrees);
      expect(cosine).toBeCloseTo(Math.cos((degrees * Math.PI) / 180), 14);
      expect(sine).toBeCloseTo(Math.sin((degrees * Math.PI) / 180), 14);
      expect(angleBetween(1, 0, cosine, sine)).toBeCloseTo(degrees, 9);
    }
  });

  it("must be finite", () => {
    expect(() => degreesToTurn(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});
