// The tables of packing list and accessories, read back by a reader that knows nothing of their writer.

import { describe, expect, it } from "vitest";
import { demoKit } from "../../../src/kit/demo.ts";
import { accessoriesCsv, listedEntries, packingCsv } from "../../../src/sheet/lists/listsCsv.ts";
import { HOSTILE_CODES } from "../../support/listFills.ts";
import { readCsv } from "../../support/readCsv.ts";
import { filled, sampleProject } from "../../support/samples.ts";

function entriesOf(name: string) {
  const project = sampleProject(name);
  return listedEntries({ fill: filled(project), project, kit: demoKit });
}

function records(text: string): readonly Readonly<Record<string, string>>[] {
  const [head, ...rows] = readCsv(text);
  return rows.map((row) => {
    expect(row).toHaveLength(head!.length);
    return Object.fromEntries(head!.map((name, index) => [name, row[index]!]));
  });
}

describe("packing.csv", () => {
  it.each(["two-bedroom", "row-of-three"])("of %s sums to the bill of every unit", (name) => {
    const entries = entriesOf(name);
    const rows = records(packingCsv(entries));
    for (const { name: unit, unit: fill } of entries) {
      for (const { code, quantity, mass } of fill.bill) {
        const own = rows.filter((row) => row.unit === unit && row.code === code);
        const sum = (column: string) => own.reduce((all, row) => all + Number(row[column]), 0);
        expect([code, sum("quantity")]).toEqual([code, quantity]);
        expect(Math.abs(sum("mass_kg") - mass)).toBeLessThan(0.01 * (own.length + 1)); // each row is rounded
      }
    }
  });

  it("loads in the opposite order to that of need", () => {
    const rows = records(packingCsv(entriesOf("one-room")));
    const last = Math.max(...rows.map((row) => Number(row.bundle)));
    for (const row of rows) expect(Number(row.bundle) + Number(row.load_order)).toBe(last + 1);
  });

  it("says the place of every row, and the room only of a room", () => {
    const rows = records(packingCsv(entriesOf("two-bedroom")));
    expect(new Set(rows.map((row) => row.place))).toEqual(new Set(["room", "outside", "shared"]));
    for (const row of rows) expect(row.room !== "").toBe(row.place === "room");
  });
});

describe("accessories.csv", () => {
  it("leaves the columns of the store open, and adds the spare to the need", () => {
    const rows = records(accessoriesCsv(entriesOf("two-bedroom")));
    expect(rows.length).toBeGreaterThan(5);
    for (const row of rows) {
      expect([row.issued, row.returned, row.lost]).toEqual(["", "", ""]);
      const isPanel = row.family === "wall-panel" || row.family === "slab-panel";
      expect(Number(row.issue)).toBe(Number(row.spare) + (isPanel ? 0 : Number(row.needed)));
    }
  });
});

describe("hostile codes in the tables", () => {
  it.each(HOSTILE_CODES)("stay one cell, and none begins a formula: %j", (code) => {
    const [entry] = entriesOf("one-room");
    const { unit } = entry!;
    const coded = {
      ...unit,
      rooms: unit.rooms.map((room) => ({ ...room, name: code })),
      bill: unit.bill.map((line) => (line.family === "pin" ? { ...line, code } : line)),
    };
    const entries = [{ ...entry!, name: code, unit: coded }];
    for (const rows of [records(packingCsv(entries)), records(accessoriesCsv(entries))]) {
      expect(rows.some((row) => row.code === code || row.code === `'${code}`)).toBe(true);
      for (const cell of rows.flatMap((row) => Object.values(row))) {
        // What spreadsheets take for the start of a formula, as the OWASP page "CSV Injection" lists it.
        expect(cell).not.toMatch(/^[=+\-@\t\r]/);
      }
    }
  });

  it("refuse the fill of another project", () => {
    const project = sampleProject("one-room");
    const fill = filled(sampleProject("two-bedroom"));
    expect(() => listedEntries({ fill, project, kit: demoKit })).toThrow(RangeError);
  });
});
