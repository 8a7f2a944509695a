// One full calculation sheet, gone through by an independent hand that reads the paper and the project file alone: every
// figure it works out again comes out as printed, and it notices whichever of them is changed.

import { describe, expect, it, vi } from "vitest";
import { sheetToSvg } from "../../src/sheet/svg.ts";
import { CONCRETE, calculated, ratedKit, toldProject } from "../support/calculated.ts";
import { newBook, type Told } from "../support/colleague/book.ts";
import { goThrough } from "../support/colleague/colleague.ts";
import { type ReadLine, readLines } from "../support/sheetReading.ts";

// A busy machine takes its time over many beams, and that is no fault of theirs.
vi.setConfig({ testTimeout: 120_000 });

const project = toldProject("two-bedroom");
const FULL = /What every row of ties carries|rules side by side|Shoring step by step/;
const lines = readLines(
  calculated({ project }).sheets.map((sheet) => sheetToSvg(sheet)),
  { isFull: (svg) => FULL.test(svg), foot: "This is a planning aid" },
);
const { clearHeight, slab } = project.storey;
const told: Told = {
  height: (clearHeight + slab) / 1000,
  density: 25,
  rate: CONCRETE.rate,
  temperature: CONCRETE.temperature,
  tieLimit: ratedKit.rules.tieLoad!.value,
  slab: slab / 1000,
  service: CONCRETE.serviceLoad,
  strength: CONCRETE.cylinderStrength,
  strikeAt: CONCRETE.strikeAt,
  log: CONCRETE.log,
  personLimit: ratedKit.rules.personLimit!.value,
  propPitch: ratedKit.rules.propPitch!.value,
};

const first = newBook();
goThrough(lines, told, first);

describe("a colleague's hand", () => {
  it("comes to every figure that it works out", () => {
    expect(first.faults).toEqual([]);
  });

  it("works out every row of the tables and every line of figures", () => {
    expect(first.seen.size).toBeGreaterThan(900);
  });

  it("notices any figure that is changed", () => {
    const cells = [...first.seen];
    // One in nine, so that every table has some: each takes a walk through the whole sheet.
    const chosen = cells.filter((_, index) => index % 9 === 0);
    const missed = chosen.filter((cell) => {
      const text = spoiled(cell.text);
      const changed = lines.map((line): ReadLine => {
        if (!line.cells.includes(cell)) return line;
        return { ...line, cells: line.cells.map((each) => (each === cell ? { ...cell, text } : each)) };
      });
      const book = newBook(first.known);
      goThrough(changed, told, book);
      return book.faults.length === 0;
    });
    expect(missed.map(({ text }) => text)).toEqual([]);
  });
});

/** The text with its last figure a tenth greater, and 0.1 at least, in as many digits. */
function spoiled(text: string): string {
  return text.replace(/\d[\d ]*(?:\.\d+)?(?=[^\d]*(?: \(\d+\))?$)/, (figure) => {
    const decimals = /\.(\d+)/.exec(figure)?.[1]?.length ?? 0;
    const value = Number(figure.replaceAll(" ", ""));
    return Math.max(value * 1.1, value + 3 * 10 ** -decimals).toFixed(decimals);
  });
}
