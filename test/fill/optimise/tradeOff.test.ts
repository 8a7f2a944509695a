// The two curves of a set, point by point against enumeration.

import { describe, expect, it } from "vitest";
import { type TradeOffInput, tradeOff, withFewer } from "../../../src/fill/optimise/tradeOff.ts";
import { writeCurve } from "../../../src/fill/writeCurve.ts";
import type { Project } from "../../../src/plan/project.ts";
import { readProject } from "../../../src/plan/read.ts";
import { kitOf, solver, union } from "../../support/optimised.ts";
import { sampleProject } from "../../support/samples.ts";
import { expectTrueSet } from "../../support/setClaims.ts";
import { instanceProblem, readInstance } from "../../support/setInstance.ts";
import { leastCost, leastCostOfFew } from "../../support/setOracle.ts";
import { drawnInstance } from "../../support/setProject.ts";

function curves(project: Project, options: Partial<TradeOffInput> = {}) {
  const work = tradeOff({ project, kit: kitOf(project), union, solver, ...options });
  const told: string[] = [];
  let step = work.next();
  for (; step.done !== true; step = work.next()) told.push(`${step.value.curve} ${step.value.found}`);
  return { ...step.value, told };
}

function drawn(name: string): Project {
  const read = readProject(JSON.stringify(drawnInstance(readInstance(name))));
  if (read.status !== "ok") throw new Error(JSON.stringify(read.issues));
  return read.project;
}

describe("the curves of small sets", () => {
  it.each(["tiny-02", "tiny-04", "tiny-06"])("%s: every point is the least of all combinations", (name) => {
    const problem = instanceProblem(readInstance(name), 60);
    const { curve } = curves(drawn(name));
    // One face in cents there, two faces in euros here.
    const euros = (cents: number | null) => (cents === null ? Number.NaN : (2 * cents) / 100);
    expect(curve.widths.length).toBeGreaterThanOrEqual(2);
    for (const { mostWidths, widths, cost, lowerBound } of curve.widths) {
      expect(cost).toBeCloseTo(euros(leastCostOfFew(problem, mostWidths ?? 99)), 6);
      expect(widths).toBeLessThanOrEqual(mostWidths ?? 99);
      expect(lowerBound).toBeLessThanOrEqual(cost);
    }
    for (const { fillers, cost, lowerBound, status } of curve.fillers) {
      expect(cost).toBeCloseTo(euros(leastCost(problem, { mostFillers: fillers / 2 })), 6);
      expect(lowerBound).toBeLessThanOrEqual(cost);
      if (status === "optimal") expect(lowerBound).toBeCloseTo(cost, 6);
    }
  });
});

describe("a point of fewer widths", () => {
  it.each([
    { why: "that costs more stands beside those before", costs: [10, 11, 14], left: [10, 11, 14] },
    { why: "that costs the same does, too", costs: [10, 10], left: [10, 10] },
    { why: "that is cheaper, where work ran out, takes their place", costs: [9, 12, 13, 11], left: [9, 11] },
  ])("$why", ({ costs, left }) => {
    const points = costs.map((cost) => ({ point: { cost } }));
    const found = points.reduce<readonly (typeof points)[number][]>(withFewer, []);
    expect(found.map(({ point }) => point.cost)).toEqual(left);
  });
});

describe("the curves of a sample", () => {
  const project = sampleProject("two-bedroom");
  const { curve, fills, told } = curves(project);

  it("rise from point to point, with fewer widths and fewer fillers", () => {
    const rising = (values: readonly number[]) => expect(values).toEqual([...values].sort((a, b) => a - b));
    rising(curve.widths.map(({ cost }) => cost));
    rising(curve.fillers.map(({ cost }) => cost));
    rising(curve.widths.map(({ widths }) => -widths));
    rising(curve.fillers.map(({ fillers }) => -fillers));
    expect(new Set(curve.fillers.map(({ fillers }) => fillers)).size).toBe(curve.fillers.length);
    expect(curve.widths[0]!.cost).toBe(curve.fillers[0]!.cost);
    expect(new Set(told).size).toBeGreaterThan(4);
  });

  it("have a fill for each point, and the members that choose it", () => {
    for (const [k, { mostWidths, filler, cost, widths }] of curve.widths.entries()) {
      const fill = fills.widths[k]!;
      expect(fill.set).toMatchObject({ cost, chosen: { widths } });
      expectTrueSet(fill, { ...project, objective: { ...project.objective, filler } }, kitOf(project));
      expect(mostWidths === null || widths <= mostWidths).toBe(true);
    }
    for (const [k, { filler, cost, fillers }] of curve.fillers.entries()) {
      const fill = fills.fillers[k]!;
      expect(fill.set!.chosen.fillers).toBe(fillers);
      expect(fill.set!.cost - (fill.set!.parts.fillers ?? 0)).toBeCloseTo(cost, 6);
      expectTrueSet(fill, { ...project, objective: { ...project.objective, filler } }, kitOf(project));
    }
  });

  it("are written as a file of their own, the same bytes twice", () => {
    const text = writeCurve(curve);
    expect(JSON.parse(text)).toEqual(curve);
    expect(writeCurve(curves(project).curve)).toBe(text);
  });

  it("stopped, they keep the points there are", () => {
    let asked = 0;
    const stopped = curves(project, { isStopped: () => ++asked > 40 });
    expect(stopped.curve.widths.length).toBeLessThan(curve.widths.length);
    expect(stopped.curve.fillers).toEqual([]);
    expect(curve.widths.slice(0, stopped.curve.widths.length)).toEqual(stopped.curve.widths);
  });

  it("have as many points as asked for", () => {
    const few = curves(project, { points: 2 });
    expect(few.curve.widths).toEqual(curve.widths.slice(0, 2));
    expect(few.curve.fillers).toHaveLength(2);
  });
});
