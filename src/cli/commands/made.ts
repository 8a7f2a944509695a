// What the commands that make files begin with: read the project and its kit, fill it; and how they place what they write.

import type { FillDocument } from "../../fill/result.ts";
import type { MadeFill } from "../../sheet/sheetSet.ts";
import type { FillTools } from "../fillTools.ts";
import { readInputs, type Step, warningList } from "../inputs.ts";
import type { Io, OutputFile, WriteOutcome } from "../io.ts";

export interface Filled extends MadeFill {
  /** What the reader had to remark, in words for the person who called. */
  readonly warnings: string;
}

/** @param path - of the project file, "-" = standard input */
export async function readAndFill(path: string, io: Io, tools: FillTools): Promise<Step<Filled>> {
  const inputs = await readInputs(path, "filled", io, tools);
  if (inputs.status === "failed") return inputs;
  const { project, kit, warnings } = inputs.value;
  const fill = await tools.fill(project, kit);
  return { status: "ok", value: { fill, project, kit, warnings: warningList(warnings) } };
}

/**
 * Why files cannot be written at these paths: two share a place, or one takes that of the project. Null if none does.
 *
 * @param clash - what else may write the same place, for the message
 */
export function placeFault(paths: readonly string[], project: string, io: Io, clash: string): string | null {
  const taken = new Set<string>();
  const input = project === "-" ? null : io.resolve(project);
  for (const path of paths) {
    const place = io.resolve(path);
    if (place === input) return `Cannot write ${path}: it is the project being read.\n`;
    if (taken.has(place)) return `Cannot write ${path}: ${clash} would both write it.\n`;
    taken.add(place);
  }
  return null;
}

/** The path of a result that has a file of its own; none for null and "-", which are standard output. */
export function resultPath(json: string | null): readonly string[] {
  return json === null || json === "-" ? [] : [json];
}

/** Writes the files, all or none, and with them the result: to its own file, else to standard output after them. */
export async function writeResult(
  text: string,
  json: string | null,
  io: Io,
  beside: { readonly files: readonly OutputFile[]; readonly folder: string | null } = NOTHING,
): Promise<WriteOutcome> {
  const own = resultPath(json).map((path) => ({ path, content: text }));
  const written = await io.write([...beside.files, ...own], beside.folder);
  return written.status === "failed" || own.length > 0 ? written : io.out(text);
}

const NOTHING = { files: [], folder: null };

/** Errors in the result: one or more end a command with 1. */
export function errorCount(fill: FillDocument): number {
  return fill.units.flatMap(({ problems }) => problems).filter(({ severity }) => severity === "error").length;
}
