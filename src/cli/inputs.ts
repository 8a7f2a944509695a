// What every command that works on a project begins with: the file read, its project and its kit understood, or a
// reason to stop in words for the person who called.

import { MAX_ISSUES } from "../json/issue.ts";
import type { Kit } from "../kit/kit.ts";
import type { Project } from "../plan/project.ts";
import type { Io } from "./io.ts";

/** 0 done; 1 done, with findings; 2 cannot be done. */
export type ExitCode = 0 | 1 | 2;

/** A reason to stop is a whole message, line feed included. */
export type Step<Value> =
  | { readonly status: "ok"; readonly value: Value }
  | { readonly status: "failed"; readonly message: string };

/** A file read, or what is wrong with it: one sentence for each fault, with its path inside the file. */
export type Read<Value> =
  | { readonly status: "ok"; readonly value: Value; readonly warnings: readonly string[] }
  | { readonly status: "invalid"; readonly faults: readonly string[] };

export interface InputTools {
  readonly readProject: (text: string) => Read<Project>;
  /** Paths of faults begin with `kit`. */
  readonly readKit: (kit: Project["kit"]) => Read<Kit>;
}

export interface Inputs {
  readonly project: Project;
  readonly kit: Kit;
  readonly warnings: readonly string[];
}

/** Reads project and kit; `doing` completes "house.json is not a project that can be …". "-" = standard input. */
export async function readInputs(
  path: string,
  doing: string,
  io: Io,
  tools: InputTools,
): Promise<Step<Inputs>> {
  const text = await readText(path, io);
  if (text.status === "failed") return text;
  const project = tools.readProject(text.value);
  if (project.status === "invalid") return failed(faultList(path, doing, project.faults));
  const kit = tools.readKit(project.value.kit);
  if (kit.status === "invalid") return failed(faultList(path, doing, kit.faults));
  const warnings = [...project.warnings, ...kit.warnings];
  return { status: "ok", value: { project: project.value, kit: kit.value, warnings } };
}

async function readText(path: string, io: Io): Promise<Step<string>> {
  const read = path === "-" ? await io.readStdin() : await io.read(path);
  const name = path === "-" ? "standard input" : path;
  if (read.status === "failed") return failed(`Cannot read ${name}: ${read.reason}.\n`);
  try {
    return { status: "ok", value: new TextDecoder("utf-8", { fatal: true }).decode(read.bytes) };
  } catch {
    return failed(`Cannot read ${name}: it is not UTF-8 text; save it as UTF-8.\n`);
  }
}

/** One line for each fault of the project at `path`. */
export function faultList(path: string, doing: string, faults: readonly string[]): string {
  const name = path === "-" ? "Standard input" : path;
  const rest = faults.length < MAX_ISSUES ? "" : "  … and perhaps more: reading stopped here.\n";
  const lines = faults.map((fault) => `  ${fault}\n`).join("");
  return `${name} is not a project that can be ${doing}:\n${lines}${rest}`;
}

export function warningList(warnings: readonly string[]): string {
  return warnings.map((warning) => `Warning: ${warning}\n`).join("");
}

/** Says why and ends with 2. */
export async function stop(io: Io, message: string): Promise<ExitCode> {
  await io.err(message);
  return 2;
}

export const failed = (message: string) => ({ status: "failed", message }) as const;
