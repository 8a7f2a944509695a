// Openings of one line of wall stand in the order of their places on every face, whatever walls they are drawn on.

import { describe, expect, it } from "vitest";
import { demoKit } from "../../src/kit/demo.ts";
import { auditSquare } from "../support/audit.ts";
import { fillOne, opening, STOREY } from "../support/filled.ts";
import { faceAt, runUpward } from "../support/runs.ts";
import { unitOf, type WallLine } from "../support/walls.ts";

const STEM: WallLine = [3000, 0, 3000, 2000, 100];

// Jambs at 1000, 1900, 4000, 4900; the stem's legs end at 2800 and 3200, so 900 = 600 + 300 before it and
// 800 = 600 + 200 behind it, each closing at its leg, with 2 · 150 + 100 = 400 between. 1000 = 600 + 400 and
// 1100 = 600 + 500 from free end to jamb close at the greater x.
const RUN = "600 400 /900/ 600 300 400 200 600 /900/ 600 500";

const CASES: readonly {
  readonly why: string;
  readonly walls: readonly WallLine[];
  readonly doors: readonly (readonly [string, number])[];
}[] = [
  {
    why: "one wall drawn through",
    walls: [[0, 0, 6000, 0, 100], STEM],
    doors: [
      ["w1", 1000],
      ["w1", 4000],
    ],
  },
  {
    why: "two walls drawn on",
    walls: [[0, 0, 3000, 0, 100], [3000, 0, 6000, 0, 100], STEM],
    doors: [
      ["w1", 1000],
      ["w2", 1000],
    ],
  },
  {
    why: "two walls drawn at each other",
    walls: [[0, 0, 3000, 0, 100], [6000, 0, 3000, 0, 100], STEM],
    doors: [
      ["w1", 1000],
      ["w2", 1100],
    ],
  },
  {
    why: "two walls drawn apart",
    walls: [[3000, 0, 0, 0, 100], [3000, 0, 6000, 0, 100], STEM],
    doors: [
      ["w1", 1100],
      ["w2", 1000],
    ],
  },
];

describe("a joining wall between two doors", () => {
  it.each(CASES)("$why", ({ walls, doors }) => {
    const unit = {
      ...unitOf(walls),
      openings: doors.map(([wall, at], k) => opening(`d${k + 1}`, wall, [at, 900, 0, 2100])),
    };
    const fill = fillOne(unit);
    expect(auditSquare(fill, { unit, storey: STOREY, kit: demoKit })).toEqual([]);
    expect(runUpward(faceAt(fill, [500, -50]))).toBe(RUN);
    expect(fill.totals).toEqual({ closures: 0, narrow: 0, fillers: 8, zones: 1, panels: 23 });
  });
});
