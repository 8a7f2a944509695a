// The command `fill`: a project file in, the fill as JSON out, with a bill and sheets if asked for.
//
// Everything is made in memory before the first byte is written, so an error on the way leaves nothing behind.

import { billCsv } from "../../fill/billCsv.ts";
import { writeFillDocument } from "../../fill/writeFill.ts";
import { MAX_ISSUES } from "../../json/issue.ts";
import { sheetToSvg } from "../../sheet/svg.ts";
import { fileNames } from "../fileNames.ts";
import type { FillTools, Made, Read } from "../fillTools.ts";
import type { Io, OutputFile, WriteOutcome } from "../io.ts";
import { fillSummary } from "../summary.ts";

/** 0 done; 1 done, with an error in the result; 2 cannot be done. */
export type ExitCode = 0 | 1 | 2;

export interface FillRequest {
  /** "-" = standard input. */
  readonly project: string;
  readonly out: string | null;
  /** null and "-" = standard output. */
  readonly json: string | null;
}

/** A reason to stop, in words for the person who called. */
type Step<Value> =
  | { readonly status: "ok"; readonly value: Value }
  | { readonly status: "failed"; readonly message: string };

/** Runs the command. Writes nothing but messages unless the whole result could be made. */
export async function runFill(request: FillRequest, io: Io, tools: FillTools): Promise<ExitCode> {
  const input = await readInput(request.project, io);
  if (input.status === "failed") return stop(io, input.message);
  const name = request.project === "-" ? "Standard input" : request.project;

  const project = tools.readProject(input.value);
  if (project.status === "invalid") return stop(io, faultList(name, project.faults));
  const kit = tools.readKit(project.value.kit);
  if (kit.status === "invalid") return stop(io, faultList(name, kit.faults));

  const fill = await tools.fill(project.value, kit.value);
  const json = writeFillDocument(fill);
  const made = { fill, project: project.value, kit: kit.value };
  const sheets = request.out === null ? [] : await printed(made, tools);
  const outputs = placeOutputs(request, json, sheets, io);
  if (outputs.status === "failed") return stop(io, outputs.message);

  const summary = warningList(project, kit) + fillSummary(fill);
  const isFaulty = fill.units.some((unit) => unit.problems.some((problem) => problem.severity === "error"));
  const written = await write(outputs.value, request, json, io);
  if (written.status === "failed") return stop(io, `Cannot write ${written.path}: ${written.reason}.\n`);
  await io.err(summary);
  return isFaulty ? 1 : 0;
}

async function readInput(path: string, io: Io): Promise<Step<string>> {
  const read = path === "-" ? await io.readStdin() : await io.read(path);
  const name = path === "-" ? "standard input" : path;
  if (read.status === "failed") return failed(`Cannot read ${name}: ${read.reason}.\n`);
  try {
    return { status: "ok", value: new TextDecoder("utf-8", { fatal: true }).decode(read.bytes) };
  } catch {
    return failed(`Cannot read ${name}: it is not UTF-8 text; save it as UTF-8.\n`);
  }
}

/** The files of `--out`, named but not yet placed in their folder. */
async function printed(made: Made, tools: FillTools): Promise<readonly OutputFile[]> {
  const sheets = (await tools.sheets(made)).flatMap((set) => set.sheets);
  const names = fileNames(
    sheets.map((sheet) => sheet.name),
    ".svg",
  );
  return [
    { path: "bill.csv", text: billCsv(made.fill, made.kit) },
    ...sheets.map((sheet, index) => ({ path: names[index]!, text: sheetToSvg(sheet) })),
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

function faultList(name: string, faults: readonly string[]): string {
  const rest = faults.length < MAX_ISSUES ? "" : "  … and perhaps more: reading stopped here.\n";
  return `${name} is not a project that can be filled:\n${faults.map((fault) => `  ${fault}\n`).join("")}${rest}`;
}

function warningList(...reads: readonly Read<unknown>[]): string {
  const warnings = reads.flatMap((read) => (read.status === "ok" ? read.warnings : []));
  return warnings.map((warning) => `Warning: ${warning}\n`).join("");
}

async function stop(io: Io, message: string): Promise<ExitCode> {
  await io.err(message);
  return 2;
}

const failed = (message: string) => ({ status: "failed", message }) as const;
