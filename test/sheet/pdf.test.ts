// The PDF, read back by another program: pages, texts and their places, lines to scale, and nothing left to chance.

import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
import { fontFiles } from "../../src/cli/fontFiles.ts";
import type { Mark, Sheet } from "../../src/sheet/mark.ts";
import { PAPERS } from "../../src/sheet/paper.ts";
import { subsetFont } from "../../src/sheet/pdf/subset.ts";
import { readTrueType } from "../../src/sheet/pdf/trueType.ts";
import { sheetsToPdf } from "../../src/sheet/pdf/write.ts";
import { plainText } from "../../src/sheet/plainText.ts";
import { roomSheets } from "../../src/sheet/roomSheet.ts";
import { paperMm } from "../../src/units.ts";
import { oneRoomFill, oneRoomInfo } from "../support/fixtureFill.ts";
import { HOSTILE_NAMES } from "../support/sheetFills.ts";

const fonts = await fontFiles();
const plain = { title: "Seven Kilns", author: "", language: "en", date: "" } as const;
const sheets = roomSheets(oneRoomFill(), oneRoomInfo());
const MM = 25.4 / 72;

async function read(bytes: Uint8Array) {
  const task = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 });
  const document = await task.promise;
  return { document, end: () => task.destroy() };
}

function sheet(...marks: readonly Mark[]): Sheet {
  const size = { width: paperMm(297), height: paperMm(210) };
  return { name: "a", ...size, title: "A", description: "", marks };
}

function text(words: string, members: Partial<Extract<Mark, { kind: "text" }>> = {}): Mark {
  const style = { height: 3.5, weight: 400, ink: "ink", anchor: "start" } as const;
  return { kind: "text", at: [20, 40], text: words, ...style, ...members };
}

/** Texts of a page in the order in which they were written, with their places in mm from above. */
async function textsOn(bytes: Uint8Array, number: number) {
  const { document, end } = await read(bytes);
  const page = await document.getPage(number);
  const { items } = await page.getTextContent({ disableNormalization: true });
  const height = page.view[3]! * MM;
  const texts = items.flatMap((item) =>
    "str" in item && item.str.trim() !== ""
      ? [
          {
            text: item.str,
            x: item.transform[4] * MM,
            y: height - item.transform[5] * MM,
            width: item.width * MM,
          },
        ]
      : [],
  );
  await end();
  return texts;
}

const solid = (words: string) => words.replace(/\s/g, "");

