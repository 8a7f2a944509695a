// Which sheets are listed, which are ticked, what the file is called.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bundleName,
  carried,
  chosenKeys,
  sheetKeyOf,
  tickedOf,
  toggled,
  unlistedCount,
} from "../../../src/editor/sheets/choice.ts";
import {
  filterChoices,
  keptFilter,
  paperOf,
  rowsOf,
  type SheetEntry,
  type SheetList,
} from "../../../src/editor/sheets/sheetList.ts";
import type { SheetKind } from "../../../src/sheet/sheetSet.ts";
import { paperMm } from "../../../src/units.ts";

function sheet(set: string, kind: SheetKind, name: string, room: string | null = null): SheetEntry {
  const size = kind === "room" ? [297, 210] : [420, 297];
  return {
    key: sheetKeyOf(set, name),
    kind,
    title: room === null ? name.replace(/-p\d$/, "") : `Room sheet, ${room}`,
    room,
    width: paperMm(size[0]!),
    height: paperMm(size[1]!),
  };
}

function listOf(names: readonly string[]): Pick<SheetList, "sets"> {
  return {
    sets: names.map((name) => ({
      name,
      unit: name,
      clearHeight: null,
      isMirrored: false,
      pours: [],
      sheets: [
        sheet(name, "room", "kitchen-p1", "Kitchen"),
        sheet(name, "room", "kitchen-p2", "Kitchen"),
        sheet(name, "room", "bath", "Bath"),
        sheet(name, "bill", "bill"),
      ],
    })),
  };
}

const list = listOf(["a", "b"]);
const all = { kind: null, room: null };
const names = (keys: readonly string[]) => keys.join(" ");

describe("ticked sheets that a filter keeps from view", () => {
  const bills = rowsOf(list, { kind: "bill", room: null }).flatMap((row) =>
    row.kind === "sheet" ? row.keys : [],
  );
  it.each([
    { why: "none without a filter", leftOut: [], listed: chosenKeys(list, new Set()), count: 0 },
    { why: "all but those of the kind", leftOut: [], listed: bills, count: 6 },
    { why: "not those that are not ticked", leftOut: ["a/bath", "b/bath"], listed: bills, count: 4 },
    { why: "nothing listed", leftOut: [], listed: [], count: 8 },
  ])("are counted: $why", ({ leftOut, listed, count }) => {
    expect(unlistedCount(chosenKeys(list, new Set(leftOut)), listed)).toBe(count);
  });
});

describe("the rows of the list", () => {
  it.each([
    { why: "everything", filter: all, sheets: 8, groups: 6 },
    { why: "a kind, in every unit", filter: { kind: "bill", room: null }, sheets: 2, groups: 4 },
    {
      why: "a room, in every unit, both its pages",
      filter: { kind: null, room: "Kitchen" },
      sheets: 4,
      groups: 4,
    },
    {
      why: "what there is not: no empty group",
      filter: { kind: "bill", room: "Bath" },
      sheets: 0,
      groups: 0,
    },
  ] as const)("$why", ({ filter, sheets, groups }) => {
    const rows = rowsOf(list, filter);
    expect(rows.filter(({ kind }) => kind === "sheet")).toHaveLength(sheets);
    expect(rows.filter(({ kind }) => kind !== "sheet")).toHaveLength(groups);
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
  });

  it("stand for the sheets under them, and for no other", () => {
    const rows = rowsOf(list, all);
    expect(rows.slice(0, 4).map(({ id, keys }) => `${id}: ${names(keys)}`)).toEqual([
      "set a: a/kitchen-p1 a/kitchen-p2 a/bath a/bill",
      "kind a room: a/kitchen-p1 a/kitchen-p2 a/bath",
      "a/kitchen-p1: a/kitchen-p1",
      "a/kitchen-p2: a/kitchen-p2",
    ]);
  });

  it("count the pages of what has several", () => {
    const pages = rowsOf(list, { kind: null, room: "Kitchen" }).flatMap((row) =>
      row.kind === "sheet" ? [row.page] : [],
    );
    expect(pages.slice(0, 2)).toEqual([
      { number: 1, of: 2 },
      { number: 2, of: 2 },
    ]);
    const bath = rowsOf(list, { kind: null, room: "Bath" }).find(({ kind }) => kind === "sheet");
    expect(bath).toMatchObject({ page: null });
  });

  it("call a sheet by what the rows over it do not say", () => {
    const titled = (title: string) => ({ ...sheet("a", "elevations", title), title });
    const sheets = [
      titled("Panel plan, Heron, two rooms, mirrored"),
      titled("Bill"),
      titled("Plan, Heronry"),
    ];
    const set = { ...list.sets[0]!, unit: "Heron, two rooms", sheets };
    const labels = rowsOf({ sets: [set] }, all).flatMap((row) => (row.kind === "sheet" ? [row.label] : []));
    expect(labels).toEqual(["Panel plan", "Bill", "Plan, Heronry"]);
  });

  it("can be asked for by what there is, and lose what is gone", () => {
    expect(filterChoices(list)).toEqual({ kinds: ["room", "bill"], rooms: ["Kitchen", "Bath"] });
    const filter = { kind: "room", room: "Attic" } as const;
    expect(keptFilter(filter, list)).toEqual({ kind: "room", room: null });
    const kept = { kind: "room", room: "Bath" } as const;
    expect(keptFilter(kept, list)).toBe(kept);
  });
});

