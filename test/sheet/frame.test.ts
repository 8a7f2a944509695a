// Frame and title block on every paper and in every language: nothing off the paper, nothing over another, sizes as
// the standards say, and the code readable where it stands.

import fc from "fast-check";
import jsQR from "jsqr";
import { describe, expect, it } from "vitest";
import type { Language } from "../../src/plan/project.ts";
import { grown, overlaps } from "../../src/sheet/box.ts";
import { type FrameEntries, frameOf } from "../../src/sheet/frame.ts";
import type { Mark, Sheet } from "../../src/sheet/mark.ts";
import { contentBox, largePaper, PAPERS, type PaperSize } from "../../src/sheet/paper.ts";
import { oneRoomInfo } from "../support/fixtureFill.ts";
import { markBounds, outsidePaper, overlappingTexts } from "../support/sheetClaims.ts";
import { HOSTILE_NAMES } from "../support/sheetFills.ts";

const SIZES = ["A4", "A3", "Letter", "Tabloid"] as const satisfies readonly PaperSize[];
const LANGUAGES = ["en", "es", "pt"] as const satisfies readonly Language[];
const KEY = "PW1:A-01-BEDROOM-2:B:85944171F73967E8";
const RUNS = { seed: 20_260_301, numRuns: 60, endOnFailure: true };

const names = fc.oneof(
  fc.string({ maxLength: 60 }),
  fc.constantFrom(...HOSTILE_NAMES),
  fc.constant("W".repeat(200)),
  fc.constant("Bloque de viviendas en la ladera norte del río, segunda etapa"),
);

const frames = fc
  .record({
    paper: fc.constantFrom(...SIZES),
    language: fc.constantFrom(...LANGUAGES),
    scale: fc.constantFrom("", "1:20", "1:25", "1:50", "1:100", "1:200", "1:500", "1:10000"),
    sheet: fc.integer({ min: 1, max: 99 }),
    hasKey: fc.boolean(),
    title: names,
    texts: fc.array(names, { minLength: 8, maxLength: 8 }),
    mirror: fc.array(fc.boolean(), { maxLength: 4 }),
  })
  .map(({ language, texts, mirror, sheet, hasKey, ...rest }) => {
    const [project = "", revision = "", document = "", date = "", madeBy = "", checkedBy = "", ...more] =
      texts;
    const pours = mirror.map((isMirrored, k) => ({
      id: `p${k}`,
      name: more[k % 2] ?? "",
      mirror: isMirrored,
    }));
    const people = { madeBy, checkedBy, releasedBy: more[0] ?? "" };
    const info = oneRoomInfo({ language, project, revision, document, date, ...people, pours });
    return { info, entries: { ...rest, sheet, sheets: 99, ...(hasKey ? { key: KEY } : {}) } };
  });

function framed(entries: Partial<FrameEntries> = {}, info = oneRoomInfo()) {
  return frameOf(info, { paper: "A4", title: "T", scale: "1:50", sheet: 1, sheets: 1, ...entries });
}

function asSheet({ width, height, marks }: ReturnType<typeof frameOf>): Sheet {
  return { name: "a", width, height, title: "", description: "", marks };
}

