// What a person reads of the strength of the slab: needed, expected when, and how long before or after striking.

import { expect, it } from "vitest";
import type { Check } from "../../src/assess/checkDocument.ts";
import { checkSummary } from "../../src/cli/checkSummary.ts";
import { assessed } from "../support/assessed.ts";
import { fillDocument, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";

const summaryOf = (concrete: Record<string, number | number[][]>): string => {
  const project = projectOf(roomPlan(0), {
    concrete: {
      cubeStrength: 30,
      serviceLoad: 6.5,
      strengthTests: [
        [240, 6],
        [720, 18],
      ],
      ...concrete,
    },
  });
  return checkSummary(assessed({ project, fill: fillDocument(project) }), 0);
};
const steady = [
  [0, 30],
  [24, 30],
];

it.each([
  {
    why: "in time",
    concrete: { log: steady, strikeAt: 20 },
    says: "Slab of unit A: 10 MPa needed, expected after 17.9 h by the log, 2.1 h before the hour of striking.",
  },
  {
    why: "too late",
    concrete: { log: steady, strikeAt: 16 },
    says: "Slab of unit A: 10 MPa needed, expected after 17.9 h by the log, 1.9 h after the hour of striking.",
  },
  {
    why: "the log ends before",
    concrete: { log: [[10, 30]] },
    says: "Slab of unit A: 10 MPa needed, expected after 17.9 h after the log, as cold as it ever was.",
  },
])("tells when the slab is strong enough: $why", ({ concrete, says }) => {
  expect(summaryOf(concrete).split("\n")).toContain(says);
});

it("says nothing of it where nothing is known, and names the checks of all pours", () => {
  const summary = summaryOf({});
  expect(summary).not.toContain("Slab of unit");
  expect(summary).toContain("Not checked: all pours: the pours have no days (pours[].day).");
});

// Walls whose rate no method gives are worse than columns at 70 % of theirs: a share would hide them.
it("calls nothing of a kind the most used where another one is over without a share of a limit", () => {
  const project = projectOf(roomPlan(0), {});
  const document = assessed({ project, fill: fillDocument(project) });
  const rate = (given: Partial<Check>): Check => ({
    ...document.checks[0]!,
    kind: "placing-rate",
    unit: "m/h",
    value: 2,
    limit: null,
    utilisation: null,
    status: "over",
    reason: "no rate of the method keeps the pressure that low",
    ...given,
  });
  const columns = rate({ limit: 2.85, utilisation: 0.7, status: "within" });
  const told = (checks: readonly Check[]) => checkSummary({ ...document, checks }, 0);
  expect(told([columns])).toContain("Most used, placing-rate");
  const both = told([rate({}), columns]);
  expect(both).not.toContain("Most used, placing-rate");
  expect(both).toMatch(/Over the stated limit: .*placing-rate 2 m\/h: no rate of the method/);
});
