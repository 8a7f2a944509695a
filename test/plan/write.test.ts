import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Project } from "../../src/plan/project.ts";
import { readProject } from "../../src/plan/read.ts";
import { writeProject } from "../../src/plan/write.ts";
import { projects } from "../support/projects.ts";

const seed = 20240612;

function read(text: string): Project {
  const result = readProject(text);
  if (result.status === "invalid") throw new Error(JSON.stringify(result.issues));
  return result.project;
}

/** A file with its members in another order at every level, as another program might write it. */
function shuffled(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(shuffled);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .map(([name, each]) => [name, shuffled(each)])
      .reverse(),
  );
}

describe("reading and writing undo one another", () => {
  it("a project written and read is the project", () => {
    fc.assert(
      fc.property(projects, (project) => {
        expect(read(writeProject(project))).toEqual(project);
      }),
      { seed, numRuns: 200 },
    );
  });

  it("a text read and written stays as the first writing left it", () => {
    fc.assert(
      fc.property(projects, fc.constantFrom(undefined, 1, "\t"), (project, indent) => {
        const foreign = JSON.stringify(shuffled(JSON.parse(writeProject(project))), null, indent);
        const once = writeProject(read(foreign));
        expect(writeProject(read(once))).toBe(once);
        expect(JSON.parse(once)).toEqual(JSON.parse(foreign));
      }),
      { seed, numRuns: 100 },
    );
  });
});

const SMALL = `{
  "format": "panelwright-project",
  "version": 1,
  "name": "Two walls",
  "storey": {
    "clearHeight": 2400,
    "slab": 100
  },
  "kit": "demo",
  "units": [
    {
      "id": "A",
      "walls": [
        {
          "id": "w1",
          "from": [0, 0],
          "to": [7200, 0.5],
          "thickness": 100,
          "colour": "red"
        }
      ],
      "openings": [
        {
          "id": "d1",
          "wall": "w1",
          "at": 1200,
          "width": 500,
          "sill": 900,
          "head": 1400,
          "formed": "band"
        }
      ],
      "slabs": [
        {
          "id": "b1",
          "outline": [
            [0, 0],
            [900, 0],
            [900, 900]
          ]
        }
      ],
      "pinned": [
        {
          "wall": "w1",
          "from": 200,
          "widths": [600, 600, 450]
        }
      ]
    }
  ],
  "stock": {
    "10": 2,
    "P-60": 40
  },
  "objective": {
    "closure": 400
  },
  "site": [
    "north"
  ]
}
`;

describe("how a file looks", () => {
  it("keeps only what differs from its default, unknown members last, points on one line", () => {
    expect(writeProject(read(SMALL))).toBe(SMALL);
  });

  it("is the same whatever the order of members, the line ends and the mark before it", () => {
    const foreign = `\ufeff${JSON.stringify(shuffled(JSON.parse(SMALL)), null, 4).replaceAll("\n", "\r\n")}\r\n`;
    expect(writeProject(read(foreign))).toBe(SMALL);
  });

  it("drops members that only say their default", () => {
    const wordy = SMALL.replace('"colour": "red"', '"colour": "red", "justify": "centre"')
      .replace('"kit": "demo",', '"kit": "demo", "buy": true, "pours": [], "language": "en", "revision": "",')
      .replace('"closure": 400', '"closure": 400, "handling": 0.6');
    expect(writeProject(read(wordy))).toBe(SMALL);
  });

  it("of a file that says every default, keeps only what is required", () => {
    const wordy = {
      ...{ format: "panelwright-project", version: 1, name: "", revision: "", language: "en" },
      ...{ storey: { clearHeight: 2400, slab: 0 }, kit: "demo", pours: [], stock: {}, buy: true },
      ...{
        objective: { handling: 0.6, closure: 500, closurePerMm: 0.3, distinctSize: 0 },
        concrete: {},
        loads: {},
      },
      units: [
        {
          id: "A",
          name: "",
          walls: [{ id: "w1", from: [0, 0], to: [9000, 0], thickness: 100, justify: "centre" }],
          openings: [{ id: "d1", wall: "w1", at: 0, width: 900, sill: 0, head: 2100, formed: "band" }],
          rooms: [{ name: "Hall", at: [0, 900], soffitDrop: 0 }],
          services: [
            {
              id: "s1",
              path: [
                [0, 0],
                [9, 9],
              ],
              clearance: 60,
            },
          ],
          slabs: [],
          slabOpenings: [],
          controlLines: [],
          pinned: [],
        },
      ],
    };
    expect(JSON.parse(writeProject(read(JSON.stringify(wordy))))).toEqual({
      format: "panelwright-project",
      version: 1,
      storey: { clearHeight: 2400, slab: 0 },
      kit: "demo",
      units: [
        {
          id: "A",
          walls: [{ id: "w1", from: [0, 0], to: [9000, 0], thickness: 100 }],
          openings: [{ id: "d1", wall: "w1", at: 0, width: 900, sill: 0, head: 2100 }],
          rooms: [{ name: "Hall", at: [0, 900] }],
          services: [
            {
              id: "s1",
              path: [
                [0, 0],
                [9, 9],
              ],
            },
          ],
        },
      ],
    });
  });

  it("writes no minus zero", () => {
    const project = read(SMALL);
    const unit = project.units[0]!;
    const wall = { ...unit.walls[0]!, from: [-0, -0] as const };
    const text = writeProject({ ...project, units: [{ ...unit, walls: [wall] }] });
    expect(text).toContain('"from": [0, 0]');
    expect(text).not.toContain("-0");
  });

  it("refuses a number that no file can hold", () => {
    const project = { ...read(SMALL), storey: { clearHeight: Number.NaN, slab: 100 } };
    expect(() => writeProject(project)).toThrow(RangeError);
  });

  it("lets no unknown member stand for one that was left out", () => {
    const project = read(SMALL);
    const text = writeProject({ ...project, extra: { buy: false, site: ["north"] } });
    expect(read(text).buy).toBe(true);
  });
});
