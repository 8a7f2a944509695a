// Counts what every pour adds to the set and what the set needs: beside the page in a worker. A unit that has not changed
// since the last count is not filled again, so that a pour moved in the table is answered at once.

import { type Casting, castingsOf } from "../../fill/castings.ts";
import { fillCasting } from "../../fill/fillProject.ts";
import { type PoursAdd, pourAdds } from "../../fill/optimise/pourAdds.ts";
import type { BillLine } from "../../fill/result.ts";
import type { Union } from "../../geom/union.ts";
import type { Project } from "../../plan/project.ts";
import type { WorkPlan } from "../over/workPlan.ts";

type Bill = readonly BillLine[];

/** Throws where a fill breaks down: a fault of the program. */
export type Counter = (plan: WorkPlan) => PoursAdd;

export function createCounter(union: Union): Counter {
  let bills: ReadonlyMap<string, Bill> = new Map();
  return ({ project, kit }) => {
    const castings = castingsOf(project);
    const ofKit = JSON.stringify(kit);
    const keys = castings.map((casting) => ofKit + keyOf(casting, project));
    const made = new Map<string, Bill>();
    castings.forEach((casting, k) => {
      const key = keys[k]!;
      const known = bills.get(key) ?? made.get(key);
      made.set(key, known ?? fillCasting(casting, { project, kit, union }).fill.bill);
    });
    bills = made;
    return pourAdds(
      project,
      kit,
      castings,
      keys.map((key) => made.get(key)!),
    );
  };
}

// All that the fill of a casting depends on beside the kit.
function keyOf({ unit, storey, prefix }: Casting, { fillers }: Project): string {
  return JSON.stringify([unit, storey, prefix, fillers]);
}
