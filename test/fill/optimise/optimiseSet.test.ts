// The optimiser against optima found by other means, against enumeration, and against whatever is hard on it.

import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import { boundOf, fitPrices } from "../../../src/fill/optimise/bound.ts";
import { costOf } from "../../../src/fill/optimise/countPlan.ts";
import { isLeast } from "../../../src/fill/optimise/exhaust.ts";
import { isExact } from "../../../src/fill/optimise/flowModel.ts";
import { optimiseSet } from "../../../src/fill/optimise/optimiseSet.ts";
import type { OptimiseTools, Progress } from "../../../src/fill/optimise/search.ts";
import type { Plan, SetProblem } from "../../../src/fill/optimise/setProblem.ts";
import { loadHighs } from "../../../src/solver/highs.ts";
import { instanceProblem, leastWork, readInstance } from "../../support/setInstance.ts";
import { leastCost, provenBy } from "../../support/setOracle.ts";
import { smallProblem, TINY } from "../../support/smallSets.ts";

// The machine may be busy with other things.
vi.setConfig({ testTimeout: 180_000 });

const solver = await loadHighs();

function solve(problem: SetProblem, options: Partial<OptimiseTools> = {}, start: Plan = leastWork(problem)) {
  const steps = optimiseSet(problem, start, { solver, ...options });
  const progress: Progress[] = [];
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) progress.push(step.value);
  return { answer: step.value, progress };
}

describe("known optima", () => {
  it.each(["tiny-01", "tiny-02", "tiny-03", "tiny-04", "tiny-05", "tiny-06"])(
    "%s: equal to the least of all combinations",
    (name) => {
      const instance = readInstance(name);
      const problem = instanceProblem(instance, 60);
      const { answer } = solve(problem);
      expect(answer).toMatchObject({ status: "optimal", cost: instance.optimum, bound: instance.optimum });
      expect(costOf(problem, answer.plan).total).toBe(instance.optimum);
      expect(isExact(problem, answer.plan)).toBe(true);
    },
  );

  it.each(["apt-06x60-a", "apt-06x60-a-own60", "apt-06x60-a-stock90", "apt-08x100-a"])(
    "%s: between its optimum and 0.1 % more, the bound below it and as high as the one known, without a proof",
    (name) => {
      const instance = readInstance(name);
      const problem = instanceProblem(instance, 60);
      const { answer, progress } = solve(problem, { proofSteps: 1 });
      const bests = progress.map(({ best }) => best);
      const bounds = progress.map(({ bound }) => bound);
      expect(bests, "the best never rises").toEqual([...bests].sort((a, b) => b - a));
      expect(bounds, "the bound never falls").toEqual([...bounds].sort((a, b) => a - b));
      expect(bests[0]).toBe(costOf(problem, leastWork(problem)).total);
      expect(answer.cost).toBeGreaterThanOrEqual(instance.optimum);
      expect(answer.cost).toBeLessThanOrEqual(instance.optimum * 1.001);
      expect(answer.certified).toBeLessThanOrEqual(instance.optimum);
      expect(answer.certified).toBeGreaterThanOrEqual(instance.bound ?? 0);
      expect(answer.cost - answer.bound).toBeLessThanOrEqual(0.002 * answer.cost);
      expect(isExact(problem, answer.plan)).toBe(true);
      expect(provenBy(problem, answer.prices)).toBe(
        BigInt(Math.round(exactly(problem, answer.certified, answer.prices))),
      );
    },
  );
});

it("calls a plan optimal by no solver's word: a search that ended leaves a gap to the bound in whole numbers", () => {
  const instance = readInstance("apt-06x60-a-stock90");
  const { answer } = solve(instanceProblem(instance, 60));
  expect(answer).toMatchObject({ status: "gap", proof: "search", cost: instance.optimum });
  expect(answer.bound).toBe(answer.certified);
  expect(answer.bound).toBeLessThan(answer.cost);
});

/** The certified bound is the proven thousandths, rounded up to a whole step; gives them back where it is. */
function exactly(problem: SetProblem, certified: number, prices: Float64Array): number {
  const fine = Number(provenBy(problem, prices));
  return Math.ceil(fine / (problem.step * 1000)) * problem.step === certified ? fine : Number.NaN;
}

describe("against enumeration", () => {
  it("finds the least of all plans, or that there is none, and proves no more than it", () => {
    fc.assert(
      fc.property(smallProblem, (problem) => {
        const least = leastCost(problem);
        const { answer } = solve(problem);
        expect(isExact(problem, answer.plan)).toBe(true);
        if (least === null) {
          expect(answer.status).toBe("infeasible");
          return;
        }
        expect(answer).toMatchObject({ status: "optimal", cost: least, bound: least });
        expect(answer.proof).not.toBe("search");
        expect(answer.certified).toBeLessThanOrEqual(least);
        const proven = provenBy(problem, answer.prices);
        expect(proven).toBeGreaterThanOrEqual(0n);
        expect(BigInt(answer.certified) * 1000n - proven).toBeLessThan(1000n);
      }),
      { numRuns: 60, seed: 20261127, interruptAfterTimeLimit: 60_000 },
    );
  });
});

