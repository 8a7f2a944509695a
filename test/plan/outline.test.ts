// The outline against coordinates worked out by hand.

import { expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import { roundRoom, unitOf, type WallLine } from "../support/walls.ts";

const union = await loadUnion();

it.each<{ why: string; walls: WallLine[]; rings: [number, number][][] }>([
  {
    why: "a wall alone is a rectangle",
    walls: [[0, 0, 1000, 0, 100]],
    rings: [
      [
        [0, -50],
        [1000, -50],
        [1000, 50],
        [0, 50],
      ],
    ],
  },
  {
    why: "an L is carried to the mitre by half the other's thickness",
    walls: [
      [0, 0, 2000, 0, 100],
      [2000, 0, 2000, 1500, 200],
    ],
    rings: [
      [
        [0, -50],
        [2100, -50],
        [2100, 1500],
        [1900, 1500],
        [1900, 50],
        [0, 50],
      ],
    ],
  },
  {
    why: "the stem of a T leaves the far face alone",
    walls: [
      [0, 0, 2000, 0, 100],
      [1000, 0, 1000, 1500, 150],
    ],
    rings: [
      [
        [0, -50],
        [2000, -50],
        [2000, 50],
        [1075, 50],
        [1075, 1500],
        [925, 1500],
        [925, 50],
        [0, 50],
      ],
    ],
  },
  {
    why: "four walls round a room: the outside runs counter-clockwise, the room clockwise",
    walls: roundRoom([0, 0], [4000, 3000], 100),
    rings: [
      [
        [-50, -50],
        [4050, -50],
        [4050, 3050],
        [-50, 3050],
      ],
      [
        [50, 50],
        [50, 2950],
        [3950, 2950],
        [3950, 50],
      ],
    ],
  },
])("$why", ({ walls, rings }) => {
  const outline = buildOutline(unitOf(walls), union);
  expect(outline.rings.map((ring) => ring.faces.map((face) => outline.faces[face]!.from))).toEqual(rings);
});
