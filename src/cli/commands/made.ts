// What the commands that make files begin with: read the project and its kit, fill it; and how they place what they write.

import type { FillTools, Made } from "../fillTools.ts";
import { failed, readInputs, type Step, warningList } from "../inputs.ts";
import type { Io, OutputFile } from "../io.ts";

export interface Filled extends Made {
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
 * The files as they are, once it is certain that no two share a place and none takes that of the project.
 *
 * @param clash - what else may write the same place, for the message
 */
export function placed(
  files: readonly OutputFile[],
  project: string,
  io: Io,
  clash: string,
): Step<readonly OutputFile[]> {
  const taken = new Set<string>();
  const input = project === "-" ? null : io.resolve(project);
  for (const { path } of files) {
    const place = io.resolve(path);
    if (place === input) return failed(`Cannot write ${path}: it is the project being read.\n`);
    if (taken.has(place)) return failed(`Cannot write ${path}: ${clash} would both write it.\n`);
    taken.add(place);
  }
  return { status: "ok", value: files };
}

/** Whether the result holds an error, which ends a command with 1. */
export function isFaulty({ fill }: Pick<Made, "fill">): boolean {
  return fill.units.some((unit) => unit.problems.some(({ severity }) => severity === "error"));
}
