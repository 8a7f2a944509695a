// A rectangle of soffit stated as an integer programme and solved by a general-purpose solver: bands in a row, each with
// panels across; no code and no method in common with the band tables.

import type { Highs } from "highs";
import type { SmallKit } from "./soffitField.ts";

/**
 * Lengths along `along`, panels across `across`.
 *
 * @returns closures, panels not standard, panels, strips; null where nothing makes up the rectangle
 */
export function solveSoffitByMip(
  highs: Highs,
  { along, across }: { readonly along: number; readonly across: number },
  { sizes, strip, closure }: SmallKit,
): readonly number[] | null {
  const widest = Math.max(...sizes.map(({ width }) => width));
  const lengths = [...new Set(sizes.flatMap(({ width, length }) => [width, length]))];
  const offers = new Map(
    lengths.map((length) => {
      const widths = new Map<number, boolean>();
      for (const one of sizes)
        if (one.width === length && one.length <= widest) widths.set(one.length, one.standard);
      for (const one of sizes) if (one.length === length) widths.set(one.width, one.standard);
      return [length, [...widths].map(([width, standard]) => ({ width, standard }))];
    }),
  );
  const most = strip === null ? 1 : Math.ceil(along / (Math.min(...lengths) + strip));
  const [closures, fillers, pieces, used] = [["plank"], [] as string[], [] as string[], [] as string[]];
  const rows: string[] = [];
  const terms: string[] = [];
  const [integers, binaries] = [["size"], ["plank"]];
  const bandsOf = Array.from({ length: most }, (_, band) => {
    const chosen: string[] = [];
    for (const length of lengths) {
      const is = `y${band}l${length}`;
      chosen.push(is);
      terms.push(`${length + (strip ?? 0)} ${is}`);
      const gap = `g${band}l${length}`;
      const gapUsed = `h${band}l${length}`;
      closures.push(gapUsed);
      const panels = offers.get(length)!.map(({ width, standard }) => {
        const count = `n${band}l${length}w${width}`;
        pieces.push(count);
        if (!standard) fillers.push(count);
        integers.push(count);
        return `${width} ${count}`;
      });
      rows.push(`${[...panels, gap].join(" + ")} - ${across} ${is} = 0`);
      rows.push(
        `${gap} - ${closure?.least ?? 0} ${gapUsed} >= 0`,
        `${gap} - ${closure?.greatest ?? 0} ${gapUsed} <= 0`,
      );
      integers.push(gap);
      binaries.push(is, gapUsed);
    }
    used.push(...chosen);
    rows.push(`${chosen.join(" + ")} <= 1`);
    return chosen;
  });
  // A band more has a strip more; with a plank alone there is neither.
  rows.push(`${terms.join(" + ")} + size - ${strip ?? 0} some = ${along}`);
  rows.push(`${used.join(" + ")} - some >= 0`);
  for (const chosen of bandsOf) rows.push(`${chosen.join(" + ")} - some <= 0`);
  rows.push(`size - ${closure?.least ?? 0} plank >= 0`, `size - ${closure?.greatest ?? 0} plank <= 0`);
  binaries.push("some");
  const sum = (names: readonly string[]) => (names.length === 0 ? "0 zero" : names.join(" + "));
  const criteria = [sum(closures), sum(fillers), sum(pieces), `${used.join(" + ")} - some`];
  const optima: number[] = [];
  for (const criterion of criteria) {
    const model = [
      `Minimize\n obj: ${criterion}`,
      `Subject To\n${rows.map((row, k) => ` c${k}: ${row}`).join("\n")}`,
      `Bounds\n zero = 0`,
      `General\n ${integers.join(" ")}`,
      `Binary\n ${binaries.join(" ")}`,
      "End",
    ].join("\n");
    const solution = highs.solve(model, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0.5 });
    if (solution.Status === "Infeasible") return null;
    if (solution.Status !== "Optimal") throw new Error(`the solver ended with "${solution.Status}"`);
    const optimum = Math.round(solution.ObjectiveValue);
    optima.push(optimum);
    rows.push(`${criterion} = ${optimum}`);
  }
  return optima;
}
