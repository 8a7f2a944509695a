// The shortage list on paper: once for the project, only where somebody has said what is owned, right in every language.

import { describe, expect, it, vi } from "vitest";
import { shortageOf } from "../../../src/fill/deliver/shortage.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import type { Project } from "../../../src/plan/project.ts";
import { shortageSheets } from "../../../src/sheet/lists/shortageSheet.ts";
import { SHORTAGE_WORDS } from "../../../src/sheet/lists/shortageWords.ts";
import type { SmallPaper } from "../../../src/sheet/paper.ts";
import { handedEntries } from "../../../src/sheet/sheetSet.ts";
import { projectTables } from "../../../src/sheet/tables.ts";
import { LANGUAGES } from "../../support/listFills.ts";
import { readCsv } from "../../support/readCsv.ts";
import { filled, sampleProject } from "../../support/samples.ts";
import { outsidePaper, overlappingTexts } from "../../support/sheetClaims.ts";
import { HOSTILE_NAMES } from "../../support/sheetFills.ts";

vi.setConfig({ testTimeout: 60_000 });

const project = sampleProject("row-of-three");
const fill = filled(project);
const needed = shortageOf(fill, demoKit, project).lines;
const enough = Object.fromEntries(needed.map((line) => [line.code, line.needed]));

function printed(given: Project, paper: SmallPaper = "A4") {
  return handedEntries({ fill, project: given, kit: demoKit }, { paper }).flatMap((entry) =>
    entry.isFirst ? shortageSheets({ ...entry, fill: entry.whole }, entry.fill, entry.info) : [],
  );
}

const textsOf = (sheets: ReturnType<typeof printed>) =>
  sheets.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));

describe("the shortage list", () => {
  it("is made where somebody has said what is owned, or that nothing may be bought", () => {
    expect(printed(project)).toEqual([]);
    expect(printed({ ...project, stock: { Pin: 1 } }).length).toBeGreaterThan(0);
    expect(printed({ ...project, buy: false }).length).toBeGreaterThan(0);
  });

  it("says so where nothing is short", () => {
    const texts = textsOf(printed({ ...project, stock: enough, buy: false }));
    expect(texts).toContain(SHORTAGE_WORDS.en.nothing);
    expect(texts).not.toContain(SHORTAGE_WORDS.en.noBuying);
  });

  it("shows the one piece that is lacking, its price and the pours that wait for it", () => {
    const code = "W600x2250";
    const price = demoKit.pieces.find((piece) => piece.code === code)!.price!;
    const texts = textsOf(
      printed({ ...project, stock: { ...enough, [code]: enough[code]! - 1 }, buy: false }),
    );
    expect(texts).toContain(SHORTAGE_WORDS.en.noBuying);
    expect(texts.filter((text) => text === code)).toHaveLength(1);
    expect(texts).toContain(price.toFixed(2));
    expect(texts).toContain("House 5, House 6");
  });

  const cases = LANGUAGES.flatMap((language) =>
    (["A4", "Letter"] as const).map((paper) => ({ language, paper })),
  );
  it.each(cases)("stays on the paper in $language on $paper, no text over another", ({ language, paper }) => {
    const sheets = printed({ ...project, language, buy: false }, paper);
    expect(sheets.length).toBeGreaterThan(1);
    for (const sheet of sheets) {
      expect(outsidePaper(sheet, 9)).toEqual([]);
      expect(overlappingTexts(sheet)).toEqual([]);
    }
  });

  it.each(HOSTILE_NAMES)("cannot be broken by the name of a pour: %j", (name) => {
    const pours = project.pours.map((pour) => ({ ...pour, name }));
    for (const sheet of printed({ ...project, pours, buy: false })) {
      expect(outsidePaper(sheet, 9)).toEqual([]);
      expect(overlappingTexts(sheet)).toEqual([]);
    }
  });
});

describe("shortage.csv", () => {
  it("has every code once, with what is lacking", () => {
    const stock = { ...enough, Pin: 1, Wedge: 0 };
    const tables = projectTables({ fill, project: { ...project, stock }, kit: demoKit });
    const [head, ...rows] = readCsv(tables.find(({ name }) => name === "shortage.csv")!.text);
    const at = (name: string) => head!.indexOf(name);
    expect(rows.map((row) => row[at("code")])).toEqual(needed.map(({ code }) => code));
    for (const row of rows) {
      const short = Math.max(0, Number(row[at("needed")]) - Number(row[at("owned")]));
      expect(Number(row[at("short")])).toBe(short);
      const price = row[at("price")];
      if (short > 0 && price !== "") expect(Number(row[at("cost")])).toBeCloseTo(short * Number(price), 2);
      expect(row[at("pours")] === "").toBe(short === 0);
    }
    const short = rows.filter((row) => row[at("short")] !== "0").map((row) => row[at("code")]);
    expect(short).toEqual(["Pin", "Wedge"]);
  });
});
