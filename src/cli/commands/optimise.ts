// The command `optimise`: a project file in, the fill of all units with one panel set for every pour out, as JSON.

import { writeNudges } from "../../fill/nudge/nudgeList.ts";
import { writeFillDocument } from "../../fill/writeFill.ts";
import { changesSummary } from "../changesSummary.ts";
import type { FillTools } from "../fillTools.ts";
import { type ExitCode, readInputs, stop, warningList } from "../inputs.ts";
import type { Io } from "../io.ts";
import { nudgeSummary } from "../nudgeSummary.ts";
import { setSummary } from "../setSummary.ts";
import { fillSummary } from "../summary.ts";
import { errorCount, placeFault, resultPath, writeResult } from "./made.ts";

export interface OptimiseRequest {
  /** "-" = standard input. */
  readonly project: string;
  /** null and "-" = standard output. */
  readonly json: string | null;
  /** Where the moves of walls that would make the set cheaper go; null: they are not looked for. */
  readonly nudges: string | null;
  /** When to stop; null: when the work allowed is done. */
  readonly seconds: number | null;
}

/** Runs the command. Ends with 1 if there are not enough pieces for any plan, or the fill has an error. */
export async function runOptimise(
  { project: path, json, nudges: list, seconds }: OptimiseRequest,
  io: Io,
  tools: Pick<FillTools, "readProject" | "readKit" | "optimise" | "optimiseWithNudges">,
): Promise<ExitCode> {
  const inputs = await readInputs(path, "optimised", io, tools);
  if (inputs.status === "failed") return stop(io, inputs.message);
  const { project, kit, warnings } = inputs.value;
  if (list === "-" && resultPath(json).length === 0) return stop(io, BOTH_TO_OUTPUT);
  const fault = placeFault([...resultPath(json), ...resultPath(list)], path, io, "--json and --nudges");
  if (fault !== null) return stop(io, fault);

  const { fill, nudges } =
    list === null
      ? { fill: await tools.optimise(project, kit, seconds), nudges: null }
      : await tools.optimiseWithNudges(project, kit, seconds);
  const beside = nudges === null ? "" : writeNudges(nudges);
  const files = resultPath(list).map((file) => ({ path: file, content: beside }));
  const written = await writeResult(writeFillDocument(fill), json, io, { files, folder: null });
  if (written.status === "failed") return stop(io, `Cannot write ${written.path}: ${written.reason}.\n`);
  const said = list === "-" ? await io.out(beside) : written;
  if (said.status === "failed") return stop(io, `Cannot write ${said.path}: ${said.reason}.\n`);
  const told = [
    setSummary(fill, kit.currency),
    changesSummary(fill),
    nudgeSummary(nudges, kit.currency),
  ].join("");
  await io.err(warningList(warnings) + fillSummary(fill) + told);
  return errorCount(fill) > 0 || fill.set?.status === "infeasible" ? 1 : 0;
}

const BOTH_TO_OUTPUT =
  "The fill and the moves cannot both go to standard output: name a file for one of them.\n";
