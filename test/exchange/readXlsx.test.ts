// Workbooks packed by hand: what a cell may be, and files made to be a nuisance.

import { strToU8, type Zippable, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { readXlsx } from "../../src/exchange/xlsx/readXlsx.ts";
import { XmlFault, xmlTokens } from "../../src/exchange/xlsx/xmlTags.ts";

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** A workbook of one sheet whose rows are these; parts can be changed or, as null, taken away. */
function workbook(rows: string, change: { readonly [path: string]: string | null } = {}): Uint8Array {
  const parts: { [path: string]: string | null } = {
    "_rels/.rels": `<Relationships><Relationship Id="r1" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `<workbook xmlns:r="${OFFICE}"><sheets><sheet name="A" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships><Relationship Id="rId1" Type="${OFFICE}/worksheet" Target="/xl/worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${OFFICE}/sharedStrings" Target="sharedStrings.xml"/></Relationships>`,
    "xl/worksheets/sheet1.xml": `<?xml version="1.0"?><worksheet><sheetData>${rows}</sheetData></worksheet>`,
    "xl/sharedStrings.xml":
      '<sst><si><t>Pin</t></si><si><r><t>W600</t></r><r><t xml:space="preserve">x2250</t></r><rPh><t>no</t></rPh></si></sst>',
    ...change,
  };
  const files: Zippable = {};
  for (const [path, text] of Object.entries(parts)) if (text !== null) files[path] = strToU8(text);
  return zipSync(files);
}

function texts(file: Uint8Array): readonly (readonly [number, ...(string | null)[]])[] {
  const answer = readXlsx(file);
  if (answer.status !== "ok") throw new Error(answer.reason);
  return answer.rows.map(({ line, cells }) => [line, ...Array.from(cells, (cell) => cell?.text ?? null)]);
}

describe("the cells of a workbook", () => {
  it.each([
    {
      why: "shared, in one piece and in several",
      rows: '<row r="2"><c r="A2" t="s"><v>0</v></c><c r="B2" t="s"><v>1</v></c></row>',
      are: [[2, "Pin", "W600x2250"]],
    },
    {
      why: "written in the cell",
      rows: '<row r="1"><c r="A1" t="inlineStr"><is><t>A &amp; B&#233;&#xE9;</t></is></c></row>',
      are: [[1, "A & Béé"]],
    },
    {
      why: "numbers and worked out formulas",
      rows: '<row r="1"><c r="A1"><v>12</v></c><c r="B1"><f>6+6</f><v>12</v></c></row>',
      are: [[1, "12", "12"]],
    },
    {
      why: "rows and columns left out",
      rows: '<row r="3"><c r="C3"><v>1</v></c></row><row r="7"/>',
      are: [[3, null, null, "1"], [7]],
    },
    {
      why: "nowhere said where they stand",
      rows: "<row><c><v>1</v></c><c><v>2</v></c></row><row><c><v>3</v></c></row>",
      are: [
        [1, "1", "2"],
        [2, "3"],
      ],
    },
    {
      why: "with a prefix to every name",
      rows: '<x:row r="1"><x:c r="A1"><x:v>5</x:v></x:c></x:row>',
      are: [[1, "5"]],
    },
    {
      why: "in a section of plain text",
      rows: '<row r="1"><c r="A1" t="str"><v><![CDATA[<b>&]]></v></c></row>',
      are: [[1, "<b>&"]],
    },
  ])("$why", ({ rows, are }) => {
    expect(texts(workbook(rows))).toEqual(are);
  });
});

describe("a workbook that is refused", () => {
  const row = '<row r="1"><c r="A1"><v>1</v></c></row>';
  it.each([
    { why: "no archive", file: strToU8("PK no"), says: "no whole archive" },
    { why: "cut off", file: workbook(row).slice(0, 300), says: "no whole archive" },
    {
      why: "another kind of archive",
      file: zipSync({ "a.txt": strToU8("a") }),
      says: 'no part "_rels/.rels"',
    },
    { why: "no sheet", file: workbook(row, { "xl/worksheets/sheet1.xml": null }), says: "no part" },
    {
      why: "hidden sheets alone",
      file: workbook(row, { "xl/workbook.xml": '<workbook><sheet state="hidden" r:id="rId1"/></workbook>' }),
      says: "no sheet that can be seen",
    },
    {
      why: "a document type",
      file: workbook(row, { "xl/workbook.xml": '<!DOCTYPE a [<!ENTITY b "bb">]><workbook/>' }),
      says: "a document type",
    },
    {
      why: "an entity of its own",
      file: workbook('<row r="1"><c r="A1" t="str"><v>&big;</v></c></row>'),
      says: 'unknown entity "big"',
    },
    {
      why: "a text that is not there",
      file: workbook('<row r="1"><c r="A1" t="s"><v>9</v></c></row>'),
      says: "a place",
    },
    { why: "a row beyond the last", file: workbook('<row r="99999999"/>'), says: "that no sheet has" },
    { why: "a row again", file: workbook('<row r="2"/><row r="2"/>'), says: "out of order" },
    { why: "a cell nowhere", file: workbook('<row r="1"><c r="1A"><v>1</v></c></row>'), says: 'a cell "1A"' },
    { why: "broken tags", file: workbook("<row>"), says: "that was not begun" },
    {
      why: "tags without end",
      file: workbook("<row r='1'".concat("<a>".repeat(100))),
      says: "no end of the tag",
    },
    { why: "deeper than any", file: workbook("<a>".repeat(200) + "</a>".repeat(200)), says: "without end" },
    {
      why: "small packed, large unpacked",
      file: workbook(" ".repeat(64_000_001)),
      says: "unpacks to more than 64 MB",
    },
  ])("$why", ({ file, says }) => {
    const answer = readXlsx(file);
    expect(answer.status).toBe("broken");
    expect(answer.status === "broken" && answer.reason).toContain(says);
  });
});

describe("the tags of a document", () => {
  it("come in order, with their attributes and texts", () => {
    expect([...xmlTokens("<?xml?><a b='1' c:d=\"&lt;\">x<!-- y --><e/></a>")]).toEqual([
      {
        kind: "open",
        name: "a",
        attributes: new Map([
          ["b", "1"],
          ["c:d", "<"],
        ]),
      },
      { kind: "text", text: "x" },
      { kind: "open", name: "e", attributes: new Map() },
      { kind: "close", name: "e" },
      { kind: "close", name: "a" },
    ]);
  });

  it.each(["<a", "<a></b>", "a", "<a>&", "<a b=1/>", "<a><", "<!-- x", "<a>&#1114112;</a>", "</a>"])(
    "%s is none",
    (text) => {
      expect(() => [...xmlTokens(text)]).toThrow(XmlFault);
    },
  );
});
