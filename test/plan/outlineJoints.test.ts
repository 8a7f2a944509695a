// Joints of walls along the axes against corners worked out by hand.

import { describe, expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import { outlineCorners } from "../support/outlineClaims.ts";
import { roundRoom, unitOf, type WallLine } from "../support/walls.ts";

const union = await loadUnion();

interface Row {
  readonly why: string;
  readonly walls: WallLine[];
  /** Corners of each ring, `x,y`. */
  readonly rings: string[];
}

function expectRings({ walls, rings }: Row): void {
  const outline = buildOutline(unitOf(walls), union);
  expect(outlineCorners(outline).map((ring) => ring.join(" "))).toEqual(rings);
  expect(outline.findings).toEqual([]);
}

const tee = "0,-50 2000,-50 2000,50 1075,50 1075,1500 925,1500 925,50 0,50";
const bend = "0,-50 2100,-50 2100,1500 1900,1500 1900,50 0,50";
const bar = "0,-50 2000,-50 2000,50 0,50";

describe("corners", () => {
  it.each<Row>([
    { why: "a wall alone is a rectangle", walls: [[0, 0, 2000, 0, 100]], rings: [bar] },
    {
      why: "an L is carried to the mitre by half the other's thickness",
      walls: [
        [0, 0, 2000, 0, 100],
        [2000, 0, 2000, 1500, 200],
      ],
      rings: [bend],
    },
    {
      why: "the ends of an L may be drawn 1.5 mm apart",
      walls: [
        [0, 0, 1998.5, 0, 100],
        [2000, 0, 2000, 1500, 200],
      ],
      rings: [bend],
    },
    {
      why: "an L drawn on its outside and its inside line has the sides where they are drawn",
      walls: [
        [0, 0, 1000, 0, 100, "left"],
        [1000, 0, 1000, 1000, 200, "right"],
      ],
      rings: ["0,-100 1000,-100 1000,1000 800,1000 800,0 0,0"],
    },
    {
      why: "a jog less than the thickness turns both ways",
      walls: [
        [0, 0, 1000, 0, 100],
        [1000, 0, 1000, 60, 100],
        [1000, 60, 2000, 60, 100],
      ],
      rings: ["0,-50 1050,-50 1050,10 2000,10 2000,110 950,110 950,50 0,50"],
    },
    {
      why: "a room: the outside runs counter-clockwise, the room clockwise",
      walls: roundRoom([0, 0], [4000, 3000], 100),
      rings: ["-50,-50 4050,-50 4050,3050 -50,3050", "50,50 50,2950 3950,2950 3950,50"],
    },
  ])("$why", expectRings);
});

describe("tees and crosses", () => {
  it.each<Row>([
    {
      why: "the stem of a T leaves the far face alone",
      walls: [
        [0, 0, 2000, 0, 100],
        [1000, 0, 1000, 1500, 150],
      ],
      rings: [tee],
    },
    {
      why: "the stem may end 1.5 mm short of the line",
      walls: [
        [0, 0, 2000, 0, 100],
        [1000, 1.5, 1000, 1500, 150],
      ],
      rings: [tee],
    },
    {
      why: "a T of three ends: the two in line are the through wall",
      walls: [
        [1000, 0, 1000, 1500, 150],
        [1000, 0, 0, 0, 100],
        [1000, 0, 2000, 0, 100],
      ],
      rings: [tee],
    },
    {
      why: "a stem touches the side it is drawn to",
      walls: [
        [0, 0, 2000, 0, 200, "left"],
        [1000, 0, 1000, 1000, 100],
      ],
      rings: ["0,-200 2000,-200 2000,0 1050,0 1050,1000 950,1000 950,0 0,0"],
    },
    {
      why: "a stem from the other side passes through the body to the drawn line",
      walls: [
        [0, 0, 2000, 0, 200, "left"],
        [1000, 0, 1000, -1000, 100],
      ],
      rings: ["0,-200 950,-200 950,-1000 1050,-1000 1050,-200 2000,-200 2000,0 0,0"],
    },
    {
      why: "an X of four ends",
      walls: [
        [0, 0, 1000, 0, 100],
        [2000, 0, 1000, 0, 100],
        [1000, -1000, 1000, 0, 150],
        [1000, 0, 1000, 1500, 150],
      ],
      rings: [
        "0,-50 925,-50 925,-1000 1075,-1000 1075,-50 2000,-50 2000,50 1075,50 1075,1500 925,1500 925,50 0,50",
      ],
    },
    {
      why: "an X of one wall and two stems",
      walls: [
        [0, 0, 2000, 0, 100],
        [1000, -1000, 1000, 0, 150],
        [1000, 0, 1000, 1500, 150],
      ],
      rings: [
        "0,-50 925,-50 925,-1000 1075,-1000 1075,-50 2000,-50 2000,50 1075,50 1075,1500 925,1500 925,50 0,50",
      ],
    },
  ])("$why", expectRings);
});

describe("walls in line and side by side", () => {
  it.each<Row>([
    {
      why: "a wall in two pieces is one",
      walls: [
        [0, 0, 1200, 0, 100],
        [2000, 0, 1200, 0, 100],
      ],
      rings: [bar],
    },
    {
      why: "pieces that overlap are one",
      walls: [
        [0, 0, 1200, 0, 100],
        [700, 0, 2000, 0, 100],
      ],
      rings: [bar],
    },
    {
      why: "a gap of 1 mm is closed",
      walls: [
        [0, 0, 1200, 0, 100],
        [1201, 0, 2000, 0, 100],
      ],
      rings: [bar],
    },
    {
      why: "an overlap of 1 mm is nothing",
      walls: [
        [0, 0, 1200, 0, 100],
        [1199, 0, 2000, 0, 100],
      ],
      rings: [bar],
    },
    {
      why: "a gap of 3 mm is a gap",
      walls: [
        [0, 0, 1200, 0, 100],
        [1203, 0, 2000, 0, 100],
      ],
      rings: ["0,-50 1200,-50 1200,50 0,50", "1203,-50 2000,-50 2000,50 1203,50"],
    },
    {
      why: "a stem drawn to 1 mm off the face touches it",
      walls: [
        [0, 0, 2000, 0, 100],
        [1000, 51, 1000, 1500, 150],
      ],
      rings: [tee],
    },
    {
      why: "a stem drawn 1 mm into the face is cut by it",
      walls: [
        [0, 0, 2000, 0, 100],
        [1000, 49, 1000, 1500, 150],
      ],
      rings: [tee],
    },
    {
      why: "two walls side by side are one body",
      walls: [
        [0, 0, 1000, 0, 100],
        [0, 100, 1000, 100, 100],
      ],
      rings: ["0,-50 1000,-50 1000,150 0,150"],
    },
    {
      why: "a step on both sides where the centres are in line",
      walls: [
        [0, 0, 1000, 0, 100],
        [1000, 0, 2000, 0, 150],
      ],
      rings: ["0,-50 1000,-50 1000,-75 2000,-75 2000,75 1000,75 1000,50 0,50"],
    },
    {
      why: "a step on the right where the left sides are in line",
      walls: [
        [0, 0, 1000, 0, 100, "left"],
        [1000, 0, 2000, 0, 150, "left"],
      ],
      rings: ["0,-100 1000,-100 1000,-150 2000,-150 2000,0 0,0"],
    },
    {
      why: "a step on the left where the right sides are in line, one of them drawn backwards",
      walls: [
        [0, 0, 1000, 0, 100, "right"],
        [2000, 0, 1000, 0, 150, "left"],
      ],
      rings: ["0,0 2000,0 2000,150 1000,150 1000,100 0,100"],
    },
  ])("$why", expectRings);
});

describe("several bodies", () => {
  it.each<Row>([
    {
      why: "bodies apart are rings apart, by their least corner",
      walls: [
        [5000, 0, 6000, 0, 100],
        [0, 500, 1000, 500, 100],
        [0, 0, 1000, 0, 100],
      ],
      rings: [
        "0,-50 1000,-50 1000,50 0,50",
        "0,450 1000,450 1000,550 0,550",
        "5000,-50 6000,-50 6000,50 5000,50",
      ],
    },
    {
      why: "a column in a room stands in it counter-clockwise",
      walls: [...roundRoom([0, 0], [4000, 3000], 100), [1000, 1000, 1300, 1000, 200]],
      rings: [
        "-50,-50 4050,-50 4050,3050 -50,3050",
        "50,50 50,2950 3950,2950 3950,50",
        "1000,900 1300,900 1300,1100 1000,1100",
      ],
    },
  ])("$why", expectRings);
});
