// The sound samples against sums worked out by hand from their drawings.
//
//   ├leg┤════ run ════├leg┤   a run is what both faces of a wall share between two forced joints; the demo kit has one
//                             standard width, 600, and every filler from 50 to 550 in steps of 50, so a run of length L
//                             takes L div 600 standard panels and, where something is left, one filler, on each face
//
// A square corner of two walls makes two zones, where three walls meet there is one, and each zone is one panel.

import { describe, expect, it } from "vitest";
import type { UnitFill } from "../../src/fill/result.ts";
import type { Position } from "../../src/plan/project.ts";
import { filled, sampleProject } from "../support/samples.ts";

interface HandWork {
  readonly sample: string;
  readonly unit: string;
  /** Runs between corner legs and jambs, wall by wall in the order of the file. */
  readonly runs: readonly number[];
  /** Corners where two walls end, and joints where a wall ends on another. */
  readonly corners: number;
  readonly joints: number;
  readonly rooms: { readonly [name: string]: number };
}

const HAND_WORK: readonly HandWork[] = [
  {
    sample: "one-room",
    unit: "W",
    runs: [450, 1350, 3300, 2700, 3300],
    corners: 4,
    joints: 0,
    rooms: { Room: 3 * 3.6 },
  },
  {
    sample: "two-bedroom",
    unit: "H",
    runs: [
      ...[600, 600, 600, 600], // w1: the bedrooms' windows stand in the middle
      ...[3600, 1800],
      ...[1200, 1200, 600, 600, 300, 1400, 900], // w3: living room, bathroom, shaft, shower room, store
      ...[1200, 1800, 2500], // w4: loggia, then both sides of the window
      ...[600, 600], // w6; w5 is two legs and an end
      ...[1200, 2000, 1800],
      ...[2100, 1500],
      ...[1200, 1200],
      3600,
      ...[800, 600], // w11: niche, shaft
      300,
      600,
      1800,
    ],
    corners: 6,
    joints: 15,
    rooms: {
      "Living and kitchen": 4.5 * 5.8,
      "Bedroom 1": 3.3 * 3.9,
      "Bedroom 2": 2.7 * 3.9,
      Hall: 6.1 * 1.2,
      Bathroom: 2.3 * 2.1,
      "Shower room": 1.7 * 2.1 + 0.7 * 1.1,
      Store: 1.2 * 2.1,
      Shaft: 0.6 * 0.9,
    },
  },
  {
    sample: "mirrored-pair",
    unit: "L",
    runs: [
      ...[1200, 1000],
      ...[3600, 3600],
      ...[600, 600, 900],
      ...[1200, 1200, 800, 1200, 600],
      ...[2400, 900],
      2400,
      1500,
    ],
    corners: 4,
    joints: 6,
    rooms: { "Living room": 4.9 * 3.9, Kitchen: 2.7 * 2.7, Hall: 2.1 * 3.9, WC: 2.7 * 1.1 },
  },
  {
    sample: "row-of-three",
    unit: "F",
    runs: [1050, 1050, 3900, 400, 400, 600, 1000, 1600, 3900, 2000, 1600, 200, 1400, 600, 600],
    corners: 4,
    joints: 4,
    rooms: { Studio: 4.8 * 4.2, Bathroom: 1.9 * 2.3, Kitchen: 2.8 * 2.3 },
  },
  {
    sample: "row-of-three",
    unit: "N",
    runs: [600, 800, 500, 600, 3300, 1700, 700, 700, 1100, 800, 6700, 3300, 1700, 1600, 1700],
    corners: 4,
    joints: 6,
    rooms: { "Living and kitchen": 3.5 * 7, Bedroom: 2.8 * 3.6, Hall: 2.8 * 1.2, Bathroom: 2.8 * 2 },
  },
  {
    sample: "row-of-three",
    unit: "T",
    runs: [
      ...[1200, 1300, 500, 600],
      8000,
      ...[850, 850, 700, 1100],
      ...[2500, 450, 450, 3200],
      ...[3200, 1300, 2200],
      3000,
      ...[200, 500, 1600],
      3000,
    ],
    corners: 4,
    joints: 8,
    rooms: {
      "Living and kitchen": 3.8 * 8.3,
      "Bedroom 1": 4.6 * 3.5,
      "Bedroom 2": 3.3 * 2.8,
      Bathroom: 3.3 * 1.8,
      Hall: 1.2 * 4.7,
    },
  },
];

function fillsOf(sample: string, unit: string): readonly UnitFill[] {
  return filled(sampleProject(sample)).units.filter((fill) => fill.unit === unit);
}

