// The back of the room sheet: every piece of a soffit on its room's sheet once, nothing off the paper or over another.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pinRuleOf } from "../../../src/fill/accessories.ts";
import type { UnitFill } from "../../../src/fill/result.ts";
import { roomPartsOf } from "../../../src/fill/roomParts.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import { countRows } from "../../../src/sheet/countRows.ts";
import { sheetRings } from "../../../src/sheet/faceOrder.ts";
import type { SheetInfo } from "../../../src/sheet/info.ts";
import type { Sheet } from "../../../src/sheet/mark.ts";
import { numberWords } from "../../../src/sheet/numberWords.ts";
import { rangesText } from "../../../src/sheet/ranges.ts";
import { roomSheets } from "../../../src/sheet/roomSheet.ts";
import { sheetToSvg } from "../../../src/sheet/svg.ts";
import { pinCounts } from "../../../src/sheet/workNotes.ts";
import { oneRoomInfo } from "../../support/fixtureFill.ts";
import { outsidePaper, overlappingTexts, timesDrawn } from "../../support/sheetClaims.ts";
import { overheadIds, soffitFills } from "../../support/soffitFills.ts";
import { sampleWallSheets, textsOf } from "../../support/wallSheets.ts";

const RUNS = { seed: 20_260_401, numRuns: 12, endOnFailure: true };
const PATIENCE = 120_000;
const SAMPLES = ["one-room", "two-bedroom", "mirrored-pair", "row-of-three", "awkward"];
const samples = SAMPLES.flatMap((name) =>
  sampleWallSheets(name).map(({ unit, info }) => ({ name, unit, info, sheets: roomSheets(unit, info) })),
);

function onWalls(unit: UnitFill): readonly string[] {
  return [...unit.faces.flatMap(({ pieces }) => pieces), ...unit.corners].map(({ piece }) => piece);
}

function holdPaper(sheets: readonly Sheet[]): void {
  for (const sheet of sheets) {
    expect(outsidePaper(sheet, 9)).toEqual([]);
    expect(overlappingTexts(sheet)).toEqual([]);
  }
}

const KINDS = [
  { paper: "A4", language: "en" },
  { paper: "A4", language: "pt" },
  { paper: "Letter", language: "es" },
] as const;

describe.each(KINDS)("odd soffits on $paper in $language", ({ paper, language }) => {
  const info = oneRoomInfo({ paper, language });

  it(
    "leave every mark on the paper and no text over another, and draw every piece once",
    () => {
      fc.assert(
        fc.property(soffitFills, (unit) => {
          const sheets = roomSheets(unit, info);
          holdPaper(sheets);
          const times = timesDrawn(sheets);
          expect([...times].filter(([, count]) => count !== 1)).toEqual([]);
          const expected = new Set([...onWalls(unit), ...overheadIds(unit)]);
          expect([...times.keys()].sort()).toEqual([...expected].sort());
        }),
        RUNS,
      );
    },
    PATIENCE,
  );
});

describe.each(samples)("the room sheets of $name, unit $unit.unit", ({ unit, info, sheets }) => {
  it("draw every piece of faces, edges, reveals and soffits once, and every prop", () => {
    const times = timesDrawn(sheets);
    expect([...times].filter(([, count]) => count !== 1)).toEqual([]);
    const expected = new Set([
      ...onWalls(unit),
      ...unit.reveals.flatMap(({ pieces }) => pieces.map(({ piece }) => piece)),
      ...unit.fittings.map(({ piece }) => piece),
      ...overheadIds(unit),
    ]);
    expect([...times.keys()].sort()).toEqual([...expected].sort());
  });

  it("keep to the paper", () => {
    holdPaper(sheets);
  });

  it("draw a piece of a room on a sheet of that room", () => {
    for (const soffit of unit.soffits.filter(({ isSlab }) => isSlab !== true)) {
      const own = sheets.filter(({ title }) => title.includes(soffit.room));
      const drawn = timesDrawn(own);
      for (const { piece } of soffit.props) expect(drawn.get(piece)).toBe(1);
    }
  });

  it("count what the bill counts, code by code", () => {
    const counted = new Map<string, number>();
    for (const parts of roomPartsOf(unit)) {
      for (const { code, quantity, isOwn } of countRows(parts, info)) {
        if (isOwn) counted.set(code, (counted.get(code) ?? 0) + quantity);
      }
    }
    const listed = new Set(["pin", "wedge", "tie-sleeve"]);
    const bill = unit.bill.filter(({ family }) => !listed.has(family));
    expect([...counted].sort(byCode)).toEqual(
      bill.map(({ code, quantity }): [string, number] => [code, quantity]).sort(byCode),
    );
  });

  it("share out the pins of the bill over faces, edges and soffits", () => {
    const rule = pinRuleOf(demoKit)!;
    const pins = roomPartsOf(unit).reduce((sum, parts) => {
      const { faces, edges, overhead } = pinCounts(sheetRings(parts.faces, info), parts, rule);
      return sum + faces.reduce((all, { count }) => all + count, 0) + edges + overhead;
    }, 0);
    const billed = unit.bill.find(({ family }) => family === "pin")?.quantity ?? 0;
    expect(pins).toBe(billed);
  });
});

