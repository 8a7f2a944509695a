// Makes the checks of a project and hands them out: beside the page in a worker. The fill is worked out once for each
// state of the plan; other loads or another concrete only check it anew.

import type { Check, CheckDocument } from "../../assess/checkDocument.ts";
import { checkProject } from "../../assess/checkProject.ts";
import { entryNames } from "../../fill/entryNames.ts";
import { fillProject } from "../../fill/fillProject.ts";
import type { FillDocument, UnitFill } from "../../fill/result.ts";
import type { Union } from "../../geom/union.ts";
import type { Issue } from "../../json/issue.ts";
import type { JsonObject } from "../../json/value.ts";
import type { Project } from "../../plan/project.ts";
import type { WorkPlan } from "../over/workPlan.ts";
import type { CheckDetail, CheckedUnit, CheckList, CheckRow } from "./checkList.ts";
import { spotOf } from "./spot.ts";

/** What the project says for the checks, unread. */
export interface Stated {
  readonly loads: JsonObject;
  readonly concrete: JsonObject;
}

/** "unread": loads or concrete have mistakes; nothing was checked. */
export type Checked =
  | { readonly status: "checked"; readonly list: CheckList }
  | { readonly status: "unread"; readonly issues: readonly Issue[] };

export interface Checker {
  /**
   * @param version - names the list: another one for every list
   * @throws {Error} where the fill breaks down: a fault of the program
   */
  readonly make: (plan: WorkPlan, stated: Stated, version: number) => Checked;
  /** A check of the list made last; null where it is of another. */
  readonly detail: (version: number, index: number) => CheckDetail | null;
}

interface Made {
  readonly version: number;
  readonly document: CheckDocument;
  readonly fill: FillDocument;
}

export function createChecker(union: Union): Checker {
  let filled: { readonly plan: WorkPlan; readonly fill: FillDocument } | null = null;
  let made: Made | null = null;
  return {
    make: (plan, stated, version) => {
      if (filled?.plan !== plan) filled = { plan, fill: fillProject(plan.project, plan.kit, union) };
      const { fill } = filled;
      const checks = checkProject({ ...plan, project: { ...plan.project, ...stated }, fill });
      if (checks.status === "unread") return checks;
      made = { version, document: checks.document, fill };
      return { status: "checked", list: listOf(made, plan.project) };
    },
    detail: (wanted, index) => {
      const check = made?.document.checks[index];
      if (made?.version !== wanted || check === undefined) return null;
      const entry = entriesOf(made.fill).get(check.where.unit);
      return { check, spot: entry === undefined ? null : spotOf(check.where, entry) };
    },
  };
}

function entriesOf(fill: FillDocument): ReadonlyMap<string, UnitFill> {
  const names = entryNames(fill);
  return new Map(fill.units.map((unit, index) => [names[index] ?? unit.unit, unit]));
}

function listOf({ version, document, fill }: Made, project: Project): CheckList {
  const { checks, ...rest } = document;
  const walls = new Map(
    [...entriesOf(fill).values()].flatMap(({ faces }) =>
      faces.map((face) => [face.id, face.walls.join("+")] as const),
    ),
  );
  return {
    version,
    units: unitsOf(fill, project),
    rows: checks.map((check, index) => rowOf(check, index, walls)),
    document: rest,
  };
}

function rowOf(check: Check, index: number, walls: ReadonlyMap<string, string>): CheckRow {
  const { inputs: _inputs, formula: _formula, source: _source, ...row } = check;
  return { ...row, index, walls: walls.get(check.where.face ?? "") ?? "" };
}

function unitsOf(fill: FillDocument, { units, storey }: Project): readonly CheckedUnit[] {
  return [...entriesOf(fill)].map(([name, entry]) => {
    const isAlone = fill.units.filter(({ unit }) => unit === entry.unit).length === 1;
    const label = units.find(({ id }) => id === entry.unit)?.name ?? "";
    const clearHeight = isAlone ? null : (entry.storey ?? storey).clearHeight;
    return { name, unit: entry.unit, label: label === "" ? entry.unit : label, clearHeight };
  });
}
