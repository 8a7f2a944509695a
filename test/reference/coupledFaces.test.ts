// Faces whose joints need not match, against optima that were found without this program, and what matching every joint costs.

import { describe, expect, it, vi } from "vitest";
import { optimiseSet } from "../../src/fill/optimise/optimiseSet.ts";
import { loadHighs } from "../../src/solver/highs.ts";
import data from "../data/pairs-named.json" with { type: "json" };
import { bestCoupled } from "../support/coupledFaces.ts";
import { coupledSet, readCoupled, strictProblem } from "../support/coupledSet.ts";
import { leastWork } from "../support/setInstance.ts";

// The machine may be busy with other things.
vi.setConfig({ testTimeout: 300_000 });

// One digit of a thousand each: closures, joints that meet none, panels, fillers.
const CLOSURE = 1e9;
const UNMATCHED = 1e6;
const PANEL = 1e3;

describe("the named walls, joints unmatched at a price", () => {
  it.each(data.walls)("$name: the known counts, in the known order of importance", ({ a, b, optimum }) => {
    const panels = data.widths.map((width, kind) => ({
      width,
      kind,
      cost: PANEL + (width === data.standard ? 0 : 1),
    }));
    const strips = [20, 30, 40, 50, 60, 70, 80, 90].map((width) => ({ width, kind: -1, cost: CLOSURE }));
    const found = bestCoupled({ a, b }, { pieces: [...panels, ...strips], unmatched: UNMATCHED }, 10)!;
    const { closures, unmatched, pieces, fillers } = optimum;
    expect(found.cost).toBe(closures * CLOSURE + unmatched * UNMATCHED + pieces * PANEL + fillers);
    expect(found.unmatched).toBe(unmatched);
  });
});

it("cpl-04x20-a: bound and plan about the known ones; with every joint matched, no cheaper than the bound", async () => {
  const solver = await loadHighs();
  const instance = readCoupled("cpl-04x20-a");
  const { bound, cost } = coupledSet(instance, solver, 1_000);
  expect(bound).toBeLessThanOrEqual(instance.upper);
  expect(bound).toBeGreaterThan(instance.lower * 0.999);
  expect(cost).toBeGreaterThanOrEqual(instance.lower);
  expect(cost).toBeLessThan(instance.upper * 1.005);
  const strict = strictProblem(instance);
  const work = optimiseSet(strict, leastWork(strict), { solver, proofSteps: 1 });
  let step = work.next();
  while (step.done !== true) step = work.next();
  expect(step.value.cost).toBeGreaterThanOrEqual(bound);
});
