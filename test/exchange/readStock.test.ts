// A list of what is owned: every way a store may write it, and a sentence with the line for every fault.

import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readStock } from "../../src/exchange/stock/readStock.ts";
import { wholeCount } from "../../src/exchange/stock/wholeCount.ts";
import { demoKit } from "../../src/kit/demo.ts";

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (text: string) => readStock(bytes(text), demoKit);
const LIST = { W600x2250: 120, W450x2250: 12 };

const utf16 = (text: string, isLittle: boolean) =>
  Uint8Array.from(
    [...`\uFEFF${text}`].flatMap((sign) => {
      const code = sign.charCodeAt(0);
      const pair = [code & 255, code >> 8];
      return isLittle ? pair : pair.reverse();
    }),
  );

describe("a list that is taken", () => {
  it.each([
    { why: "commas", text: "code,quantity\nW600x2250,120\nW450x2250,12\n" },
    { why: "semicolons and a decimal comma", text: "código;cantidad\nW600x2250;120,0\nW450x2250;12,00\n" },
    { why: "tabs and a decimal point", text: "codigo\tqtd\r\nW600x2250\t120.0\r\nW450x2250\t12\r\n" },
    { why: "a byte order mark", text: "\uFEFFcode;qty\nW600x2250;120\nW450x2250;12" },
    { why: "quotes round everything", text: '"Code","Quantity"\n"W600x2250","120"\n"W450x2250","12"\n' },
    {
      why: "a line that names the separator",
      text: "sep=;\nPieza;Existencias\nW600x2250;120\nW450x2250;12\n",
    },
    {
      why: "titles before the head, a sum behind",
      text: "Inventory, May\n\nItem,Width,On hand\nW600x2250,600,120\nW450x2250,450,12\n,,132\n",
    },
    { why: "columns the other way round", text: "Quantidade;Peça\n120;W600x2250\n12;W450x2250\n" },
    { why: "no head at all", text: "W600x2250;panel;120\nW450x2250;panel;12\n" },
    { why: "a head that nobody knows", text: "Ding;Zahl\nW600x2250;120\nW450x2250;12\n" },
    {
      why: "codes found by what they are, the count by its name",
      text: "Panel;Ancho;Cant.\nW600x2250;600;120\nW450x2250;450;12\n",
    },
    {
      why: "a comma in another column",
      text: 'code,name,quantity\nW600x2250,"panel, 600",120\nW450x2250,"panel, 450",12\n',
    },
    {
      why: "thousands apart, by a space",
      text: "code;quantity\nW600x2250; 120 \nW450x2250;12\nPin;3 950\n",
      pins: 3950,
    },
    {
      why: "thousands apart, by dot and comma",
      text: "code;quantity\nW600x2250;120\nW450x2250;12\nPin;3.950,0\n",
      pins: 3950,
    },
    { why: "nothing owned of a piece", text: "code;quantity\nW600x2250;120\nW450x2250;12\nPin;0\n" },
  ])("$why", ({ text, pins }) => {
    expect(read(text)).toMatchObject({
      status: "ok",
      stock: { ...LIST, ...(pins !== undefined && { Pin: pins }) },
    });
    const answer = read(text);
    expect(Object.keys(answer.status === "ok" ? answer.stock : {})).toHaveLength(pins === undefined ? 2 : 3);
  });

  it.each([
    {
      why: "of western Europe",
      file: Uint8Array.from(
        [..."C\u00F3digo;Cantidad\nW600x2250;120\nW450x2250;12"].map((sign) => sign.charCodeAt(0)),
      ),
    },
    {
      why: "of two bytes, the low one first",
      file: utf16("Code\tQuantity\nW600x2250\t120\nW450x2250\t12", true),
    },
    {
      why: "of two bytes, the high one first",
      file: utf16("Code\tQuantity\nW600x2250\t120\nW450x2250\t12", false),
    },
  ])("letters $why", ({ file }) => {
    expect(readStock(file, demoKit)).toMatchObject({ status: "ok", stock: LIST });
  });

  it("is the same stock in the same order, whatever the order of its lines", () => {
    const lines = ["Pin;40", "W600x2250;120", "Corner150x2250;8", "Cap250x1200/1000;3", "W450x2250;12"];
    const taken = read(`code;quantity\n${lines.join("\n")}`);
    fc.assert(
      fc.property(fc.shuffledSubarray(lines, { minLength: lines.length }), (shuffled) => {
        const again = read(`code;quantity\n${shuffled.join("\n")}`);
        expect(JSON.stringify(again.status === "ok" && again.stock)).toBe(
          JSON.stringify(taken.status === "ok" && taken.stock),
        );
      }),
      { seed: 20_261_127, numRuns: 20 },
    );
    expect(taken).toMatchObject({ stock: { "Cap250x1200/1000": 3 } });
  });

  it("leaves out what the kit has not, and says which line that was", () => {
    const answer = read("code;quantity\nW600x2250;120\nzz;4\nw450X2250;2\n;9\nTotal;132\n__proto__;3\n");
    expect(answer).toMatchObject({ status: "ok", stock: { W600x2250: 120 }, lines: 1 });
    expect(answer.status === "ok" ? answer.remarks.map(({ message }) => message) : []).toEqual([
      'line 3: the kit has no piece "zz"; the line is left out',
      'line 4: the kit has no piece "w450X2250"; it has "W450x2250"; the line is left out',
      'line 5: "9" stands beside no code; the line is left out',
      'line 6: the kit has no piece "Total"; the line is left out',
      'line 7: the kit has no piece "__proto__"; the line is left out',
    ]);
  });

  it.each([
    {
      why: "a piece of another kit",
      first: "zz;4",
      says: 'line 1: the kit has no piece "zz"; the line is left out',
    },
    { why: "a head that nobody knows", first: "Ding;Zahl", says: null },
    { why: "an empty line", first: ";", says: null },
  ])("without a head, begins with the first line that counts something: $why", ({ first, says }) => {
    const answer = read(`${first}\nW600x2250;120\nW450x2250;12\n`);
    expect(answer).toMatchObject({ status: "ok", stock: LIST });
    expect(answer.status === "ok" ? answer.remarks.map(({ message }) => message) : null).toEqual(
      says === null ? [] : [says],
    );
  });
});

