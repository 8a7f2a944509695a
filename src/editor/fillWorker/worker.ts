// The worker: loads the union, then answers jobs in the order they come.

import wasmUrl from "clipper2-wasm/dist/es/clipper2z.wasm?url";
import { loadUnion } from "../../geom/union.ts";
import { createAnswerer, type ToWorker } from "./protocol.ts";

// Messages that come before the union is there wait for the same promise, and so keep their order.
const answerer = loadUnion(wasmUrl).then(createAnswerer);

self.onmessage = async ({ data }: MessageEvent<ToWorker>) => {
  const answer = (await answerer)(data);
  if (answer !== null) self.postMessage(answer);
};

// Without a union there is nothing to answer with; the page hears of it as of any other failure of the worker.
answerer.catch((reason: unknown) => {
  setTimeout(() => {
    throw reason;
  });
});
