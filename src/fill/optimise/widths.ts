// The set problem with some of its widths alone.
//
// A width is one size to the crew, whatever heights it is stacked from, so it is on or off for all units together.

import type { Mm } from "../../units.ts";
import type { LaidOut, Plan, SetProblem } from "./setProblem.ts";

/** A problem with fewer columns, and how plans read in the one and in the other. */
export interface Narrowed {
  readonly problem: SetProblem;
  readonly toWhole: (plan: Plan) => Plan;
  /** Of a plan that places no other width. */
  readonly toNarrow: (plan: Plan) => Plan;
}

/** Every width on offer, widest first. */
export function widthsOf({ offers }: SetProblem): readonly Mm[] {
  const widths = new Set(offers.flatMap(({ columns }) => columns.map(({ width }) => width)));
  return [...widths].sort((a, b) => b - a);
}

/** The widths of the panels a plan places, widest first. */
export function widthsIn(problem: SetProblem, plan: Plan): readonly Mm[] {
  const widths = new Set<Mm>();
  problem.runs.forEach(({ offer }, run) => {
    const { columns } = problem.offers[offer]!;
    for (const { layout } of plan[run]!) {
      layout.counts.forEach((count, column) => {
        if (count > 0) widths.add(columns[column]!.width);
      });
    }
  });
  return [...widths].sort((a, b) => b - a);
}

/** The problem without the widths that are off, and without its own limit of how many there may be. */
export function narrowed(problem: SetProblem, isOn: (width: Mm) => boolean): Narrowed {
  const { mostWidths: _, ...rest } = problem;
  const kept = problem.offers.map(({ columns }) =>
    columns.flatMap(({ width }, column) => (isOn(width) ? [column] : [])),
  );
  const offers = problem.offers.map((offer, k) => ({
    ...offer,
    columns: kept[k]!.map((column) => offer.columns[column]!),
  }));
  const recounted = (plan: Plan, recount: (counts: readonly number[], offer: number) => readonly number[]) =>
    plan.map((laid, run): readonly LaidOut[] =>
      laid.map(({ layout, times }) => {
        const counts = recount(layout.counts, problem.runs[run]!.offer);
        return { layout: { ...layout, counts }, times };
      }),
    );
  return {
    problem: { ...rest, offers },
    toWhole: (plan) =>
      recounted(plan, (counts, offer) => {
        const all = problem.offers[offer]!.columns.map(() => 0);
        counts.forEach((count, column) => {
          all[kept[offer]![column]!] = count;
        });
        return all;
      }),
    toNarrow: (plan) => recounted(plan, (counts, offer) => kept[offer]!.map((column) => counts[column]!)),
  };
}
