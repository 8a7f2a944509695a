import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { billCsv, sizeText } from "../../src/fill/billCsv.ts";
import { entryNames } from "../../src/fill/entryNames.ts";
import type { BillLine } from "../../src/fill/result.ts";
import type { Kit, Piece } from "../../src/kit/kit.ts";
import { fillDocument, unitEntry } from "../support/fillDocument.ts";
import { readCsv } from "../support/readCsv.ts";

const common = { mass: 1, price: null, standard: true, hand: null, stays: 0 } as const;
const P600: Piece = { ...common, code: "P600", family: "wall-panel", width: 600, height: 2250 };
const kit: Kit = { name: "Test", currency: null, pieces: [P600], rules: {} };
const line: BillLine = { code: "P600", family: "wall-panel", quantity: 12, mass: 356.4, area: 16.2 };

const HEADER = "unit,family,code,size_mm,quantity,mass_kg,area_m2";

const codeCell = (code: string) =>
  billCsv(fillDocument(unitEntry({ bill: [{ ...line, code }] })), kit)
    .slice(`${HEADER}\r\nA,wall-panel,`.length)
    .replace(/,,12,356\.4,16\.2\r\n$/, "");

describe("billCsv", () => {
  it("writes a header and one row a line, each ending in CR LF", () => {
    expect(billCsv(fillDocument(unitEntry({ bill: [line] })), kit)).toBe(
      `${HEADER}\r\nA,wall-panel,P600,600 x 2250,12,356.4,16.2\r\n`,
    );
  });

  it("writes the header alone where nothing is needed", () => {
    expect(billCsv(fillDocument(unitEntry()), kit)).toBe(`${HEADER}\r\n`);
  });

  it("gives every unit and storey a block of its own, in the order of the fill", () => {
    const fill = fillDocument(
      unitEntry({ bill: [line, { ...line, code: "Q" }] }),
      unitEntry({ unit: "B", bill: [line] }),
      unitEntry({ bill: [line] }),
    );
    expect(readCsv(billCsv(fill, kit)).map((row) => `${row[0]} ${row[2]}`)).toEqual([
      "unit code",
      "A P600",
      "A Q",
      "B P600",
      "A@2 P600",
    ]);
  });

  it("leaves the size empty where the kit does not know the code", () => {
    expect(readCsv(billCsv(fillDocument(unitEntry({ bill: [{ ...line, code: "X" }] })), kit))[1]![3]).toBe(
      "",
    );
  });

  it("rounds masses to 0.01 and areas to 0.0001, with a point and no exponent", () => {
    const bill = [{ ...line, quantity: 1200000, mass: 1234567.005, area: 0.00005 }];
    const row = readCsv(billCsv(fillDocument(unitEntry({ bill })), kit))[1]!;
    expect(row.slice(4)).toEqual(["1200000", "1234567.01", "0.0001"]);
  });

  // The signs that spreadsheets take for the start of a formula, as the OWASP page "CSV Injection" lists them.
  it.each([
    { why: "equals", code: "=1+1", cell: "'=1+1" },
    { why: "a call", code: '=HYPERLINK("x")', cell: `"'=HYPERLINK(""x"")"` },
    { why: "plus", code: "+1", cell: "'+1" },
    { why: "minus", code: "-1", cell: "'-1" },
    { why: "at", code: "@SUM(A1)", cell: "'@SUM(A1)" },
    { why: "tab", code: "\t=1", cell: "'\t=1" },
    { why: "carriage return", code: "\r=1", cell: `"'\r=1"` },
    { why: "line feed", code: "\n=1", cell: `"'\n=1"` },
    { why: "full-width equals", code: "\uFF1D1", cell: "'\uFF1D1" },
    { why: "a sign inside is harmless", code: "P-600=1", cell: "P-600=1" },
    { why: "a comma is quoted", code: "P,600", cell: '"P,600"' },
    { why: "a quote is doubled", code: '6"', cell: '"6"""' },
    { why: "an accent stays", code: "Painel à mão", cell: "Painel à mão" },
  ])("guards a cell: $why", ({ code, cell }) => {
    expect(codeCell(code)).toBe(cell);
  });

  it("guards the unit's name as well", () => {
    expect(billCsv(fillDocument(unitEntry({ unit: "=A1", bill: [line] })), kit)).toContain("\r\n'=A1,");
  });

  it("can be read back cell by cell, whatever the names", () => {
    const hostile = fc.string({ unit: fc.constantFrom("a", ",", '"', "\r", "\n", "=", " ", ";", "é") });
    fc.assert(
      fc.property(hostile, hostile, (unit, code) => {
        const rows = readCsv(billCsv(fillDocument(unitEntry({ unit, bill: [{ ...line, code }] })), kit));
        expect(rows.map((row) => row.length)).toEqual([7, 7]);
        expect([unit, `'${unit}`]).toContain(rows[1]![0]);
        expect([code, `'${code}`]).toContain(rows[1]![2]);
        expect(rows.flat().some((cell) => /^[=+\-@\t\r\n]/.test(cell))).toBe(false);
      }),
      { seed: 4_180, numRuns: 300 },
    );
  });
});

