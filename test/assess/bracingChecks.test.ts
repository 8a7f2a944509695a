// Loads sideways, feet and tolerances: figures for the list before the pour, told with what they are made of.

import { describe, expect, it } from "vitest";
import { bracingChecks } from "../../src/assess/bracingChecks.ts";
import { thrustChecks } from "../../src/assess/thrustChecks.ts";
import { toleranceRows } from "../../src/assess/toleranceRows.ts";
import type { Project } from "../../src/plan/project.ts";
import { entryOf } from "../support/assessed.ts";
import { fillDocument, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";

const entry = (more: Partial<Project> = {}) => {
  const project = projectOf(roomPlan(0), more);
  return entryOf({ project, fill: fillDocument(project) });
};
const of = (kind: string, more: Partial<Project> = {}) =>
  bracingChecks(entry(more)).find((check) => check.kind === kind);

describe("the slab's load sideways", () => {
  it("is a fortieth of all that stands on the forms by EN 12812", () => {
    // 3 × 2 m under 2.5 + 0.5 + 0.75 + 0.75 kPa
    const check = of("slab-horizontal");
    expect(check).toMatchObject({ status: "not-checked", unit: "kN" });
    expect(check!.value).toBeCloseTo((6 * 4.5) / 40, 9);
    expect(check!.reason).toMatch(/close, pin and brace the walls/);
  });

  it("is by the edge or by the dead load by ACI 347", () => {
    // 100 mm at 24 kN/m³ and 0.5 of forms over 6 m² are 17.4 kN; the edge of 3 m governs.
    expect(of("slab-horizontal", { loads: { slabModel: "ACI 347" } })!.value).toBeCloseTo(4.5, 9);
  });

  it("is not asked for where no slab is cast", () => {
    expect(of("slab-horizontal", { storey: { clearHeight: 2400, slab: 0 } })).toBeUndefined();
  });
});

describe("a brace", () => {
  it("takes 1.5 kN a metre at the top of the form, as far as braces stand apart", () => {
    const check = of("brace-load")!;
    const spacing = check.inputs.find(({ sign }) => sign === "s")!.value as number;
    expect(check).toMatchObject({ status: "not-checked", unit: "kN" });
    expect(check.value).toBeCloseTo(1.5 * spacing, 9);
  });

  it("has no rule on a form under 2.4 m", () => {
    const low = of("brace-load", { storey: { clearHeight: 2200, slab: 100 } })!;
    expect(low.value).toBeNull();
    expect(low.reason).toMatch(/height of the wall form is 2300 mm; the figure holds from 2400/);
  });

  it("is not asked for without any", () => {
    const bare = entry();
    const checks = bracingChecks({ ...bare, fill: { ...bare.fill, fittings: [] } });
    expect(checks.find(({ kind }) => kind === "brace-load")!.status).toBe("not-applicable");
  });
});

it("the feet to be sealed are as long as both faces of the walls", () => {
  // 2 · (3.2 + 2.2) outside, 2 · (3 + 2) inside
  const seal = thrustChecks(entry()).find(({ kind }) => kind === "base-seal");
  expect(seal).toMatchObject({ status: "not-checked", value: 20.8, unit: "m" });
});

describe("tolerances", () => {
  it("are told for the storey's height and each thickness, rule beside rule", () => {
    const rows = toleranceRows(entry());
    const row = (rule: string, what: string) =>
      rows.find((each) => each.rule === rule && each.what.startsWith(what));
    expect(row("ACI 117", "plumb")).toMatchObject({
      less: expect.closeTo(7.2, 9),
      more: expect.closeTo(7.2, 9),
    });
    expect(row("EN 13670", "plumb")).toMatchObject({ less: 15, more: 15 });
    expect(row("ACI 117", "thickness of walls of 100")).toMatchObject({ less: 6, more: 10 });
    expect(row("Eurocode 2", "thickness of walls of 100")).toMatchObject({ less: 5, more: 5 });
    expect(row("DIN 18202, line 5", "flatness")).toMatchObject({ more: 12 });
    expect(row("kit", "joints that face")).toMatchObject({ more: 2 });
    for (const each of rows) expect(each.source).not.toBe("");
  });

  it("say their range where a wall is outside it", () => {
    const plain = entry();
    const thick = {
      ...plain,
      fill: { ...plain.fill, ties: plain.fill.ties.map((tie) => ({ ...tie, length: 350 })) },
    };
    const row = toleranceRows(thick).find(({ rule, what }) => rule === "ACI 117" && what.includes("350"));
    expect(row).toMatchObject({ less: null, more: null, note: expect.stringContaining("from 50 to 300 mm") });
  });
});
