// Random units whose rooms put a soffit to the test: rectangles, L, T and U with columns, free-standing walls, shafts,
// slab openings, balconies, dropped soffits and doors of full height; as drawn, mirrored, turned or askew.
//
//   ┌─────────┐      walls on the outline's lines, so the room is half their thickness smaller all round
//   │   ▪  ┌──┘
//   └──────┘ ░░ balcony

import fc from "fast-check";
import type { Opening, Position, RoomLabel, SlabOutline, Unit, Wall } from "../../src/plan/project.ts";
import { opening } from "./filled.ts";
import { unitOfWalls } from "./walls.ts";

const T = 100;

const size = fc
  .tuple(fc.integer({ min: 34, max: 100 }), fc.constantFrom(0, 0, 0, 20, 25, 37))
  .map(([steps, off]) => steps * 50 + off);
const part = fc.integer({ min: 6, max: 14 });

export interface SoffitWish {
  readonly width: number;
  readonly height: number;
  readonly shape: "rectangle" | "ell" | "tee" | "you";
  /** Shares of the sides, in twentieths. */
  readonly cuts: readonly [number, number];
  readonly island: "none" | "column" | "wall";
  readonly door: readonly [side: number, isFull: boolean] | null;
  readonly shaft: "none" | "open" | "room";
  readonly drop: number;
  readonly hole: readonly [x: number, y: number, width: number, height: number] | null;
  readonly balcony: readonly [at: number, width: number, depth: number] | null;
}

const wishes: fc.Arbitrary<SoffitWish> = fc.record({
  width: size,
  height: size,
  shape: fc.constantFrom("rectangle", "ell", "tee", "you"),
  cuts: fc.tuple(part, part),
  island: fc.constantFrom("none", "none", "column", "wall"),
  door: fc.option(fc.tuple(fc.nat(7), fc.boolean())),
  shaft: fc.constantFrom("none", "open", "room"),
  drop: fc.constantFrom(0, 0, 150, 200),
  hole: fc.option(
    fc.tuple(
      fc.nat(4000),
      fc.nat(4000),
      fc.integer({ min: 100, max: 1200 }),
      fc.integer({ min: 100, max: 1200 }),
    ),
  ),
  balcony: fc.option(
    fc.tuple(fc.nat(1000), fc.integer({ min: 900, max: 3000 }), fc.integer({ min: 600, max: 1500 })),
  ),
});

export const soffitUnits: fc.Arbitrary<Unit> = wishes.map(soffitUnit);

function soffitUnit(wish: SoffitWish): Unit {
  const { width, height, island, door, shaft, drop, hole, balcony } = wish;
  const corners = cornersOf(wish);
  const walls: Wall[] = [];
  const add = (from: Position, to: Position, thickness = T): void => {
    walls.push({ id: `w${walls.length + 1}`, from, to, thickness, justify: "centre" });
  };
  corners.forEach((from, k) => {
    add(from, corners[(k + 1) % corners.length]!);
  });
  const openings: Opening[] = [];
  const wall = walls[(door?.[0] ?? 0) % corners.length]!;
  const length = Math.abs(wall.to[0] - wall.from[0]) + Math.abs(wall.to[1] - wall.from[1]);
  if (door !== null && length >= 1700)
    openings.push(opening("d1", wall.id, [400, 900, 0, door[1] ? 2400 - drop : 2100]));
  const rooms: RoomLabel[] = [{ name: "Room", at: [500, 500], kind: "room", soffitDrop: drop }];
  // Beside the lower left corner, on the other side of the west wall.
  if (shaft !== "none") {
    add([0, 0], [-1700, 0]);
    add([-1700, 0], [-1700, 1600]);
    add([-1700, 1600], [0, 1600]);
    rooms.push({ name: "Shaft", at: [-800, 800], kind: shaft, soffitDrop: 0 });
  }
  if (island !== "none" && Math.min(width, height) > 2600) {
    const [x, y] = [800, 1100];
    add([x, y], [x + (island === "column" ? 300 : 600), y], island === "column" ? 200 : T);
  }
  const slabs: SlabOutline[] = [];
  if (balcony !== null) {
    const [at, wide, deep] = balcony;
    const [x0, x1] = [at, Math.min(at + wide, width)];
    const [top, low] = [-T / 2, -T / 2 - deep];
    slabs.push({
      id: "b1",
      outline: [
        [x0, low],
        [x1, low],
        [x1, top],
        [x0, top],
      ],
    });
  }
  const slabOpenings = hole === null ? [] : [{ id: "o1", outline: rectangleAt(hole) }];
  return { ...unitOfWalls(walls, rooms), openings, slabs, slabOpenings };
}

function rectangleAt([x, y, w, h]: readonly [number, number, number, number]): readonly Position[] {
  return [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ];
}

function cornersOf({ width: w, height: h, shape, cuts }: SoffitWish): readonly Position[] {
  const x = Math.round((w * cuts[0]) / 20 / 50) * 50;
  const y = Math.round((h * cuts[1]) / 20 / 50) * 50;
  const side = Math.round(x / 3 / 50) * 50;
  if (shape === "rectangle") return rectangleAt([0, 0, w, h]);
  if (shape === "ell")
    return [
      [0, 0],
      [w, 0],
      [w, y],
      [x, y],
      [x, h],
      [0, h],
    ];
  if (shape === "tee")
    return [
      [0, 0],
      [w, 0],
      [w, y],
      [w - side, y],
      [w - side, h],
      [side, h],
      [side, y],
      [0, y],
    ];
  return [
    [0, 0],
    [w, 0],
    [w, h],
    [w - side, h],
    [w - side, y],
    [side, y],
    [side, h],
    [0, h],
  ];
}

/** The unit with every point moved. Where the move mirrors, sides keep: all walls are drawn on their centre line. */
export function movedUnit(unit: Unit, move: (at: Position) => Position): Unit {
  const outlines = (list: readonly SlabOutline[]) =>
    list.map((one) => ({ ...one, outline: one.outline.map(move) }));
  return {
    ...unit,
    walls: unit.walls.map((wall) => ({ ...wall, from: move(wall.from), to: move(wall.to) })),
    rooms: unit.rooms.map((room) => ({ ...room, at: move(room.at) })),
    slabs: outlines(unit.slabs),
    slabOpenings: outlines(unit.slabOpenings),
  };
}
