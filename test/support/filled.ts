// Short ways to fill one unit in a test.

import { fillProject } from "../../src/fill/fillProject.ts";
import type { FillDocument, UnitFill } from "../../src/fill/result.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit } from "../../src/kit/kit.ts";
import type { Opening, Project, Storey, Unit } from "../../src/plan/project.ts";

const union = await loadUnion();

/** 2400 clear under a slab of 100: a connector of 150 stands on panels of 2250. */
export const STOREY: Storey = { clearHeight: 2400, slab: 100 };

/** A project of one unit with every member plain. */
export function projectOf(unit: Unit, given: Partial<Project> = {}): Project {
  return {
    name: "test",
    revision: "",
    language: "en",
    storey: STOREY,
    kit: "demo",
    units: [unit],
    pours: [],
    stock: {},
    buy: true,
    fillers: "corner",
    objective: { handling: 0.6, closure: 500, closurePerMm: 0.3, distinctSize: 0 },
    concrete: {},
    loads: {},
    extra: {},
    ...given,
  };
}

export function fillDocument(project: Project, kit: Kit = demoKit): FillDocument {
  return fillProject(project, kit, union);
}

/** The fill of one unit at one storey. */
export function fillOne(unit: Unit, storey: Storey = STOREY, kit: Kit = demoKit): UnitFill {
  return fillDocument(projectOf(unit, { storey }), kit).units[0]!;
}

/** A door or window with bands; `given` for anything else. */
export function opening(
  id: string,
  wall: string,
  [at, width, sill, head]: readonly [at: number, width: number, sill: number, head: number],
  given: Partial<Opening> = {},
): Opening {
  return { id, wall, at, width, sill, head, formed: "band", ...given };
}
