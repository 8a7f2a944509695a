// Openings in walls, each worked by hand. Legs 150, widths on a grid of 50 up to 600, panels of 2250 under a connector of
// 150 or a cap of 250, tie rows 150, 450, 750, 1200, 1800. Common practice, no source; the rules are those of the format.

import { describe, expect, it } from "vitest";
import type { FilledFace, UnitFill } from "../../src/fill/result.ts";
import { problemText } from "../../src/sheet/problemText.ts";
import { type FillCase, holdCase } from "../support/fillCase.ts";
import { opening } from "../support/filled.ts";
import { faceAt } from "../support/runs.ts";
import { roundRoom, type WallLine } from "../support/walls.ts";

const WALL: readonly WallLine[] = [[0, 0, 3000, 0, 100]];
/** Clear 3000 by 3600, walls of 100 on their centre lines: w1 is the south wall. */
const ROOM = roundRoom([-50, -50], [3050, 3650], 100);
const PLAIN = "600 600 600 600 600";

/** What stands over or under an opening, as "family width×height@z". */
function bandOf({ pieces, openings }: FilledFace): string[] {
  const { x, width } = openings[0]!;
  return pieces
    .filter((one) => one.x >= x && one.x + one.width <= x + width)
    .sort((a, b) => a.z - b.z || a.x - b.x)
    .map((one) => `${one.family} ${one.width}×${one.height}@${one.z}`);
}

const tiesAt = (fill: UnitFill) => Object.fromEntries(fill.ties.map(({ at, heights }) => [at[0], heights]));
const ALL = [150, 450, 750, 1200, 1800];

describe("openings from the floor", () => {
  // 1000 = 600 + 400 and 1100 = 600 + 500, a corner at neither end: the filler at the greater x.
  const RUN = "600 400 /900/ 600 500";

  it("2100 high: a band of 150 in one piece of 900", () => {
    const row: FillCase = {
      why: "",
      walls: WALL,
      openings: [opening("d", "w1", [1000, 900, 0, 2100])],
      runs: [
        [100, -50, RUN],
        [100, 50, RUN],
      ],
      totals: { closures: 0, narrow: 0, fillers: 4, zones: 0, panels: 8 },
    };
    const fill = holdCase(row);
    expect(bandOf(faceAt(fill, [100, -50]))).toContain("wall-panel 900×150@2100");
    // Joints at 600 and 2500; none at the jambs.
    expect(tiesAt(fill)).toEqual({ 600: ALL, 2500: ALL });
  });

  it("2400 high, the full height: connectors end at the jambs, over it a cap as high as the slab", () => {
    const fill = holdCase({
      why: "",
      walls: ROOM,
      openings: [opening("d", "w1", [650, 900, 0, 2400])],
      runs: [[100, 0, "C150 450 /900/ 600 600 150 C150"]],
    });
    expect(bandOf(faceAt(fill, [100, 0]))).toEqual([]);
    const outside = bandOf(faceAt(fill, [100, -100]));
    expect(outside.every((one) => /^slab-edge-cap \d+×100@2400$/.test(one))).toBe(true);
    // 900 = 600 + 300.
    expect(outside).toHaveLength(2);
    expect(
      fill.reveals.map(({ side, pieces }) => [side, pieces.reduce((sum, { length }) => sum + length, 0)]),
    ).toEqual(
      expect.arrayContaining([
        ["left", 2400],
        ["right", 2400],
        ["head", 900],
      ]),
    );
  });

  it("2200 high: in place of a band of 50 a connector of 200 inside and a cap of 300 outside", () => {
    const fill = holdCase({
      why: "",
      walls: ROOM,
      openings: [opening("d", "w1", [650, 900, 0, 2200])],
      runs: [[100, 0, "C150 450 /900/ 600 600 150 C150"]],
    });
    const kinds = (face: FilledFace) => [...new Set(bandOf(face).map((one) => one.replace(/ \d+×/, " ")))];
    expect(kinds(faceAt(fill, [100, 0]))).toEqual(["wall-slab-connector 200@2200"]);
    expect(kinds(faceAt(fill, [100, -100]))).toEqual(["slab-edge-cap 300@2200"]);
    // They end at the jambs, so the connectors beside them do too.
    const { pieces } = faceAt(fill, [100, 0]);
    const crossing = pieces.filter(({ z, x, width }) => z >= 2200 && x < 1500 && x + width > 1500);
    expect(crossing).toEqual([]);
  });

  it("2250 high: the connector runs over it, there is no band", () => {
    const fill = holdCase({
      why: "",
      walls: ROOM,
      openings: [opening("d", "w1", [650, 900, 0, 2250])],
      runs: [[100, 0, "C150 450 /900/ 600 600 150 C150"]],
    });
    const over = faceAt(fill, [100, 0]).pieces.filter(({ x, width }) => x < 2400 && x + width > 1500);
    expect(over.map(({ family, z, height }) => [family, z, height])).toEqual(
      over.map(() => ["wall-slab-connector", 2250, 150]),
    );
  });

  it("2300 high: a connector of 100 and a cap of 200 between the jambs", () => {
    const fill = holdCase({
      why: "",
      walls: ROOM,
      openings: [opening("d", "w1", [650, 900, 0, 2300])],
      runs: [[100, 0, "C150 450 /900/ 600 600 150 C150"]],
    });
    const kinds = (face: FilledFace) => [...new Set(bandOf(face).map((one) => one.replace(/ \d+×/, " ")))];
    expect(kinds(faceAt(fill, [100, 0]))).toEqual(["wall-slab-connector 100@2300"]);
    expect(kinds(faceAt(fill, [100, -100]))).toEqual(["slab-edge-cap 200@2300"]);
  });
});

