// The list of checks: nothing is lost by gathering and filtering, the worst comes first, and keys walk it.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CheckStatus } from "../../../src/assess/checkDocument.ts";
import type { CheckRow } from "../../../src/editor/checks/checkList.ts";
import {
  byWorst,
  countsOf,
  filtered,
  groupsOf,
  keptFilter,
  type Line,
  linesOf,
  NO_FILTER,
  opens,
  walked,
} from "../../../src/editor/checks/gather.ts";

interface Given extends Partial<CheckRow> {
  readonly room?: string;
  readonly on?: string;
}

let last = 0;
function row({ room = "", on = "A", ...given }: Given = {}): CheckRow {
  last += 1;
  return {
    id: `check ${last}`,
    index: last,
    kind: "tie-load",
    where: { unit: on, room, piece: "", code: "", at: null },
    walls: "",
    value: 1,
    limit: 2,
    utilisation: 0.5,
    unit: "kN",
    status: "within",
    ...given,
  };
}

const statuses: readonly CheckStatus[] = ["over", "within", "not-checked", "not-applicable"];
const arbitraryRow = fc
  .record({
    kind: fc.constantFrom("tie-load", "prop-load", "lift"),
    on: fc.constantFrom("A", "B"),
    room: fc.constantFrom("", "Hall", "Bath"),
    walls: fc.constantFrom("", "w1", "w2", "w1+w3"),
    status: fc.constantFrom(...statuses),
    utilisation: fc.option(fc.double({ min: 0, max: 3, noNaN: true })),
    value: fc.option(fc.double({ min: 0, max: 90, noNaN: true })),
  })
  .map((given) => row(given));
const rows = fc.array(arbitraryRow, { maxLength: 80 });

function allOpen(groups: ReturnType<typeof groupsOf>): readonly Line[] {
  const open = new Set<string>();
  for (let k = 0; k < 3; k++) for (const line of linesOf(groups, open)) if (opens(line)) open.add(line.id);
  return linesOf(groups, open);
}

