// The core behind the commands: which module answers what the command line asks for.

import { fillProject } from "../fill/fillProject.ts";
import { loadUnion } from "../geom/union.ts";
import { formatIssue } from "../json/issue.ts";
import { resolveKit } from "../kit/resolve.ts";
import { readProject } from "../plan/read.ts";
import { sheetSets } from "../sheet/sheetSet.ts";
import { projectTables } from "../sheet/tables.ts";
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
  fonts: fontFiles,
  tables: projectTables,
  async sheets(made, fields) {
    return sheetSets({ ...made, union: await loadUnion() }, fields);
  },
};
