// The core behind the commands: which module answers what the command line asks for.

import { readStock } from "../exchange/stock/readStock.ts";
import { fillProject } from "../fill/fillProject.ts";
import { keepSet } from "../fill/keepSet.ts";
import { findNudges } from "../fill/nudge/findNudges.ts";
import { chooseSet, type OptimiseInput, optimiseProject } from "../fill/optimise/optimiseProject.ts";
import { tradeOff } from "../fill/optimise/tradeOff.ts";
import { loadUnion } from "../geom/union.ts";
import { formatIssue } from "../json/issue.ts";
import type { Kit } from "../kit/kit.ts";
import { resolveKit } from "../kit/resolve.ts";
import type { Project } from "../plan/project.ts";
import { readProject } from "../plan/read.ts";
import { writeProject } from "../plan/write.ts";
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
    return driven(optimiseProject(await optimiseInput(project, kit, seconds)));
  },
  async tradeOff(project, kit, seconds) {
    // Every point with its share of steps, so that a time is not all spent on the proof of the first.
    const { proofSteps: _, ...input } = await optimiseInput(project, kit, seconds);
    return driven(tradeOff(input)).curve;
  },
  async keep(project, kit, fill) {
    return writeProject(keepSet({ project, kit, union: await loadUnion() }, fill));
  },
  async optimiseWithNudges(project, kit, seconds) {
    const input = await optimiseInput(project, kit, seconds);
    const chosen = driven(chooseSet(input));
    return { fill: chosen.fill, nudges: driven(findNudges({ ...input, chosen })) };
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

async function optimiseInput(project: Project, kit: Kit, seconds: number | null): Promise<OptimiseInput> {
  const [union, solver] = await Promise.all([loadUnion(), loadHighs()]);
  const end = seconds === null ? null : performance.now() + 1000 * seconds;
  return {
    project,
    kit,
    union,
    solver,
    // Whoever names a time wants the proof, however many steps it takes.
    ...(end !== null && { isStopped: () => performance.now() > end, proofSteps: Number.POSITIVE_INFINITY }),
  };
}

function driven<T>(work: Generator<unknown, T>): T {
  let step = work.next();
  while (step.done !== true) step = work.next();
  return step.value;
}
