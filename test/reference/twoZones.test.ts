// A published two-zone example of one panel set for both zones.
//
// Data: S. Biruk, P. Jaskowski, Optimization of Vertical Formwork Layout Plans Using Mixed Integer Linear Programming,
// International Journal of Civil Engineering 15 (2017) 125–133, as transcribed in the public notebook LP_formwork.ipynb of the
// repository ilgiz-n/exupery (commit 28dd933), whose result is the joint optimum 113,600 with 4 × 500, 8 × 750, 36 × 900; zone
// by zone the greater of two separate plans costs 125,700.
//
// Both faces alike. A wall with a free end may overrun by 50 to 300 mm; one between two corners takes panels exactly or one
// filler made on site of up to 250 mm, 5,000 a face.

import { expect, it, vi } from "vitest";
import { costOf } from "../../src/fill/optimise/countPlan.ts";
import { optimiseSet } from "../../src/fill/optimise/optimiseSet.ts";
import type { Offer, SetProblem } from "../../src/fill/optimise/setProblem.ts";
import { loadHighs } from "../../src/solver/highs.ts";
import { leastWork } from "../support/setInstance.ts";

const RENT = [
  [900, 2450],
  [750, 2250],
  [500, 1850],
  [450, 1775],
  [400, 1700],
  [300, 1550],
] as const;
// The machine may be busy with other things.
vi.setConfig({ testTimeout: 180_000 });

const solver = await loadHighs();

// The longest that panels may be: net length and 300 more; up to 250 less cost nothing.
interface Zone {
  readonly open: readonly number[];
  readonly closed: readonly number[];
}

const ZONE_A: Zone = { open: [5900, 6050, 4700], closed: [3800] };
const ZONE_B: Zone = { open: [5450, 4850, 4650, 6050], closed: [] };

function problemOf(zones: readonly Zone[]): SetProblem {
  const offer = (day: number, cost: number): Offer => ({
    columns: RENT.map(([width], kind) => ({ width, cost: 0, blemish: 0, uses: [{ day, kind, count: 2 }] })),
    closures: Array.from({ length: 250 }, (_, k) => ({ width: k + 1, cost })),
  });
  return {
    kinds: RENT.map(([, price]) => ({ price, owned: 0, most: Number.POSITIVE_INFINITY })),
    days: zones.length,
    standing: new Array<number>(zones.length * RENT.length).fill(0),
    offers: zones.flatMap((_, day) => [offer(day, 0), offer(day, 10_000)]),
    runs: zones.flatMap(({ open, closed }, day) => [
      ...open.map((length) => ({ offer: 2 * day, length, count: 1 })),
      ...closed.map((length) => ({ offer: 2 * day + 1, length, count: 1 })),
    ]),
    kindCharge: 0,
    shortage: 1e7,
    constant: 0,
    step: 1,
  };
}

function solve(zones: readonly Zone[]) {
  const problem = problemOf(zones);
  const steps = optimiseSet(problem, leastWork(problem), { solver });
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return { answer: step.value, need: costOf(problem, step.value.plan).need };
}

it("each zone by itself: 112,200 and 113,300, and 125,700 for the pieces of both plans", () => {
  const a = solve([ZONE_A]);
  const b = solve([ZONE_B]);
  expect(a.answer).toMatchObject({ status: "optimal", cost: 112_200 });
  expect(b.answer).toMatchObject({ status: "optimal", cost: 113_300 });
  const union = RENT.reduce((sum, [, rent], kind) => sum + rent * Math.max(a.need[kind]!, b.need[kind]!), 0);
  expect(union).toBe(125_700);
});

it("both zones together: 113,600 with 36 × 900, 8 × 750 and 4 × 500", () => {
  const { answer, need } = solve([ZONE_A, ZONE_B]);
  expect(answer).toMatchObject({ status: "optimal", cost: 113_600, bound: 113_600 });
  expect(need).toEqual([36, 8, 4, 0, 0, 0]);
  expect(answer.certified).toBeGreaterThanOrEqual(108_888);
});