describe("the ticks", () => {
  it("of a group are all, some or none; ticking some ticks all", () => {
    const group = ["a/kitchen-p1", "a/kitchen-p2"];
    const none = new Set<string>();
    expect(tickedOf(group, none)).toBe("all");
    const one = toggled(["a/kitchen-p1"], none);
    expect(tickedOf(group, one)).toBe("some");
    expect(tickedOf(group, toggled(group, one))).toBe("all");
    expect(tickedOf(group, toggled(group, none))).toBe("none");
  });

  it("stay in the order of binding, whatever the order of ticking, and leave the others alone", () => {
    const every = chosenKeys(list, new Set());
    fc.assert(
      fc.property(fc.array(fc.subarray([...every]), { maxLength: 6 }), (steps) => {
        let leftOut: ReadonlySet<string> = new Set<string>();
        for (const keys of steps) {
          const before = new Set(leftOut);
          leftOut = toggled(keys, leftOut);
          for (const key of every) if (!keys.includes(key)) expect(leftOut.has(key)).toBe(before.has(key));
        }
        const chosen = chosenKeys(list, leftOut);
        expect(chosen).toEqual(every.filter((key) => chosen.includes(key)));
        expect(chosen).toHaveLength(every.length - leftOut.size);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it("stand on a sheet that is new", () => {
    const leftOut = toggled(["a/bill"], new Set());
    expect(names(chosenKeys(listOf(["a", "c"]), leftOut))).toContain("c/bill");
    expect(names(chosenKeys(listOf(["a", "c"]), leftOut))).not.toContain("a/bill");
  });
});

describe("the ticks when the sheets are made anew", () => {
  // On other paper the kitchen has another page, the bill has another name, and there is a unit more.
  const [a, ...others] = listOf(["a", "b", "c"]).sets;
  const after = {
    sets: [
      {
        ...a!,
        sheets: [
          ...a!.sheets.slice(0, 2),
          sheet("a", "room", "kitchen-p3", "Kitchen"),
          ...a!.sheets.slice(2, 3),
          sheet("a", "bill", "bill-p1"),
          sheet("a", "bill", "bill-p2"),
        ],
      },
      ...others,
    ],
  };
  it.each([
    { why: "all ticked: new pages too", out: [], left: [] },
    { why: "a kind left out stays out", out: ["a/bill"], left: ["a/bill-p1", "a/bill-p2"] },
    {
      why: "a room left out stays out",
      out: ["a/kitchen-p1", "a/kitchen-p2"],
      left: ["a/kitchen-p1", "a/kitchen-p2", "a/kitchen-p3"],
    },
    { why: "of a room left out in part, the new page comes", out: ["a/kitchen-p2"], left: ["a/kitchen-p2"] },
    { why: "the same in another unit says nothing", out: ["b/bill"], left: ["b/bill"] },
  ])("$why", ({ out, left }) => {
    const next = carried(new Set(out), list, after);
    const every = chosenKeys(after, new Set());
    expect(every.filter((key) => next.has(key))).toEqual(left);
  });
});

describe("the name of the file", () => {
  it.each([
    { why: "one sheet: its own", keys: ["a/bath"], name: "bath" },
    { why: "of one set: the set's, as the command line has it", keys: ["a/bath", "a/bill"], name: "a" },
    { why: "of several sets: the project's", keys: ["a/bath", "b/bath"], name: "Row" },
  ])("$why", ({ keys, name }) => {
    expect(bundleName(list, keys, "Row")).toBe(name);
  });
});

describe("the paper", () => {
  it.each([
    { width: 297, height: 210, paper: "A4" },
    { width: 420, height: 297, paper: "A3" },
    { width: 279.4, height: 215.9, paper: "Letter" },
    { width: 431.8, height: 279.4, paper: "Tabloid" },
    { width: 210, height: 297, paper: null },
  ])("of $width × $height is $paper", ({ width, height, paper }) => {
    expect(paperOf({ width: paperMm(width), height: paperMm(height) })).toBe(paper);
  });
});
