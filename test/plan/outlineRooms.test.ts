// Rooms: what encloses them, what stands in them, their names, areas and order.

import { describe, expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import { roundRoom, unitOf, unitOfWalls, type WallLine } from "../support/walls.ts";

const union = await loadUnion();
const room = roundRoom([0, 0], [4000, 3000], 100);

// Two rooms of 3.9 × 2.9 = 11.31 m² and 1.9 × 2.9 = 5.51 m² side by side.
const flat: WallLine[] = [
  ...room,
  [4000, 0, 6000, 0, 100],
  [6000, 0, 6000, 3000, 100],
  [6000, 3000, 4000, 3000, 100],
];

describe("what is a room", () => {
  it("has the clear area between the faces", () => {
    const { rooms } = buildOutline(unitOf(flat), union);
    expect(rooms.map(({ area, lowerLeft }) => [area, lowerLeft])).toEqual([
      [11.31, [50, 50]],
      [5.51, [4050, 50]],
    ]);
  });

  it("takes columns and free-standing walls off and counts them to the room", () => {
    const outline = buildOutline(
      unitOf([...room, [1000, 1000, 1300, 1000, 300], [2000, 500, 2000, 1500, 100]]),
      union,
    );
    expect(outline.rooms[0]!.area).toBeCloseTo(3.9 * 2.9 - 0.3 * 0.3 - 1.0 * 0.1, 9);
    expect(outline.rooms[0]!.inner).toEqual([2, 3]);
    expect(outline.rings.map(({ isOuter, room: of }) => [isOuter, of])).toEqual([
      [true, null],
      [false, 0],
      [true, 0],
      [true, 0],
    ]);
    expect(outline.faces.filter((face) => face.room === null)).toHaveLength(4);
  });

  it("knows a room in a room", () => {
    // 7.8 × 6.8 less the 4.1 × 3.1 of the house inside; in that 3.9 × 2.9.
    const outline = buildOutline(unitOf([...roundRoom([-2000, -2000], [6000, 5000], 200), ...room]), union);
    expect(outline.rooms.map(({ ring, inner, area }) => [ring, inner, area])).toEqual([
      [1, [2], 40.33],
      [3, [], 11.31],
    ]);
    expect(outline.rings.map((ring) => ring.room)).toEqual([null, 0, 0, 1]);
  });

  it("has none where the walls do not close", () => {
    expect(buildOutline(unitOf([...room.slice(0, 3), [0, 3000, 0, 200, 100]]), union).rooms).toEqual([]);
  });
});

describe("names", () => {
  it("come from the points in the rooms, whatever their order", () => {
    const unit = unitOf(flat, [
      ["Bath", 5000, 1000],
      ["Living", 1000, 1000],
    ]);
    expect(buildOutline(unit, union).rooms.map(({ name, isNamed }) => [name, isNamed])).toEqual([
      ["Living", true],
      ["Bath", true],
    ]);
  });

  it("may be the same in two rooms", () => {
    const outline = buildOutline(
      unitOf(flat, [
        ["Bed", 5000, 1000],
        ["Bed", 1000, 1000],
      ]),
      union,
    );
    expect(outline.rooms.map(({ name }) => name)).toEqual(["Bed", "Bed"]);
    expect(outline.findings).toEqual([]);
  });

  it("are numbered where the file gives none, past the numbers it has given away", () => {
    const names = (labels: [string, number, number][]) =>
      buildOutline(unitOf(flat, labels), union).rooms.map(({ name }) => name);
    expect(names([])).toEqual(["Room 1", "Room 2"]);
    expect(names([["Room 1", 5000, 1000]])).toEqual(["Room 2", "Room 1"]);
    expect(names([["Hall", 1000, 1000]])).toEqual(["Hall", "Room 1"]);
  });

  it("carry the kind and the soffit drop of the room", () => {
    const unit = unitOfWalls(unitOf(flat).walls, [
      { name: "Court", at: [1000, 1000], kind: "open", soffitDrop: 300 },
    ]);
    expect(buildOutline(unit, union).rooms.map(({ kind, soffitDrop }) => [kind, soffitDrop])).toEqual([
      ["open", 300],
      [null, 0],
    ]);
  });
});

it.each<{ why: string; labels: [string, number, number][]; names: string[]; finding: object }>([
  {
    why: "a point in a wall is an error",
    labels: [["Bath", 4000, 1000]],
    names: ["Room 1", "Room 2"],
    finding: { severity: "error", kind: "room-point-in-wall", where: { room: "Bath", at: [4000, 1000] } },
  },
  {
    why: "a point outside is a warning",
    labels: [["Bath", -500, 1000]],
    names: ["Room 1", "Room 2"],
    finding: { severity: "warning", kind: "room-point-outside", where: { room: "Bath", at: [-500, 1000] } },
  },
  {
    why: "of two points in one room the left one names it",
    labels: [
      ["Bath", 2000, 1000],
      ["Living", 1000, 1000],
    ],
    names: ["Living", "Room 1"],
    finding: { severity: "warning", kind: "room-named-twice", where: { room: "Bath", at: [2000, 1000] } },
  },
])("$why", ({ labels, names, finding }) => {
  const { rooms, findings } = buildOutline(unitOf(flat, labels), union);
  expect(rooms.map(({ name }) => name)).toEqual(names);
  expect(findings).toEqual([expect.objectContaining(finding)]);
});

it("a point in a column is in the concrete, not in the room round it", () => {
  const unit = unitOf([...room, [1000, 1000, 1300, 1000, 300]], [["Hall", 1100, 1000]]);
  expect(buildOutline(unit, union).findings.map(({ kind }) => kind)).toEqual(["room-point-in-wall"]);
});