describe.each(HAND_WORK)("$sample, unit $unit", ({ sample, unit, runs, corners, joints, rooms }) => {
  it("takes as many panels, fillers and zones as the runs ask for", () => {
    const zones = 2 * corners + joints;
    const fillers = 2 * runs.filter((length) => length % 600 > 0).length;
    const panels = 2 * runs.reduce((sum, length) => sum + Math.ceil(length / 600), 0) + zones;
    for (const fill of fillsOf(sample, unit)) {
      expect(fill.totals).toEqual({ closures: 0, narrow: 0, fillers, zones, panels });
    }
  });

  it("has its rooms, each as large as drawn", () => {
    for (const fill of fillsOf(sample, unit)) {
      expect(fill.rooms.map(({ name }) => name).sort()).toEqual(Object.keys(rooms).sort());
      for (const { name, area } of fill.rooms) expect(area).toBeCloseTo(rooms[name]!, 4);
    }
  });

  it("gives a reason for every filler and a piece to take out first in every room that has one", () => {
    for (const { faces } of fillsOf(sample, unit)) {
      const fillers = faces.flatMap(({ pieces }) =>
        pieces.filter(({ family, width, z }) => family === "wall-panel" && z === 0 && width % 600 > 0),
      );
      for (const { reason } of fillers) expect(reason).toMatch(/\d/);
      for (const { room, pieces } of faces) {
        const narrow = pieces.filter(
          ({ family, width, height }) => family === "wall-panel" && width <= 300 && height >= 2000,
        );
        if (room !== null && narrow.length > 0) expect(pieces.some((piece) => piece.firstOut)).toBe(true);
      }
    }
  });
});

describe("two-bedroom", () => {
  it("forms as much concrete as perimeters times heights less openings", () => {
    const { faces } = fillsOf("two-bedroom", "H")[0]!;
    const rooms =
      2 * (4.5 + 5.8 + 3.3 + 3.9 + 2.7 + 3.9 + 6.1 + 1.2 + 2.3 + 2.1 + 2.4 + 2.1 + 1.2 + 2.1) * 2.4;
    const shaft = 2 * (0.6 + 0.9) * 2.5; // no slab: up to its edge
    const loggia = (0.1 + 0.15 + 1.5 + 4.5 + 1.6) * 2.4;
    const outside = (0.3 + 6.35 + 7.6 + 11 + 7.6) * 2.5;
    const doors = 6 * 0.9 * 2.1 + 0.8 * 2.1 + 3 * 2.1;
    const windows = 1.8 * 1.2 + 1.2 * 1.2 + 1.8 * 1.1 + 0.8 * 1.1 + 1.2 * 1.2; // the box is no hole in the panels
    const formed = faces
      .flatMap(({ pieces }) => pieces)
      .reduce((sum, { width, height }) => sum + width * height, 0);
    expect(formed / 1e6).toBeCloseTo(rooms + shaft + loggia + outside - 2 * (doors + windows), 6);
  });

  it("keeps the small window a box inside one unbroken panel, 100 mm and more from its joints", () => {
    const { faces, reveals } = fillsOf("two-bedroom", "H")[0]!;
    const pierced = faces.filter(({ openings }) => openings.some(({ id }) => id === "n5"));
    expect(pierced).toHaveLength(2);
    for (const { openings, pieces } of pierced) {
      const box = openings.find(({ id }) => id === "n5")!;
      expect(box.formed).toBe("box");
      const around = pieces.filter(
        ({ x, z, width, height }) =>
          x <= box.x - 100 && box.x + box.width + 100 <= x + width && z <= box.sill && box.head <= z + height,
      );
      expect(around.map(({ width }) => width)).toEqual([600]);
    }
    expect(reveals.filter(({ opening }) => opening === "n5")).toEqual([]);
  });

  it("has no connector in the shaft and a connector, no cap, round the loggia", () => {
    const { faces } = fillsOf("two-bedroom", "H")[0]!;
    const crowns = (isWanted: (face: UnitFill["faces"][number]) => boolean) =>
      new Set(
        faces
          .filter(isWanted)
          .flatMap(({ pieces }) => pieces.map(({ family }) => family))
          .filter((family) => /connector|cap/.test(family)),
      );
    expect(crowns(({ room }) => room === "Shaft")).toEqual(new Set(["slab-edge-cap", "cap-corner"]));
    const isInLoggia = ([x, y]: Position) => x >= 150 && x <= 4650 && y >= 0 && y <= 1600;
    expect(crowns(({ from, to }) => isInLoggia(from) && isInLoggia(to))).toEqual(
      new Set(["wall-slab-connector", "connector-corner"]),
    );
  });

  it("is poured on four days, on two of them mirrored", () => {
    const { pours } = sampleProject("two-bedroom");
    expect(pours.map(({ day }) => day)).toEqual([1, 2, 3, 4]);
    expect(pours.map(({ mirror }) => mirror)).toEqual([false, true, false, true]);
  });
});

describe("mirrored-pair", () => {
  it("fills the house once for each of its two storey heights", () => {
    const fills = fillsOf("mirrored-pair", "L");
    expect(fills.map(({ pours }) => pours)).toEqual([["p1"], ["p2"]]);
    expect(fills.map(({ storey }) => storey?.clearHeight)).toEqual([2400, 2700]);
    for (const { faces, storey } of fills) {
      for (const { room, height } of faces) {
        const clear = storey!.clearHeight;
        expect(height).toBe(room === null ? clear + 100 : room === "WC" ? clear - 150 : clear);
      }
    }
  });

  it("is drawn so that its mirror image stands beside it, 50 mm away", () => {
    const { walls } = sampleProject("mirrored-pair").units[0]!;
    expect(Math.max(...walls.flatMap(({ from, to }) => [from[0], to[0]]))).toBe(-25);
  });
});

it("pours the row of three types in six pours, each type once mirrored", () => {
  const { pours } = sampleProject("row-of-three");
  expect(pours.map(({ unit, mirror }) => (mirror ? `${unit} mirrored` : unit))).toEqual([
    ...["F", "N", "T"],
    ...["T mirrored", "N mirrored", "F mirrored"],
  ]);
});
