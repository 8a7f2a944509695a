// The checks of a filled project, its loads and its concrete read on the way as the command does.

import { assessFill } from "../../src/assess/assessFill.ts";
import type { CheckDocument } from "../../src/assess/checkDocument.ts";
import type { CheckedEntry } from "../../src/assess/entry.ts";
import type { FillDocument } from "../../src/fill/result.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit } from "../../src/kit/kit.ts";
import { readConcrete } from "../../src/plan/concrete.ts";
import { readLoads } from "../../src/plan/loads.ts";
import type { Project } from "../../src/plan/project.ts";

export interface Filled {
  readonly project: Project;
  readonly fill: FillDocument;
  readonly kit?: Kit;
}

/** @throws {Error} if the project's loads or concrete say nothing that can be read */
export function assessed({ project, fill, kit = demoKit }: Filled): CheckDocument {
  const { concrete, loads } = inputsOf(project);
  return assessFill({
    project,
    kit,
    fill,
    loads: loads.value,
    defaults: loads.defaults,
    concrete: concrete.value,
    concreteDefaults: concrete.defaults,
  });
}

/** The first entry of a fill as the checks see it. */
export function entryOf({ project, fill, kit = demoKit }: Filled): CheckedEntry {
  const { concrete, loads } = inputsOf(project);
  const [unit] = fill.units;
  return {
    name: unit!.unit,
    fill: unit!,
    plan: project.units.find(({ id }) => id === unit!.unit)!,
    storey: unit!.storey ?? project.storey,
    kit,
    loads: loads.value,
    concrete: concrete.value,
  };
}

function inputsOf(project: Project) {
  const loads = readLoads(project.loads);
  const concrete = readConcrete(project.concrete);
  if (loads.status === "invalid" || concrete.status === "invalid") throw new Error("loads or concrete");
  return { loads, concrete };
}
