// Striking on a real fill: what is needed beside what there is, and the rules side by side.

import { describe, expect, it } from "vitest";
import { strikingChecks } from "../../src/assess/strikingChecks.ts";
import { strikingRows } from "../../src/assess/strikingRows.ts";
import type { Project } from "../../src/plan/project.ts";
import { entryOf } from "../support/assessed.ts";
import { fillDocument, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";

const entry = (concrete: Project["concrete"], slab = 100) => {
  const project = projectOf(roomPlan(0), { concrete, storey: { clearHeight: 2400, slab } });
  return entryOf({ project, fill: fillDocument(project) });
};
const DESIGN = { cubeStrength: 30, cylinderStrength: 25, cementClass: "R", serviceLoad: 6.5 };
const constant = (until: number, temperature: number) => [
  [0, temperature],
  [until, temperature],
];

describe("the strength a slab is struck with", () => {
  // 100 mm weigh 2.5 kPa, 0.75 of work on it: 30 · (3.25/6.5)^(1/0.6) = 9.45 MPa, and 10 at least.
  it.each([
    { why: "measured and enough", concrete: { measuredStrength: 12 }, status: "within", limit: 12 },
    { why: "measured and not enough", concrete: { measuredStrength: 9 }, status: "over", limit: 9 },
    {
      why: "estimated after four days at 20 °C, less the margin: 38 · 0.72 − 3.45",
      concrete: { strikeAt: 96, log: constant(96, 20) },
      status: "within",
      limit: 38 * Math.exp(0.2 * (1 - Math.sqrt(7))) - 3.45,
    },
  ])("$why", ({ concrete, status, limit }) => {
    const [check] = strikingChecks(entry({ ...DESIGN, ...concrete }));
    expect(check).toMatchObject({ status, value: 10, unit: "MPa" });
    expect(check!.limit).toBeCloseTo(limit, 6);
    const ciria = check!.inputs.find(({ name }) => name === "strength needed by CIRIA 136");
    expect(ciria?.value).toBeCloseTo(9.45, 2);
  });

  it("is estimated of cubes where cubes are what is known", () => {
    const { cylinderStrength: _, ...cubes } = DESIGN;
    const [check] = strikingChecks(entry({ ...cubes, strikeAt: 96, log: constant(96, 20) }));
    expect(check!.limit).toBeCloseTo(38 * Math.exp(0.2 * (1 - Math.sqrt(7))) - 3.45, 6);
  });

  it.each([
    // 16 h at 30 °C are 480 °C·h: halfway from 6 to 18 MPa, less 3.45.
    { why: "too young still", until: 16, limit: 12 - 3.45, status: "over" },
    { why: "strong enough four hours later", until: 20, limit: 15 - 3.45, status: "within" },
  ])("is estimated from tests of the mix, young as it is: $why", ({ until, limit, status }) => {
    const strengthTests = [
      [240, 6],
      [720, 18],
    ];
    const [check] = strikingChecks(
      entry({ ...DESIGN, strengthTests, strikeAt: until, log: constant(until, 30) }),
    );
    expect(check).toMatchObject({ status, value: 10, limit: expect.closeTo(limit, 9) });
    // 13.45 MPa: 240 + 480 · 7.45/12 = 538 °C·h at 30 °C.
    const hour = check!.inputs.find(({ name }) => name.startsWith("expected strong enough"));
    expect(hour?.value).toBeCloseTo(538 / 30, 6);
  });

  it("tells the other measures beside the one that counts", () => {
    const [check] = strikingChecks(entry({ ...DESIGN, strikeAt: 96, log: constant(96, 20) }));
    const of = (name: string) => check!.inputs.find((each) => each.name.startsWith(name))?.value;
    expect(of("equivalent age at 20 °C")).toBe(96);
    expect(of("equivalent age by Sadgrove")).toBe(96);
    expect(of("maturity")).toBe(1920);
    // 13.45 of 38 MPa with rapid cement would be there before the third day, where the curve begins.
    expect(of("expected strong enough after, by the log")).toBeCloseTo(72, 6);
    expect(of("from then to the hour of striking")).toBeCloseTo(24, 6);
    expect(of("part of the strength by ACI 209")).toBeCloseTo(4 / (4 + 0.85 * 4), 9);
    // M over −11 °C is 2976: (21 + 61 · log 2.976)/100 of a strength of 25.
    expect(of("part of the strength by Plowman")).toBeCloseTo((21 + 61 * Math.log10(2.976)) / 100, 9);
  });

  it.each([
    { why: "nothing", concrete: {}, reason: /no strength at 28 days/ },
    { why: "no hour", concrete: DESIGN, reason: /does not say when the slab is struck/ },
    { why: "no log", concrete: { ...DESIGN, strikeAt: 16 }, reason: /no log/ },
    {
      why: "a log that ends early",
      concrete: { ...DESIGN, strikeAt: 16, log: constant(12, 25) },
      reason: /ends before.*nothing is guessed/,
    },
    {
      why: "an age for which the model was not made",
      concrete: { ...DESIGN, strikeAt: 16, log: constant(16, 25) },
      reason: /holds from 3 days .* younger: test it/,
    },
    {
      why: "frost",
      concrete: { ...DESIGN, strikeAt: 16, log: constant(16, -2) },
      reason: /the temperature of the concrete is -2 °C; the figure holds from 0 to 60/,
    },
    {
      why: "more load than the slab is made for",
      concrete: { ...DESIGN, serviceLoad: 3 },
      reason: /load at striking is 3\.25 kPa/,
    },
  ])("is not judged with $why", ({ concrete, reason }) => {
    const [check] = strikingChecks(entry(concrete));
    expect(check).toMatchObject({ status: "not-checked", limit: null });
    expect(check!.reason).toMatch(reason);
  });

  it("is not asked for where no slab is cast", () => {
    expect(strikingChecks(entry(DESIGN, 0))).toEqual([]);
  });
});

describe("the rules of striking side by side", () => {
  it("give hours and strengths for panels, props and walls, with their source and their limits", () => {
    const rows = strikingRows(entry({ ...DESIGN, strikeAt: 24, log: constant(24, 16) }));
    const of = (rule: string, part: string) =>
      rows.find(
        (row) => row.rule === rule && row.part.startsWith(part) && (part === "walls" || row.room === "Bath"),
      );
    expect(of("BS 8110", "walls")!.hours).toBeCloseTo(300 / 26, 9);
    expect(of("BS 8110", "slab panels")!.hours).toBeCloseTo(2400 / 26, 9);
    expect(of("BS 8110", "props")!.hours).toBeCloseTo(6000 / 26, 9);
    // Span 2000: four days, halved for shores left alone, three at least.
    expect(of("ACI 347", "slab panels")!.hours).toBe(72);
    expect(of("ACI 347", "props")!.note).toBe("span 2000 mm, live load less than dead");
    expect(of("IS 456", "slab panels")!.hours).toBe(72);
    expect(of("IS 456", "props")!.hours).toBe(7 * 24);
    expect(of("CIRIA 136", "slab panels")).toMatchObject({ hours: null, strength: expect.closeTo(9.45, 2) });
    expect(of("ACI 347", "walls")!.note).toMatch(/the slab's time governs/);
    // 3.25 kPa over 1.2 m: 0.468 kN·m, 6 · 0.468 / 0.1² = 0.2808 MPa, and half as much again.
    expect(of("uncracked between props", "slab panels")!.strength).toBeCloseTo(0.4212, 9);
    for (const row of rows) expect(row.source).not.toBe("");
  });

  it("say what is missing where a rule gives nothing", () => {
    const rows = strikingRows(entry({}));
    const of = (name: string) => rows.find(({ rule, room }) => rule === name && room === "Bath");
    expect(of("BS 8110")).toMatchObject({ hours: null, note: expect.stringContaining("needs a log") });
    const note = expect.stringContaining("needs the strength at 28 days");
    expect(of("CIRIA 136")).toMatchObject({ strength: null, note });
  });
});
