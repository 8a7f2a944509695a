// The set problem by other means than the optimiser's: all combinations of layouts, and a bound in integers of any size.

import type { Layout, SetProblem } from "../../src/fill/optimise/setProblem.ts";

/** Every layout of a length. */
export function allLayouts(problem: SetProblem, offer: number, length: number): readonly Layout[] {
  const { columns, closures } = problem.offers[offer]!;
  const found: Layout[] = [];
  const extend = (counts: readonly number[], left: number, closure: number): void => {
    if (counts.length === columns.length) {
      if (left === 0) found.push({ counts, closure });
      return;
    }
    const { width } = columns[counts.length]!;
    for (let count = 0; count * width <= left; count++)
      extend([...counts, count], left - count * width, closure);
  };
  extend([], length, -1);
  closures.forEach(({ width }, closure) => {
    if (width <= length) extend([], length - width, closure);
  });
  return found;
}

export interface Only {
  /** Most widths other than standard that are placed, each as often as it stands in the runs. */
  readonly mostFillers?: number;
}

/** The least cost over all plans, each run counted singly; null where no plan has pieces enough. */
export function leastCost(
  problem: SetProblem,
  { mostFillers = Number.POSITIVE_INFINITY }: Only = {},
): number | null {
  const { kinds, days, offers } = problem;
  const choices = problem.runs.flatMap(({ offer, length, count }) => {
    const layouts = allLayouts(problem, offer, length).map((layout) => {
      const use = new Array<number>(days * kinds.length).fill(0);
      let fillers = 0;
      let work = layout.closure < 0 ? 0 : offers[offer]!.closures[layout.closure]!.cost;
      layout.counts.forEach((pieces, column) => {
        const { cost, uses } = offers[offer]!.columns[column]!;
        work += pieces * cost;
        for (const { day, kind, count: each } of uses) use[day * kinds.length + kind]! += pieces * each;
        if (offers[offer]!.columns[column]!.blemish > 0) fillers += pieces;
      });
      return { use, work, fillers };
    });
    return new Array<typeof layouts>(count).fill(layouts);
  });
  let best: number | null = null;
  const visit = (k: number, usage: readonly number[], work: number, fillersLeft: number): void => {
    if (fillersLeft < 0 || (best !== null && work >= best)) return;
    const layouts = choices[k];
    if (layouts !== undefined) {
      for (const { use, work: more, fillers } of layouts)
        visit(
          k + 1,
          usage.map((each, at) => each + use[at]!),
          work + more,
          fillersLeft - fillers,
        );
      return;
    }
    let total = work + problem.constant;
    for (const [kind, { price, owned, most }] of kinds.entries()) {
      let need = 0;
      for (let day = 0; day < days; day++) need = Math.max(need, usage[day * kinds.length + kind]!);
      if (need > Math.max(owned, most)) return;
      total += price * Math.max(0, need - owned) + (need > 0 ? problem.kindCharge : 0);
    }
    if (best === null || total < best) best = total;
  };
  visit(0, problem.standing, 0, mostFillers);
  return best;
}

/** What these prices prove, thousandths of a unit, in integers of any size; -1 where they prove nothing. */
export function provenBy(problem: SetProblem, prices: Float64Array): bigint {
  const { kinds, days, offers } = problem;
  const price = (day: number, kind: number) => BigInt(prices[day * kinds.length + kind]!);
  let sum = BigInt(problem.constant) * 1000n;
  for (const run of problem.runs) {
    const { columns, closures } = offers[run.offer]!;
    const costs = columns.map(({ cost, uses }) =>
      uses.reduce((all, use) => all + BigInt(use.count) * price(use.day, use.kind), BigInt(cost) * 1000n),
    );
    const least: (bigint | null)[] = [0n];
    for (let at = 1; at <= run.length; at++) {
      let best: bigint | null = null;
      columns.forEach(({ width }, column) => {
        const before = at < width ? null : least[at - width]!;
        if (before !== null && (best === null || before + costs[column]! < best))
          best = before + costs[column]!;
      });
      least.push(best);
    }
    let best = least[run.length]!;
    for (const { width, cost } of closures) {
      const rest = width > run.length ? null : least[run.length - width]!;
      if (rest !== null && (best === null || rest + BigInt(cost) * 1000n < best))
        best = rest + BigInt(cost) * 1000n;
    }
    if (best === null) return -1n;
    sum += BigInt(run.count) * best;
  }
  problem.standing.forEach((count, at) => {
    sum += BigInt(count) * BigInt(prices[at]!);
  });
  for (const [kind, { price: each, owned, most }] of kinds.entries()) {
    let worth = 0n;
    let standing = 0;
    for (let day = 0; day < days; day++) {
      if (prices[day * kinds.length + kind]! < 0) return -1n;
      worth += price(day, kind);
      standing = Math.max(standing, problem.standing[day * kinds.length + kind]!);
    }
    // However many are bought: no gain in one more; else as many as there can be, one by one.
    if (most === Number.POSITIVE_INFINITY && worth > BigInt(each) * 1000n) return -1n;
    let least: bigint | null = null;
    for (
      let held = standing;
      held <= Math.max(standing, owned, Number.isFinite(most) ? most : 0) + 1;
      held++
    ) {
      if (held > Math.max(standing, owned, most)) break;
      const bought = BigInt(Math.max(0, held - owned)) * BigInt(each) * 1000n;
      const cost = bought + (held > 0 ? BigInt(problem.kindCharge) * 1000n : 0n) - worth * BigInt(held);
      if (least === null || cost < least) least = cost;
    }
    sum += least ?? 0n;
  }
  return sum;
}

/** The least cost over all plans of at most so many widths; null where there is none. */
export function leastCostOfFew(problem: SetProblem, most: number): number | null {
  const widths = [...new Set(problem.offers.flatMap(({ columns }) => columns.map(({ width }) => width)))];
  let best: number | null = null;
  for (let subset = 0; subset < 2 ** widths.length; subset++) {
    const on = new Set(widths.filter((_, k) => Math.floor(subset / 2 ** k) % 2 === 1));
    if (on.size > most) continue;
    const offers = problem.offers.map((offer) => ({
      ...offer,
      columns: offer.columns.filter(({ width }) => on.has(width)),
    }));
    const least = leastCost({ ...problem, offers });
    if (least !== null && (best === null || least < best)) best = least;
  }
  return best;
}
