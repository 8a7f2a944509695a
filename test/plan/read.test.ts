import { describe, expect, it } from "vitest";
import { formatIssue } from "../../src/json/issue.ts";
import type { Migration } from "../../src/plan/migrate.ts";
import type { Project } from "../../src/plan/project.ts";
import { readProject } from "../../src/plan/read.ts";

const LEAST = {
  format: "panelwright-project",
  version: 1,
  storey: { clearHeight: 2400, slab: 100 },
  kit: "demo",
  units: [{ id: "A", walls: [{ id: "w1", from: [0, 0], to: [7200, 0], thickness: 100 }] }],
};

const DOOR = { id: "d1", wall: "w1", at: 1200, width: 900, sill: 0, head: 2100 };

function read(file: unknown): Project {
  const result = readProject(JSON.stringify(file));
  if (result.status === "invalid") throw new Error(result.issues.map(formatIssue).join("\n"));
  return result.project;
}

function withUnit(members: object): unknown {
  return { ...LEAST, units: [{ ...LEAST.units[0], ...members }] };
}

function warningsOf(file: unknown): string[] {
  const result = readProject(JSON.stringify(file));
  return result.status === "ok" ? result.warnings.map((issue) => issue.path) : ["invalid"];
}

describe("what stands for a member left out", () => {
  it("of the project", () => {
    expect(read(LEAST)).toEqual({
      name: "",
      revision: "",
      language: "en",
      storey: { clearHeight: 2400, slab: 100 },
      kit: "demo",
      units: [
        {
          id: "A",
          name: "",
          walls: [{ id: "w1", from: [0, 0], to: [7200, 0], thickness: 100, justify: "centre" }],
          openings: [],
          rooms: [],
          slabs: [],
          slabOpenings: [],
          services: [],
          controlLines: [],
          pinned: [],
        },
      ],
      pours: [],
      stock: {},
      buy: true,
      fillers: "corner",
      objective: { handling: 0.6, closure: 500, closurePerMm: 0.3, distinctSize: 0 },
      concrete: {},
      loads: {},
      extra: {},
    });
  });

  it("of a room, a service and a pour", () => {
    const file = {
      ...(withUnit({
        rooms: [{ name: "Kitchen", at: [1500, 1200] }],
        services: [
          {
            id: "s1",
            path: [
              [0, 600],
              [900, 600],
            ],
          },
        ],
      }) as object),
      pours: [{ id: "p1", unit: "A" }],
      objective: { closure: 400 },
    };
    const project = read(file);
    expect(project.units[0]?.rooms).toEqual([
      { name: "Kitchen", at: [1500, 1200], kind: null, soffitDrop: 0 },
    ]);
    expect(project.units[0]?.services[0]?.clearance).toBe(60);
    expect(project.pours).toEqual([
      { id: "p1", name: "", unit: "A", mirror: false, day: null, storey: null },
    ]);
    expect(project.objective).toEqual({ handling: 0.6, closure: 400, closurePerMm: 0.3, distinctSize: 0 });
  });

  it.each([
    { why: "a door", width: 900, sill: 0, head: 2100, formed: "band" },
    { why: "a small hatch on the floor", width: 600, sill: 0, head: 600, formed: "band" },
    { why: "the largest box", width: 600, sill: 1, head: 601, formed: "box" },
    { why: "a little too wide", width: 600.5, sill: 900, head: 1500, formed: "band" },
    { why: "a little too high", width: 600, sill: 900, head: 1500.5, formed: "band" },
  ])("of an opening: $why is a $formed", ({ width, sill, head, formed }) => {
    const openings = [{ ...DOOR, width, sill, head }];
    expect(read(withUnit({ openings })).units[0]?.openings[0]?.formed).toBe(formed);
  });

  it("but an opening's own word stands", () => {
    const openings = [{ ...DOOR, formed: "box" }];
    expect(read(withUnit({ openings })).units[0]?.openings[0]?.formed).toBe("box");
  });
});

describe("what is kept as it came", () => {
  it.each([
    { why: "a kit object, unread", kit: { name: "ours", pieces: [{ family: "no such family", mass: -1 }] } },
    { why: "a kit by name", kit: "demo" },
  ])("$why", ({ kit }) => {
    expect(read({ ...LEAST, kit }).kit).toEqual(kit);
  });

  it("members it does not know, on every level, each with a warning", () => {
    const wall = { ...LEAST.units[0]?.walls[0], colour: "red" };
    const file = {
      ...LEAST,
      units: [{ id: "A", walls: [wall], phase: { of: 2 } }],
      storey: { clearHeight: 2400, slab: 100, level: "EG" },
      objective: { crane: 1 },
      site: [1],
    };
    const project = read(file);
    expect(project.extra).toEqual({ site: [1] });
    expect(project.storey.extra).toEqual({ level: "EG" });
    expect(project.objective.extra).toEqual({ crane: 1 });
    expect(project.units[0]?.extra).toEqual({ phase: { of: 2 } });
    expect(project.units[0]?.walls[0]?.extra).toEqual({ colour: "red" });
    expect(warningsOf(file)).toEqual([
      "storey.level",
      "units[0].walls[0].colour",
      "units[0].phase",
      "objective.crane",
      "site",
    ]);
  });

  it("stock under any code, nothing inherited", () => {
    const { stock } = read({ ...LEAST, stock: { "P 60/225": 4, toString: 1 } });
    expect(Object.entries(stock)).toEqual([
      ["P 60/225", 4],
      ["toString", 1],
    ]);
    expect(stock.valueOf).toBeUndefined();
  });
});

