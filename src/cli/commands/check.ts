// The command `check`: a project file in, its checks as JSON out, with a summary and the cautions for the person.
//
// The fill is made on the way; what it cannot build is a finding here too, for nothing was checked there.

import { assessFill } from "../../assess/assessFill.ts";
import { writeCheckDocument } from "../../assess/writeChecks.ts";
import { formatIssue } from "../../json/issue.ts";
import { readConcrete } from "../../plan/concrete.ts";
import { readLoads } from "../../plan/loads.ts";
import { checkSummary } from "../checkSummary.ts";
import type { FillTools } from "../fillTools.ts";
import { type ExitCode, faultList, readInputs, stop, warningList } from "../inputs.ts";
import type { Io } from "../io.ts";
import { errorCount, placeFault, resultPath, writeResult } from "./made.ts";

export interface CheckRequest {
  /** "-" = standard input. */
  readonly project: string;
  /** null and "-" = standard output. */
  readonly json: string | null;
}

/** Runs the command. Ends with 1 if a check is over its limit or the fill has an error. */
export async function runCheck(
  { project: path, json }: CheckRequest,
  io: Io,
  tools: Pick<FillTools, "readProject" | "readKit" | "fill">,
): Promise<ExitCode> {
  const inputs = await readInputs(path, "checked", io, tools);
  if (inputs.status === "failed") return stop(io, inputs.message);
  const { project, kit, warnings } = inputs.value;
  const read = readLoads(project.loads);
  const concrete = readConcrete(project.concrete);
  if (read.status === "invalid" || concrete.status === "invalid") {
    const issues = [read, concrete].flatMap((each) => (each.status === "invalid" ? each.issues : []));
    return stop(io, faultList(path, "checked", issues.map(formatIssue)));
  }
  const fault = placeFault(resultPath(json), path, io, "--json");
  if (fault !== null) return stop(io, fault);

  const fill = await tools.fill(project, kit);
  const checked = assessFill({
    project,
    kit,
    fill,
    loads: read.value,
    defaults: read.defaults,
    concrete: concrete.value,
    concreteDefaults: concrete.defaults,
  });
  const fillErrors = errorCount(fill);
  const written = await writeResult(writeCheckDocument(checked), json, io);
  if (written.status === "failed") return stop(io, `Cannot write ${written.path}: ${written.reason}.\n`);
  const all = [...warnings, ...[...read.warnings, ...concrete.warnings].map(formatIssue)];
  await io.err(warningList(all) + checkSummary(checked, fillErrors));
  return checked.totals.over > 0 || fillErrors > 0 ? 1 : 0;
}
