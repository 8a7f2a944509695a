// The real worker behind the client. The bundler finds the worker's file by the text of the call.

import type { CheckerEvents, CheckerPort } from "./client.ts";
import type { FromChecker } from "./protocol.ts";

/** @throws {Error} where the browser lets no worker start */
export function startChecker({ onAnswer, onFailure }: CheckerEvents): CheckerPort {
  const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module", name: "checks" });
  worker.onmessage = ({ data }: MessageEvent<FromChecker>) => onAnswer(data);
  worker.onerror = ({ message }) => onFailure(message === "" ? "the worker did not start" : message);
  worker.onmessageerror = () => onFailure("an answer of the worker could not be read");
  return { send: (message) => worker.postMessage(message), end: () => worker.terminate() };
}
