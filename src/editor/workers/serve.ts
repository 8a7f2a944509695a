// The worker's side of a worker that needs the union: loads it, then answers messages in the order in which they come.

import wasmUrl from "clipper2-wasm/dist/es/clipper2z.wasm?url";
import { loadUnion, type Union } from "../../geom/union.ts";
import { type AnswerAsk, createAnswerer, type FromPlanWorker } from "./planProtocol.ts";

export function serve<To>(make: (union: Union) => (message: To) => unknown): void {
  // Messages that come before the union is there wait for the same promise, and so keep their order.
  const answerer = loadUnion(wasmUrl).then(make);
  self.onmessage = async ({ data }: MessageEvent<To>) => {
    await (await answerer)(data);
  };
  // Without a union there is nothing to answer with; the page hears of it as of any other failure of the worker.
  answerer.catch((reason: unknown) => {
    setTimeout(() => {
      throw reason;
    });
  });
}

/** A worker that is about a whole plan. */
export function servePlan<Ask, Answer>(answers: (union: Union) => AnswerAsk<Ask, Answer>): void {
  serve((union) =>
    createAnswerer<Ask, Answer>(answers(union), (told: FromPlanWorker<Answer>) => self.postMessage(told)),
  );
}
