// Which intervals the choice fills otherwise than by themselves, what each change is worth, and why it is made.
//
//   by itself   600 600 600 100        undone: 2 panels of 600 more on the day that takes most of them
//   chosen      600 450 450 400

import { type ChosenInterval, chosenIntervals } from "./chosen.ts";
import type { StatedProblem } from "./problemOf.ts";
import type { Layout, Plan } from "./setProblem.ts";
import { createSwaps, type NeedChange, type SwapEffect } from "./swaps.ts";

/** A free interval that is filled otherwise than by itself. */
export interface ChangedInterval extends ChosenInterval {
  /** What it is worth, units; null where either takes more pieces than there can be. */
  readonly alone: number | null;
  readonly undone: number | null;
  /** Of which codes the set would need more if this one were filled as before. */
  readonly spared: readonly string[];
  readonly because: string;
}

export interface ChangedSource {
  readonly stated: StatedProblem;
  readonly plan: Plan;
  /** By day, the names of its pours. */
  readonly pours: readonly (readonly string[])[];
}

/** The changed intervals, run by run. */
export function changedIntervals({ stated, plan, pours }: ChangedSource): readonly ChangedInterval[] {
  const { problem, wallByWall, codes } = stated;
  const aloneIn = createSwaps(problem, wallByWall);
  const undoneIn = createSwaps(problem, plan);
  return chosenIntervals(stated, plan).flatMap((chosen): readonly ChangedInterval[] => {
    const before = wallByWall[chosen.run]![0]!.layout;
    if (isSameLayout(before, chosen.layout)) return [];
    const { run, layout } = chosen;
    const effect = undoneIn({ run, from: layout, to: before });
    const alone = aloneIn({ run, from: before, to: layout }).cost;
    const spared = effect.needs.filter(({ more }) => more > 0).map(({ kind }) => codes[kind]!);
    return [
      {
        ...chosen,
        alone: alone === null ? null : 0 - alone,
        undone: effect.cost,
        spared,
        because: becauseOf(effect, codes, pours),
      },
    ];
  });
}

function isSameLayout(a: Layout, b: Layout): boolean {
  return a.closure === b.closure && a.counts.every((count, column) => count === b.counts[column]);
}

// As a reason goes on, without a capital and a full stop.
function becauseOf(
  { cost, needs }: SwapEffect,
  codes: readonly string[],
  pours: ChangedSource["pours"],
): string {
  const named = ({ kind, more }: NeedChange) => `${Math.abs(more)} ${codes[kind]!}`;
  const more = needs
    .filter((need) => need.more > 0)
    .map((need) => `${named(need)} (${(pours[need.day] ?? []).join(", ")})`);
  const less = needs.filter((need) => need.more < 0).map(named);
  if (more.length > 0 && less.length > 0)
    return `filled by itself, the set would need ${more.join(", ")} more and ${less.join(", ")} less`;
  if (more.length > 0) return `filled by itself, the set would need ${more.join(", ")} more`;
  if (cost !== null && cost > 0 && less.length > 0)
    return `filled by itself, the set would need ${less.join(", ")} less, but handling and closures would cost more`;
  if (cost !== null && cost > 0)
    return "filled by itself, the set would be no smaller, handling and closures dearer";
  return "filled by itself, the set would cost no more: it goes together with other changes";
}