describe("the list of checks", () => {
  it("shows every check once when all of it is open, under its own kind and unit", () => {
    fc.assert(
      fc.property(rows, (given) => {
        const lines = allOpen(groupsOf(given));
        const leaves = lines.filter((line) => !opens(line));
        expect(leaves.flatMap((line) => line.rows.map(({ id }) => id)).sort()).toEqual(
          given.map(({ id }) => id).sort(),
        );
        expect(new Set(lines.map(({ id }) => id)).size).toBe(lines.length);
        for (const line of lines) {
          const above = line.under === "" ? null : lines.find(({ id }) => id === line.under);
          expect(above === undefined).toBe(false);
          if (above != null) for (const each of line.rows) expect(above.rows).toContain(each);
        }
      }),
      { seed: 5 },
    );
  });

  it("has the worst first on every level, and at the head of every line", () => {
    fc.assert(
      fc.property(rows, (given) => {
        const lines = allOpen(groupsOf(given));
        for (const line of lines) {
          expect(line.rows.toSorted(byWorst)).toEqual(line.rows);
          const next = lines.find(({ under, place }) => under === line.under && place === line.place + 1);
          if (next !== undefined && line.under === next.under && line.place < next.place)
            expect(byWorst(line.rows[0]!, next.rows[0]!)).toBeLessThanOrEqual(0);
        }
      }),
      { seed: 6 },
    );
  });

  it("counts what it shows", () => {
    fc.assert(
      fc.property(rows, (given) => {
        const counts = countsOf(given);
        expect(Object.values(counts).reduce((sum, count) => sum + count, 0)).toBe(given.length);
        for (const status of statuses)
          expect(filtered(given, { ...NO_FILTER, status }).length).toBe(counts[status]);
      }),
      { seed: 7 },
    );
  });

  it.each([
    {
      why: "a check over its limit goes before one that uses all of it",
      worse: { status: "over", utilisation: 1.01 },
      better: { status: "within", utilisation: 1 },
    },
    {
      why: "over with no share of a limit is no less than over by twice",
      worse: { status: "over", utilisation: null },
      better: { status: "over", utilisation: 2 },
    },
    {
      why: "what uses more of its limit",
      worse: { status: "within", utilisation: 0.9 },
      better: { status: "within", utilisation: 0.2, value: 50 },
    },
    {
      why: "of what has no limit the greatest value",
      worse: { status: "not-checked", utilisation: null, value: 14 },
      better: { status: "not-checked", utilisation: null, value: 9 },
    },
    {
      why: "what could not be checked goes before no faults found",
      worse: { status: "not-checked", utilisation: null },
      better: { status: "within", utilisation: null, value: 0, limit: 0 },
    },
    {
      why: "nothing to check comes last",
      worse: { status: "not-checked", utilisation: null, value: null },
      better: { status: "not-applicable", utilisation: null, value: 9 },
    },
  ] as const)("$why", ({ worse, better }) => {
    const [b, w] = [row(better), row(worse)];
    expect(byWorst(w, b)).toBeLessThan(0);
    expect(byWorst(b, w)).toBeGreaterThan(0);
  });

  it("gathers many of a kind by wall, else by room, and leaves few as they are", () => {
    const many = Array.from({ length: 20 }, (_, k) => row({ walls: k < 12 ? "w1" : "w2" }));
    const [group] = groupsOf(many);
    expect(group?.parts.map(({ about }) => about)).toEqual([
      { kind: "wall", walls: "w1" },
      { kind: "wall", walls: "w2" },
    ]);
    const props = Array.from({ length: 13 }, (_, k) => row({ room: k === 0 ? "Store" : "Hall" }));
    expect(groupsOf(props)[0]?.parts.map(({ about, rows: own }) => [about.kind, own.length])).toEqual([
      ["check", 1],
      ["room", 12],
    ]);
    expect(groupsOf(many.slice(0, 12))[0]?.parts.length).toBe(12);
  });

  it("is filtered by all that is asked for at once, and forgets what is not there any more", () => {
    const given = [
      row({ room: "Hall", status: "over" }),
      row({ room: "Hall" }),
      row({ room: "Bath", status: "over" }),
      row({ room: "Hall", status: "over", on: "B" }),
    ];
    const filter = { unit: "A", room: "Hall", kind: "tie-load", status: "over" } as const;
    expect(filtered(given, filter)).toEqual([given[0]]);
    expect(keptFilter({ ...filter, room: "Gone", kind: "gone" }, given)).toEqual({
      ...filter,
      room: null,
      kind: null,
    });
  });
});

describe("the keys on the list", () => {
  const groups = groupsOf(Array.from({ length: 20 }, (_, k) => row({ walls: k < 12 ? "w1" : "w2" })));
  const [group] = groups;
  const closed = linesOf(groups, new Set());
  const open = linesOf(groups, new Set([group!.id, group!.parts[0]!.id]));

  it.each([
    { why: "right opens what is closed", lines: closed, at: 0, key: "ArrowRight", wanted: "open" },
    { why: "right goes into what is open", lines: open, at: 0, key: "ArrowRight", wanted: 1 },
    { why: "left closes what is open", lines: open, at: 1, key: "ArrowLeft", wanted: "close" },
    { why: "left goes out of a check", lines: open, at: 2, key: "ArrowLeft", wanted: 1 },
    { why: "right does nothing on a check", lines: open, at: 2, key: "ArrowRight", wanted: null },
    { why: "down from a check to the next", lines: open, at: 2, key: "ArrowDown", wanted: 3 },
    { why: "up ends at the top", lines: open, at: 0, key: "ArrowUp", wanted: null },
    { why: "End goes to the last line", lines: open, at: 0, key: "End", wanted: 14 },
    { why: "letters are left to the page", lines: open, at: 0, key: "w", wanted: null },
  ])("$why", ({ lines, at, key, wanted }) => {
    const step = walked(lines, at, key);
    const found = step === null ? null : step.kind === "go" ? lines.indexOf(step.to) : step.kind;
    expect(found).toBe(wanted);
  });
});
