import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { demoKit } from "../../src/kit/demo.ts";
import { kitCsv, readKitCsv } from "../../src/kit/kitCsv.ts";
import { COLUMNS, columnsOf, kitToRows, rowOf, rowsToKit } from "../../src/kit/kitRows.ts";
import { anyKit } from "../support/kitArbitrary.ts";

const HEAD = COLUMNS.join(",");
const KIT = "kit,mine";
/** A table with one piece whose cells are given by column. */
function table(cells: Record<string, string>): string {
  const line = COLUMNS.map((column) => cells[column] ?? "").join(",");
  return `${HEAD}\r\n${KIT}\r\n${line}\r\n`;
}
const PANEL = { record: "piece", name: "P", family: "wall-panel", mass: "30", width: "600", height: "2250" };

describe("a kit as CSV", () => {
  it("comes back as it was", () => {
    fc.assert(
      fc.property(anyKit, (kit) => {
        expect(readKitCsv(kitCsv(kit))).toMatchObject({ status: "ok", kit });
      }),
      { seed: 90210, numRuns: 300 },
    );
    expect(readKitCsv(kitCsv(demoKit))).toMatchObject({ status: "ok", kit: demoKit });
  });

  it("comes back with hostile names, and no cell begins as a formula does", () => {
    const name = fc
      .array(fc.constantFrom("=", "+", "-", "@", "'", '"', ",", ";", " ", "a", "1", "＝"), {
        minLength: 1,
        maxLength: 8,
      })
      .map((signs) => signs.join(""));
    fc.assert(
      fc.property(name, name, (code, kitName) => {
        const kit = { ...demoKit, name: kitName, pieces: [{ ...demoKit.pieces[0]!, code }] };
        const text = kitCsv(kit);
        expect(readKitCsv(text)).toMatchObject({ status: "ok", kit });
        const [, quoted, bare] = /^piece,(?:"((?:[^"]|"")*)"|([^,]*)),wall/m.exec(text) ?? [];
        expect(quoted ?? bare).toMatch(/^[^=+\-@＝]/);
      }),
      { seed: 90211, numRuns: 300 },
    );
  });

  it.each([
    {
      why: "semicolons and decimal commas, as Spanish and Portuguese spreadsheets write",
      from: /,/g,
      to: ";",
    },
    { why: "tabs", from: /,/g, to: "\t" },
    { why: "bare line feeds", from: /\r\n/g, to: "\n" },
    { why: "carriage returns alone", from: /\r\n/g, to: "\r" },
    { why: "a byte order mark", from: /^/, to: "\uFEFF" },
    { why: "no line end after the last line", from: /\r\n$/, to: "" },
    { why: "empty lines", from: /\r\n/g, to: "\r\n\r\n" },
  ])("is read with $why", ({ from, to }) => {
    const text = table({ ...PANEL, mass: "33.5" }).replace(from, to);
    const local = to === ";" ? text.replace("33.5", "33,5") : text;
    expect(readKitCsv(local)).toMatchObject({
      status: "ok",
      kit: { name: "mine", pieces: [{ code: "P", width: 600, mass: 33.5 }] },
    });
  });

  it("is read with its columns in another order and some left out", () => {
    const text = "family,mass,height,width,name,record\n,,,,mine,kit\nwall-panel,30,2250,600,P,piece\n";
    expect(readKitCsv(text)).toMatchObject({ status: "ok", kit: { pieces: [{ code: "P", width: 600 }] } });
  });

  it.each([
    { why: "no number", cells: { width: "wide" }, column: "width", expected: /whole number from 1 to 20000/ },
    { why: "a fraction", cells: { width: "600.5" }, column: "width", expected: /whole number/ },
    { why: "nothing where a size is due", cells: { height: "" }, column: "height", expected: /whole number/ },
    { why: "an unknown family", cells: { family: "wall" }, column: "family", expected: /wall-panel/ },
    { why: "a cell no wall panel has", cells: { depth: "9" }, column: "depth", expected: /nothing/ },
    {
      why: "a class no prop has",
      cells: { family: "prop", width: "", height: "", least: "2000", greatest: "3500", class: "F" },
      column: "class",
      expected: /"D" or "E"/,
    },
    { why: "no yes or no", cells: { standard: "si" }, column: "standard", expected: /true or false/ },
    { why: "an unknown record", cells: { record: "part" }, column: "record", expected: /kit, piece or rule/ },
    { why: "a code left out", cells: { name: "" }, column: "name", expected: /a code/ },
  ])("names the cell with $why", ({ cells, column, expected }) => {
    const answer = readKitCsv(table({ ...PANEL, ...cells }));
    expect(answer.status).toBe("invalid");
    if (answer.status !== "invalid") return;
    expect(answer.issues.map(({ line, column }) => [line, column])).toContainEqual([3, column]);
    expect(answer.issues.find((issue) => issue.column === column)?.expected).toMatch(expected);
    expect(answer.rows).toHaveLength(2);
  });

  it.each([
    { why: "nothing", text: "" },
    { why: "an open quote", text: `${HEAD}\n"kit` },
    { why: "signs after a closing quote", text: `${HEAD}\n"kit"x,mine` },
    { why: "a column that means nothing", text: "record,name,colour\nkit,mine,red\n" },
    { why: "a column named twice", text: "record,name,name\nkit,mine,mine\n" },
    { why: "no row for the kit", text: `${HEAD}\n` },
    { why: "two rows for the kit", text: `${HEAD}\n${KIT}\n${KIT}\n` },
    { why: "a rule that is none", text: `${HEAD}\n${KIT}\nrule,__proto__\n` },
    {
      why: "a rule given twice",
      text: `${HEAD}\n${KIT}\n${"rule,tieEdge,,,,,,,,,,,,,,,,,5,mm,x\n".repeat(2)}`,
    },
    { why: "more cells than columns", text: `record,name\nkit,mine,EUR\n` },
  ])("is refused with $why, line and reason told", ({ text }) => {
    const answer = readKitCsv(text);
    expect(answer.status).toBe("invalid");
    if (answer.status === "invalid") expect(answer.issues.length).toBeGreaterThan(0);
  });

  it("is never a reason to throw, whatever the text", () => {
    const scrap = fc.array(
      fc.constantFrom(HEAD, "kit", "piece", ",", '"', "\n", "\r", ";", "rule,holes", "1e999"),
      {
        maxLength: 30,
      },
    );
    fc.assert(
      fc.property(scrap, fc.string(), (parts, text) => {
        expect(["ok", "invalid"]).toContain(readKitCsv(parts.join("") + text).status);
      }),
      { seed: 90212, numRuns: 400 },
    );
  });
});

describe("the rows of a kit", () => {
  it("keep what is typed and name only its cell", () => {
    const rows = kitToRows(demoKit);
    const row = rows.findIndex(({ family }) => family === "wall-panel");
    const spoiled = rows.with(row, { ...rows[row]!, width: "six" });
    const answer = rowsToKit(spoiled);
    expect(answer).toMatchObject({ status: "invalid", issues: [{ row, column: "width" }] });
  });

  it("give each leg its own cell", () => {
    const rows = kitToRows(demoKit);
    const row = rows.findIndex(({ family }) => family === "inside-corner");
    const answer = rowsToKit(rows.with(row, { ...rows[row]!, leg_right: "0" }));
    expect(answer).toMatchObject({ status: "invalid", issues: [{ row, column: "leg_right" }] });
  });

  it("say a second code where it stands", () => {
    const rows = kitToRows(demoKit);
    const answer = rowsToKit([...rows, rows[1]!]);
    expect(answer).toMatchObject({ status: "invalid", issues: [{ row: rows.length, column: "name" }] });
  });

  it("know which cells belong to a family", () => {
    const tie = columnsOf(rowOf({ record: "piece", family: "tie" }));
    expect(tie).toContain("length");
    expect(tie).not.toContain("width");
  });
});
