// The core behind the commands: which module answers what the command line asks for.

import { entryNames } from "../fill/entryNames.ts";
import { fillProject } from "../fill/fillProject.ts";
import { mirrorFill } from "../fill/mirror.ts";
import type { FillDocument, UnitFill } from "../fill/result.ts";
import { loadUnion } from "../geom/union.ts";
import { formatIssue } from "../json/issue.ts";
import type { Kit } from "../kit/kit.ts";
import { resolveKit } from "../kit/resolve.ts";
import type { Project } from "../plan/project.ts";
import { readProject } from "../plan/read.ts";
import { sheetInfoOf } from "../sheet/info.ts";
import { roomSheets } from "../sheet/roomSheet.ts";
import { sheetToSvg } from "../sheet/svg.ts";
import type { FillTools, PrintedSheet } from "./fillTools.ts";

export const coreTools: FillTools = {
  readProject(text) {
    const read = readProject(text);
    return read.status === "ok"
      ? { status: "ok", value: read.project, warnings: read.warnings.map(formatIssue) }
      : { status: "invalid", faults: read.issues.map(formatIssue) };
  },
  readKit(kit) {
    const read = resolveKit(kit);
    return read.status === "ok"
      ? { status: "ok", value: read.kit, warnings: read.warnings }
      : { status: "invalid", faults: read.issues.map(formatIssue) };
  },
  async fill(project, kit) {
    return fillProject(project, kit, await loadUnion());
  },
  sheets: printedSheets,
};

/**
 * The sheets of every entry, and for its mirrored pours a set of their own: nobody is to turn a sheet round in the head.
 * Those of a unit's second and later storeys, and of mirrored pours, say so in their titles.
 */
function printedSheets(fill: FillDocument, project: Project, kit: Kit): readonly PrintedSheet[] {
  const names = entryNames(fill);
  return fill.units.flatMap((entry, index) => {
    const unit = project.units.find(({ id }) => id === entry.unit);
    if (unit === undefined)
      throw new RangeError(`the fill has a unit "${entry.unit}" that the project lacks`);
    const storey = names[index]!.slice(entry.unit.length).replace("@", "-storey-");
    return handsOf(entry, project, kit).flatMap(({ hand, ending }) =>
      roomSheets(hand, sheetInfoOf({ project, unit, kit }, hand)).map((sheet) => ({
        title: sheet.name + storey + ending,
        svg: sheetToSvg(sheet),
      })),
    );
  });
}

interface Hand {
  readonly hand: UnitFill;
  readonly ending: string;
}

function handsOf(entry: UnitFill, project: Project, kit: Kit): readonly Hand[] {
  const isMirrored = (id: string) => project.pours.find((pour) => pour.id === id)?.mirror === true;
  const mirrored = entry.pours.filter(isMirrored);
  if (mirrored.length === 0) return [{ hand: entry, ending: "" }];
  const asDrawn = entry.pours.filter((id) => !isMirrored(id));
  const reflection: Hand = { hand: mirrorFill({ ...entry, pours: mirrored }, kit), ending: "-mirrored" };
  return asDrawn.length === 0
    ? [reflection]
    : [{ hand: { ...entry, pours: asDrawn }, ending: "" }, reflection];
}
