// The real worker behind the client. The bundler finds the worker's file by the text of this call.

import { portTo, type StartPort } from "../workers/port.ts";
import type { FromWorker, ToWorker } from "./protocol.ts";

/** @throws {Error} where the browser lets no worker start */
export const startFillWorker: StartPort<ToWorker, FromWorker> = (events) =>
  portTo(new Worker(new URL("./worker.ts", import.meta.url), { type: "module", name: "fill" }), events);
