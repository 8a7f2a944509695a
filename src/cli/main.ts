// The command line without the process: words in, an exit code out, everything else through `io`.

import { version } from "../../package.json";
import { type Arguments, readArguments } from "./args.ts";
import { runCheck } from "./commands/check.ts";
import { runFill } from "./commands/fill.ts";
import { runOptimise } from "./commands/optimise.ts";
import { runSheets } from "./commands/sheets.ts";
import { runStock } from "./commands/stock.ts";
import type { FillTools } from "./fillTools.ts";
import type { ExitCode } from "./inputs.ts";
import type { Io } from "./io.ts";
import { plainText } from "./plainText.ts";
import { commandHelp, FORMATS, overview, SMALL_PAPERS } from "./usage.ts";

/**
 * Runs one command to its end.
 *
 * @param argv - the words after the program's name
 * @returns 0 done; 1 done, with an error in the result; 2 cannot be done, a fault of the program included
 */
export async function main(argv: readonly string[], io: Io, tools: FillTools): Promise<ExitCode> {
  const screen: Io = { ...io, err: (text) => io.err(plainText(text)) };
  try {
    return await run(argv, screen, tools);
  } catch (error) {
    await screen.err(internalError(error, io.isDebug));
    return 2;
  }
}

async function run(argv: readonly string[], io: Io, tools: FillTools): Promise<ExitCode> {
  const parsed = readArguments(argv);
  switch (parsed.status) {
    case "help":
      return say(io, parsed.command === null ? overview() : commandHelp(parsed.command));
    case "version":
      return say(io, `${version}\n`);
    case "bad-usage":
      await io.err(parsed.message);
      return 2;
    case "not-built":
      await io.err(`"${parsed.command.name}" is not built yet in version ${version}.\n`);
      return 2;
    case "run":
      return runCommand(parsed, io, tools);
    default:
      return parsed satisfies never;
  }
}

/** @throws {RangeError} for a command that is listed as built and is not */
function runCommand(
  { command, operands, options }: Extract<Arguments, { status: "run" }>,
  io: Io,
  tools: FillTools,
): Promise<ExitCode> {
  const project = operands[0]!;
  const out = options.get("out") ?? null;
  const json = options.get("json") ?? null;
  switch (command.name) {
    case "fill":
      return runFill({ project, out, json }, io, tools);
    case "check":
      return runCheck({ project, json }, io, tools);
    case "optimise": {
      const limit = options.get("time-limit");
      const seconds = limit === undefined ? null : Number(limit);
      const keep = options.get("keep") ?? null;
      const curve = options.get("curve") ?? null;
      const nudges = options.get("nudges") ?? null;
      return runOptimise({ project, json, keep, curve, nudges, seconds }, io, tools);
    }
    case "stock": {
      const buy = options.get("buy");
      const from = options.get("from") ?? "";
      return runStock(
        { project, from, out: out ?? "", buy: buy === undefined ? null : buy === "true" },
        io,
        tools,
      );
    }
    case "sheets": {
      const format = FORMATS.find((some) => some === options.get("format")) ?? "pdf";
      const paper = SMALL_PAPERS.find((some) => some === options.get("paper")) ?? "A4";
      return runSheets(
        { project, out: out ?? "", format, paper, date: options.get("date") ?? "" },
        io,
        tools,
      );
    }
    default:
      throw new RangeError(`nothing runs the command "${command.name}"`);
  }
}

async function say(io: Io, text: string): Promise<ExitCode> {
  const said = await io.out(text);
  if (said.status === "written") return 0;
  await io.err(`Cannot write ${said.path}: ${said.reason}.\n`);
  return 2;
}

function internalError(error: unknown, isDebug: boolean): string {
  const message = error instanceof Error ? error.message : String(error);
  const stack = isDebug && error instanceof Error ? `${error.stack ?? ""}\n` : "";
  const hint = isDebug ? "" : " (PANELWRIGHT_DEBUG=1 shows where)";
  return `Nothing was written, for a fault of the program itself: ${message.replace(/\s+/g, " ")}${hint}.\n${stack}`;
}
