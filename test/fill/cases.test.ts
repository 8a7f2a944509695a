// Walls and the way they meet, each worked by hand. Legs 150, widths on a grid of 50 up to 600, only 600 standard,
// closures 10 to 59. Common practice, no source; the rules are those of the format.

import { describe, expect, it } from "vitest";
import { type FillCase, holdCase } from "../support/fillCase.ts";
import { faceAt } from "../support/runs.ts";
import type { WallLine } from "../support/walls.ts";

const THROUGH: WallLine = [0, 0, 4000, 0, 100];

const JUNCTIONS: readonly FillCase[] = [
  {
    why: "a wall with two free ends: 2650 = 4 · 600 + 250, the filler at the greater x",
    walls: [[0, 0, 2650, 0, 100]],
    runs: [
      [100, -50, "600 600 600 600 250"],
      [100, 50, "600 600 600 600 250"],
      [0, 0, "E100"],
      [2650, 0, "E100"],
    ],
    totals: { closures: 0, narrow: 0, fillers: 2, zones: 0, panels: 10 },
  },
  {
    why: "free ends and a residue: with a corner at neither end the closure stands behind the first panel",
    walls: [[0, 0, 2630, 0, 100]],
    runs: [[100, -50, "600 600 600 600 (30) 200"]],
    totals: { closures: 2, narrow: 0, fillers: 2, zones: 0, panels: 10 },
  },
  {
    why: "a column: its sides are a wall, its ends free ends",
    walls: [[0, 0, 300, 0, 200]],
    runs: [
      [150, -100, "300"],
      [150, 100, "300"],
      [0, 0, "E200"],
    ],
    totals: { closures: 0, narrow: 0, fillers: 2, zones: 0, panels: 2 },
  },
  {
    // Leg 2800..2950 inside, 100 + 150 opposite; 2800 = 4 · 600 + 400 closes at the corner. Upright: 2000 - 200 = 3 · 600.
    why: "an L",
    walls: [
      [0, 0, 3000, 0, 100],
      [3000, 0, 3000, 2000, 100],
    ],
    runs: [
      [100, 50, "600 600 600 600 400 C150"],
      [100, -50, "600 600 600 600 400 250"],
      [2950, 1000, "C150 600 600 600"],
      [3050, 1000, "250 600 600 600"],
    ],
    totals: { closures: 0, narrow: 0, fillers: 2, zones: 2, panels: 18 },
  },
  {
    // 3 · 600 on either side of 2 · 150 + 100; the stem 1500 - 200 = 1300 = 2 · 600 + 100 closes at its corners.
    why: "a T",
    walls: [THROUGH, [2000, 0, 2000, 1500, 100]],
    runs: [
      [100, -50, "600 600 600 400 600 600 600"],
      [100, 50, "600 600 600 C150"],
      [3000, 50, "C150 600 600 600"],
      [1950, 1000, "C150 100 600 600"],
      [2050, 1000, "C150 100 600 600"],
    ],
    totals: { closures: 0, narrow: 0, fillers: 2, zones: 1, panels: 19 },
  },
  {
    // 2 · 150 + 120 = 420: 400 and a closure of 20 at the greater x. Legs end at 1790 and 2210: 1790 = 2 · 600 + 550 + 40,
    // the closure and then the filler at the corner.
    why: "a T with a stem of 120: the zone takes its closure at the greater x",
    walls: [THROUGH, [2000, 0, 2000, 1500, 120]],
    runs: [
      [100, -50, "600 600 550 (40) 400 (20) (40) 550 600 600"],
      [100, 50, "600 600 550 (40) C150"],
    ],
    totals: { closures: 5, narrow: 0, fillers: 6, zones: 1, panels: 19 },
  },
  {
    why: "an X: four corners, no zone",
    walls: [THROUGH, [2000, 0, 2000, 1500, 100], [2000, 0, 2000, -1500, 100]],
    runs: [
      [100, -50, "600 600 600 C150"],
      [3000, 50, "C150 600 600 600"],
      [1950, 1000, "C150 100 600 600"],
      [1950, -1000, "600 600 100 C150"],
    ],
    totals: { closures: 0, narrow: 0, fillers: 4, zones: 0, panels: 24 },
  },
  {
    why: "an X of two walls drawn across each other: the same, and said",
    walls: [THROUGH, [2000, -1500, 2000, 1500, 100]],
    runs: [
      [100, -50, "600 600 600 C150"],
      [1950, -1000, "600 600 100 C150"],
    ],
    problems: ["walls-cross"],
    totals: { closures: 0, narrow: 0, fillers: 4, zones: 0, panels: 24 },
  },
  {
    // A ring of six walls. At (3000, 3000) the facade has the inside corner, so the room side has the zones.
    why: "a facade re-entrant: wall and leg on the room side",
    walls: [
      [0, 0, 6000, 0, 100],
      [6000, 0, 6000, 3000, 100],
      [6000, 3000, 3000, 3000, 100],
      [3000, 3000, 3000, 6000, 100],
      [3000, 6000, 0, 6000, 100],
      [0, 6000, 0, 0, 100],
    ],
    runs: [
      [4000, 2950, "250 600 600 600 600 200 C150"],
      [4000, 3050, "C150 600 600 600 600 200 250"],
      [2950, 4000, "250 600 600 600 600 200 C150"],
      [3050, 4000, "C150 600 600 600 600 200 250"],
    ],
  },
  {
    // Upper legs 1800..1950 and 2050..2200, lower 2100..2250 and 2350..2500. Below free to 2100, above from 2200: zones
    // of 300 opposite one stem each. No joint faces a joint from 1800 to 2500.
    why: "staggered stems: two zones, and one warning for the 700 between the joints",
    walls: [THROUGH, [2000, 0, 2000, 1500, 100], [2300, 0, 2300, -1500, 100]],
    runs: [
      [100, -50, "600 600 600 300 C150"],
      [100, 50, "600 600 600 C150"],
      [3000, 50, "C150 300 300 600 600"],
      [3000, -50, "C150 300 600 600"],
    ],
    problems: ["tie-spacing"],
  },
];

