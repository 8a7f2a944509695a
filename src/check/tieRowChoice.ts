// Which rows of ties would a panel's holes allow that keep every tie within its limit? The fewest, by trying all.

import type { KiloNewton, Mm } from "../units.ts";
import { type Envelope, thrustBetween } from "./envelope.ts";
import { type Answer, computed, refusalOf } from "./range.ts";
import { forceOf, tieRowLoads } from "./tieRows.ts";

export interface TieRowGoal {
  readonly envelope: Envelope;
  /** Height of the free surface above the floor. */
  readonly surface: Mm;
  /** From one line of ties to the next. */
  readonly width: Mm;
  /** Heights at which a panel has holes, rising. */
  readonly holes: readonly Mm[];
  readonly limit: KiloNewton;
}

export interface TieRowChoice {
  readonly rows: readonly Mm[];
  /** Greatest load of a tie. */
  readonly force: KiloNewton;
}

const HOLES = { input: "number of holes up a panel", least: 1, greatest: 16, unit: "" } as const;
const LIMIT = { input: "limit of a tie", least: 0.1, greatest: 10_000, unit: "kN" } as const;

/** Greatest load of a tie on a plain strip, by strip and as a beam, kN. */
export function greatestOnRows(
  { envelope, surface, width }: Omit<TieRowGoal, "holes" | "limit">,
  rows: readonly Mm[],
): Answer<KiloNewton> {
  const loads = tieRowLoads({
    envelope,
    surface,
    rows,
    parts: [{ from: 0, to: surface, width }],
  });
  if (loads.status === "refused") return loads;
  return computed(Math.max(0, ...loads.value.map(forceOf)));
}

/**
 * The fewest rows that keep every tie within the limit and, among as many, those whose greatest load is least; null where
 * not even all holes do. 1 to 16 holes, a limit of 0.1 to 10 000 kN, otherwise refused. Tries 65 535 sets at most.
 */
export function chooseTieRows(goal: TieRowGoal): Answer<TieRowChoice | null> {
  const { holes, limit } = goal;
  const refusal = refusalOf([holes.length, HOLES], [limit, LIMIT]);
  if (refusal !== null) return refusal;
  // What no strip of form can be is refused before any set is tried, or left untried.
  const inEveryHole = greatestOnRows(goal, holes);
  if (inEveryHole.status === "refused") return inEveryHole;
  if (leastLowest(goal) > limit) return computed(null);
  for (let count = 1; count <= holes.length; count++) {
    let best: TieRowChoice | null = null;
    for (const rows of subsets(holes, count)) {
      const force = greatestOnRows(goal, rows);
      if (force.status === "refused") return force;
      if (force.value <= limit && (best === null || force.value < best.force))
        best = { rows, force: force.value };
    }
    if (best !== null) return computed(best);
  }
  return computed(null);
}

// No set of rows relieves the tie at the foot of more than the strip up to half the way between the two lowest holes.
function leastLowest({ envelope, surface, width, holes }: TieRowGoal): KiloNewton {
  const [first = 0, second = surface] = holes;
  const to = holes.length === 1 ? surface : (first + second) / 2;
  return (thrustBetween(envelope, surface - to, surface) * width) / 1000;
}

function* subsets(items: readonly Mm[], count: number): Generator<readonly Mm[]> {
  if (count === 0) {
    yield [];
    return;
  }
  for (let k = 0; k + count <= items.length; k++) {
    for (const rest of subsets(items.slice(k + 1), count - 1)) yield [items[k]!, ...rest];
  }
}
