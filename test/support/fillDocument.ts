// A small fill made up by hand, with every kind of entry and every optional member in it at least once.

import type { FillDocument, UnitFill } from "../../src/fill/result.ts";

/** A unit entry with nothing in it, to be filled by the test. */
export function unitEntry(members: Partial<UnitFill> = {}): UnitFill {
  return {
    unit: "A",
    pours: ["p1"],
    rooms: [],
    faces: [],
    corners: [],
    reveals: [],
    soffits: [],
    ties: [],
    fittings: [],
    accessories: [],
    bill: [],
    totals: { closures: 0, narrow: 0, fillers: 0, zones: 0, panels: 0 },
    causes: [],
    problems: [],
    ...members,
  };
}

export function fillDocument(...units: readonly UnitFill[]): FillDocument {
  return {
    format: "panelwright-fill",
    version: 1,
    project: "Sample",
    units,
    totals: { closures: 1, narrow: 2, fillers: 3, zones: 4, panels: 5 },
  };
}

const panel = {
  piece: "A/p1",
  code: "P600",
  family: "wall-panel",
  x: 0,
  z: 0,
  width: 600,
  height: 2250,
} as const;
const square = [
  [0, 0],
  [0, 600],
  [600, 600],
] as const;

export const everything: FillDocument = fillDocument(
  unitEntry({
    storey: { clearHeight: 2400, slab: 100 },
    rooms: [{ name: "Kitchen", kind: "room", area: 11.52, faces: ["A/f1"] }],
    faces: [
      {
        id: "A/f1",
        walls: ["w1"],
        room: null,
        from: [4050, 50],
        to: [50, 50],
        settled: [
          [4050, 50],
          [50, 50],
        ],
        length: 4000,
        height: 2400,
        openings: [{ id: "d1", x: 1950, width: 900, sill: 0, head: 2100, formed: "band" }],
        pieces: [panel, { ...panel, madeToMeasure: true, reason: "a filler", firstOut: true, zone: true }],
        unfilled: [{ x: 600, z: 0, width: 275, height: 2400, problem: 0 }],
      },
    ],
    corners: [
      { piece: "A/p2", code: "OC", family: "outside-corner", from: [0, 0, 0], to: [0, 0, 2250] },
      {
        piece: "A/p3",
        code: "OC",
        family: "outside-corner",
        from: [0, 0, 0],
        to: [0, 0, 900],
        madeToMeasure: true,
      },
    ],
    reveals: [
      {
        opening: "d1",
        side: "left",
        pieces: [
          { piece: "A/p4", code: "SE", family: "stop-end", at: 0, length: 2100, width: 100 },
          {
            piece: "A/p5",
            code: "SE",
            family: "stop-end",
            at: 0,
            length: 50,
            width: 100,
            madeToMeasure: true,
          },
        ],
      },
    ],
    soffits: [
      {
        room: "Kitchen",
        along: "x",
        height: 2400,
        outline: square,
        holes: [square],
        pieces: [{ piece: "A/p6", code: "SP", family: "slab-panel", outline: square }],
        unfilled: [{ outline: square, problem: 1 }],
        props: [{ piece: "A/p7", code: "PR", at: [300, 300], area: 0.36 }],
        counts: { closures: 0, fillers: 0, panels: 1, strips: 0 },
      },
    ],
    ties: [{ at: [3300, 0], heights: [150, 450], faces: ["A/f1", "A/f2"], length: 100, code: "T100" }],
    fittings: [
      { piece: "A/p8", code: "B", family: "wall-bracket", face: "A/f1", x: 300, z: 150 },
      { piece: "A/p9", code: "L", family: "alignment-ledger", face: "A/f1", x: 0, z: 150, length: 3000 },
    ],
    accessories: [{ code: "PIN", family: "pin", quantity: 40, rule: "pinPitch" }],
    bill: [{ code: "P600", family: "wall-panel", quantity: 2, mass: 59.4, area: 2.7 }],
    totals: { closures: 1, narrow: 2, fillers: 3, zones: 4, panels: 5 },
    causes: [{ message: "A cause.", closures: 1, fillers: 3, places: 2, widths: [275] }],
    problems: [
      { severity: "error", kind: "no-exact-cover", message: "A problem.", where: { face: "A/f1", x: 600 } },
      {
        severity: "warning",
        kind: "settled",
        message: "Another.",
        where: { room: "Kitchen", wall: "w1", opening: "d1", at: [1, 2], code: "P600" },
      },
    ],
  }),
);
