// The command `fill`: a project file in, the fill as JSON out, with a bill and sheets if asked for.
//
// Everything is made in memory before the first byte is written, so an error on the way leaves nothing behind.

import { writeFillDocument } from "../../fill/writeFill.ts";
import { sheetToSvg } from "../../sheet/svg.ts";
import { fileNames } from "../fileNames.ts";
import type { FillTools, Made } from "../fillTools.ts";
import { type ExitCode, stop } from "../inputs.ts";
import type { Io, OutputFile, WriteOutcome } from "../io.ts";
import { fillSummary } from "../summary.ts";
import { isFaulty, placed, readAndFill } from "./made.ts";

export interface FillRequest {
  /** "-" = standard input. */
  readonly project: string;
  readonly out: string | null;
  /** null and "-" = standard output. */
  readonly json: string | null;
}

/** Runs the command. Writes nothing but messages unless the whole result could be made. */
export async function runFill(request: FillRequest, io: Io, tools: FillTools): Promise<ExitCode> {
  const made = await readAndFill(request.project, io, tools);
  if (made.status === "failed") return stop(io, made.message);
  const { fill, warnings } = made.value;
  const json = writeFillDocument(fill);
  const sheets = request.out === null ? [] : await printed(made.value, tools);
  const outputs = placed(outputFiles(request, json, sheets, io), request.project, io, "--out and --json");
  if (outputs.status === "failed") return stop(io, outputs.message);

  const summary = warnings + fillSummary(fill);
  const written = await write(outputs.value, request, json, io);
  if (written.status === "failed") return stop(io, `Cannot write ${written.path}: ${written.reason}.\n`);
  await io.err(summary);
  return isFaulty(made.value) ? 1 : 0;
}

/** The files of `--out`, named but not yet placed in their folder. */
async function printed(made: Made, tools: FillTools): Promise<readonly OutputFile[]> {
  const sheets = (await tools.sheets(made)).flatMap((set) => set.sheets);
  const names = fileNames(
    sheets.map((sheet) => sheet.name),
    ".svg",
  );
  return [
    ...tools.tables(made).map(({ name, text }) => ({ path: name, content: text })),
    ...sheets.map((sheet, index) => ({ path: names[index]!, content: sheetToSvg(sheet) })),
  ];
}

/** Every file with its full place. */
function outputFiles(
  { out, json }: FillRequest,
  text: string,
  printedFiles: readonly OutputFile[],
  io: Io,
): readonly OutputFile[] {
  return [
    ...printedFiles.map((file) => ({ ...file, path: io.join(out ?? "", file.path) })),
    ...(json === null || json === "-" ? [] : [{ path: json, content: text }]),
  ];
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
