// The core behind the commands: which module answers what the command line asks for.

import { readStock } from "../exchange/stock/readStock.ts";
import { fillProject } from "../fill/fillProject.ts";
import { optimiseProject } from "../fill/optimise/optimiseProject.ts";
import { loadUnion } from "../geom/union.ts";
import { formatIssue } from "../json/issue.ts";
import { resolveKit } from "../kit/resolve.ts";
import { readProject } from "../plan/read.ts";
import { sheetSets } from "../sheet/sheetSet.ts";
import { projectTables } from "../sheet/tables.ts";
import { loadHighs } from "../solver/highs.ts";
import type { FillTools } from "./fillTools.ts";
import { fontFiles } from "./fontFiles.ts";

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
  async optimise(project, kit, seconds) {
    const [union, solver] = await Promise.all([loadUnion(), loadHighs()]);
    const end = seconds === null ? null : performance.now() + 1000 * seconds;
    const work = optimiseProject({
      project,
      kit,
      union,
      solver,
      // Whoever names a time wants the proof, however many steps it takes.
      ...(end !== null && { isStopped: () => performance.now() > end, proofSteps: Number.POSITIVE_INFINITY }),
    });
    let step = work.next();
    while (step.done !== true) step = work.next();
    return step.value;
  },
  async stock(bytes, kit) {
    return readStock(bytes, kit);
  },
  fonts: fontFiles,
  tables: projectTables,
  async sheets(made, fields) {
    return sheetSets({ ...made, union: await loadUnion() }, fields);
  },
};
