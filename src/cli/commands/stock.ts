// The command `stock`: a project and a list of what is owned in, the project with that stock out.

import { writeProject } from "../../plan/write.ts";
import type { FillTools } from "../fillTools.ts";
import { type ExitCode, readInputs, stop, warningList } from "../inputs.ts";
import type { Io } from "../io.ts";
import { placeFault, resultPath, writeResult } from "./made.ts";

export interface StockRequest {
  /** "-" = standard input. */
  readonly project: string;
  readonly from: string;
  /** "-" = standard output. */
  readonly out: string;
  /** null: as the project has it. */
  readonly buy: boolean | null;
}

/** Runs the command. Writes nothing but messages unless the whole list could be read. */
export async function runStock(
  request: StockRequest,
  io: Io,
  tools: Pick<FillTools, "readProject" | "readKit" | "stock">,
): Promise<ExitCode> {
  const { project: path, from, out, buy } = request;
  if (path === "-" && from === "-")
    return stop(io, "The project and the list cannot both come from standard input.\n");
  const inputs = await readInputs(path, "given a stock", io, tools);
  if (inputs.status === "failed") return stop(io, inputs.message);
  const { project, kit, warnings } = inputs.value;
  const fault = placeFault(resultPath(out), path, io, "--out");
  if (fault !== null) return stop(io, fault);
  if (out !== "-" && from !== "-" && io.resolve(out) === io.resolve(from))
    return stop(io, `Cannot write ${out}: it is the list being read.\n`);
  const read = from === "-" ? await io.readStdin() : await io.read(from);
  const name = from === "-" ? "standard input" : from;
  if (read.status === "failed") return stop(io, `Cannot read ${name}: ${read.reason}.\n`);
  const answer = await tools.stock(read.bytes, kit);
  if (answer.status === "invalid") {
    const lines = answer.issues.map(({ message }) => `  ${message}.\n`).join("");
    return stop(io, `${name} is not a list of what is owned:\n${lines}`);
  }
  const { stock, remarks, lines } = answer;
  const written = await writeResult(writeProject({ ...project, stock, buy: buy ?? project.buy }), out, io);
  if (written.status === "failed") return stop(io, `Cannot write ${written.path}: ${written.reason}.\n`);
  const all = [...warnings, ...remarks.map(({ message }) => `${name}, ${message}.`)];
  const pieces = Object.values(stock).reduce((sum, count) => sum + count, 0);
  await io.err(
    `${warningList(all)}${lines} ${lines === 1 ? "code" : "codes"} taken, ${pieces} ${pieces === 1 ? "piece" : "pieces"} owned.\n`,
  );
  return 0;
}
