// What a face knows: its walls and their sides, the face opposite, whether it is a free end.

import { describe, expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import type { Face } from "../../src/plan/face.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import { roundRoom, unitOf, type WallLine } from "../support/walls.ts";

const union = await loadUnion();

const wallText = (face: Face) => face.walls.map((w) => `${w.wall} ${w.side} ${w.start}-${w.end}`).join(", ");
const oppositeText = (face: Face) =>
  face.opposite.map((o) => `${o.face}: ${o.start}-${o.end} t${o.thickness}`).join(", ");
const facesOf = (walls: readonly WallLine[]) => buildOutline(unitOf(walls), union).faces;

describe("walls of a face", () => {
  it.each<{ why: string; walls: WallLine[]; faces: string[] }>([
    {
      why: "the four sides of a wall, from its right side on",
      walls: [[0, 0, 2000, 0, 100]],
      faces: ["w1 right 0-2000", "w1 to 0-100", "w1 left 0-2000", "w1 from 0-100"],
    },
    {
      why: "the same drawn backwards",
      walls: [[2000, 0, 0, 0, 100]],
      faces: ["w1 left 0-2000", "w1 from 0-100", "w1 right 0-2000", "w1 to 0-100"],
    },
    {
      why: "a face flush across a thickness step belongs to both walls",
      walls: [
        [0, 0, 1000, 0, 100, "left"],
        [1000, 0, 2500, 0, 150, "left"],
      ],
      faces: [
        "w1 right 0-1000",
        "w2 from 0-50",
        "w2 right 0-1500",
        "w2 to 0-150",
        "w2 left 0-1500, w1 left 1500-2500",
        "w1 from 0-100",
      ],
    },
    {
      why: "the end of a wall that butts in a corner shows beside the side of its neighbour",
      walls: [
        [0, 0, 1950, 0, 100],
        [2000, -50, 2000, 1000, 100],
      ],
      faces: [
        "w1 right 0-1950, w2 from 1950-2050",
        "w2 right 0-1050",
        "w2 to 0-100",
        "w2 left 0-950",
        "w1 left 0-1950",
        "w1 from 0-100",
      ],
    },
    {
      why: "an end that lies on the face of the wall it passes through is hidden by that face",
      walls: [
        [0, 0, 2000, 0, 200, "left"],
        [1000, 0, 1000, -1000, 100],
      ],
      faces: [
        "w1 right 0-950",
        "w2 right 0-800",
        "w2 to 0-100",
        "w2 left 0-800",
        "w1 right 0-950",
        "w1 to 0-200",
        "w1 left 0-2000",
        "w1 from 0-200",
      ],
    },
  ])("$why", ({ walls, faces }) => {
    expect(facesOf(walls).map(wallText)).toEqual(faces);
  });
});

describe("the face opposite", () => {
  it.each<{ why: string; walls: WallLine[]; opposite: string[] }>([
    {
      why: "across a wall; its ends face nothing",
      walls: [[0, 0, 2000, 0, 100]],
      opposite: ["2: 0-2000 t100", "", "0: 0-2000 t100", ""],
    },
    {
      why: "opposite the outer stretch of a corner there is none",
      walls: [
        [0, 0, 2000, 0, 100],
        [2000, 0, 2000, 1500, 200],
      ],
      opposite: ["4: 0-1900 t100", "3: 100-1550 t200", "", "1: 0-1450 t200", "0: 0-1900 t100", ""],
    },
    {
      why: "opposite the stem of a T there is none",
      walls: [
        [0, 0, 2000, 0, 100],
        [1000, 0, 1000, 1500, 150],
      ],
      opposite: [
        "6: 0-925 t100, 2: 1075-2000 t100",
        "",
        "0: 0-925 t100",
        "5: 0-1450 t150",
        "",
        "3: 0-1450 t150",
        "0: 0-925 t100",
        "",
      ],
    },
    {
      why: "two walls of 100 side by side are 200 thick where both stand",
      walls: [
        [0, 0, 2000, 0, 100],
        [500, 100, 1500, 100, 100],
      ],
      opposite: [
        "6: 0-500 t100, 4: 500-1500 t200, 2: 1500-2000 t100",
        "",
        "0: 0-500 t100",
        "",
        "0: 0-1000 t200",
        "",
        "0: 0-500 t100",
        "",
      ],
    },
    {
      why: "a thickness step gives two thicknesses",
      walls: [
        [0, 0, 1000, 0, 100, "left"],
        [1000, 0, 2500, 0, 150, "left"],
      ],
      opposite: ["4: 0-1000 t100", "", "4: 0-1500 t150", "", "2: 0-1500 t150, 0: 1500-2500 t100", ""],
    },
    {
      why: "a piece of wall beside a corner adds nothing to the corner's outer stretch",
      walls: [
        [0, 0, 2000, 0, 100],
        [2000, 0, 2000, 1500, 100],
        [1000, 100, 2050, 100, 100],
      ],
      opposite: [
        "6: 0-1000 t100, 4: 1000-1950 t200",
        "3: 200-1550 t100",
        "",
        "1: 0-1350 t100",
        "0: 0-950 t200",
        "",
        "0: 0-1000 t100",
        "",
      ],
    },
  ])("$why", ({ walls, opposite }) => {
    const faces = facesOf(walls);
    expect(faces.map(oppositeText)).toEqual(opposite);
  });

  it("keeps the drawn thickness across an oblique wall", () => {
    const faces = facesOf([[12.5, -7.25, 1234.5, 3456.75, 120]]);
    expect(faces.flatMap((face) => face.opposite.map((stretch) => stretch.thickness))).toEqual([120, 120]);
    expect(faces.filter((face) => face.isFreeEnd).map((face) => face.length)).toEqual([120, 120]);
  });

  it("goes round a room: each side of the room faces the middle of the facade", () => {
    const { faces, rooms } = buildOutline(unitOf(roundRoom([0, 0], [4000, 3000], 100)), union);
    const inside = faces.filter((face) => face.room === 0);
    expect(rooms).toHaveLength(1);
    expect(inside.map(oppositeText)).toEqual([
      "3: 0-2900 t100",
      "2: 0-3900 t100",
      "1: 0-2900 t100",
      "0: 0-3900 t100",
    ]);
  });
});

describe("free ends", () => {
  it.each<{ why: string; walls: WallLine[]; ends: [number, number][] }>([
    {
      why: "both ends of a wall",
      walls: [[0, 0, 2000, 0, 100]],
      ends: [
        [2000, -50],
        [0, 50],
      ],
    },
    {
      why: "the open ends of an L",
      walls: [
        [0, 0, 2000, 0, 100],
        [2000, 0, 2000, 1500, 200],
      ],
      ends: [
        [2100, 1500],
        [0, 50],
      ],
    },
    { why: "none round a room", walls: roundRoom([0, 0], [4000, 3000], 100), ends: [] },
    {
      why: "the two ends of a column",
      walls: [[0, 0, 300, 0, 300]],
      ends: [
        [300, -150],
        [0, 150],
      ],
    },
    {
      why: "two walls side by side that end together",
      walls: [
        [0, 0, 1000, 0, 100],
        [0, 100, 1000, 100, 100],
      ],
      ends: [
        [1000, -50],
        [0, 150],
      ],
    },
    {
      why: "two walls side by side, one longer: the step beside it is not a whole end",
      walls: [
        [0, 0, 1000, 0, 100],
        [0, 60, 1200, 60, 100],
      ],
      ends: [
        [1200, 10],
        [0, 110],
      ],
    },
    {
      why: "a thickness step is no end",
      walls: [
        [0, 0, 1000, 0, 100],
        [1000, 0, 2000, 0, 150],
      ],
      ends: [
        [2000, -75],
        [0, 50],
      ],
    },
  ])("$why", ({ walls, ends }) => {
    expect(
      facesOf(walls)
        .filter((face) => face.isFreeEnd)
        .map((face) => face.from),
    ).toEqual(ends);
  });
});