describe("a list that is refused", () => {
  it.each([
    {
      why: "negative",
      text: "code;quantity\nW600x2250;-3",
      says: 'line 2: "-3" of "W600x2250" is less than none',
    },
    {
      why: "a part of a piece",
      text: "code;quantity\n\nW600x2250;2,5",
      says: 'line 3: "2,5" of "W600x2250" is no whole number of pieces',
    },
    {
      why: "more than anybody owns",
      text: "code;quantity\nPin;1000001",
      says: 'line 2: "1000001" of "Pin" is more than 1000000',
    },
    {
      why: "a thousand or a fraction",
      text: "code;quantity\nPin;1.250",
      says: /line 2: "1\.250" of "Pin" may be a thousand or a fraction/,
    },
    {
      why: "a word",
      text: "code;quantity\nPin;many\nW600x2250;4",
      says: 'line 2: "many" of "Pin" is no number',
    },
    {
      why: "a formula as text",
      text: "code;quantity\nPin;=1+1\nW600x2250;4",
      says: /line 2: "=1\+1" of "Pin" is no number/,
    },
    { why: "nothing", text: "code;quantity\nPin;\nW600x2250;4", says: 'line 2: "Pin" has no number' },
    {
      why: "a code twice",
      text: "code;quantity\nPin;4\nW600x2250;1\nPin;5",
      says: /line 4: "Pin" stands on line 2 already/,
    },
    {
      why: "two columns of counts",
      text: "code;quantity;stock\nPin;4;5",
      says: /columns B, C are all named/,
    },
    {
      why: "two columns of numbers",
      text: "W600x2250;600;4\nW450x2250;450;5",
      says: /columns B, C all hold numbers/,
    },
    { why: "no counts", text: "code;name\nPin;pin\nWedge;wedge", says: /no column is named "quantity"/ },
    { why: "no code of the kit", text: "a;1\nb;2", says: /no column is named "code"/ },
    {
      why: "codes of another kit alone",
      text: "code;quantity\nA1;4\nA2;5",
      says: /no line names a piece of the kit/,
    },
    { why: "an open quote", text: 'code;quantity\n"Pin;4', says: /line 2: expected a closing quote/ },
    { why: "an empty file", text: "", says: /line 1: there is nothing in it/ },
    { why: "a picture", text: "\u0089PNG\u0000\u0000", says: /neither a table as text nor a workbook/ },
  ])("$why", ({ text, says }) => {
    const answer = read(text);
    if (answer.status !== "invalid") throw new Error(JSON.stringify(answer));
    if (typeof says === "string") expect(answer.issues.map(({ message }) => message)).toEqual([says]);
    else expect(answer.issues[0]!.message).toMatch(says);
  });

  it("says every fault, and no more than anybody reads", () => {
    const lines = demoKit.pieces.slice(0, 70).map(({ code }) => `${code};-1`);
    const answer = read(`code;quantity\n${lines.join("\n")}`);
    expect(answer).toMatchObject({ status: "invalid" });
    expect(answer.status === "invalid" && answer.issues.length).toBe(Math.min(50, lines.length));
  });

  it("is any file at all: none makes it throw", () => {
    fc.assert(
      fc.property(
        fc.uint8Array({ maxLength: 400 }),
        fc.constantFrom("", "PK\u0003\u0004", "code;quantity\n"),
        (tail, start) => {
          const file = Uint8Array.from([...bytes(start), ...tail]);
          expect(["ok", "invalid"]).toContain(readStock(file, demoKit).status);
        },
      ),
      { seed: 20_261_127, numRuns: 300 },
    );
  });
});

