// The worker that makes sheets: answers jobs in the order they come.

import { startAnswering } from "./answering.ts";
import type { ToMaker } from "./protocol.ts";

// Messages that come before all is there wait for the same promise, and so keep their order.
const answering = startAnswering();

self.onmessage = async ({ data }: MessageEvent<ToMaker>) => {
  const answer = await (await answering)(data);
  if (answer !== null) self.postMessage(answer);
};

// Without a union there is nothing to answer with; the page hears of it as of any other failure of the worker.
answering.catch((reason: unknown) => {
  setTimeout(() => {
    throw reason;
  });
});
