// Kits that lack what a soffit needs and rooms that no kit forms: no crash, exact tiling, and what stays open says why,
// in a sentence that names the place.

import { describe, expect, it } from "vitest";
import type { Problem } from "../../../src/fill/result.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import type { Kit, Piece } from "../../../src/kit/kit.ts";
import type { Position, Unit } from "../../../src/plan/project.ts";
import { auditAny } from "../../support/audit.ts";
import { fillOne, opening, STOREY } from "../../support/filled.ts";
import { piece } from "../../support/kits.ts";
import { roundRoom, unitOf, type WallLine } from "../../support/walls.ts";

const without = (keep: (one: Piece) => boolean): Kit => ({ ...demoKit, pieces: demoKit.pieces.filter(keep) });
const slabPanels = (sizes: readonly (readonly [width: number, length: number])[]): Piece[] =>
  sizes.map(([width, length]) =>
    piece({ family: "slab-panel", code: `S${width}x${length}`, width, length, standard: true }),
  );
const withSlabs = (sizes: readonly (readonly [number, number])[]): Kit => {
  const others = demoKit.pieces.filter(({ family }) => family !== "slab-panel");
  return { ...demoKit, pieces: [...others, ...slabPanels(sizes)] };
};
const withStrips = (lengths: readonly number[]): Kit => {
  const others = demoKit.pieces.filter(({ family }) => family !== "shoring-strip");
  const strips = lengths.map((length) =>
    piece({ family: "shoring-strip", code: `Strip${length}`, width: 150, length }),
  );
  return { ...demoKit, pieces: [...others, ...strips] };
};

/** Clear 3000 × 3600, an L beside it, and a balcony. */
const SEVERAL: Unit = {
  ...unitOf(
    [
      ...roundRoom([-50, -50], [3050, 3650], 100),
      [3050, -50, 7050, -50, 100],
      [7050, -50, 7050, 2050, 100],
      [7050, 2050, 5050, 2050, 100],
      [5050, 2050, 5050, 3650, 100],
      [5050, 3650, 3050, 3650, 100],
    ],
    [
      ["Hall", 1500, 1500],
      ["Ell", 4000, 1000],
    ],
  ),
  openings: [opening("d1", "w2", [600, 900, 0, 2100])],
  slabs: [
    {
      id: "Balcony",
      outline: [
        [500, 3700],
        [2500, 3700],
        [2500, 4900],
        [500, 4900],
      ],
    },
  ],
};

function opened(unit: Unit, kit: Kit = demoKit) {
  const fill = fillOne(unit, STOREY, kit);
  const faults = auditAny(fill, { unit, storey: STOREY, kit });
  const said = fill.soffits.flatMap(({ unfilled }) => unfilled.map(({ problem }) => fill.problems[problem]!));
  const all = fill.problems.filter(({ severity }) => severity === "error");
  return { fill, faults, said: [...new Set(said)], all };
}

const kinds = (problems: readonly Problem[]) => [...new Set(problems.map(({ kind }) => kind))].sort();

describe("a kit that lacks something", () => {
  it.each<{ why: string; kit: Kit; open: readonly string[]; message?: RegExp }>([
    { why: "nothing", kit: demoKit, open: [] },
    {
      why: "slab panels",
      kit: without(({ family }) => family !== "slab-panel"),
      open: ["missing-piece"],
      message: /no slab panel/,
    },
    {
      why: "strips",
      kit: without(({ family }) => family !== "shoring-strip"),
      open: ["missing-piece"],
      message: /no shoring strip/,
    },
    { why: "closures", kit: without(({ family }) => family !== "closure-strip"), open: [] },
    {
      why: "connectors",
      kit: without(({ family }) => family !== "wall-slab-connector" && family !== "connector-corner"),
      open: ["missing-piece"],
      message: /connector/,
    },
    { why: "connector corners", kit: without(({ family }) => family !== "connector-corner"), open: [] },
    {
      why: "every width of slab panel but one",
      kit: withSlabs([[600, 1200]]),
      open: ["no-exact-cover"],
      message: /In the soffit of (Hall|Ell|Balcony) no slab panels/,
    },
    {
      why: "sizes that share a divisor",
      kit: withSlabs([
        [307, 1201],
        [211, 601],
      ]),
      open: ["no-exact-cover"],
      message: /In the soffit of (Hall|Ell|Balcony) no slab panels/,
    },
    { why: "a strip as long as the prop pitch", kit: withStrips([400]), open: [] },
    { why: "strips of a common length", kit: withStrips([701, 353]), open: [] },
  ])("stays tiled without $why", ({ kit, open, message }) => {
    const { faults, said } = opened(SEVERAL, kit);
    expect(faults).toEqual([]);
    expect(kinds(said)).toEqual(open);
    if (message !== undefined) expect(said.every((problem) => message.test(problem.message))).toBe(true);
    for (const { message: text, where } of said) {
      expect(text).toMatch(/^[A-Z].*\.$/);
      // Under a balcony the row that is missing is that of the outside.
      expect(where.room ?? /round the outside/.exec(text)?.[0]).toBeDefined();
    }
  });

  it("has no prop that reaches: the soffit is tiled, stands on nothing, and one error says so", () => {
    const kit: Kit = {
      ...demoKit,
      pieces: demoKit.pieces.map((one) =>
        one.family === "prop" ? { ...one, least: 1000, greatest: 2399 } : one,
      ),
    };
    const { fill, faults, all } = opened(SEVERAL, kit);
    expect(faults).toEqual([]);
    expect(fill.soffits.flatMap(({ props }) => props)).toEqual([]);
    expect(all.map(({ message }) => message)).toEqual([
      expect.stringMatching(/no prop that reaches 2400 mm: no soffit at that height/),
    ]);
  });

  it("has no rule propPitch: props stand where panels meet and a warning asks for the rule", () => {
    const { propPitch: _, ...rules } = demoKit.rules;
    const { fill, faults } = opened(SEVERAL, { ...demoKit, rules });
    expect(faults).toEqual([]);
    expect(fill.problems.some(({ message }) => /propPitch/.test(message))).toBe(true);
  });
});

