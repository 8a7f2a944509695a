// The command `fill`: a project file in, the fill as JSON out, with a bill and sheets if asked for.
//
// Everything is made in memory before the first byte is written, so an error on the way leaves nothing behind.

import { billCsv } from "../../fill/billCsv.ts";
import type { FillDocument } from "../../fill/result.ts";
import { writeFillDocument } from "../../fill/writeFill.ts";
import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import { fileNames } from "../fileNames.ts";
import type { FillTools } from "../fillTools.ts";
import { type ExitCode, failed, readInputs, type Step, stop, warningList } from "../inputs.ts";
import type { Io, OutputFile, WriteOutcome } from "../io.ts";
import { fillSummary } from "../summary.ts";

export interface FillRequest {
  /** "-" = standard input. */
  readonly project: string;
  readonly out: string | null;
  /** null and "-" = standard output. */
  readonly json: string | null;
}

/** Runs the command. Writes nothing but messages unless the whole result could be made. */
export async function runFill(request: FillRequest, io: Io, tools: FillTools): Promise<ExitCode> {
  const inputs = await readInputs(request.project, "filled", io, tools);
  if (inputs.status === "failed") return stop(io, inputs.message);
  const { project, kit, warnings } = inputs.value;

  const fill = await tools.fill(project, kit);
  const json = writeFillDocument(fill);
  const sheets = request.out === null ? [] : printed(fill, project, kit, tools);
  const outputs = placeOutputs(request, json, sheets, io);
  if (outputs.status === "failed") return stop(io, outputs.message);

  const summary = warningList(warnings) + fillSummary(fill);
  const isFaulty = fill.units.some((unit) => unit.problems.some((problem) => problem.severity === "error"));
  const written = await write(outputs.value, request, json, io);
  if (written.status === "failed") return stop(io, `Cannot write ${written.path}: ${written.reason}.\n`);
  await io.err(summary);
  return isFaulty ? 1 : 0;
}
/** The files of `--out`, named but not yet placed in their folder. */
function printed(fill: FillDocument, project: Project, kit: Kit, tools: FillTools): readonly OutputFile[] {
  const sheets = tools.sheets(fill, project, kit);
  const names = fileNames(
    sheets.map((sheet) => sheet.title),
    ".svg",
  );
  return [
    { path: "bill.csv", text: billCsv(fill, kit) },
    ...sheets.map((sheet, index) => ({ path: names[index]!, text: sheet.svg })),
  ];
}

/** Every file with its full place. No two may share one, and none may take the place of the project. */
function placeOutputs(
  { project, out, json }: FillRequest,
  text: string,
  printedFiles: readonly OutputFile[],
  io: Io,
): Step<readonly OutputFile[]> {
  const files = [
    ...printedFiles.map((file) => ({ ...file, path: io.join(out ?? "", file.path) })),
    ...(json === null || json === "-" ? [] : [{ path: json, text }]),
  ];
  const taken = new Set<string>();
  const input = project === "-" ? null : io.resolve(project);
  for (const { path } of files) {
    const place = io.resolve(path);
    if (place === input) return failed(`Cannot write ${path}: it is the project being read.\n`);
    if (taken.has(place)) return failed(`Cannot write ${path}: --out and --json would both write it.\n`);
    taken.add(place);
  }
  return { status: "ok", value: files };
}

async function write(
  files: readonly OutputFile[],
  { out, json }: FillRequest,
  text: string,
  io: Io,
): Promise<WriteOutcome> {
  const written = await io.write(files, out);
  if (written.status === "failed") return written;
  return json === null || json === "-" ? io.out(text) : written;
}
