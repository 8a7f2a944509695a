// The real worker behind the client. The bundler finds the worker's file by the text of the call.

import type { MakerEvents, MakerPort } from "./client.ts";
import type { FromMaker } from "./protocol.ts";

/** @throws {Error} where the browser lets no worker start */
export function startMaker({ onAnswer, onFailure }: MakerEvents): MakerPort {
  const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module", name: "sheets" });
  worker.onmessage = ({ data }: MessageEvent<FromMaker>) => onAnswer(data);
  worker.onerror = ({ message }) => onFailure(message === "" ? "the worker did not start" : message);
  worker.onmessageerror = () => onFailure("an answer of the worker could not be read");
  return { send: (message) => worker.postMessage(message), end: () => worker.terminate() };
}
