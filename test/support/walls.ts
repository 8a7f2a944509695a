// Short ways to write a unit down in a test.

import type { Justify, Position, RoomLabel, Unit, Wall } from "../../src/plan/project.ts";

/** x and y of the two ends, thickness, and which part of the body is drawn (the centre if not said). */
export type WallLine = readonly [
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  thickness: number,
  justify?: Justify,
];

/** A unit of walls w1, w2 … and, if wanted, rooms named at a point. */
export function unitOf(
  lines: readonly WallLine[],
  rooms: readonly (readonly [name: string, x: number, y: number])[] = [],
): Unit {
  return unitOfWalls(lines.map(wallOf), rooms.map(roomOf));
}

/** A unit of ready walls and nothing else. */
export function unitOfWalls(walls: readonly Wall[], rooms: readonly RoomLabel[] = []): Unit {
  return {
    id: "A",
    name: "A",
    walls,
    openings: [],
    rooms,
    slabs: [],
    slabOpenings: [],
    services: [],
    controlLines: [],
    pinned: [],
  };
}

function wallOf([x1, y1, x2, y2, thickness, justify = "centre"]: WallLine, i: number): Wall {
  return { id: `w${i + 1}`, from: [x1, y1], to: [x2, y2], thickness, justify };
}

function roomOf([name, x, y]: readonly [string, number, number]): RoomLabel {
  return { name, at: [x, y], kind: "room", soffitDrop: 0 };
}

/** The four walls round a rectangle, drawn on their centre lines corner to corner: south, east, north, west. */
export function roundRoom([x1, y1]: Position, [x2, y2]: Position, thickness: number): WallLine[] {
  return [
    [x1, y1, x2, y1, thickness],
    [x2, y1, x2, y2, thickness],
    [x2, y2, x1, y2, thickness],
    [x1, y2, x1, y1, thickness],
  ];
}
