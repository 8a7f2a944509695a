// What each pour adds: rows by hand, and random schemes against the set counted in one go.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { castingsOf, pourDays } from "../../../src/fill/castings.ts";
import { type PoursAdd, pourAdds } from "../../../src/fill/optimise/pourAdds.ts";
import type { BillLine } from "../../../src/fill/result.ts";
import type { Kit } from "../../../src/kit/kit.ts";
import { parseKit } from "../../../src/kit/parse.ts";
import type { Project } from "../../../src/plan/project.ts";
import { readProject } from "../../../src/plan/read.ts";

const KIT = readKit();

function readKit(): Kit {
  const panel = { family: "wall-panel", width: 600, height: 2250, mass: 20, standard: true };
  const read = parseKit({
    name: "three",
    pieces: [
      { ...panel, code: "L", price: 10, hand: "left" },
      { ...panel, code: "R", price: 10, hand: "right" },
      { code: "P", family: "prop", least: 1000, greatest: 3000, mass: 10, stays: 2 },
      { code: "S", family: "tie-sleeve", length: 100, mass: 0.1 },
    ],
    rules: {},
  });
  if (read.status !== "ok") throw new Error(JSON.stringify(read));
  return read.kit;
}

type PourRow = readonly [unit: string, day?: number | null, mirror?: boolean];

function scheme(rows: readonly PourRow[], stock: Readonly<Record<string, number>> = {}): Project {
  const read = readProject(
    JSON.stringify({
      format: "panelwright-project",
      version: 1,
      storey: { clearHeight: 2400, slab: 0 },
      kit: "demo",
      units: ["A", "B"].map((id) => ({ id, name: id, walls: [] })),
      pours: rows.map(([unit, day = null, mirror = false], k) => ({
        id: `p${k + 1}`,
        name: "",
        unit,
        mirror,
        ...(day !== null && { day }),
      })),
      stock,
    }),
  );
  if (read.status !== "ok") throw new Error(JSON.stringify(read.issues));
  return read.project;
}

type Counts = Readonly<Record<string, number>>;

const FAMILY_OF: Readonly<Record<string, BillLine["family"]>> = { P: "prop", S: "tie-sleeve" };

function bill(counts: Counts): readonly BillLine[] {
  return Object.entries(counts).map(([code, quantity]) => ({
    code,
    family: FAMILY_OF[code] ?? "wall-panel",
    quantity,
    mass: 0,
    area: 0,
  }));
}

function needsOf(project: Project, units: Readonly<Record<string, Counts>>): PoursAdd {
  const castings = castingsOf(project);
  return pourAdds(
    project,
    KIT,
    castings,
    castings.map(({ unit }) => bill(units[unit.id] ?? {})),
  );
}

const UNITS = { A: { L: 10, P: 4 }, B: { L: 7, R: 2, P: 1 } };

describe("what a pour adds", () => {
  it.each<{ why: string; rows: readonly PourRow[]; stock?: Counts; adds: readonly Counts[] }>([
    { why: "the first brings all it has", rows: [["A"]], adds: [{ L: 10, P: 4 }] },
    {
      why: "the next adds only what is more; props stay for two pours",
      rows: [["A"], ["B"]],
      adds: [
        { L: 10, P: 4 },
        { R: 2, P: 1 },
      ],
    },
    {
      why: "pours of one day add up",
      rows: [
        ["A", 1],
        ["B", 1],
      ],
      adds: [
        { L: 10, P: 4 },
        { L: 7, R: 2, P: 1 },
      ],
    },
    {
      why: "also where another pour is listed between them",
      rows: [
        ["A", 1],
        ["B", 2],
        ["A", 1],
      ],
      adds: [
        { L: 10, P: 4 },
        { R: 2, P: 1 },
        { L: 10, P: 4 },
      ],
    },
    {
      why: "a mirrored pour takes the other hand",
      rows: [["A"], ["A", null, true]],
      adds: [
        { L: 10, P: 4 },
        { R: 10, P: 4 },
      ],
    },
    {
      why: "what came back serves again: props after two pours more",
      rows: [["A"], ["B"], ["B"], ["A"]],
      adds: [{ L: 10, P: 4 }, { R: 2, P: 1 }, { P: 1 }, {}],
    },
  ])("$why", ({ rows, adds }) => {
    const { pours } = needsOf(scheme(rows), UNITS);
    expect(
      pours.map((pour) => Object.fromEntries(pour.adds.map(({ code, count }) => [code, count]))),
    ).toEqual(adds);
  });

  it("is every sleeve of every pour, since those stay in the concrete", () => {
    const { pours, pieces } = needsOf(scheme([["A"], ["B", null, true], ["A"]], { S: 9 }), {
      A: { S: 6 },
      B: { S: 4 },
    });
    expect(pours.map(({ adds }) => adds.map(({ count, toBuy }) => [count, toBuy]))).toEqual([
      [[6, 0]],
      [[4, 1]],
      [[6, 6]],
    ]);
    expect(pieces.map(({ code, needed }) => [code, needed])).toEqual([["S", 16]]);
  });

  it("is paid for only beyond the pieces owned", () => {
    const { pours } = needsOf(scheme([["A"], ["B"]], { L: 8, R: 1 }), UNITS);
    expect(pours.map(({ adds }) => adds.map(({ code, toBuy }) => [code, toBuy]))).toEqual([
      [
        ["L", 2],
        ["P", 4],
      ],
      [
        ["R", 1],
        ["P", 1],
      ],
    ]);
  });

  it("is told by unit where no pours are listed", () => {
    const { pours } = needsOf(scheme([]), UNITS);
    expect(pours.map(({ pour, unit }) => [pour, unit])).toEqual([
      [null, "A"],
      [null, "B"],
    ]);
  });
});

describe("the set", () => {
  const row: fc.Arbitrary<PourRow> = fc.tuple(
    fc.constantFrom("A", "B"),
    fc.oneof(fc.constant<null>(null), fc.integer({ min: 1, max: 4 })),
    fc.boolean(),
  );
  const counts = fc.record({ L: fc.nat(9), R: fc.nat(9), P: fc.nat(9) });

  it("is the sum of what its pours add, and the greatest need of any day", () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 9 }), counts, counts, (rows, A, B) => {
        const project = scheme(rows);
        const { pours, pieces } = needsOf(project, { A, B });
        const units: Readonly<Record<string, Counts>> = { A, B };
        const castings = castingsOf(project);
        const ofDay = pourDays(project, castings).map((casts) => (code: string) => {
          const own = (mirror: boolean) => (mirror ? ({ L: "R", R: "L" }[code] ?? code) : code);
          return casts.reduce(
            (sum, { casting, mirror }) => sum + (units[castings[casting]!.unit.id]?.[own(mirror)] ?? 0),
            0,
          );
        });
        for (const { code, needed } of pieces) {
          const added = pours.flatMap(({ adds }) => adds.filter((each) => each.code === code));
          expect(added.reduce((sum, { count }) => sum + count, 0)).toBe(needed);
          const stays = code === "P" ? 2 : 0;
          const windows = ofDay.map((_, first) =>
            ofDay.slice(first, first + stays + 1).reduce((sum, count) => sum + count(code), 0),
          );
          expect(needed).toBe(Math.max(...windows));
        }
      }),
      { seed: 6 },
    );
  });
});
