// Projects that leave nothing of a calculation sheet out: a method with a knee, a limit for ties, a log of temperatures,
// shoring through the storeys. And their calculation sheets, without the other kinds.

import { checkProject, type ProjectChecks } from "../../src/assess/checkProject.ts";
import { fillProject } from "../../src/fill/fillProject.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit } from "../../src/kit/kit.ts";
import type { Project } from "../../src/plan/project.ts";
import { calculationSheets } from "../../src/sheet/calculations/sheets.ts";
import type { SheetFields } from "../../src/sheet/info.ts";
import type { Sheet } from "../../src/sheet/mark.ts";
import { handedEntries } from "../../src/sheet/sheetSet.ts";
import { sampleProject } from "./samples.ts";

const union = await loadUnion();

/** The demo kit with a figure for ties, as whoever tested them would enter it. */
export const ratedKit: Kit = {
  ...demoKit,
  rules: { ...demoKit.rules, tieLoad: { value: 16, unit: "kN", origin: "invented for the test" } },
};

const LOG: readonly (readonly [hour: number, temperature: number])[] = [
  [0, 18],
  [6, 24],
  [12, 31],
  [24, 28],
  [48, 15],
  [72, 12],
  [100, 11],
];

export const CONCRETE = {
  pressureModel: "CIRIA 108",
  rate: 2.5,
  temperature: 15,
  cement: "portland",
  retarder: false,
  cylinderStrength: 30,
  cementClass: "R",
  strikeAt: 96,
  log: LOG,
  serviceLoad: 7.5,
};
export const LOADS = { shoring: { shores: 2, reshores: 1, storeys: 5 } };

/** A sample with everything said that the checks can be told. */
export function toldProject(name: string, more: Partial<Project> = {}): Project {
  const concrete = { ...CONCRETE, log: CONCRETE.log.map((reading) => [...reading]) };
  return { ...sampleProject(name), concrete, loads: LOADS, ...more };
}

export interface CalculatedOf {
  readonly project: Project;
  readonly kit?: Kit;
  readonly fields?: SheetFields;
  /** Changes the checks before they are printed. */
  readonly change?: (checks: ProjectChecks) => ProjectChecks;
}

/** The calculation sheets of every entry of a project. */
export function calculated({ project, kit = ratedKit, fields = {}, change = (same) => same }: CalculatedOf) {
  const fill = fillProject(project, kit, union);
  const checks = change(checkProject({ project, kit, fill }));
  const sheets: readonly Sheet[] = handedEntries({ fill, project, kit }, fields).flatMap(({ drawn }) =>
    drawn === null ? [] : calculationSheets({ ...drawn, storey: drawn.info.storey, kit, checks }),
  );
  return { sheets, checks, fill, kit };
}
