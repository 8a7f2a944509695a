// The choice of one set on the instances with known optima, with few widths, on a hostile one, and what repeating it leaves in
// memory. Prints; it never passes or fails by the clock.

import { costOf } from "../../src/fill/optimise/countPlan.ts";
import { optimiseSet } from "../../src/fill/optimise/optimiseSet.ts";
import type { Plan, SetProblem } from "../../src/fill/optimise/setProblem.ts";
import { widthsIn } from "../../src/fill/optimise/widths.ts";
import { loadHighs } from "../../src/solver/highs.ts";
import type { Solver } from "../../src/solver/linear.ts";
import { coupledSet, readCoupled, strictProblem } from "../support/coupledSet.ts";
import { instanceProblem, leastWork, readInstance } from "../support/setInstance.ts";
import { wallByWall } from "./setBench.ts";

const euros = (cents: number) => Number((cents / 100).toFixed(2));

function row(problem: SetProblem, start: Plan, solver: Solver) {
  const begin = performance.now();
  const steps = optimiseSet(problem, start, { solver });
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  const { status, proof, plan, cost, bound } = step.value;
  const alone = costOf(problem, start);
  return {
    "wall by wall": alone.isShort ? "too few panels" : euros(alone.total),
    bound: euros(bound),
    cost: euros(cost),
    "gap %": Number(((100 * (cost - bound)) / cost).toFixed(3)),
    status: `${status} ${proof ?? ""}`,
    widths: widthsIn(problem, plan).length,
    seconds: Number(((performance.now() - begin) / 1000).toFixed(1)),
  };
}

/** Prints five tables. */
export async function benchInstances(): Promise<void> {
  const solver = await loadHighs();
  const names = ["tiny-01", "tiny-02", "tiny-03", "tiny-04", "tiny-05", "tiny-06"];
  const large = ["apt-06x60-a", "apt-06x60-a-own60", "apt-06x60-a-stock90", "apt-08x100-a"];
  console.table(
    [...names, ...large].map((name) => {
      const instance = readInstance(name);
      const problem = instanceProblem(instance, 60);
      // The tiny ones have widths of their own.
      const start = large.includes(name) ? wallByWall(problem) : leastWork(problem);
      return { instance: name, optimum: euros(instance.optimum), ...row(problem, start, solver) };
    }),
  );

  const instance = readInstance("apt-06x60-a");
  console.table(
    Object.entries(instance.optimumAtMostFillerWidths ?? {}).map(([others, optimum]) => {
      const problem = { ...instanceProblem(instance, 60), mostWidths: Number(others) + 1 };
      return {
        "at most widths": Number(others) + 1,
        optimum: euros(optimum),
        ...row(problem, leastWork(problem), solver),
      };
    }),
  );

  const hostile = instanceProblem({
    widths: [601, 449, 307],
    standard: 601,
    price: { 601: 14581, 449: 12043, 307: 9661 },
    handling: 60,
    closure: { min: 20, max: 90, cost: 50040, perMm: 30 },
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
  console.table([{ instance: "primes, runs of a kilometre", ...row(hostile, leastWork(hostile), solver) }]);

  const coupled = readCoupled("cpl-04x20-a");
  const begin = performance.now();
  const loose = coupledSet(coupled, solver, 20_000);
  const seconds = Number(((performance.now() - begin) / 1000).toFixed(1));
  const strict = strictProblem(coupled);
  console.table([
    { joints: "unmatched at a price", bound: euros(loose.bound), cost: euros(loose.cost), seconds },
    { joints: "known", bound: euros(coupled.lower), cost: euros(coupled.upper) },
    { joints: "all matched", ...row(strict, leastWork(strict), solver) },
  ]);

  const tiny = instanceProblem(readInstance("tiny-06"), 60);
  const memory = [0, 50, 100, 150].map((solves) => {
    for (let k = 0; k < (solves === 0 ? 0 : 50); k++) row(tiny, leastWork(tiny), solver);
    return { "solves so far": solves, "memory MB": Math.round(process.memoryUsage().rss / 1e6) };
  });
  console.table(memory);
}
