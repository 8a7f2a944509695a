// What every command begins with: read the project, read its kit, fill it. And how it says why it cannot.

import { MAX_ISSUES } from "../../json/issue.ts";
import type { FillTools, Made, Read } from "../fillTools.ts";
import type { Io, OutputFile } from "../io.ts";

/** 0 done; 1 done, with an error in the result; 2 cannot be done. */
export type ExitCode = 0 | 1 | 2;

/** What was asked for, or a reason to stop in words for the person who called. */
export type Step<Value> =
  | { readonly status: "ok"; readonly value: Value }
  | { readonly status: "failed"; readonly message: string };

export interface Filled extends Made {
  /** What the reader had to remark, in words for the person who called. */
  readonly warnings: string;
}

/** @param path - of the project file, "-" = standard input */
export async function readAndFill(path: string, io: Io, tools: FillTools): Promise<Step<Filled>> {
  const input = await readInput(path, io);
  if (input.status === "failed") return input;
  const name = path === "-" ? "Standard input" : path;
  const project = tools.readProject(input.value);
  if (project.status === "invalid") return failed(faultList(name, project.faults));
  const kit = tools.readKit(project.value.kit);
  if (kit.status === "invalid") return failed(faultList(name, kit.faults));
  const fill = await tools.fill(project.value, kit.value);
  const made = { fill, project: project.value, kit: kit.value, warnings: warningList(project, kit) };
  return { status: "ok", value: made };
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

function faultList(name: string, faults: readonly string[]): string {
  const rest = faults.length < MAX_ISSUES ? "" : "  … and perhaps more: reading stopped here.\n";
  return `${name} is not a project that can be filled:\n${faults.map((fault) => `  ${fault}\n`).join("")}${rest}`;
}

function warningList(...reads: readonly Read<unknown>[]): string {
  const warnings = reads.flatMap((read) => (read.status === "ok" ? read.warnings : []));
  return warnings.map((warning) => `Warning: ${warning}\n`).join("");
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

export async function stop(io: Io, message: string): Promise<ExitCode> {
  await io.err(message);
  return 2;
}

/** Whether the result holds an error, which ends a command with 1. */
export function isFaulty({ fill }: Pick<Made, "fill">): boolean {
  return fill.units.some((unit) => unit.problems.some(({ severity }) => severity === "error"));
}

const failed = (message: string) => ({ status: "failed", message }) as const;
