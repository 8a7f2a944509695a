// The command `fill`: a project file in, the fill as JSON out, with a bill and sheets if asked for.
//
// Everything is made in memory before the first byte is written, so an error on the way leaves nothing behind.

import { writeFillDocument } from "../../fill/writeFill.ts";
import type { MadeFill } from "../../sheet/sheetSet.ts";
import { sheetToSvg } from "../../sheet/svg.ts";
import { fileNames } from "../fileNames.ts";
import type { FillTools } from "../fillTools.ts";
import { type ExitCode, stop } from "../inputs.ts";
import type { Io, OutputFile } from "../io.ts";
import { fillSummary } from "../summary.ts";
import { errorCount, placeFault, readAndFill, resultPath, writeResult } from "./made.ts";

export interface FillRequest {
  /** "-" = standard input. */
  readonly project: string;
  readonly out: string | null;
  /** null and "-" = standard output. */
  readonly json: string | null;
}

/** Runs the command. Writes nothing but messages unless the whole result could be made. */
export async function runFill(
  { project, out, json }: FillRequest,
  io: Io,
  tools: FillTools,
): Promise<ExitCode> {
  const made = await readAndFill(project, io, tools);
  if (made.status === "failed") return stop(io, made.message);
  const { fill, warnings } = made.value;
  const text = writeFillDocument(fill);
  const files = out === null ? [] : await printed(made.value, out, io, tools);
  const paths = [...files.map(({ path }) => path), ...resultPath(json)];
  const fault = placeFault(paths, project, io, "--out and --json");
  if (fault !== null) return stop(io, fault);

  const summary = warnings + fillSummary(fill);
  const written = await writeResult(text, json, io, { files, folder: out });
  if (written.status === "failed") return stop(io, `Cannot write ${written.path}: ${written.reason}.\n`);
  await io.err(summary);
  return errorCount(fill) > 0 ? 1 : 0;
}

/** The files of `--out`, in its folder. */
async function printed(
  made: MadeFill,
  out: string,
  io: Io,
  tools: FillTools,
): Promise<readonly OutputFile[]> {
  const sheets = (await tools.sheets(made)).flatMap((set) => set.sheets);
  const names = fileNames(
    sheets.map((sheet) => sheet.name),
    ".svg",
  );
  const files = [
    ...tools.tables(made).map(({ name, text }) => ({ path: name, content: text })),
    ...sheets.map((sheet, index) => ({ path: names[index]!, content: sheetToSvg(sheet) })),
  ];
  return files.map((file) => ({ ...file, path: io.join(out, file.path) }));
}
