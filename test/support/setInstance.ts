// The panel sets with known optima, as problems of the optimiser.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { boundOf } from "../../src/fill/optimise/bound.ts";
import { cheapestFor, layoutOf } from "../../src/fill/optimise/cheapest.ts";
import type { Plan, SetProblem } from "../../src/fill/optimise/setProblem.ts";

export interface Instance {
  readonly name: string;
  readonly widths: readonly number[];
  readonly standard: number;
  readonly price: Readonly<Record<string, number>>;
  readonly handling: number;
  readonly closure: {
    readonly min: number;
    readonly max: number;
    readonly cost: number;
    readonly perMm: number;
  };
  readonly owned?: Readonly<Record<string, number>>;
  readonly most?: Readonly<Record<string, number>>;
  readonly pours: readonly { readonly id: string; readonly runs: readonly (readonly [number, number])[] }[];
  readonly optimum: number;
  readonly bound?: number;
  readonly optimumAtMostFillerWidths?: Readonly<Record<string, number>>;
}

export function readInstance(name: string): Instance {
  return JSON.parse(instanceText(name));
}

/** The file of an instance, from the root, where tests and the bundled bench are run. */
export function instanceText(name: string): string {
  return readFileSync(join("test/data/sets", `${name}.json`), "utf8");
}

/** Cents; the step is that of the prices. */
export function instanceProblem(given: Omit<Instance, "name" | "optimum">, step = 1): SetProblem {
  const widths = [...given.widths].sort((a, b) => b - a);
  const { closure } = given;
  const strips = Array.from({ length: closure.max - closure.min + 1 }, (_, k) => closure.min + k);
  return {
    kinds: widths.map((width) => ({
      price: given.price[width]!,
      owned: given.owned?.[width] ?? 0,
      most: given.most?.[width] ?? Number.POSITIVE_INFINITY,
    })),
    days: given.pours.length,
    standing: new Array<number>(given.pours.length * widths.length).fill(0),
    offers: given.pours.map((_, day) => ({
      columns: widths.map((width, kind) => ({
        width,
        cost: given.handling,
        blemish: width === given.standard ? 0 : 1,
        uses: [{ day, kind, count: 1 }],
      })),
      closures: strips.map((width) => ({ width, cost: closure.cost + closure.perMm * width })),
    })),
    runs: given.pours.flatMap(({ runs }, offer) => runs.map(([length, count]) => ({ offer, length, count }))),
    kindCharge: 0,
    shortage: 1e8,
    constant: 0,
    step,
  };
}

/** A plan that covers every run with the least work, whatever the set then costs. */
export function leastWork(problem: SetProblem): Plan {
  const { tables } = boundOf(problem, new Float64Array(problem.standing.length));
  return problem.runs.map(({ offer, length, count }) => {
    const own = problem.offers[offer]!;
    const cheapest = cheapestFor(own, tables[offer]!, length, 1000)!;
    return [{ layout: layoutOf(own, tables[offer]!, length, cheapest.closure), times: count }];
  });
}
