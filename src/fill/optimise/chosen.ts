// Which layout of a plan stands on which interval: equal intervals in the order of their faces, the layouts in an order of
// their own, so that neither depends on names.

import type { Mm } from "../../units.ts";
import type { FreeInterval } from "../solve.ts";
import type { Stretch } from "../stretches.ts";
import type { StatedProblem } from "./problemOf.ts";
import type { LaidOut, Layout, Plan } from "./setProblem.ts";

/** One free interval with its layout. */
export interface ChosenInterval {
  readonly casting: number;
  readonly run: number;
  readonly interval: FreeInterval;
  readonly layout: Layout;
}

interface ChosenCover {
  /** Widest first. */
  readonly widths: readonly Mm[];
  readonly closure: Mm | null;
}

/** All free intervals, run by run. */
export function chosenIntervals({ runs }: StatedProblem, plan: Plan): readonly ChosenInterval[] {
  return runs.flatMap(({ casting, intervals }, run) => {
    const layouts = [...plan[run]!]
      .sort(compareLaidOut)
      .flatMap(({ layout, times }) => Array.from({ length: times }, () => layout));
    return intervals.map((interval, k) => ({ casting, run, interval, layout: layouts[k]! }));
  });
}

/** What a layout of a run is made of. */
export function coverOf({ problem }: StatedProblem, run: number, { counts, closure }: Layout): ChosenCover {
  const { columns, closures } = problem.offers[problem.runs[run]!.offer]!;
  const widths = counts.flatMap((count, column) =>
    Array.from({ length: count }, () => columns[column]!.width),
  );
  return { widths, closure: closure < 0 ? null : closures[closure]!.width };
}

/** Names an interval within its casting. */
export function placeKey({ face, low }: Stretch): string {
  return `${face} ${low}`;
}

function compareLaidOut({ layout: a }: LaidOut, { layout: b }: LaidOut): number {
  return a.closure - b.closure || countOf(a) - countOf(b) || compareCounts(a, b);
}

const countOf = ({ counts }: Layout) => counts.reduce((sum, count) => sum + count, 0);

function compareCounts({ counts: a }: Layout, { counts: b }: Layout): number {
  for (const [column, count] of a.entries()) {
    if (count !== b[column]) return b[column]! - count;
  }
  return 0;
}
