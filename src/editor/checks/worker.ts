// The worker that checks: loads the union, then answers jobs as they come.

import wasmUrl from "clipper2-wasm/dist/es/clipper2z.wasm?url";
import { loadUnion } from "../../geom/union.ts";
import { createChecker } from "./checker.ts";
import { createAnswerer, type ToChecker } from "./protocol.ts";

// Messages that come before the union is there wait for the same promise, and so keep their order.
const answerer = loadUnion(wasmUrl).then((union) =>
  createAnswerer(createChecker(union), (answer) => self.postMessage(answer)),
);

self.onmessage = async ({ data }: MessageEvent<ToChecker>) => {
  (await answerer)(data);
};

// Without a union there is nothing to answer with; the page hears of it as of any other failure of the worker.
answerer.catch((reason: unknown) => {
  setTimeout(() => {
    throw reason;
  });
});