const SHORT: readonly FillCase[] = [
  {
    // 250 between the stems. Below, the run's ends 1550 and 1800 are joints: 150 + 100 before, 250, 100 + 150 behind.
    // 1300 = 2 · 600 + 100, 1950 = 3 · 600 + 150. The stems lose a leg on the sides of the run. Nothing can be tied from
    // the leg end at 1300 to that at 2050: 750.
    why: "a run under two legs is unfilled from corner to corner",
    walls: [THROUGH, [1500, 0, 1500, 1500, 100], [1850, 0, 1850, 1500, 100]],
    runs: [
      [100, -50, "600 600 100 250 250 250 150 600 600 600"],
      [100, 50, "600 600 100 C150"],
      [1700, 50, "?250?"],
      [3000, 50, "C150 150 600 600 600"],
      [1450, 1000, "C150 100 600 600"],
      [1550, 1000, "?150? 100 600 600"],
      [1800, 1000, "?150? 100 600 600"],
      [1900, 1000, "C150 100 600 600"],
    ],
    problems: ["run-too-short", "tie-spacing"],
  },
  {
    // Steps of 25 on both faces at 2000. The thin side loses a leg: 1850 = 2 · 600 + 550 + 100 with nothing narrow,
    // closing at the corner that is left out. 2000 = 3 · 600 + 200 has a corner at neither end.
    why: "a step of thickness, both walls drawn on their centre lines",
    walls: [
      [0, 0, 2000, 0, 100],
      [2000, 0, 4000, 0, 150],
    ],
    runs: [
      [100, 50, "600 600 550 100 ?150?"],
      [100, -50, "600 600 550 100 ?150?"],
      [3000, 75, "600 600 600 200"],
      [3000, -75, "600 600 600 200"],
      [2000, 60, "?25?"],
      [2000, -60, "?25?"],
    ],
    problems: ["jog-too-small", "jog-too-small"],
  },
  {
    // The body lies right of the line: flush at y 0, a step of 50 below. The flush face keeps its joints at 1850 and 2000,
    // where nothing across can be tied: 850 from 1750 to 2600.
    why: "a step of thickness, both walls drawn on their left sides: one step on the right",
    walls: [
      [0, 0, 2000, 0, 100, "left"],
      [2000, 0, 4000, 0, 150, "left"],
    ],
    runs: [
      [100, 0, "600 600 550 100 150 600 600 600 200"],
      [100, -100, "600 600 550 100 ?150?"],
      [3000, -150, "600 600 600 200"],
      [2000, -120, "?50?"],
    ],
    problems: ["jog-too-small", "tie-spacing"],
  },
  {
    why: "a step of thickness, both walls drawn on their right sides: one step on the left",
    walls: [
      [0, 0, 2000, 0, 100, "right"],
      [2000, 0, 4000, 0, 150, "right"],
    ],
    runs: [
      [100, 0, "600 600 550 100 150 600 600 600 200"],
      [100, 100, "600 600 550 100 ?150?"],
      [3000, 150, "600 600 600 200"],
      [2000, 120, "?50?"],
    ],
    problems: ["jog-too-small", "tie-spacing"],
  },
  {
    // The second wall is set back by 60 and overlaps the first: its lower face stands 60 higher. One step on each side.
    // Below, 1750 = 2 · 600 + 550 before the lost leg: from the tie at 1200 to the end at 2000 are 800.
    why: "a wall set aside by less than a leg: a step on either side",
    walls: [
      [0, 0, 2000, 0, 100],
      [1900, 60, 4000, 60, 100],
    ],
    runs: [
      [2000, -20, "?60?"],
      [1900, 90, "?60?"],
    ],
    problems: ["jog-too-small", "jog-too-small", "tie-spacing"],
  },
];

describe("junctions", () => {
  it.each(JUNCTIONS)("$why", (row) => {
    holdCase(row);
  });

  it("names the length between the joints of staggered stems", () => {
    const fill = holdCase(JUNCTIONS.find(({ problems }) => problems?.includes("tie-spacing"))!);
    expect(fill.problems.find(({ kind }) => kind === "tie-spacing")?.message).toMatch(/\b700 mm\b/);
  });
});

describe("what is too short for a corner", () => {
  it.each(SHORT)("$why", (row) => {
    holdCase(row);
  });

  it("points every gap at the problem that says why", () => {
    const fill = holdCase(SHORT[0]!);
    const { unfilled } = faceAt(fill, [1700, 50]);
    expect(unfilled.map(({ problem }) => fill.problems[problem]?.kind)).toContain("run-too-short");
  });
});
