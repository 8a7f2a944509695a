// What a kind of check gets to see: one entry of the fill, with its storey, its kit, the loads and the concrete of the project.

import type { UnitFill } from "../fill/result.ts";
import type { Kit } from "../kit/kit.ts";
import type { Concrete } from "../plan/concrete.ts";
import type { Loads } from "../plan/loads.ts";
import type { Storey, Unit } from "../plan/project.ts";

export interface CheckedEntry {
  /** As the ids of its faces begin: "A", "A@2". */
  readonly name: string;
  readonly fill: UnitFill;
  /** As drawn: what no fill lists. */
  readonly plan: Pick<Unit, "services" | "controlLines">;
  readonly storey: Storey;
  readonly kit: Kit;
  readonly loads: Loads;
  readonly concrete: Concrete;
}