function room(lines: readonly WallLine[], given: Partial<Unit> = {}): Unit {
  return { ...unitOf(lines, [["Bath", 700, 400]]), ...given };
}
const hole = (...outline: readonly Position[]) => ({ slabOpenings: [{ id: "o1", outline }] });
const SQUARE = roundRoom([-50, -50], [3050, 3650], 100);

describe("a room that no kit forms", () => {
  it.each<{ why: string; unit: Unit; open: readonly string[] }>([
    {
      why: "narrower than two connectors: the short walls, too short for two corners, have none to begin with",
      unit: room(roundRoom([-50, -50], [3050, 200], 100), {
        rooms: [{ name: "Bath", at: [700, 100], kind: "room", soffitDrop: 0 }],
      }),
      open: ["connector-gap", "connectors-cross"],
    },
    {
      why: "as wide as two connectors: they meet, nothing is left between them",
      unit: room(roundRoom([-50, -50], [3050, 350], 100), {
        rooms: [{ name: "Bath", at: [700, 100], kind: "room", soffitDrop: 0 }],
      }),
      open: [],
    },
    {
      why: "a column 200 from a wall",
      unit: room([...SQUARE, [200, 1500, 500, 1500, 300]]),
      open: ["connectors-cross"],
    },
    {
      why: "three walls in a triangle",
      unit: room([
        [0, 0, 4000, 0, 100],
        [4000, 0, 0, 3000, 100],
        [0, 3000, 0, 0, 100],
      ]),
      open: ["connector-gap", "connectors-cross", "special-soffit"],
    },
    {
      why: "one wall that slopes",
      unit: room([
        [0, 0, 4000, 0, 100],
        [4000, 0, 3200, 3000, 100],
        [3200, 3000, 0, 3000, 100],
        [0, 3000, 0, 0, 100],
      ]),
      open: ["connector-gap", "connectors-cross", "special-soffit"],
    },
    {
      why: "a slab opening over a connector",
      unit: room(SQUARE, hole([1000, -500], [1800, -500], [1800, 300], [1000, 300])),
      open: [],
    },
    {
      why: "a slab opening larger than the room: nothing but connectors",
      unit: room(SQUARE, hole([-900, -900], [9000, -900], [9000, 9000], [-900, 9000])),
      open: [],
    },
    {
      why: "a slab opening across two rooms",
      unit: {
        ...SEVERAL,
        ...hole([2500, 1000], [3700, 1000], [3700, 1800], [2500, 1800]),
      },
      open: [],
    },
    {
      why: "two slab openings over each other",
      unit: {
        ...SEVERAL,
        slabOpenings: [
          {
            id: "o1",
            outline: hole([1000, 1000], [2000, 1000], [2000, 2000], [1000, 2000]).slabOpenings[0]!.outline,
          },
          {
            id: "o2",
            outline: hole([1500, 1500], [2500, 1500], [2500, 2500], [1500, 2500]).slabOpenings[0]!.outline,
          },
        ],
      },
      open: [],
    },
    {
      why: "a slab opening with three corners",
      unit: room(SQUARE, hole([1000, 1000], [2000, 1000], [1000, 2000])),
      open: ["special-soffit"],
    },
  ])("is tiled: $why", ({ unit, open }) => {
    const { faults, said } = opened(unit);
    expect(faults).toEqual([]);
    expect(kinds(said)).toEqual(open);
    for (const { message, where } of said) {
      expect(message).toMatch(/Bath|Hall|Ell/);
      expect(where.room).toMatch(/Bath|Hall|Ell/);
    }
  });

  // 200 clear along the wall: two legs of 150 lie over each other; the room itself is 3000 × 3600 less the column.
  it("keeps the rest of the room where a column stands too near a wall", () => {
    const { fill } = opened(room([...SQUARE, [200, 1500, 500, 1500, 300]]));
    expect(fill.soffits[0]!.counts.panels).toBeGreaterThan(10);
  });
});
