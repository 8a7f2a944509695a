#!/usr/bin/env node
// The process: its arguments, its streams and its exit code. All else is in `main.ts`.

import { coreTools } from "./coreTools.ts";
import { main } from "./main.ts";
import { nodeIo } from "./nodeIo.ts";

const io = nodeIo({
  stdin: process.stdin,
  stdout: process.stdout,
  stderr: process.stderr,
  isDebug: process.env.PANELWRIGHT_DEBUG === "1",
});
process.exitCode = await main(process.argv.slice(2), io, coreTools);
