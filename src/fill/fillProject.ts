// Fills every unit of a project, once for each storey height it is poured at.

import type { Union } from "../geom/union.ts";
import type { Kit } from "../kit/kit.ts";
import type { Pour, Project, Storey, Unit } from "../plan/project.ts";
import { fillUnit } from "./fillUnit.ts";
import type { FillDocument, Totals, UnitFill } from "./result.ts";
import { checkPropLines } from "./soffit/propLines.ts";

/** One unit at one storey, with the pours that cast it. */
interface Casting {
  readonly unit: Unit;
  readonly storey: Storey;
  readonly pours: readonly string[];
  readonly prefix: string;
  /** True where the storey is not the project's own. */
  readonly saysStorey: boolean;
}

/** The fill of a project. Units in the order of the project, storeys in the order of the pours. */
export function fillProject(project: Project, kit: Kit, union: Union): FillDocument {
  const units = project.units.flatMap((unit) => {
    const storeys = castingsOf(unit, project).map((casting): UnitFill => {
      const { unit: drawn, storey, prefix, pours, saysStorey } = casting;
      const { fill } = fillUnit({ unit: drawn, storey, kit, union, prefix, fillers: project.fillers });
      return { ...fill, pours, ...(saysStorey ? { storey } : {}) };
    });
    return storeys.map((fill, k) => {
      const below = storeys[k - 1];
      const astray = below === undefined ? [] : checkPropLines(below.soffits, fill.soffits);
      return astray.length === 0 ? fill : { ...fill, problems: [...fill.problems, ...astray] };
    });
  });
  return {
    format: "panelwright-fill",
    version: 1,
    project: project.name,
    units,
    totals: sumOf(units),
  };
}

function castingsOf(unit: Unit, project: Project): readonly Casting[] {
  const own: readonly Pour[] = project.pours.filter((pour) => pour.unit === unit.id);
  const castings: { storey: Storey; pours: string[] }[] = [];
  for (const pour of own) {
    const storey = pour.storey ?? project.storey;
    const known = castings.find((casting) => isSame(casting.storey, storey));
    if (known === undefined) castings.push({ storey, pours: [pour.id] });
    else known.pours.push(pour.id);
  }
  if (castings.length === 0) {
    castings.push({ storey: project.storey, pours: [] });
  }
  return castings.map(({ storey, pours }, k) => ({
    unit,
    storey,
    pours,
    prefix: k === 0 ? unit.id : `${unit.id}@${k + 1}`,
    saysStorey: castings.length > 1 || !isSame(storey, project.storey),
  }));
}

function isSame(a: Storey, b: Storey): boolean {
  return a.clearHeight === b.clearHeight && a.slab === b.slab;
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
