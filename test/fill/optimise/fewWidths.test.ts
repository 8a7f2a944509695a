// The cheapest set of few sizes, against the optima of every subset.

import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import { costOf } from "../../../src/fill/optimise/countPlan.ts";
import { isExact } from "../../../src/fill/optimise/flowModel.ts";
import { optimiseSet } from "../../../src/fill/optimise/optimiseSet.ts";
import type { OptimiseTools, Progress } from "../../../src/fill/optimise/search.ts";
import type { SetProblem } from "../../../src/fill/optimise/setProblem.ts";
import { narrowed, widthsIn, widthsOf } from "../../../src/fill/optimise/widths.ts";
import { loadHighs } from "../../../src/solver/highs.ts";
import { instanceProblem, leastWork, readInstance } from "../../support/setInstance.ts";
import { leastCostOfFew } from "../../support/setOracle.ts";
import { smallProblem, TINY } from "../../support/smallSets.ts";

// The machine may be busy with other things.
vi.setConfig({ testTimeout: 300_000 });

const solver = await loadHighs();

function solve(problem: SetProblem, options: Partial<OptimiseTools> = {}) {
  const steps = optimiseSet(problem, leastWork(problem), { solver, ...options });
  const progress: Progress[] = [];
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) progress.push(step.value);
  return { answer: step.value, progress };
}

describe("at most so many widths", () => {
  it.each([2, 3])(
    "apt-06x60-a with the standard width and %i others: the optimum that is known",
    (others) => {
      const instance = readInstance("apt-06x60-a");
      const optimum = instance.optimumAtMostFillerWidths![others]!;
      const problem = { ...instanceProblem(instance, 60), mostWidths: others + 1 };
      const { answer, progress } = solve(problem);
      expect(answer.cost).toBe(optimum);
      expect(costOf(problem, answer.plan).total).toBe(optimum);
      expect(isExact(problem, answer.plan)).toBe(true);
      expect(widthsIn(problem, answer.plan).length).toBeLessThanOrEqual(others + 1);
      expect(answer.bound).toBeLessThanOrEqual(optimum);
      expect(answer.bound).toBeGreaterThan(optimum * 0.999);
      expect(["optimal", "gap"]).toContain(answer.status);
      if (answer.status === "gap") expect(answer.bound).toBeLessThan(answer.cost);
      const bounds = progress.map(({ bound }) => bound);
      expect(bounds, "the bound never falls").toEqual([...bounds].sort((a, b) => a - b));
      for (const { plan } of progress.filter(({ stage }) => stage === "plan"))
        expect(widthsIn(problem, plan).length).toBeLessThanOrEqual(others + 1);
    },
  );

  it("small ones: the least over all subsets, or that there is none", () => {
    fc.assert(
      fc.property(smallProblem, fc.integer({ min: 1, max: 3 }), (unlimited, mostWidths) => {
        const problem = { ...unlimited, mostWidths };
        const least = leastCostOfFew(unlimited, mostWidths);
        const { answer } = solve(problem);
        if (least === null) {
          expect(answer.status).toBe("infeasible");
          expect(answer.proof).not.toBeNull();
          return;
        }
        expect(widthsIn(problem, answer.plan).length).toBeLessThanOrEqual(mostWidths);
        expect(isExact(problem, answer.plan)).toBe(true);
        expect(answer.cost).toBe(least);
        expect(answer.bound).toBeLessThanOrEqual(least);
        if (answer.status !== "optimal") expect([answer.status, answer.proof]).toEqual(["gap", "search"]);
      }),
      { numRuns: 40, seed: 20261129, interruptAfterTimeLimit: 100_000 },
    );
  });

  it("says so where no so few widths cover every run, and shows the plan it was given", () => {
    const problem = instanceProblem({
      ...TINY,
      widths: [600, 450],
      price: { 600: 14580, 450: 12060 },
      closure: { min: 0, max: -1, cost: 0, perMm: 0 },
      pours: [
        {
          id: "P",
          runs: [
            [600, 1],
            [450, 1],
          ],
        },
      ],
    });
    const { answer } = solve({ ...problem, mostWidths: 1 });
    expect(answer).toMatchObject({ status: "infeasible", lacks: "widths", proof: "enumeration" });
    expect(answer.plan).toEqual(leastWork(problem));
    expect(solve({ ...problem, mostWidths: 2 }).answer).toMatchObject({ status: "optimal" });
  });

  it("stopped at once, it claims no more than a bound", () => {
    const problem = { ...instanceProblem(readInstance("apt-06x60-a"), 60), mostWidths: 5 };
    const { answer } = solve(problem, { isStopped: () => true });
    expect(answer.status).toBe("stopped");
    expect(answer.bound).toBeLessThanOrEqual(readInstance("apt-06x60-a").optimumAtMostFillerWidths![4]!);
  });

  it("gives the same plan twice", () => {
    const tiny = { ...instanceProblem(readInstance("tiny-04"), 60), mostWidths: 2 };
    expect(JSON.stringify(solve(tiny).answer)).toBe(JSON.stringify(solve(tiny).answer));
  });
});

describe("some widths alone", () => {
  it("plans read the same in the whole problem and in the narrowed one", () => {
    fc.assert(
      fc.property(smallProblem, (problem) => {
        const [, ...rest] = widthsOf(problem);
        const all = narrowed(problem, () => true);
        const start = leastWork(problem);
        expect(all.toWhole(all.toNarrow(start))).toEqual(start);
        const own = new Set(widthsIn(problem, start));
        const few = narrowed(problem, (width) => own.has(width));
        const there = few.toNarrow(start);
        expect(isExact(few.problem, there)).toBe(true);
        expect(costOf(few.problem, there).total).toBe(costOf(problem, start).total);
        expect(few.toWhole(there)).toEqual(start);
        expect(widthsOf(narrowed(problem, (width) => rest.includes(width)).problem)).toEqual(rest);
      }),
      { numRuns: 100, seed: 20261129 },
    );
  });
});