it.each<{ piece: Piece; size: string }>([
  { piece: P600, size: "600 x 2250" },
  { piece: { ...common, code: "", family: "stop-end", width: 100, height: 2250 }, size: "100 x 2250" },
  {
    piece: { ...common, code: "", family: "inside-corner", legs: [150, 100], height: 2250 },
    size: "150 + 100 x 2250",
  },
  { piece: { ...common, code: "", family: "outside-corner", length: 2250 }, size: "2250" },
  { piece: { ...common, code: "", family: "reveal-closure", width: 100, length: 900 }, size: "100 x 900" },
  {
    piece: { ...common, code: "", family: "reveal-corner", width: 100, legs: [90, 90] },
    size: "90 + 90 x 100",
  },
  {
    piece: { ...common, code: "", family: "wall-slab-connector", height: 150, depth: 140, length: 1200 },
    size: "150 x 140 x 1200",
  },
  {
    piece: {
      ...common,
      code: "",
      family: "connector-corner",
      turn: "inside",
      height: 150,
      depth: 140,
      legs: [300, 400],
    },
    size: "300 + 400 x 150 x 140",
  },
  { piece: { ...common, code: "", family: "slab-edge-cap", height: 250, length: 1200 }, size: "250 x 1200" },
  {
    piece: { ...common, code: "", family: "cap-corner", turn: "inside", height: 250, legs: [300, 400] },
    size: "300 + 400 x 250",
  },
  { piece: { ...common, code: "", family: "slab-panel", width: 600, length: 1200 }, size: "600 x 1200" },
  { piece: { ...common, code: "", family: "shoring-strip", width: 150, length: 1200 }, size: "150 x 1200" },
  {
    piece: { ...common, code: "", family: "prop", least: 2000, greatest: 3400, class: null },
    size: "2000 to 3400",
  },
  { piece: { ...common, code: "", family: "closure-strip", least: 10, greatest: 59 }, size: "10 to 59" },
  { piece: { ...common, code: "", family: "tie", length: 100 }, size: "100" },
  { piece: { ...common, code: "", family: "pin", length: null }, size: "" },
  { piece: { ...common, code: "", family: "brace", length: 2400 }, size: "2400" },
])("tells the size of a $piece.family as $size", ({ piece, size }) => {
  expect(sizeText(piece)).toBe(size);
});

it("numbers the storeys of a unit from the second on", () => {
  const units = ["A", "B", "A", "A", "B"].map((unit) => unitEntry({ unit }));
  expect(entryNames({ units })).toEqual(["A", "B", "A@2", "A@3", "B@2"]);
});
