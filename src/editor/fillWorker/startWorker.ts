// The real worker behind the client. The bundler finds the worker's file by the text of this call.

import type { WorkerEvents, WorkerPort } from "./client.ts";
import type { FromWorker } from "./protocol.ts";

/** @throws {Error} where the browser lets no worker start */
export function startFillWorker({ onAnswer, onFailure }: WorkerEvents): WorkerPort {
  const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module", name: "fill" });
  worker.onmessage = ({ data }: MessageEvent<FromWorker>) => onAnswer(data);
  worker.onerror = ({ message }) => onFailure(message === "" ? "the worker did not start" : message);
  worker.onmessageerror = () => onFailure("an answer of the worker could not be read");
  return { send: (message) => worker.postMessage(message), terminate: () => worker.terminate() };
}
