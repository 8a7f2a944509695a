// What a person reads of the strength of the slab: needed, expected when, and how long before or after striking.

import { expect, it } from "vitest";
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