describe("a PDF of sheets", () => {
  const bytes = sheetsToPdf(sheets, fonts, plain);

  it("has one page for each sheet, as large as its paper", async () => {
    const { document, end } = await read(
      sheetsToPdf(
        [...sheets, ...Object.values(PAPERS).map((size) => ({ ...sheet(), ...size }))],
        fonts,
        plain,
      ),
    );
    const sizes: number[][] = [];
    for (let number = 1; number <= document.numPages; number++) {
      const [, , width, height] = (await document.getPage(number)).view;
      sizes.push([width! * MM, height! * MM]);
    }
    await end();
    expect(sizes).toHaveLength(sheets.length + 4);
    const papers = [
      [297, 210],
      [420, 297],
      [279.4, 215.9],
      [431.8, 279.4],
    ];
    papers.forEach(([width, height], index) => {
      expect(sizes[sheets.length + index]![0]).toBeCloseTo(width!, 3);
      expect(sizes[sheets.length + index]![1]).toBeCloseTo(height!, 3);
    });
  });

  it("lets every text be found", async () => {
    for (const [index, { marks }] of sheets.entries()) {
      const found = solid((await textsOn(bytes, index + 1)).map((item) => item.text).join(""));
      const drawn = marks.flatMap((mark) => (mark.kind === "text" ? [solid(plainText(mark.text))] : []));
      expect(found).toBe(drawn.join(""));
    }
  });

  it.each([
    { anchor: "start", x: 20 },
    { anchor: "middle", x: 100 },
    { anchor: "end", x: 250 },
  ] as const)("sets a text to its place: $anchor", async ({ anchor, x }) => {
    const mark = text("W600x2250", { at: [x, 77.7], anchor, height: 5, weight: 700 });
    const [found] = await textsOn(sheetsToPdf([sheet(mark)], fonts, plain), 1);
    const ends = { start: found!.x, middle: found!.x + found!.width / 2, end: found!.x + found!.width };
    expect(Math.abs(ends[anchor] - x)).toBeLessThan(0.02);
    expect(Math.abs(found!.y - 77.7)).toBeLessThan(0.02);
  });

  it.each([
    { piece: "A/n-in-2", width: 12, height: 45, why: "600 × 2250 at 1:50" },
    { piece: "A/s-in-1", width: 3, height: 45, why: "150 × 2250 at 1:50" },
  ])("draws $piece within 0.1 mm: $why", async ({ piece, width, height }) => {
    const mark = sheets.flatMap(({ marks }) => marks).find((some) => some.piece === piece)!;
    const { document, end } = await read(sheetsToPdf([sheet(mark)], fonts, plain));
    const { fnArray, argsArray } = await (await document.getPage(1)).getOperatorList();
    await end();
    const matrix: readonly number[] = argsArray[fnArray.indexOf(OPS.transform)];
    const [left, top, right, bottom]: readonly number[] = argsArray[fnArray.indexOf(OPS.constructPath)][2];
    expect(Math.abs((right! - left!) * matrix[0]! * MM - width)).toBeLessThan(0.05);
    expect(Math.abs((bottom! - top!) * -matrix[3]! * MM - height)).toBeLessThan(0.05);
  });

  it("clips a hatch to its box and nothing behind it", async () => {
    const hatch: Mark = {
      kind: "hatch",
      box: { x: 30, y: 40, width: 12.5, height: 8 },
      pattern: "lines",
      pitch: 1.6,
      weight: 0.5,
      ink: "ink",
    };
    const { document, end } = await read(sheetsToPdf([sheet(hatch, text("after"))], fonts, plain));
    const { fnArray, argsArray } = await (await document.getPage(1)).getOperatorList();
    await end();
    const clip = fnArray.indexOf(OPS.clip);
    const [left, top, right, bottom]: readonly number[] = argsArray[clip + 1][2];
    expect([left, top, right, bottom].map((value) => Math.round(value! * 100) / 100)).toEqual([
      30, 40, 42.5, 48,
    ]);
    const undone = fnArray.indexOf(OPS.restore, clip);
    expect(undone).toBeGreaterThan(clip);
    expect(fnArray.indexOf(OPS.beginText)).toBeGreaterThan(undone);
  });

  it("is the same bytes each time, and other bytes for another sheet", () => {
    expect(Buffer.compare(sheetsToPdf(sheets, fonts, plain), bytes)).toBe(0);
    const other = sheetsToPdf(sheets.slice(1), fonts, plain);
    expect(Buffer.from(other).toString("latin1")).not.toContain(/\/ID \[<(\w+)>/.exec(latin1(bytes))![1]);
  });

  it("holds no more of the typeface than it uses, under another name than the reserved one", () => {
    expect(bytes.length).toBeLessThan(150_000);
    expect(latin1(bytes)).not.toMatch(/Plex|IBM/);
  });

  it("is printed as large as it is drawn", () => {
    expect(latin1(bytes)).toContain("/PrintScaling /None");
  });
});

describe("what a PDF says of itself", () => {
  it.each([
    {
      why: "all of it",
      entries: { title: "Área (1) \\", author: "M. Ortega", date: "2026-02-17" },
      info: { Title: "Área (1) \\", Author: "M. Ortega", CreationDate: "D:20260217" },
    },
    {
      why: "nothing",
      entries: { title: "", author: " \u0000", date: "" },
      info: { Title: undefined, Author: undefined, CreationDate: undefined },
    },
    { why: "no date that is none", entries: { date: "(x) 2026" }, info: { CreationDate: undefined } },
  ])("$why", async ({ entries, info }) => {
    const { document, end } = await read(sheetsToPdf(sheets.slice(0, 1), fonts, { ...plain, ...entries }));
    const { info: found } = await document.getMetadata();
    const outline = await document.getOutline();
    await end();
    for (const [name, value] of Object.entries(info)) {
      expect((found as Readonly<Record<string, unknown>>)[name]).toBe(value);
    }
    expect(outline.map(({ title }) => title)).toEqual(["Room sheet, Bedroom 2"]);
  });
});

describe("hostile names", () => {
  it.each([...HOSTILE_NAMES, ") Tj ET (", ">] TJ", "endstream\nendobj", "厨房 Küche 🏠"])(
    "come out as the text they are: %j",
    async (name) => {
      const bytes = sheetsToPdf([{ ...sheet(text(name), text("after")), title: name }], fonts, {
        ...plain,
        title: name,
        author: name,
      });
      const found = (await textsOn(bytes, 1)).map((item) => item.text).join("");
      // The reader turns scripts that run from right to left into the order of reading: letters are compared, not order.
      expect([...solid(found)].sort()).toEqual([...solid(`${plainText(name)}after`)].sort());
    },
  );
});

describe("a subset of a font", () => {
  it.each(["Wall 600", "éñçãÅ", "½ × → ±"])(
    "of %j is a sound font with the outlines of the whole one",
    (words) => {
      for (const weight of [400, 600, 700] as const) {
        const whole = readTrueType(fonts[weight]);
        const glyphs = [...words].map((character) => whole.glyphOf(character.codePointAt(0)!));
        expect(glyphs).not.toContain(0);
        const bytes = subsetFont(
          whole,
          [0, ...glyphs].map((glyph) => ({ glyph, advance: 500 })),
        );
        expect(wordSum(bytes)).toBe(0xb1b0afba); // of a whole font: ISO/IEC 14496-22, table head
        const part = readTrueTypeWithoutMap(bytes);
        glyphs.forEach((glyph, index) => {
          // The bounds of an outline stand in its first ten bytes; parts of a composed one have other numbers.
          expect([...part(index + 1).slice(0, 10)]).toEqual([...whole.outlineOf(glyph).slice(0, 10)]);
        });
      }
    },
  );

  it("refuses what is no font", () => {
    expect(() => readTrueType(new Uint8Array(40))).toThrow(RangeError);
  });
});

const latin1 = (bytes: Uint8Array) => Buffer.from(bytes).toString("latin1");

function wordSum(bytes: Uint8Array): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let sum = 0;
  for (let at = 0; at < bytes.length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
  return sum;
}

/** Outlines of a font by its own long `loca`, read without the code under test. */
function readTrueTypeWithoutMap(bytes: Uint8Array): (glyph: number) => Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const place = (tag: string) => {
    for (let at = 12; at < 12 + 16 * view.getUint16(4); at += 16) {
      if (latin1(bytes.slice(at, at + 4)) === tag) return view.getUint32(at + 8);
    }
    throw new RangeError(tag);
  };
  const [loca, glyf] = [place("loca"), place("glyf")];
  return (glyph) => {
    const [from, to] = [view.getUint32(loca + 4 * glyph), view.getUint32(loca + 4 * glyph + 4)];
    return bytes.slice(glyf + from, glyf + to);
  };
}