function byCode([a]: readonly [string, number], [b]: readonly [string, number]): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

describe("what a room sheet says", () => {
  const { unit, info } = samples.find(({ name }) => name === "two-bedroom")!;
  const texts = (given: Partial<SheetInfo> = {}) =>
    textsOf(roomSheets(unit, { ...info, ...given }).filter(({ title }) => title.includes("Bedroom 1")))
      .map(({ text }) => text)
      .join(" ");

  it.each([
    { language: "en", said: "100 mm is “one hundred”", signs: "a second person signs" },
    { language: "es", said: "100 mm es “cien”", signs: "firma otra persona" },
    { language: "pt", said: "100 mm é “cem”", signs: "outra pessoa assina" },
  ] as const)(
    "in $language of its ties: length in words, who signs the bottom rows",
    ({ language, said, signs }) => {
      expect(texts({ language })).toContain(said);
      expect(texts({ language })).toContain(signs);
    },
  );

  it("of the two bottom rows as many ties as the fill has there", () => {
    // By hand: the rows of the demo kit begin with 150 and 450.
    const room = roomPartsOf(unit).find(({ name }) => name === "Bedroom 1")!;
    const low = [...room.ownTies, ...room.otherTies].flatMap(({ heights }) =>
      heights.filter((height) => height === 150 || height === 450),
    );
    expect(texts()).toContain(`Rows 150, 450: count ${low.length} ties`);
  });

  it("of what stays, and never that anything is safe", () => {
    expect(texts()).toContain("Stays until the engineer’s word");
    expect(texts()).toMatch(/Strip ends .* are held by props/);
    expect(texts().toLowerCase()).not.toMatch(/\bsafe/);
  });
});

describe("a length in words", () => {
  it.each([
    { value: 100, en: "one hundred", es: "cien", pt: "cem" },
    { value: 120, en: "one hundred and twenty", es: "ciento veinte", pt: "cento e vinte" },
    { value: 150, en: "one hundred and fifty", es: "ciento cincuenta", pt: "cento e cinquenta" },
    { value: 200, en: "two hundred", es: "doscientos", pt: "duzentos" },
    {
      value: 225,
      en: "two hundred and twenty-five",
      es: "doscientos veinticinco",
      pt: "duzentos e vinte e cinco",
    },
    {
      value: 331,
      en: "three hundred and thirty-one",
      es: "trescientos treinta y uno",
      pt: "trezentos e trinta e um",
    },
    { value: 16, en: "sixteen", es: "dieciséis", pt: "dezesseis" },
    {
      value: 999,
      en: "nine hundred and ninety-nine",
      es: "novecientos noventa y nueve",
      pt: "novecentos e noventa e nove",
    },
    { value: 1000, en: "1000", es: "1000", pt: "1000" },
    { value: 0, en: "0", es: "0", pt: "0" },
  ])("$value", ({ value, ...words }) => {
    expect(numberWords(value, "en")).toBe(words.en);
    expect(numberWords(value, "es")).toBe(words.es);
    expect(numberWords(value, "pt")).toBe(words.pt);
  });
});

describe("numbers in few words", () => {
  it.each([
    { numbers: [], text: "" },
    { numbers: [4], text: "4" },
    { numbers: [1, 2], text: "1, 2" },
    { numbers: [3, 1, 2, 2], text: "1–3" },
    { numbers: [1, 2, 3, 7, 9, 10, 11], text: "1–3, 7, 9–11" },
  ])("$text", ({ numbers, text }) => {
    expect(rangesText(numbers)).toBe(text);
  });
});

describe("the back of the one-room sample", () => {
  it("is the one laid down", async () => {
    const { sheets } = samples.find(({ name }) => name === "one-room")!;
    const back = sheets.find(({ name }) => name.endsWith("-01-garden-room-p2")) ?? sheets[1]!;
    await expect(sheetToSvg(back)).toMatchFileSnapshot("../../golden/one-room-back.svg");
  });
});