describe("windows", () => {
  it("with a sill: bands of two standard panels, ties on jamb lines and in the band under it", () => {
    // 900 = 600 + 300 on either side, the filler at the greater x; 1200 = 2 · 600 under and over it. Rows under 900 - 100.
    const fill = holdCase({
      why: "",
      walls: WALL,
      openings: [opening("f", "w1", [900, 1200, 900, 2100])],
      runs: [
        [100, -50, "600 300 600 600 600 300"],
        [100, 50, "600 300 600 600 600 300"],
      ],
      totals: { closures: 0, narrow: 0, fillers: 4, zones: 0, panels: 8 },
    });
    expect(bandOf(faceAt(fill, [100, -50])).slice(0, 4)).toEqual([
      "wall-panel 600×900@0",
      "wall-panel 600×900@0",
      "wall-panel 600×150@2100",
      "wall-panel 600×150@2100",
    ]);
    const under = [150, 450, 750];
    expect(tiesAt(fill)).toEqual({ 600: ALL, 900: under, 1500: under, 2100: under, 2700: ALL });
    expect(fill.reveals.map(({ side }) => side).sort()).toEqual(["head", "left", "right", "sill"]);
  });

  it("boxed out: panels go on unbroken, no tie within 100 of it", () => {
    const row = (at: number): FillCase => ({
      why: "",
      walls: WALL,
      openings: [opening("b", "w1", [at, 400, 1200, 1600], { formed: "box" })],
      runs: [
        [100, -50, PLAIN],
        [100, 50, PLAIN],
      ],
    });
    // Box 1300..1700: 100 from the joints at 1200 and 1800, which is far enough.
    const far = holdCase(row(1300));
    expect(tiesAt(far)).toEqual({ 600: ALL, 1200: ALL, 1800: ALL, 2400: ALL });
    expect(far.reveals).toEqual([]);
    expect(far.corners.filter(({ from }) => from[0] > 0 && from[0] < 3000)).toEqual([]);
    // Box 1250..1650: 50 from the joint at 1200, whose row at 1200 is left out. Then 600 to 1800 are 1200 without a tie.
    const near = holdCase({ ...row(1250), problems: ["tie-spacing"] });
    expect(tiesAt(near)).toEqual({ 600: ALL, 1200: [150, 450, 750, 1800], 1800: ALL, 2400: ALL });
  });
});

describe("openings that have no place", () => {
  it.each([
    {
      why: "past the end: 2500 + 900 − 3000",
      at: 2500,
      width: 900,
      over: 400,
      end: "end",
      es: "pasa 400 mm del final",
    },
    {
      why: "before the start",
      at: -50,
      width: 900,
      over: 50,
      end: "start",
      es: "empieza 50 mm antes del comienzo",
    },
    {
      why: "past both ends, by more at the end",
      at: -50,
      width: 3150,
      over: 100,
      end: "end",
      es: "pasa 100 mm del final",
    },
  ])("are told by the end of the wall they pass: $why", ({ at, width, over, end, es }) => {
    const fill = holdCase({
      why: "",
      walls: WALL,
      openings: [opening("d", "w1", [at, width, 0, 2100])],
      runs: [[100, -50, PLAIN]],
      problems: ["opening-outside-wall"],
    });
    const { message } = fill.problems.find(({ kind }) => kind === "opening-outside-wall")!;
    expect(message).toContain(
      `Opening d reaches ${over} mm beyond the ${end} of wall w1, which is 3000 mm long:`,
    );
    expect(problemText(message, "es")).toContain(`${es} del muro w1, que mide 3000 mm:`);
  });

  it.each<FillCase>([
    {
      // The first stays: 500 = one panel, 3000 - 1400 = 1600 = 2 · 600 + 400.
      why: "overlapping: the one that begins first stays",
      walls: WALL,
      openings: [opening("a", "w1", [1200, 900, 0, 2100]), opening("b", "w1", [500, 900, 0, 2100])],
      runs: [[100, -50, "500 /900/ 600 600 400"]],
      problems: ["openings-overlap"],
    },
    {
      why: "across a joining wall",
      walls: [...WALL, [1500, 0, 1500, 1500, 100]],
      openings: [opening("d", "w1", [1200, 900, 0, 2100])],
      runs: [[100, 50, "600 600 100 C150"]],
      problems: ["opening-at-corner"],
    },
    {
      // Pier 50..150 inside: 100 for a leg of 150. Outside 200 to the jamb with a joint at 50, where the run begins.
      // 1950 = 3 · 600 + 150 behind the door; the joining wall's inner face loses a leg: 1800 = 3 · 600,
      // and its outer face has no tie from the corner at -50 to the joint at 800: 850.
      why: "a pier under a leg between corner and jamb: unfilled, the corner left out",
      walls: [
        [0, 0, 3000, 0, 100],
        [0, 0, 0, 2000, 100],
      ],
      openings: [opening("d", "w1", [150, 900, 0, 2100])],
      runs: [
        [2000, 50, "?100? /900/ 600 600 600 150"],
        [2000, -50, "100 100 /900/ 600 600 600 150"],
        [50, 1000, "?150? 600 600 600"],
      ],
      problems: ["opening-at-corner", "tie-spacing"],
    },
  ])("$why", (row) => {
    holdCase(row);
  });
});
