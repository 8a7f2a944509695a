// The command `optimise`: a project file in, the fill of all units with one panel set for every pour out, as JSON.

import { shortageOf } from "../../fill/deliver/shortage.ts";
import { writeNudges } from "../../fill/nudge/nudgeList.ts";
import { writeCurve } from "../../fill/writeCurve.ts";
import { writeFillDocument } from "../../fill/writeFill.ts";
import { changesSummary } from "../changesSummary.ts";
import type { FillTools } from "../fillTools.ts";
import { type ExitCode, readInputs, stop, warningList } from "../inputs.ts";
import type { Io } from "../io.ts";
import { nudgeSummary } from "../nudgeSummary.ts";
import { otherShortText, setSummary } from "../setSummary.ts";
import { fillSummary } from "../summary.ts";
import { errorCount, placeFault, resultPath } from "./made.ts";

export interface OptimiseRequest {
  /** "-" = standard input. */
  readonly project: string;
  /** null and "-" = standard output. */
  readonly json: string | null;
  /** Where the project with the chosen covers goes, and what fewer widths and fillers cost; null: neither is asked for. */
  readonly keep: string | null;
  readonly curve: string | null;
  /** Where the moves of walls that would make the set cheaper go; null: they are not looked for. */
  readonly nudges: string | null;
  /** When to stop; null: when the work allowed is done. */
  readonly seconds: number | null;
}

/** Runs the command. Ends with 1 if there are not enough pieces for any plan, or the fill has an error. */
export async function runOptimise(
  { project: path, json, keep, curve, nudges: list, seconds }: OptimiseRequest,
  io: Io,
  tools: Pick<FillTools, "readProject" | "readKit" | "optimise" | "optimiseWithNudges" | "tradeOff" | "keep">,
): Promise<ExitCode> {
  const inputs = await readInputs(path, "optimised", io, tools);
  if (inputs.status === "failed") return stop(io, inputs.message);
  const { project, kit, warnings } = inputs.value;
  const onScreen = [json ?? "-", keep, curve, list].filter((place) => place === "-").length;
  if (onScreen > 1) return stop(io, ONE_TO_OUTPUT);
  const paths = [json, keep, curve, list].flatMap(resultPath);
  const fault = placeFault(paths, path, io, "--json, --keep, --curve and --nudges");
  if (fault !== null) return stop(io, fault);

  const { fill, nudges } =
    list === null
      ? { fill: await tools.optimise(project, kit, seconds), nudges: null }
      : await tools.optimiseWithNudges(project, kit, seconds);
  const kept = keep === null ? null : await tools.keep(project, kit, fill);
  const points = curve === null ? null : writeCurve(await tools.tradeOff(project, kit, seconds));
  const results = [
    { path: keep, content: kept },
    { path: curve, content: points },
    { path: list, content: nudges === null ? null : writeNudges(nudges) },
    { path: json ?? "-", content: writeFillDocument(fill) },
  ];
  const texts = results.flatMap(({ path, content }) =>
    path === null || content === null ? [] : [{ path, content }],
  );
  const shown = texts.find((text) => text.path === "-");
  const written = await io.write(
    texts.filter((text) => text.path !== "-"),
    null,
  );
  const said = written.status === "failed" || shown === undefined ? written : await io.out(shown.content);
  if (said.status === "failed") return stop(io, `Cannot write ${said.path}: ${said.reason}.\n`);
  const told = [
    setSummary(fill, kit.currency),
    otherShortText(shortageOf(fill, kit, project), project.buy),
    changesSummary(fill),
    nudgeSummary(nudges, kit.currency),
  ].join("");
  await io.err(warningList(warnings) + fillSummary(fill) + told);
  return errorCount(fill) > 0 || fill.set?.status === "infeasible" ? 1 : 0;
}

const ONE_TO_OUTPUT = "Only one result can go to standard output: name a file for the others.\n";
