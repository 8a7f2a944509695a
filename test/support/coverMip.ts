// An interval stated as an integer programme and solved by a general-purpose solver: a second opinion that
// shares no code and no method with the cover table.

import loadHighs, { type Highs } from "highs";
import type { ClosureRange, Width } from "../../src/fill/coverTable.ts";

export interface MipRules {
  readonly widths: readonly Width[];
  readonly closure: ClosureRange;
  readonly narrowUnder: number;
}

export const loadSolver = (): Promise<Highs> => loadHighs();

/**
 * Solves one criterion after the other, each under the optima of those before it.
 *
 * @returns closures, narrow, fillers, pieces, distinct widths, width of the closure; null where there is no
 *   cover
 */
export function solveByMip(highs: Highs, length: number, rules: MipRules): readonly number[] | null {
  const { widths, closure, narrowUnder } = rules;
  const sum = (names: string[]) => (names.length === 0 ? "0 zero" : names.join(" + "));
  const criteria = [
    "strip",
    sum(widths.flatMap(({ width }, index) => (width < narrowUnder ? [`n${index}`] : []))),
    sum(widths.flatMap(({ standard }, index) => (standard ? [] : [`n${index}`]))),
    sum(widths.map((_, index) => `n${index}`)),
    sum(widths.map((_, index) => `used${index}`)),
    "size",
  ];
  const constraints = [
    `${widths.map(({ width }, index) => `${width} n${index} + `).join("")}size = ${length}`,
    `size - ${closure?.least ?? 0} strip >= 0`,
    `size - ${closure?.greatest ?? 0} strip <= 0`,
    ...widths.map(({ width }, index) => `n${index} - ${Math.floor(length / width)} used${index} <= 0`),
  ];
  const integers = ["size", ...widths.map((_, index) => `n${index}`)];
  const binaries = ["strip", ...widths.map((_, index) => `used${index}`)];

  const optima: number[] = [];
  for (const criterion of criteria) {
    const model = [
      `Minimize\n obj: ${criterion}`,
      `Subject To\n${constraints.map((line, index) => ` c${index}: ${line}`).join("\n")}`,
      `Bounds\n zero = 0\n size <= ${closure?.greatest ?? 0}`,
      `General\n ${integers.join(" ")}`,
      `Binary\n ${binaries.join(" ")}`,
      "End",
    ].join("\n");
    const solution = highs.solve(model, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5 });
    if (solution.Status === "Infeasible") return null;
    if (solution.Status !== "Optimal") throw new Error(`the solver ended with "${solution.Status}"`);
    const optimum = Math.round(solution.ObjectiveValue);
    optima.push(optimum);
    constraints.push(`${criterion} = ${optimum}`);
  }
  return optima;
}
