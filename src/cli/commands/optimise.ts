// The command `optimise`: a project file in, the fill of all units with one panel set for every pour out, as JSON.

import { shortageOf } from "../../fill/deliver/shortage.ts";
import { writeFillDocument } from "../../fill/writeFill.ts";
import type { FillTools } from "../fillTools.ts";
import { type ExitCode, readInputs, stop, warningList } from "../inputs.ts";
import type { Io } from "../io.ts";
import { otherShortText, setSummary } from "../setSummary.ts";
import { fillSummary } from "../summary.ts";
import { errorCount, placeFault, resultPath, writeResult } from "./made.ts";

export interface OptimiseRequest {
  /** "-" = standard input. */
  readonly project: string;
  /** null and "-" = standard output. */
  readonly json: string | null;
  /** When to stop; null: when the work allowed is done. */
  readonly seconds: number | null;
}

/** Runs the command. Ends with 1 if there are not enough pieces for any plan, or the fill has an error. */
export async function runOptimise(
  { project: path, json, seconds }: OptimiseRequest,
  io: Io,
  tools: Pick<FillTools, "readProject" | "readKit" | "optimise">,
): Promise<ExitCode> {
  const inputs = await readInputs(path, "optimised", io, tools);
  if (inputs.status === "failed") return stop(io, inputs.message);
  const { project, kit, warnings } = inputs.value;
  const fault = placeFault(resultPath(json), path, io, "--json");
  if (fault !== null) return stop(io, fault);

  const fill = await tools.optimise(project, kit, seconds);
  const written = await writeResult(writeFillDocument(fill), json, io);
  if (written.status === "failed") return stop(io, `Cannot write ${written.path}: ${written.reason}.\n`);
  const others = otherShortText(shortageOf(fill, kit, project), project.buy);
  await io.err(warningList(warnings) + fillSummary(fill) + setSummary(fill, kit.currency) + others);
  return errorCount(fill) > 0 || fill.set?.status === "infeasible" ? 1 : 0;
}