describe("going through every plan in whole numbers", () => {
  it("says of the least cost, and of nothing above it, that no plan costs less", () => {
    fc.assert(
      fc.property(smallProblem, fc.integer({ min: 0, max: 30 }), (problem, worth) => {
        // Any prices will do, good or bad.
        const prices = fitPrices(
          problem,
          Float64Array.from(problem.standing, () => worth * 100_000),
        );
        const proven = { bound: boundOf(problem, prices), prices };
        const least = leastCost(problem);
        if (least === null) return;
        expect(isLeast(problem, proven, least + problem.step)).toBe(false);
        expect(isLeast(problem, proven, least + 1000 * problem.step)).toBe(false);
        if (problem.runs.reduce((sum, { count }) => sum + count, 0) <= 3)
          expect(isLeast(problem, proven, least)).toBe(true);
      }),
      { numRuns: 60, seed: 20261127 },
    );
  });

  it("claims nothing of what it cannot go through to the end", () => {
    const large = instanceProblem(readInstance("apt-06x60-a"), 60);
    const prices = new Float64Array(large.standing.length);
    expect(isLeast(large, { bound: boundOf(large, prices), prices }, 1)).toBe(false);
  });
});

describe("on the way", () => {
  const problem = instanceProblem(readInstance("apt-06x60-a"), 60);

  it("stopped at once, it keeps what it had and says so", () => {
    const start = leastWork(problem);
    const { answer } = solve(problem, { isStopped: () => true });
    expect(answer.status).toBe("stopped");
    expect(answer.cost).toBe(costOf(problem, start).total);
    expect(answer.bound).toBeLessThanOrEqual(answer.cost);
  });

  it("gives the same plan twice", () => {
    const tiny = instanceProblem(readInstance("tiny-04"), 60);
    expect(JSON.stringify(solve(tiny).answer)).toBe(JSON.stringify(solve(tiny).answer));
  });

  it("never answers dearer than it was given", () => {
    const tiny = instanceProblem(readInstance("tiny-05"), 60);
    const best = solve(tiny).answer;
    expect(solve(tiny, { proofSteps: 1 }, best.plan).answer.cost).toBe(best.cost);
  });
});

describe("too few pieces", () => {
  it.each([
    {
      why: "one piece less than any plan takes, proven without a search",
      most: { 600: 1, 300: 0, 200: 0, 150: 2 },
    },
    { why: "none at all", most: { 600: 0, 300: 0, 200: 0, 150: 0 } },
  ])("$why", ({ most }) => {
    const problem = instanceProblem({ ...TINY, most, owned: most });
    const { answer } = solve(problem);
    expect(leastCost(problem)).toBeNull();
    expect(answer).toMatchObject({ status: "infeasible", proof: "certificate" });
  });

  it("bridges with a closure where that does without", () => {
    const most = { 600: 1, 300: 1, 200: 0, 150: 0 };
    const problem = instanceProblem({ ...TINY, most, owned: most, pours: [{ id: "P", runs: [[950, 1]] }] });
    const { answer } = solve(problem);
    expect(answer).toMatchObject({ status: "optimal", cost: leastCost(problem) });
  });
});

describe("hard on it", () => {
  it("thousand-metre runs of prime widths: an answer with a true status", () => {
    const widths = [601, 449, 307];
    const problem = instanceProblem({
      ...TINY,
      widths,
      price: { 601: 14581, 449: 12043, 307: 9661 },
      pours: [
        {
          id: "P1",
          runs: [
            [1_000_003, 1],
            [999_983, 2],
          ],
        },
        { id: "P2", runs: [[700_001, 3]] },
      ],
    });
    const { answer } = solve(problem, { proofSteps: 500 });
    expect(isExact(problem, answer.plan)).toBe(true);
    expect(["optimal", "gap"]).toContain(answer.status);
    expect(answer.bound).toBeGreaterThan(0);
    expect(answer.bound).toBeLessThanOrEqual(answer.cost);
    expect(answer.cost).toBeLessThanOrEqual(costOf(problem, leastWork(problem)).total);
    if (answer.status === "gap") expect(answer.cost - answer.bound).toBeGreaterThanOrEqual(problem.step);
  });

  it("forty solves leave no more memory behind than ten", () => {
    const tiny = instanceProblem(readInstance("tiny-06"), 60);
    const memory = (runs: number) => {
      for (let k = 0; k < runs; k++) solve(tiny);
      return process.memoryUsage().rss;
    };
    const before = memory(10);
    expect(memory(30) - before).toBeLessThan(40e6);
  });
});
