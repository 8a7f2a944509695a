// The code of a sheet: the hash against its published values, and what changes it and what does not.

import { describe, expect, it } from "vitest";
import { contentHash } from "../../src/sheet/contentHash.ts";
import type { Mark } from "../../src/sheet/mark.ts";
import { roomSheets } from "../../src/sheet/roomSheet.ts";
import { sheetIndexCsv } from "../../src/sheet/sheetIndex.ts";
import { sheetKey } from "../../src/sheet/sheetKey.ts";
import { oneRoomFill, oneRoomInfo } from "../support/fixtureFill.ts";

const line: Mark = { kind: "line", from: [1, 2], to: [3, 4], stroke: { weight: 0.35, ink: "ink" } };
const info = oneRoomInfo();

describe("the hash", () => {
  // Test values of the authors of the function, FNV-1a with 64 bits: draft-eastlake-fnv, appendix C.
  it.each([
    { text: "", hash: "CBF29CE484222325" },
    { text: "a", hash: "AF63DC4C8601EC8C" },
    { text: "foobar", hash: "85944171F73967E8" },
  ])('of "$text" is $hash', ({ text, hash }) => {
    expect(contentHash(text)).toBe(hash);
  });

  it.each(["é", "Küche", "厨房", "🏠 a\n"])(
    "is that of the UTF-8 bytes, worked out in whole numbers: %j",
    (text) => {
      let hash = 0xcbf29ce484222325n;
      for (const byte of Buffer.from(text)) hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n);
      expect(contentHash(text)).toBe(hash.toString(16).toUpperCase().padStart(16, "0"));
    },
  );
});

describe("the code", () => {
  const key = sheetKey(info, "a-01-bedroom-2", [line]);

  it("says form, sheet, revision and hash", () => {
    expect(key).toMatch(/^PW1:A-01-BEDROOM-2:B:[0-9A-F]{16}$/);
  });

  it.each([
    { why: "a mark moved by 0.01 mm", other: sheetKey(info, "a-01-bedroom-2", [{ ...line, to: [3, 4.01] }]) },
    { why: "a mark more", other: sheetKey(info, "a-01-bedroom-2", [line, line]) },
    { why: "another piece", other: sheetKey(info, "a-01-bedroom-2", [{ ...line, piece: "A/p1" }]) },
    { why: "another revision", other: sheetKey(oneRoomInfo({ revision: "C" }), "a-01-bedroom-2", [line]) },
    { why: "another sheet", other: sheetKey(info, "a-02-hall", [line]) },
    {
      why: "the other hand",
      other: sheetKey(oneRoomInfo({ pours: [{ id: "p", name: "", mirror: true }] }), "a-01-bedroom-2", [
        line,
      ]),
    },
    {
      why: "another storey",
      other: sheetKey(oneRoomInfo({ storey: { clearHeight: 2700, slab: 100 } }), "a-01-bedroom-2", [line]),
    },
  ])("is another after $why", ({ other }) => {
    expect(other).not.toBe(key);
    expect(other.slice(-16)).not.toBe(key.slice(-16));
  });

  it.each([
    { why: "another date", members: { date: "2026-03-01" } },
    { why: "a signature", members: { releasedBy: "M. Ortega" } },
  ])("stays the same after $why", ({ members }) => {
    expect(sheetKey(oneRoomInfo(members), "a-01-bedroom-2", [line])).toBe(key);
  });

  it.each([
    { name: "a".repeat(80), revision: "r".repeat(80) },
    { name: "", revision: "" },
    { name: "Küche <b>", revision: "::\u202e\n" },
  ])("is short and plain whatever the names: $name", ({ name, revision }) => {
    const long = sheetKey(oneRoomInfo({ revision, pours: [{ id: "p", name: "", mirror: true }] }), name, [
      line,
    ]);
    expect(long).toMatch(/^PW1:[A-Z0-9-]*:[A-Z0-9-]*:[0-9A-F]{16}$/);
    expect(long.length).toBeLessThanOrEqual(60);
  });
});

describe("the list of codes", () => {
  it("has a row for each sheet, and no cell that acts", () => {
    const [first] = roomSheets(oneRoomFill(), info);
    const rows = [
      { file: "a.pdf", page: 1, sheet: first! },
      { file: "a.pdf", page: 2, sheet: { ...first!, title: '=HYPERLINK("x"), "y"' } },
    ];
    const lines = sheetIndexCsv(rows, "B").split("\r\n");
    expect(lines[0]).toBe("file,page,title,revision,code");
    expect(lines[1]).toBe(`a.pdf,1,"Room sheet, Bedroom 2",B,${first!.key}`);
    expect(lines[2]).toBe(`a.pdf,2,"'=HYPERLINK(""x""), ""y""",B,${first!.key}`);
    expect(lines.slice(3)).toEqual([""]);
  });
});
