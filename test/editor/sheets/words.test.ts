// The words of the view against each other: the same values, one and many where English tells them apart. That none is
// missing the compiler sees; that the words are the glossary's, test/editor/glossary.test.ts.

import { describe, expect, it } from "vitest";
import { SHEETS_VIEW_WORDS } from "../../../src/editor/sheets/words.ts";
import { sayPhrase, speechOf } from "../../../src/editor/words/say.ts";
import { CALC_WORDS } from "../../../src/sheet/calculations/words.ts";
import { FRAME_WORDS } from "../../../src/sheet/frameWords.ts";
import { LIST_WORDS } from "../../../src/sheet/lists/words.ts";
import { PANEL_PLAN_WORDS } from "../../../src/sheet/panelPlan/words.ts";
import { SOFFIT_PLAN_WORDS } from "../../../src/sheet/soffitPlan/words.ts";
import { textsOf } from "../../support/spokenTexts.ts";

const { en } = SHEETS_VIEW_WORDS;
const keys = Object.keys(en) as (keyof typeof en)[];

function braces(texts: readonly string[]): readonly string[] {
  return [...new Set(texts.flatMap((text) => text.match(/\{[a-z]+\}/g) ?? []))].sort();
}

describe.each(["es", "pt"] as const)("the view of sheets in %s", (language) => {
  const words = SHEETS_VIEW_WORDS[language];

  it("puts in the same values as English, and ends a sentence where it does", () => {
    for (const key of keys) {
      expect([key, braces(textsOf(words[key]))]).toEqual([key, braces(textsOf(en[key]))]);
      expect([key, typeof words[key]]).toEqual([key, typeof en[key]]);
      const ends = textsOf(en[key]).map((text) => /[.:]$/.test(text));
      expect([key, textsOf(words[key]).map((text) => /[.:]$/.test(text))]).toEqual([key, ends]);
    }
  });

  it("calls the fields of the title block as the title block does", () => {
    for (const name of ["date", "madeBy", "checkedBy", "releasedBy"] as const) {
      expect(words[name]).toBe(FRAME_WORDS[language][name]);
    }
  });
});

describe.each(["en", "es", "pt"] as const)("a kind of sheet in %s", (language) => {
  it("is called as its sheets are", () => {
    const words = SHEETS_VIEW_WORDS[language];
    for (const kind of ["bill", "packing", "accessories"] as const) {
      expect(words[`kind.${kind}`]).toBe(LIST_WORDS[language][kind]);
    }
    expect(words["kind.calculations"]).toBe(CALC_WORDS[language].title);
    expect(words["kind.soffit"]).toBe(SOFFIT_PLAN_WORDS[language].title);
    expect(words["kind.elevations"]).toMatch(new RegExp(`^${PANEL_PLAN_WORDS[language].title}`));
  });
});

describe("a phrase of the view", () => {
  it("takes none for one in Portuguese only", () => {
    const said = (language: "en" | "pt") =>
      sayPhrase(speechOf(language, {}), SHEETS_VIEW_WORDS[language].writing, { count: 0 });
    expect(said("en")).toBe("0 sheets are being written.");
    expect(said("pt")).toBe("0 folha está sendo escrita.");
  });
});