describe("a frame", () => {
  it("keeps its marks on the paper and its texts apart, on every paper, in every language", () => {
    fc.assert(
      fc.property(frames, ({ info, entries }) => {
        const sheet = asSheet(frameOf(info, entries));
        expect(outsidePaper(sheet, 9)).toEqual([]);
        expect(overlappingTexts(sheet)).toEqual([]);
      }),
      RUNS,
    );
  });

  it("draws nothing in the paper it gives away", () => {
    fc.assert(
      fc.property(frames, ({ info, entries }) => {
        const frame = frameOf(info, entries);
        const given = [frame.content, ...(frame.beside === null ? [] : [frame.beside])];
        // The outer frame goes round it all; its four lines are what counts.
        const marks = frame.marks.filter((mark) => !isOuterFrame(mark, frame));
        for (const box of given) {
          expect(marks.filter((mark) => overlaps(markBounds(mark), grown(box, -1e-6)))).toEqual([]);
        }
      }),
      RUNS,
    );
  });

  it.each([
    { paper: "A4", width: 297, height: 210, why: "ISO 216" },
    { paper: "A3", width: 420, height: 297, why: "ISO 216" },
    { paper: "Letter", width: 11 * 25.4, height: 8.5 * 25.4, why: "ANSI/ASME Y14.1, size A" },
    { paper: "Tabloid", width: 17 * 25.4, height: 11 * 25.4, why: "ANSI/ASME Y14.1, size B" },
  ] as const)("$paper is $width × $height: $why", ({ paper, width, height }) => {
    const frame = framed({ paper });
    expect(frame.width).toBeCloseTo(width, 9);
    expect(frame.height).toBeCloseTo(height, 9);
  });

  it.each(["A4", "Letter"] as const)("plans have twice the area of %s", (small) => {
    const area = (paper: PaperSize) => PAPERS[paper].width * PAPERS[paper].height;
    expect(area(largePaper(small)) / area(small)).toBeCloseTo(2, 6);
  });

  it.each(SIZES)("on %s leaves most of the paper to the sheet", (paper) => {
    const { width, height } = contentBox(paper);
    expect((width * height) / (PAPERS[paper].width * PAPERS[paper].height)).toBeGreaterThan(0.7);
  });

  it.each(SIZES)("on %s names the hand of the pours, however long their names", (paper) => {
    const name = "A very long name of a pour, longer than any cell of a title block would hold";
    const mirrored = oneRoomInfo({ pours: [{ id: "p1", name, mirror: true }] });
    expect(textsOf(framed({ paper }, mirrored).marks)).toContain("mirrored");
    const drawn = oneRoomInfo({ pours: [{ id: "p1", name, mirror: false }] });
    expect(textsOf(framed({ paper }, drawn).marks)).toContain("as drawn");
  });

  it.each([
    { count: 1, paper: "A4", label: "Pours", names: "Level 1", why: "its name fits" },
    { count: 2, paper: "A3", label: "Pours", names: "Level 1, Level 2", why: "both fit" },
    {
      count: 9,
      paper: "A3",
      label: "9 pours",
      names: "Level 1, Level 2 …",
      why: "27 mm of the 35 there are, a third would make 39",
    },
    { count: 9, paper: "A4", label: "9 pours", names: "Level 1 …", why: "14 mm of the 22 there are" },
  ] as const)("names $count pours on $paper as $label, $names: $why", ({ count, paper, label, names }) => {
    const pours = Array.from({ length: count }, (_, k) => ({
      id: `p${k}`,
      name: `Level ${k + 1}`,
      mirror: false,
    }));
    const texts = textsOf(framed({ paper, key: KEY }, oneRoomInfo({ pours })).marks);
    expect(texts).toContain(label);
    expect(texts).toContain(names);
  });

  it.each([
    { paper: "A4", scale: "1:50", text: "1 m", why: "20 mm on paper" },
    { paper: "A4", scale: "1:25", text: "500 mm", why: "20 mm on paper" },
    { paper: "A4", scale: "1:200", text: "4 m", why: "20 mm on paper" },
    { paper: "A3", scale: "1:50", text: "5", why: "100 mm on paper" },
    { paper: "Tabloid", scale: "1:100", text: "10", why: "100 mm on paper" },
  ] as const)("carries a bar of $text at $scale on $paper: $why", ({ paper, scale, text, why }) => {
    const { marks } = framed({ paper, scale });
    expect(textsOf(marks)).toContain(text);
    const bars = marks.flatMap((mark) =>
      mark.kind === "rect" && Math.abs(mark.box.height - 1.2) < 1e-9 ? [mark.box] : [],
    );
    expect(bars.reduce((sum, bar) => sum + bar.width, 0)).toBeCloseTo(Number.parseInt(why, 10), 9);
  });

  it("has no bar where nothing is to scale", () => {
    const bars = framed({ scale: "" }).marks.filter(
      (mark) => mark.kind === "rect" && Math.abs(mark.box.height - 1.2) < 1e-9,
    );
    expect(bars).toEqual([]);
  });

  it("gives the level of the slab over the floor on large paper: 2400 clear and a slab of 100", () => {
    expect(textsOf(framed({ paper: "A3" }).marks)).toContain("+2.500");
  });
});

describe("the code on a sheet", () => {
  it.each(SIZES)("is read on %s by another program", (paper) => {
    expect(decoded(framed({ paper, key: KEY }))).toBe(KEY);
  });

  it("is read whatever it says", () => {
    const keys = fc.string({ unit: fc.constantFrom(..."ABCXYZ0189:-"), minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(keys, (key) => {
        expect(decoded(framed({ key }))).toBe(key);
      }),
      { ...RUNS, numRuns: 25 },
    );
  });

  it.each([
    { paper: "A4", least: 0.44 },
    { paper: "A3", least: 0.8 },
  ] as const)("has modules of at least $least mm on $paper", ({ paper, least }) => {
    const longest = "W".repeat(60);
    const heights = codeMarks(framed({ paper, key: longest })).map(({ height }) => height);
    expect(Math.min(...heights)).toBeGreaterThan(least);
  });
});

function isOuterFrame(mark: Mark, { width }: { readonly width: number }): boolean {
  return mark.kind === "rect" && mark.box.width > width - 31 && mark.box.height > 100;
}

function textsOf(marks: readonly Mark[]): readonly string[] {
  return marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
}

/** The dark modules: rectangles without an outline. */
function codeMarks({ marks }: { readonly marks: readonly Mark[] }) {
  return marks.flatMap((mark) => (mark.kind === "rect" && mark.stroke === undefined ? [mark.box] : []));
}

/** What a reader makes of the frame as it is printed at 0.1 mm, everything on it included. */
function decoded(frame: ReturnType<typeof frameOf>): string | undefined {
  const side = 40;
  const boxes = frame.marks.flatMap((mark) => {
    if (mark.kind === "text") return []; // letters are no more than noise to it
    return mark.kind === "rect" && mark.stroke !== undefined ? [] : [markBounds(mark)];
  });
  const pixels = side * 10;
  const data = new Uint8ClampedArray(pixels * pixels * 4).fill(255);
  const [left, top] = [frame.width - side, frame.height - side - 5];
  const pixel = (at: number) => Math.min(pixels, Math.max(0, Math.ceil(at * 10 - 0.5)));
  for (const box of boxes) {
    const [from, to] = [pixel(box.x - left), pixel(box.x + box.width - left)];
    for (let y = pixel(box.y - top); y < pixel(box.y + box.height - top); y++) {
      for (let x = from; x < to; x++) data.fill(0, 4 * (y * pixels + x), 4 * (y * pixels + x) + 3);
    }
  }
  return jsQR(data, pixels, pixels)?.data;
}
