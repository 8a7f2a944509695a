// The sample projects on paper in all three languages: nothing overlaps or is cut, and no language needs more paper.

import { describe, expect, it, vi } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Language } from "../../src/plan/project.ts";
import type { SmallPaper } from "../../src/sheet/paper.ts";
import { sheetSets } from "../../src/sheet/sheetSet.ts";
import { fillDocument } from "../support/filled.ts";
import { sampleProject } from "../support/samples.ts";
import { outsidePaper, overlappingTexts } from "../support/sheetClaims.ts";

// A busy machine takes its time over many sheets, and that is no fault of theirs.
vi.setConfig({ testTimeout: 60_000 });

const union = await loadUnion();

function printed(name: string, language: Language, paper: SmallPaper) {
  const project = { ...sampleProject(name), language };
  const made = { fill: fillDocument(project), project, kit: demoKit, union };
  return sheetSets(made, { paper }).flatMap(({ sheets }) => sheets);
}

const CASES = (["one-room", "two-bedroom"] as const).flatMap((name) =>
  (["A4", "Letter"] as const).map((paper) => ({ name, paper })),
);

describe.each(CASES)("the sheets of $name on $paper", ({ name, paper }) => {
  const english = printed(name, "en", paper);

  it.each(["es", "pt"] as const)("hold in %s what they hold in English", (language) => {
    const sheets = printed(name, language, paper);
    // A calculation is prose, and the translations are longer: it may take a page more.
    const plain = (all: typeof sheets) => all.filter(({ kind }) => kind !== "calculations").length;
    expect(plain(sheets)).toBe(plain(english));
    expect(sheets.length - english.length).toBeLessThanOrEqual(1);
    for (const sheet of sheets) {
      expect(outsidePaper(sheet, 9)).toEqual([]);
      expect(overlappingTexts(sheet)).toEqual([]);
    }
  });
});

describe("a mirrored room sheet", () => {
  it.each([
    { language: "en", hand: "mirrored, ", sheet: "Room sheet, Bedroom 2, mirrored" },
    { language: "es", hand: "en espejo, ", sheet: "Hoja de recinto, Bedroom 2, en espejo" },
    { language: "pt", hand: "espelhado, ", sheet: "Folha de cômodo, Bedroom 2, espelhado" },
  ] as const)("says its hand in $language, and never cuts it", ({ language, hand, sheet: title }) => {
    const sheet = printed("two-bedroom", language, "A4").find((each) => each.title === title);
    const texts = sheet?.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])) ?? [];
    expect(texts.filter((text) => text.startsWith(hand) && !text.endsWith("…"))).toHaveLength(1);
  });
});