describe("what a drawing may get wrong without spoiling the file", () => {
  const wall = LEAST.units[0]!.walls[0]!;
  it.each([
    { why: "an opening outside its wall", unit: { openings: [{ ...DOOR, at: 9000 }] } },
    { why: "an opening before its wall", unit: { openings: [{ ...DOOR, at: -500 }] } },
    { why: "openings that overlap", unit: { openings: [DOOR, { ...DOOR, id: "d2" }] } },
    { why: "a head above the clear height", unit: { openings: [{ ...DOOR, head: 5000 }] } },
    { why: "a wall drawn twice", unit: { walls: [wall, { ...wall, id: "w2" }] } },
    {
      why: "walls that cross",
      unit: { walls: [wall, { ...wall, id: "w2", from: [50, -900], to: [50, 900] }] },
    },
    { why: "a room's point in a wall", unit: { rooms: [{ name: "Bath", at: [100, 0] }] } },
    { why: "nothing drawn yet", unit: { walls: [] } },
    { why: "a wall and an opening of one id", unit: { openings: [{ ...DOOR, id: "w1" }] } },
  ])("$why", ({ unit }) => {
    expect(warningsOf(withUnit(unit))).toEqual([]);
  });

  it("a ring whose last point repeats the first loses it, with a warning", () => {
    const outline = [
      [0, 0],
      [900, 0],
      [900, 900],
      [0, 0],
    ];
    const file = withUnit({ slabs: [{ id: "b1", outline }] });
    expect(read(file).units[0]?.slabs[0]?.outline).toEqual(outline.slice(0, 3));
    expect(warningsOf(file)).toEqual(["units[0].slabs[0].outline[3]"]);
  });
});

describe("limits lie where they are said to lie", () => {
  const wall = LEAST.units[0]!.walls[0]!;
  const ofWall = (members: object) => withUnit({ walls: [{ ...wall, ...members }] });
  const many = (count: number) =>
    withUnit({ walls: Array.from({ length: count }, (_, i) => ({ ...wall, id: `w${i}` })) });

  it.each([
    { why: "thickness", within: ofWall({ thickness: 20 }), beyond: ofWall({ thickness: 19.9 }) },
    { why: "thickness, thick", within: ofWall({ thickness: 2000 }), beyond: ofWall({ thickness: 2000.1 }) },
    {
      why: "coordinates",
      within: ofWall({ from: [1e7, 0], to: [1e7, 9] }),
      beyond: ofWall({ from: [1e7 + 1, 0], to: [1e7, 9] }),
    },
    { why: "least length", within: ofWall({ to: [0.6, 0.8] }), beyond: ofWall({ to: [0.6, 0.7] }) },
    { why: "greatest length", within: ofWall({ to: [1e6, 0] }), beyond: ofWall({ to: [1e6, 2000] }) },
    {
      why: "clear height",
      within: { ...LEAST, storey: { clearHeight: 300, slab: 0 } },
      beyond: { ...LEAST, storey: { clearHeight: 299, slab: 0 } },
    },
    {
      why: "slab",
      within: { ...LEAST, storey: { clearHeight: 20000, slab: 2000 } },
      beyond: { ...LEAST, storey: { clearHeight: 20000, slab: 2001 } },
    },
    {
      why: "length of an id",
      within: ofWall({ id: "x".repeat(64) }),
      beyond: ofWall({ id: "x".repeat(65) }),
    },
    {
      why: "length of a name",
      within: { ...LEAST, name: "x".repeat(200) },
      beyond: { ...LEAST, name: "x".repeat(201) },
    },
    { why: "count of walls", within: many(20_000), beyond: many(20_001) },
  ])("$why", ({ within, beyond }) => {
    expect(readProject(JSON.stringify(within)).status).toBe("ok");
    expect(readProject(JSON.stringify(beyond)).status).toBe("invalid");
  });
});

describe("files of other versions", () => {
  // An invented past: version 1 gave heights in metres, version 2 called the storey a level.
  const metresToMm: Migration = (file) => ({
    ...file,
    level: { clearHeight: Number(file.clearHeight) * 1000, slab: 100 },
  });
  const levelToStorey: Migration = ({ level, ...file }) => ({ ...file, storey: level ?? null });
  const steps = [metresToMm, levelToStorey];
  const { storey, ...bare } = LEAST;

  it.each([
    { why: "two steps", file: { ...bare, version: 1, clearHeight: 2.4 } },
    { why: "one step", file: { ...bare, version: 2, level: storey } },
    { why: "no step", file: { ...bare, version: 3, storey } },
  ])("are carried forward: $why", ({ file }) => {
    const result = readProject(JSON.stringify(file), steps);
    expect(result).toMatchObject({ status: "ok", project: { storey } });
  });

  it("are refused where they are later than the last step", () => {
    const result = readProject(JSON.stringify({ ...LEAST, version: 4 }), steps);
    expect(result).toMatchObject({ status: "invalid", issues: [{ path: "version", found: "4" }] });
  });

  it("are checked after the last step", () => {
    const result = readProject(JSON.stringify({ ...bare, version: 1, clearHeight: "low" }), steps);
    expect(result).toMatchObject({ status: "invalid", issues: [{ path: "storey.clearHeight" }] });
  });
});
