// Fills every unit of a project, once for each storey height it is poured at.

import type { Union } from "../geom/union.ts";
import type { Kit } from "../kit/kit.ts";
import type { Project } from "../plan/project.ts";
import { type Casting, castingsOf } from "./castings.ts";
import { fillUnit } from "./fillUnit.ts";
import type { FilledUnit } from "./fillWalls.ts";
import type { FillDocument, Totals, UnitFill } from "./result.ts";
import { checkPropLines } from "./soffit/propLines.ts";
import type { ChooseCover } from "./solve.ts";

/** The fill of a project. Units in the order of the project, storeys in the order of the pours. */
export function fillProject(project: Project, kit: Kit, union: Union): FillDocument {
  const castings = castingsOf(project);
  const filled = castings.map((casting) => fillCasting(casting, { project, kit, union }));
  return fillDocument(project, castings, filled);
}

export interface FillTogether {
  readonly project: Project;
  readonly kit: Kit;
  readonly union: Union;
}

/** Fills one casting; `choose` decides the free intervals that no pin holds. */
export function fillCasting(
  { unit, storey, prefix }: Casting,
  { project, kit, union }: FillTogether,
  choose?: ChooseCover,
): FilledUnit {
  const input = { unit, storey, kit, union, prefix, fillers: project.fillers };
  return fillUnit(choose === undefined ? input : { ...input, choose });
}

/** The document of castings filled, in the order of `castings`. */
export function fillDocument(
  project: Project,
  castings: readonly Casting[],
  filled: readonly FilledUnit[],
): FillDocument {
  const units = castings.map(({ unit, storey, pours, saysStorey }, k): UnitFill => {
    const fill = { ...filled[k]!.fill, pours, ...(saysStorey ? { storey } : {}) };
    const below = castings[k - 1]?.unit === unit ? filled[k - 1]!.fill : undefined;
    const astray = below === undefined ? [] : checkPropLines(below.soffits, fill.soffits);
    return astray.length === 0 ? fill : { ...fill, problems: [...fill.problems, ...astray] };
  });
  return {
    format: "panelwright-fill",
    version: 1,
    project: project.name,
    units,
    totals: sumOf(units),
  };
}

function sumOf(units: readonly UnitFill[]): Totals {
  const sum = { closures: 0, narrow: 0, fillers: 0, zones: 0, panels: 0 };
  for (const { totals } of units) {
    sum.closures += totals.closures;
    sum.narrow += totals.narrow;
    sum.fillers += totals.fillers;
    sum.zones += totals.zones;
    sum.panels += totals.panels;
  }
  return sum;
}
