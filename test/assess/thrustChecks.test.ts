// Jambs, sills, boxes and feet: figures worked out by hand, at full liquid head of 25 kN/m³ over 2.5 m.

import { describe, expect, it } from "vitest";
import type { Check } from "../../src/assess/checkDocument.ts";
import { thrustChecks } from "../../src/assess/thrustChecks.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Opening } from "../../src/plan/project.ts";
import { entryOf } from "../support/assessed.ts";
import { fillDocument, opening, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";

function checksOf(openings: readonly Opening[], kit = demoKit): readonly Check[] {
  const project = projectOf({ ...roomPlan(0), openings });
  return thrustChecks(entryOf({ project, fill: fillDocument(project, kit), kit }));
}
const of = (checks: readonly Check[], kind: string) => checks.find((check) => check.kind === kind);
const input = (check: Check | undefined, name: string) =>
  check?.inputs.find((each) => each.name === name)?.value;

describe("what pushes and lifts", () => {
  it("a door's jamb: 25·0.1·(2.5² − 0.4²)/2 = 7.61 kN, 3.98 of it in the lowest 750 mm", () => {
    // The jambs stand 1000 and 1200 from the corners: no leg's thrust comes to them.
    const jamb = of(checksOf([opening("d1", "w1", [1050, 900, 0, 2100])]), "jamb-thrust");
    expect(jamb).toMatchObject({ status: "not-checked", limit: null, unit: "kN", where: { opening: "d1" } });
    expect(jamb!.value).toBeCloseTo(7.6125, 9);
    expect(input(jamb, "of it in the lowest 750 mm")).toBeCloseTo((2.5 * (2.5 ** 2 - 1.75 ** 2)) / 2, 9);
    expect(input(jamb, "leg of the inside corner beside it")).toBe(0);
    expect(jamb!.reason).toMatch(/spreaders as wide as the opening/);
  });

  it("a door's jamb within 600 of a corner takes the leg of 150 with it", () => {
    const jamb = of(checksOf([opening("d1", "w1", [450, 900, 0, 2100])]), "jamb-thrust");
    expect(input(jamb, "leg of the inside corner beside it")).toBe(0.15);
    expect(jamb!.value).toBeCloseTo(7.6125 * 2.5, 9);
  });

  it("a sill of 1200 at 900: 40 kPa · 0.1 · 1.2 = 4.8 kN", () => {
    const sill = of(checksOf([opening("n1", "w1", [1000, 1200, 900, 2100])]), "sill-uplift");
    expect(sill).toMatchObject({ value: expect.closeTo(4.8, 9), status: "not-checked" });
  });

  it("a box of 600 × 600 floats: 25 · 0.1 · 0.6 · 0.6 = 0.9 kN, and has no jambs", () => {
    const checks = checksOf([opening("n1", "w1", [1000, 600, 1200, 1800], { formed: "box" })]);
    expect(of(checks, "box-uplift")!.value).toBeCloseTo(0.9, 9);
    expect(of(checks, "jamb-thrust")).toBeUndefined();
    expect(of(checks, "sill-uplift")).toBeUndefined();
  });

  it("the feet of the panels: 62.5 kPa under 65 mm of frame are 4.06 kN/m", () => {
    const foot = of(checksOf([]), "base-uplift");
    expect(foot).toMatchObject({ value: expect.closeTo(4.0625, 9), unit: "kN/m", status: "not-checked" });
    const { frameDepth: _, ...rules } = demoKit.rules;
    expect(of(checksOf([], { ...demoKit, rules }), "base-uplift")).toBeUndefined();
  });
});
