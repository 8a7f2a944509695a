// Tie rows of the kit at the very level where one piece of a stack stands on the next: no tie passes through that joint.
//
//   2700 ┬─────┬─────┬
//        │     │     │
//   2400 ┼─────┼─────┼ ── row 2400: between two pieces, in none
//        │     │     │

import type { Mm } from "../units.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { lengthText, type ProblemLog } from "./problems.ts";

/** Files one warning for each such row. Rows above the panels are those of higher walls, and no fault. */
export function checkRowLevels(drafts: readonly FaceDraft[], rows: readonly Mm[], log: ProblemLog): void {
  const levels = new Set(
    drafts
      .filter(({ settled }) => settled.formed.opposite.length > 0)
      .flatMap(({ profile }) => levelsOf(profile)),
  );
  for (const row of rows) {
    if (!levels.has(row)) continue;
    log.add(
      "warning",
      "tie-row",
      `The tie row at ${lengthText(row)} mm is at the level where pieces of the stack stand on each other: no tie passes there; ` +
        `give the kit another row (rule tieRows).`,
      {},
    );
  }
}

function levelsOf({ rows, top }: FaceDraft["profile"]): readonly Mm[] {
  let level = 0;
  return rows.map(({ height }) => (level += height)).filter((each) => each < top);
}
