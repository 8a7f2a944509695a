// A column is a free-standing piece of wall no side of which is over 2 m: ACI 347 and CIRIA 108 press on it by equations of
// its own, the other methods by the same as on a wall.

import { describe, expect, it } from "vitest";
import { columnFaces, planArea } from "../../src/assess/columns.ts";
import { panelChecks } from "../../src/assess/panelChecks.ts";
import { tieChecks } from "../../src/assess/tieChecks.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Project } from "../../src/plan/project.ts";
import { entryOf } from "../support/assessed.ts";
import { fillDocument, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";

const LIMITS = {
  ...demoKit,
  rules: {
    ...demoKit.rules,
    tieLoad: { value: 30, unit: "kN", origin: "invented for the test" },
    panelPressure: { value: 55, unit: "kPa", origin: "invented for the test" },
  },
};
const ACI = {
  pressureModel: "ACI 347",
  rate: 2.5,
  temperature: 20,
  cement: "portland",
  retarder: false,
  slump: 150,
  density: 23.5,
};

/** The room with a piece of wall as long as given, free in its middle. */
function withStub(length: number, concrete: Project["concrete"]) {
  const plan = roomPlan(0);
  const walls = plan.walls.map((wall) => ({
    ...wall,
    from: [wall.from[0] * 2, wall.from[1] * 2] as const,
    to: [wall.to[0] * 2, wall.to[1] * 2] as const,
  }));
  const stub = {
    id: "c1",
    from: [1500, 2000],
    to: [1500 + length, 2000],
    thickness: 200,
    justify: "centre",
  } as const;
  const project = projectOf({ ...plan, walls: [...walls, stub] }, { concrete });
  return entryOf({ project, fill: fillDocument(project), kit: LIMITS });
}

const pressures = (length: number, concrete: Project["concrete"]) =>
  panelChecks(withStub(length, concrete))
    .filter(({ kind }) => kind === "panel-pressure")
    .map(({ value }) => value!);

describe("a column", () => {
  it.each([
    { length: 900, faces: 4 },
    { length: 2000, faces: 4 },
    { length: 2050, faces: 0 },
  ])("$length mm long has $faces faces", ({ length, faces }) => {
    expect(columnFaces(withStub(length, {}).fill).size).toBe(faces);
  });

  it("is no column with a room in it", () => {
    const shaft = { ...roomPlan(0), walls: roomPlan(0).walls };
    const small = shaft.walls.map((wall) => ({
      ...wall,
      from: [wall.from[0] / 2, wall.from[1] / 2] as const,
      to: [wall.to[0] / 2, wall.to[1] / 2] as const,
    }));
    const project = projectOf({ ...shaft, walls: small, rooms: [] });
    expect(columnFaces(entryOf({ project, fill: fillDocument(project) }).fill).size).toBe(0);
  });

  it("takes the first equation of ACI 347 at a rate at which a wall takes the second", () => {
    // 7.2 + 785 · 2.5/37.8 beside 7.2 + 1156/37.8 + 244 · 2.5/37.8
    const [wall, column] = pressures(900, ACI);
    expect(wall).toBeCloseTo(7.2 + (1156 + 244 * 2.5) / 37.8, 3);
    expect(column).toBeCloseTo(Math.min(7.2 + (785 * 2.5) / 37.8, 23.5 * 2.5), 3);
    expect(pressures(2400, ACI)).toEqual([wall]);
  });

  it("takes 1.5 for C1 of CIRIA 108", () => {
    const ciria = { ...ACI, pressureModel: "CIRIA 108", rate: 0.5, density: 25 };
    const [wall, column] = pressures(900, ciria);
    const of = (c1: number) => {
      const rise = c1 * Math.sqrt(0.5);
      return 25 * (rise + 0.3 * Math.sqrt(2.5 - rise));
    };
    expect(wall).toBeCloseTo(of(1), 6);
    expect(column).toBeCloseTo(of(1.5), 6);
  });

  it.each([{}, { pressureModel: "DIN 18218", rate: 1, consistence: "F3", settingEnd: 5 }])(
    "presses as a wall does by %j",
    (concrete) => {
      expect(pressures(900, concrete)).toHaveLength(1);
    },
  );

  it("loads its ties with its own pressure, and walls with theirs", () => {
    const entry = withStub(900, ACI);
    const columns = columnFaces(entry.fill);
    const [wall, column] = pressures(900, ACI);
    const checks = tieChecks(entry).filter(({ kind }) => kind === "tie-load");
    const greatest = (check: (typeof checks)[number]) =>
      check.inputs.find(({ name }) => name === "greatest pressure")!.value;
    const ofColumn = checks.filter(({ where }) => columns.has(where.face!));
    expect(ofColumn.length).toBeGreaterThan(0);
    for (const check of checks) expect(greatest(check)).toBe(columns.has(check.where.face!) ? column : wall);
  });

  it("allows a rate of its own, lower than the walls'", () => {
    const rates = panelChecks(withStub(900, ACI)).filter(({ kind }) => kind === "placing-rate");
    expect(rates.map(({ id }) => id)).toEqual(["A/placing-rate", "A/columns/placing-rate"]);
    const [wall, column] = rates;
    // 55 kPa: walls (55 − 7.2 − 1156/37.8) · 37.8/244, columns (55 − 7.2) · 37.8/785.
    const allowed = (check: typeof wall) =>
      check!.inputs.find(({ name }) => name === "rate the panels allow")?.value;
    expect(allowed(wall)).toBeCloseTo(((47.8 - 1156 / 37.8) * 37.8) / 244, 6);
    expect(allowed(column)).toBeCloseTo((47.8 * 37.8) / 785, 6);
    expect(column!.limit!).toBeLessThan(wall!.limit!);
  });
});

it("the plan area is that of the concrete, and the volume what makes it rise at the rate", () => {
  const entry = withStub(900, ACI);
  // 2 · (6.3 + 4.1) · 0.1 of walls, 0.9 · 0.2 of column
  const area = 2 * (6.3 + 4.1) * 0.1 + 0.9 * 0.2;
  expect(planArea(entry.fill)).toBeCloseTo(area, 9);
  const rate = panelChecks(entry).find(({ kind }) => kind === "placing-rate")!;
  const volume = rate.inputs.find(({ sign }) => sign === "Q");
  expect(volume?.value).toBeCloseTo(2.5 * area, 9);
});
