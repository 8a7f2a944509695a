import { expect, it } from "vitest";
import { fillSummary } from "../../src/cli/summary.ts";
import type { Problem } from "../../src/fill/result.ts";
import { fillDocument, unitEntry } from "../support/fillDocument.ts";

const problem = (severity: Problem["severity"], message: string, where: Problem["where"] = {}): Problem => ({
  severity,
  kind: "any",
  message,
  where,
});

it("puts errors before warnings, across units, and closes with how many there are", () => {
  const units = [
    unitEntry({ problems: [problem("warning", "One."), problem("error", "Two.")] }),
    unitEntry({ unit: "B", problems: [problem("error", "Three.")] }),
    unitEntry({ problems: [problem("warning", "Four.")] }),
  ];
  expect(
    fillSummary(fillDocument(...units))
      .split("\n")
      .slice(1),
  ).toEqual([
    "Error in unit A: Two.",
    "Error in unit B: Three.",
    "Warning in unit A: One.",
    "Warning in unit A@2: Four.",
    "2 errors, 2 warnings.",
    "",
  ]);
});

it.each<{ where: Problem["where"]; place: string }>([
  { where: {}, place: "unit A" },
  { where: { face: "A/f3", x: 1250 }, place: "unit A, face A/f3, at 1250 mm along it" },
  { where: { room: "Kitchen" }, place: "unit A, room Kitchen" },
  { where: { wall: "w1", opening: "d1" }, place: "unit A, wall w1, opening d1" },
  { where: { at: [10.12345, -0.0001] }, place: "unit A, at (10.123, 0) mm" },
  { where: { code: "P600" }, place: "unit A, piece P600" },
])("names the place: $place", ({ where, place }) => {
  const summary = fillSummary(
    fillDocument(unitEntry({ problems: [problem("warning", "It is so.", where)] })),
  );
  expect(summary).toContain(`\nWarning in ${place}: It is so.\nno errors, 1 warning.\n`);
});

it("adds up the mass of every bill", () => {
  const bill = [{ code: "P", family: "wall-panel", quantity: 1, mass: 0.1, area: 1 } as const];
  const units = [unitEntry({ bill }), unitEntry({ bill: [{ ...bill[0]!, mass: 0.2 }] })];
  expect(fillSummary(fillDocument(...units))).toContain("mass of all pieces 0.3 kg");
});

it("stops after forty problems and says how many are left", () => {
  const problems = Array.from({ length: 90 }, (_, index) => problem("warning", `${index}.`));
  const lines = fillSummary(fillDocument(unitEntry({ problems }))).split("\n");
  expect(lines.filter((line) => line.startsWith("Warning"))).toHaveLength(40);
  expect(lines).toContain("… and 50 more, all of them in the result.");
});
