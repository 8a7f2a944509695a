// From the log of the slab to the hour at which it is strong enough.

import { describe, expect, it } from "vitest";
import { maturityPoints, strikingPrediction } from "../../src/assess/maturityTable.ts";
import type { Project } from "../../src/plan/project.ts";
import { entryOf } from "../support/assessed.ts";
import { fillDocument, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";

const entry = (concrete: Project["concrete"], slab = 100) => {
  const project = projectOf(roomPlan(0), { concrete, storey: { clearHeight: 2400, slab } });
  return entryOf({ project, fill: fillDocument(project) });
};
const TESTS = [
  [240, 6],
  [720, 18],
];
// 100 mm slab: 10 MPa needed, as the checks of striking say; with the margin 13.45 MPa, so 538 °C·h.
const DESIGN = { cubeStrength: 30, serviceLoad: 6.5, strengthTests: TESTS };
const predicted = (more: object) => strikingPrediction(entry({ ...DESIGN, ...more }))[0];

describe("the table of the log", () => {
  it("sums maturity and age up from placing to each reading", () => {
    const points = maturityPoints(
      entry({
        ...DESIGN,
        datum: 0,
        log: [
          [6, 20],
          [18, 30],
          [30, 30],
        ],
      }).concrete,
    );
    // 6 h at 20, 12 h from 20 to 30, 12 h at 30: 120, 420, 780 °C·h; 420 is at 10.5 MPa, 780 after the last test.
    expect(points.map(({ hour, temperature, maturity }) => [hour, temperature, maturity])).toEqual([
      [6, 20, 120],
      [18, 30, 420],
      [30, 30, 780],
    ]);
    expect(points[0]).toMatchObject({ age: 6, strength: null });
    expect(points[1]!.strength).toBeCloseTo(10.5 - 3.45, 9);
    expect(points[2]!.strength).toBeNull();
  });

  it("begins with nothing where the log begins at placing, and says nothing after a reading out of range", () => {
    const { concrete } = entry({
      ...DESIGN,
      log: [
        [0, 20],
        [10, 20],
        [11, 80],
        [12, 20],
      ],
    });
    const points = maturityPoints(concrete);
    expect(points.map(({ maturity }) => maturity)).toEqual([0, 200, 250, 300]);
    expect(points.map(({ age }) => age)).toEqual([0, 10, expect.any(Number), expect.any(Number)]);
    const hot = {
      ...concrete,
      log: [[0, 20] as const, [10, 20] as const, [11, 100] as const, [12, 90] as const],
    };
    expect(maturityPoints(hot).map(({ age }) => age)).toEqual([0, 10, expect.any(Number), null]);
  });

  it("is empty without a log", () => {
    expect(maturityPoints(entry(DESIGN).concrete)).toEqual([]);
  });
});

describe("the hour of enough strength", () => {
  it.each([
    {
      why: "inside the log, with what is left to the hour of striking",
      more: {
        strikeAt: 20,
        log: [
          [0, 30],
          [24, 30],
        ],
      },
      says: { needed: 10, isLogged: true, note: "" },
      hour: 538 / 30,
      margin: 20 - 538 / 30,
    },
    {
      why: "after the log, as cold as it ever was: 400 °C·h by then, 138 more at 15",
      more: {
        strikeAt: 24,
        log: [
          [0, 15],
          [10, 25],
          [18, 25],
        ],
      },
      says: { isLogged: false },
      hour: 18 + 138 / 15,
      margin: 24 - 18 - 138 / 15,
    },
    {
      why: "no hour of striking, no margin",
      more: {
        log: [
          [0, 30],
          [24, 30],
        ],
      },
      says: { margin: null },
      hour: 538 / 30,
      margin: null,
    },
    {
      why: "first test stronger than needed: what was before it does not tell",
      more: {
        strengthTests: [
          [300, 15],
          [500, 20],
        ],
        log: [
          [0, 30],
          [24, 30],
        ],
      },
      says: { note: expect.stringContaining("perhaps earlier") },
      hour: 10,
      margin: null,
    },
  ])("$why", ({ more, says, hour, margin }) => {
    const found = predicted(more);
    expect(found).toMatchObject(says);
    expect(found!.hour).toBeCloseTo(hour, 6);
    if (margin !== null) expect(found!.margin).toBeCloseTo(margin, 6);
  });

  it.each([
    { why: "no log", more: {}, note: /needs a log/ },
    { why: "nothing to go by", more: { strengthTests: [] }, note: /needs tests of the mix/ },
    {
      why: "tests that end too weak",
      more: {
        strengthTests: [
          [100, 2],
          [200, 8],
        ],
        log: [[0, 20]],
      },
      note: /strength asked for is 13\.45 MPa; the figure holds from 2 to 8/,
    },
    { why: "a log colder than the datum", more: { log: [[5, -3]] }, note: /so cold that nothing more/ },
    { why: "no service load", more: { serviceLoad: undefined }, note: /service load/ },
  ])("is not told with $why", ({ more, note }) => {
    const { serviceLoad, ...rest } = { ...DESIGN, ...more };
    const found = strikingPrediction(
      entry({ ...rest, ...(serviceLoad !== undefined && { serviceLoad }) }),
    )[0];
    expect(found!.hour).toBeNull();
    expect(found!.note).toMatch(note);
  });

  it("is not asked for where no slab is cast", () => {
    expect(strikingPrediction(entry(DESIGN, 0))).toEqual([]);
  });
});
