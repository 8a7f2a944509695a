// The soffit and shoring plan: props where the fill has them, read from the datum, judged as the checks judge them.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit } from "../../src/kit/kit.ts";
import type { Language, Project } from "../../src/plan/project.ts";
import type { Sheet } from "../../src/sheet/mark.ts";
import type { SmallPaper } from "../../src/sheet/paper.ts";
import { handedEntries } from "../../src/sheet/sheetSet.ts";
import { checksOfProps } from "../../src/sheet/soffitPlan/propTable.ts";
import { soffitPlanSheets } from "../../src/sheet/soffitPlan/sheets.ts";
import { sheetToSvg } from "../../src/sheet/svg.ts";
import { fillDocument } from "../support/filled.ts";
import { oneRoomInfo } from "../support/fixtureFill.ts";
import { sampleProject } from "../support/samples.ts";
import { outsidePaper, overlappingTexts, timesDrawn } from "../support/sheetClaims.ts";
import { soffitFills } from "../support/soffitFills.ts";
import { textsOf } from "../support/wallSheets.ts";

await loadUnion();

function entriesOf(
  name: string,
  given: {
    readonly language?: Language;
    readonly paper?: SmallPaper;
    readonly kit?: Kit;
    readonly loads?: Project["loads"];
  } = {},
) {
  const { language = "en", paper = "A4", kit = demoKit, loads = {} } = given;
  const project = { ...sampleProject(name), language, loads };
  return handedEntries({ fill: fillDocument(project, kit), project, kit }, { paper });
}

function holdPaper(sheets: readonly Sheet[]): void {
  for (const sheet of sheets) {
    expect(outsidePaper(sheet, 9)).toEqual([]);
    expect(overlappingTexts(sheet)).toEqual([]);
  }
}

const CASES = ["one-room", "two-bedroom", "mirrored-pair", "row-of-three", "awkward"].flatMap((name) =>
  (["en", "es", "pt"] as const).map((language) => ({ name, language })),
);

describe.each(CASES)("the soffit plan of $name in $language", ({ name, language }) => {
  const paper = language === "es" ? "Letter" : "A4";
  const entries = entriesOf(name, { language, paper });

  it("keeps to the paper, no text over another, and claims no piece of the room sheets", () => {
    for (const entry of entries) {
      const sheets = soffitPlanSheets(entry);
      expect(sheets.length).toBeGreaterThan(0);
      holdPaper(sheets);
      expect([...timesDrawn(sheets)]).toEqual([]);
    }
  });
});

describe("the table of props", () => {
  const [drawn, mirrored] = entriesOf("two-bedroom");
  const rowsOf = (entry: NonNullable<typeof drawn>) => {
    // A row is what stands on one baseline, left to right, page by page.
    return soffitPlanSheets(entry).flatMap((sheet) => {
      const lines = new Map<string, { readonly x: number; readonly text: string }[]>();
      for (const { at, text } of textsOf([sheet])) {
        const key = at[1].toFixed(2);
        lines.set(key, [...(lines.get(key) ?? []), { x: at[0], text }]);
      }
      return [...lines.values()].map((line) => line.sort((a, b) => a.x - b.x).map(({ text }) => text));
    });
  };

  it.each([
    { hand: "as drawn", entry: drawn! },
    { hand: "mirrored", entry: mirrored! },
  ])("reads every prop from the least corner of the concrete, $hand", ({ entry }) => {
    const xs = entry.fill.faces.flatMap(({ from, to }) => [from[0], to[0]]);
    const ys = entry.fill.faces.flatMap(({ from, to }) => [from[1], to[1]]);
    const [left, low] = [Math.min(...xs), Math.min(...ys)];
    const rows = rowsOf(entry);
    const props = entry.fill.soffits.flatMap(({ props: all }) => all);
    expect(props.length).toBeGreaterThan(50);
    props.forEach(({ at, area }, k) => {
      const x = ((at[0] - left) / 1000).toFixed(3);
      const y = ((at[1] - low) / 1000).toFixed(3);
      const found = rows.filter((row) => {
        const start = row.indexOf(`${k + 1}`);
        return start >= 0 && row.slice(start).includes(x) && row.slice(start).includes(y);
      });
      expect([k + 1, found.length]).toEqual([k + 1, 1]);
      expect(found[0]).toContain(area.toFixed(2));
    });
  });

  it("says within the stated limit only where the check does", () => {
    const checks = [...checksOfProps({ ...drawn!, reading: (at) => at }).values()];
    const texts = textsOf(soffitPlanSheets(drawn!)).map(({ text }) => text);
    const count = (said: string) => texts.filter((text) => text === said).length;
    expect(count("within the stated limit")).toBe(checks.filter(({ status }) => status === "within").length);
    expect(count("within the stated limit")).toBeGreaterThan(0);
    expect(count("over the stated limit")).toBe(0);
    expect(texts.join(" ").toLowerCase()).not.toMatch(/\bsafe/);
  });

  it.each([
    { why: "no class in the kit", byClass: null, loads: {}, said: "not checked" },
    // A heavy slab on the slenderest class: (40 × 0.1 + 5 + 1.5) kPa × 1.5 is far over what class A bears at 2.4 m.
    {
      why: "more than the class bears",
      byClass: "A" as const,
      loads: { concreteDensity: 40, formworkLoad: 5, continuity: 1.5 },
      said: "over the stated limit",
    },
  ])("$why: $said", ({ byClass, loads, said }) => {
    const pieces = demoKit.pieces.map((piece) =>
      piece.family === "prop" ? { ...piece, class: byClass, greatest: 2600 } : piece,
    );
    const [entry] = entriesOf("one-room", { kit: { ...demoKit, pieces }, loads });
    const texts = textsOf(soffitPlanSheets(entry!)).map(({ text }) => text);
    const status = said === "not checked" ? "not-checked" : "over";
    const checks = [...checksOfProps({ ...entry!, reading: (at) => at }).values()];
    const expected = checks.filter((check) => check.status === status).length;
    expect(expected).toBeGreaterThan(0);
    expect(texts.filter((text) => text === said)).toHaveLength(expected);
    expect(
      checks.some((check) => check.status === "within") || !texts.includes("within the stated limit"),
    ).toBe(true);
  });
});

describe("the soffit plan of odd fills", () => {
  it("keeps to the paper, no text over another", () => {
    const [entry] = entriesOf("one-room");
    fc.assert(
      fc.property(soffitFills, (fill) => {
        for (const language of ["en", "pt"] as const) {
          holdPaper(soffitPlanSheets({ ...entry!, fill, info: oneRoomInfo({ language }) }));
        }
      }),
      { seed: 20_260_403, numRuns: 8, endOnFailure: true },
    );
  }, 120_000);
});

describe("the soffit plan of the one-room sample", () => {
  it("is the one laid down", async () => {
    const [sheet] = soffitPlanSheets(entriesOf("one-room")[0]!);
    await expect(sheetToSvg(sheet!)).toMatchFileSnapshot("../golden/one-room-soffit-plan.svg");
  });
});
