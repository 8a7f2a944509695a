// The walls of one casting filled again, before or after a move: what they ask of the set, and what is wrong with them.

import type { Union } from "../../geom/union.ts";
import type { Kit } from "../../kit/kit.ts";
import type { Project, Unit } from "../../plan/project.ts";
import type { Casting } from "../castings.ts";
import { type FilledUnit, fillWalls } from "../fillWalls.ts";
import { type Demand, demandOf } from "../optimise/demand.ts";
import type { FreeInterval } from "../solve.ts";
import { keyedFaces, keyedIntervals } from "./keyed.ts";

export interface Refilled {
  readonly casting: Casting;
  readonly filled: FilledUnit;
  readonly demand: Demand;
  readonly intervals: ReadonlyMap<string, FreeInterval>;
  readonly faces: ReadonlyMap<string, number>;
  /** Places that cannot be built, soffits not counted. */
  readonly errors: number;
}

export interface RefillTools {
  readonly project: Project;
  readonly kit: Kit;
  readonly union: Union;
}

export function refill(casting: Casting, unit: Unit, { project, kit, union }: RefillTools): Refilled {
  const free: FreeInterval[] = [];
  const { storey, prefix } = casting;
  const { fillers } = project;
  const choose = (interval: FreeInterval) => {
    free.push(interval);
    return interval.cover;
  };
  const filled = fillWalls({ unit, storey, kit, union, prefix, fillers, choose }, null);
  return {
    casting: { ...casting, unit },
    filled,
    demand: demandOf(filled, free, kit),
    intervals: keyedIntervals(filled, free),
    faces: keyedFaces(filled),
    errors: filled.fill.problems.filter(({ severity }) => severity === "error").length,
  };
}
