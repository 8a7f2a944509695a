// Drawings that cannot be meant: what is said about them, and what is left alone.

import { expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import { outlineCorners } from "../support/outlineClaims.ts";
import { unitOf, type WallLine } from "../support/walls.ts";

const union = await loadUnion();

it.each<{ why: string; walls: WallLine[]; found: [severity: string, kind: string, message: RegExp][] }>([
  {
    why: "two walls that cross",
    walls: [
      [0, 0, 2000, 0, 100],
      [1000, -1000, 1000, 1500, 150],
    ],
    found: [["error", "walls-cross", /^Wall w1 and wall w2 cross at \(1000, 0\).*Split one of them there/]],
  },
  {
    why: "two walls that cross at a slant",
    walls: [
      [0, 0, 2000, 2000, 100],
      [0, 1500, 2000, 500, 150],
    ],
    found: [["error", "walls-cross", /cross at \(1000, 1000\)/]],
  },
  {
    why: "a wall that overruns the line of another within its body",
    walls: [
      [0, 0, 2000, 0, 100],
      [1000, -40, 1000, 1500, 150],
    ],
    found: [],
  },
  {
    why: "a wall split where another passes",
    walls: [
      [0, 0, 2000, 0, 100],
      [1000, -1000, 1000, 0, 100],
      [1000, 0, 1000, 900, 100],
    ],
    found: [],
  },
  {
    why: "a wall drawn twice, once backwards",
    walls: [
      [0, 0, 2000, 0, 100],
      [2000, 0, 0, 0, 100],
    ],
    found: [["error", "wall-twice", /^Walls w1 and w2 have the same ends and thickness/]],
  },
  {
    why: "a wall drawn twice a millimetre apart",
    walls: [
      [0, 0, 2000, 0, 100],
      [1, 1, 2000, 1, 100],
    ],
    found: [["error", "wall-twice", /^Walls w1 and w2/]],
  },
  {
    why: "two walls on either side of one drawn line are two walls",
    walls: [
      [0, 0, 2000, 0, 100, "left"],
      [0, 0, 2000, 0, 100, "right"],
    ],
    found: [],
  },
  {
    why: "walls that overlap in line",
    walls: [
      [0, 0, 2000, 0, 100],
      [1500, 0, 4000, 0, 100],
    ],
    found: [],
  },
  {
    why: "a stem that does not leave the wall it joins",
    walls: [
      [0, 0, 2000, 0, 200],
      [1000, 0, 1000, 90, 100],
    ],
    found: [["error", "wall-too-short", /^Wall w2 at \(1000, 0\) is 90 mm long.*takes 100 mm/]],
  },
  {
    why: "a leg that does not leave its corner",
    walls: [
      [0, 0, 2000, 0, 100],
      [2000, 0, 2000, 40, 100],
    ],
    found: [["error", "wall-too-short", /^Wall w2 at \(2000, 0\) is 40 mm long.*takes 50 mm/]],
  },
  {
    why: "a wall inside a thicker one",
    walls: [
      [0, 0, 3000, 0, 300],
      [500, 20, 1500, 20, 100],
    ],
    found: [["warning", "wall-inside", /^Wall w2 at \(500, 20\) lies wholly inside other walls/]],
  },
  {
    why: "a wall without a length",
    walls: [
      [0, 0, 3000, 0, 300],
      [7, 7, 7, 8, 100],
    ],
    found: [["error", "wall-too-short", /^Wall w2 at \(7, 7\).*no longer or no thicker than 2 mm/]],
  },
])("$why", ({ walls, found }) => {
  const { findings } = buildOutline(unitOf(walls), union);
  expect(findings.map(({ severity, kind }) => [severity, kind])).toEqual(
    found.map(([severity, kind]) => [severity, kind]),
  );
  findings.forEach(({ message }, i) => {
    expect(message).toMatch(found[i]![2]);
  });
});

it("names both walls on the faces of a wall drawn twice", () => {
  const { faces } = buildOutline(
    unitOf([
      [0, 0, 2000, 0, 100],
      [2000, 0, 0, 0, 100],
    ]),
    union,
  );
  expect(faces[0]!.walls.map(({ wall, side }) => [wall, side])).toEqual([
    ["w1", "right"],
    ["w2", "left"],
  ]);
});

it("joins a wall drawn twice as if it were drawn once", () => {
  const twice = buildOutline(
    unitOf([
      [0, 0, 2000, 0, 100],
      [2000, 0, 2000, 900, 100],
      [2000, 0, 0, 0, 100],
    ]),
    union,
  );
  expect(outlineCorners(twice)).toEqual(
    outlineCorners(
      buildOutline(
        unitOf([
          [0, 0, 2000, 0, 100],
          [2000, 0, 2000, 900, 100],
        ]),
        union,
      ),
    ),
  );
});

it("leaves a corner alone where a second wall runs along the first", () => {
  const { findings, faces } = buildOutline(
    unitOf([
      [0, 0, 2000, 0, 100],
      [2000, 0, 2000, 900, 100],
      [2000, 0, 900, 0, 100],
    ]),
    union,
  );
  expect(findings).toEqual([]);
  expect(faces).toHaveLength(6);
});
