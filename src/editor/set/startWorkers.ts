// The real workers behind the counts and the search. The bundler finds their files by the text of the calls.

import type { CountEvents, CountPort } from "./countClient.ts";
import type { SolveEvents, SolvePort } from "./optimiser.ts";
import type { Counted, FromSolver } from "./protocol.ts";

/** @throws {Error} where the browser lets no worker start */
export function startCounter({ onAnswer, onFailure }: CountEvents): CountPort {
  const worker = new Worker(new URL("./countWorker.ts", import.meta.url), { type: "module", name: "pours" });
  worker.onmessage = ({ data }: MessageEvent<Counted>) => onAnswer(data);
  hearFailures(worker, onFailure);
  return { send: (plan) => worker.postMessage(plan), end: () => worker.terminate() };
}

/** @throws {Error} where the browser lets no worker start */
export function startSolver({ onAnswer, onFailure }: SolveEvents): SolvePort {
  const worker = new Worker(new URL("./solveWorker.ts", import.meta.url), { type: "module", name: "set" });
  worker.onmessage = ({ data }: MessageEvent<FromSolver>) => onAnswer(data);
  hearFailures(worker, onFailure);
  return { send: (message) => worker.postMessage(message), end: () => worker.terminate() };
}

function hearFailures(worker: Worker, onFailure: (reason: string) => void): void {
  worker.onerror = ({ message }) => onFailure(message === "" ? "the worker did not start" : message);
  worker.onmessageerror = () => onFailure("an answer of the worker could not be read");
}