describe("a count", () => {
  it.each([
    { text: "0", count: 0 },
    { text: "007", count: 7 },
    { text: "+12", count: 12 },
    { text: "12.0", count: 12 },
    { text: "12,", status: "not-a-number" },
    { text: "1 250", count: 1250 },
    { text: "1\u00A0250", count: 1250 },
    { text: "1'250", count: 1250 },
    { text: "1.250.000", status: "huge" },
    { text: "1.000.000", count: 1_000_000 },
    { text: "1,000,000.00", count: 1_000_000 },
    { text: "1.25.000", status: "ambiguous" },
    { text: "1,25", status: "fractional" },
    { text: "−3", status: "negative" },
    { text: "1e3", status: "not-a-number" },
    { text: "(3)", status: "not-a-number" },
    { text: "0x10", status: "not-a-number" },
    { text: "12 pcs", status: "not-a-number" },
    { text: "1 2", status: "not-a-number" },
  ])("$text", ({ text, count, status = "count" }) => {
    const answer = wholeCount({ text, isNumber: false, isUnknown: false });
    expect(answer).toEqual(count === undefined ? { status } : { status, count });
  });
});

describe("workbooks of other programs", () => {
  const workbook = (name: string) =>
    readStock(new Uint8Array(readFileSync(new URL(`../data/stock/${name}.xlsx`, import.meta.url))), demoKit);

  it("with titles, prices, a hidden sheet before the list and an empty line in it", () => {
    expect(workbook("titled-list")).toEqual({
      status: "ok",
      stock: { W600x2250: 120, W450x2250: 44, Pin: 3950 },
      lines: 3,
      remarks: [expect.objectContaining({ line: 8, kind: "unknown-code" })],
    });
  });

  it("with texts shared between cells", () => {
    expect(workbook("plain-list")).toMatchObject({ stock: { W600x2250: 19, Corner150x2250: 8 } });
  });

  it("with a formula that nobody worked out: it is not taken for nothing", () => {
    expect(workbook("unworked-formula")).toMatchObject({
      status: "invalid",
      issues: [{ line: 2, kind: "unknown-formula" }],
    });
  });
});
