// The real worker behind the client. The bundler finds the worker's file by the text of the call.

import type { StartPlanWorker } from "../workers/planClient.ts";
import { portTo } from "../workers/port.ts";
import type { Answer, Ask } from "./protocol.ts";

/** @throws {Error} where the browser lets no worker start */
export const startMaker: StartPlanWorker<Ask, Answer> = (events) =>
  portTo(new Worker(new URL("./worker.ts", import.meta.url), { type: "module", name: "sheets" }), events);
