// What must hold on every page of bill, packing list and accessory schedule, in every language and on both papers.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { accessorySheets } from "../../../src/sheet/lists/accessorySheet.ts";
import { billSheets } from "../../../src/sheet/lists/billSheet.ts";
import { packingOf } from "../../../src/sheet/lists/bundles.ts";
import { packingSheets } from "../../../src/sheet/lists/packingSheet.ts";
import { LIST_WORDS } from "../../../src/sheet/lists/words.ts";
import type { Sheet } from "../../../src/sheet/mark.ts";
import { sheetToSvg } from "../../../src/sheet/svg.ts";
import {
  HOSTILE_CODES,
  LANGUAGES,
  type Listed,
  listedHostile,
  listedHouses,
  listedSample,
} from "../../support/listFills.ts";
import { besideMarkup, outsidePaper, overlappingTexts } from "../../support/sheetClaims.ts";

const RUNS = { seed: 20_261_128, numRuns: 12, endOnFailure: true };
const SAMPLES = ["one-room", "two-bedroom", "row-of-three"];

function kinds({ unit, info }: Listed): readonly (readonly Sheet[])[] {
  return [billSheets(unit, info), packingSheets(unit, info), accessorySheets(unit, info)];
}

function texts(sheets: readonly Sheet[]): readonly string[] {
  return sheets.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));
}

function hold(listed: Listed): void {
  const { info } = listed;
  const words = LIST_WORDS[info.language];
  const names: string[] = [];
  for (const sheets of kinds(listed)) {
    expect(sheets.length).toBeGreaterThan(0);
    sheets.forEach((sheet, index) => {
      expect(outsidePaper(sheet, 9)).toEqual([]);
      expect(overlappingTexts(sheet)).toEqual([]);
      expect(sheet.name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      const written = texts([sheet]);
      const number = words.page(index + 1, sheets.length);
      if (sheets.length > 1) expect(written.some((text) => text.endsWith(number))).toBe(true);
      if (index > 0) expect(written).toContain(`${words.continued}, ${number}`);
      names.push(sheet.name);
    });
  }
  expect(new Set(names).size).toBe(names.length);
}

describe("the pages of the lists", () => {
  const cases = SAMPLES.flatMap((name) =>
    LANGUAGES.flatMap((language) => (["A4", "Letter"] as const).map((paper) => ({ name, language, paper }))),
  );
  it.each(cases)("$name, $language, $paper", ({ name, language, paper }) => {
    for (const { unit, info } of listedSample(name)) hold({ unit, info: { ...info, language, paper } });
  });

  it("of any house", () => {
    fc.assert(fc.property(listedHouses, hold), { ...RUNS, numRuns: 6 });
  });

  it("of any fill, whatever its names and codes", () => {
    fc.assert(fc.property(listedHostile, hold), RUNS);
  });
});

describe("the bill", () => {
  it("shows every code of the bill once, with its number", () => {
    for (const { unit, info } of listedSample("two-bedroom")) {
      const written = texts(billSheets(unit, info));
      for (const { code, quantity } of unit.bill) {
        const own = written.filter((text) => text === code || text.startsWith(`${code}, `));
        expect([code, own.length]).toEqual([code, 1]);
        expect(written).toContain(quantity > 9999 ? `${quantity}`.replace(/(\d{3})$/, " $1") : `${quantity}`);
      }
    }
  });

  it("counts the room worked out by hand as its example does", () => {
    const [{ unit, info }] = listedSample("one-room") as [Listed];
    const [sheet] = billSheets(unit, info);
    const marks = sheet!.marks.filter((mark) => mark.kind === "text");
    // The numbers on the line of a size: the first of them is the count.
    const countOf = (size: string) => {
      const [x, y] = marks.find((mark) => mark.text === size && mark.height === 3.5)!.at;
      const line = marks.filter((mark) => Math.abs(mark.at[1] - y) < 0.1 && mark.at[0] > x);
      return line
        .filter((mark) => mark.weight === 600 && mark.anchor === "end")
        .sort((a, b) => a.at[0] - b.at[0])[0]?.text;
    };
    const expected = {
      "600 × 2250": "32",
      "450 × 2250": "2",
      "300 × 2250": "6",
      "250 × 2250": "8",
      "150 × 2250": "2",
    };
    expect(Object.fromEntries(Object.keys(expected).map((size) => [size, countOf(size)]))).toEqual(expected);
    expect(countOf("150 + 150 × 2250")).toBe("4");
  });

  it("says what two people lift, or that nobody looked", () => {
    const [{ unit, info }] = listedSample("one-room") as [Listed];
    const words = LIST_WORDS.en;
    // 600 × 2250 at 22 kg/m² is 29.7 kg, over 25; nothing else of the room is.
    const strip = texts(billSheets(unit, info));
    expect(strip[strip.indexOf(words.twoPerson) - 1]).toBe("32");
    expect(texts(billSheets(unit, { ...info, personLimit: null }))).toContain(words.noLimit);
  });
});

describe("the packing list", () => {
  it("numbers every bundle once and says in which order they load", () => {
    for (const { unit, info } of listedSample("two-bedroom")) {
      const { bundles } = packingOf(unit, info);
      const written = packingSheets(unit, info).flatMap(({ marks }) =>
        marks.flatMap((mark) => (mark.kind === "text" && mark.ink === "paper" ? [mark.text] : [])),
      );
      expect([...new Set(written)]).toEqual(bundles.map(({ number }) => `${number}`));
      expect(texts(packingSheets(unit, info))).toContain(LIST_WORDS.en.loadOrder(bundles.length));
    }
  });

  it("tells a piece that is over the limit alone", () => {
    const [{ unit, info }] = listedSample("one-room") as [Listed];
    const heavy = {
      ...info,
      pieces: { ...info.pieces, W150x2250: { ...info.pieces.W150x2250!, mass: 700 } },
    };
    const told = texts(packingSheets(unit, heavy)).filter((text) => text === LIST_WORDS.en.overLimit("600"));
    expect(told).toHaveLength(2);
  });
});

describe("hostile codes", () => {
  it.each(HOSTILE_CODES)("cannot break a page: %j", (code) => {
    const [{ unit, info }] = listedSample("one-room") as [Listed];
    const coded = {
      ...unit,
      unit: code,
      rooms: unit.rooms.map((room) => ({ ...room, name: code })),
      bill: unit.bill.map((line) => (line.family === "pin" ? { ...line, code } : line)),
    };
    const told = { ...info, unitName: code, pours: [{ id: "p", name: code, mirror: false }] };
    hold({ unit: coded, info: told });
    for (const sheets of kinds({ unit: coded, info: told })) {
      for (const sheet of sheets) {
        expect(besideMarkup(sheetToSvg(sheet))).not.toMatch(/[<>&]/);
      }
    }
  });
});
