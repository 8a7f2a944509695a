// The worker that fills: answers jobs in the order in which they come.

import { serve } from "../workers/serve.ts";
import { createAnswerer, type ToWorker } from "./protocol.ts";

serve<ToWorker>((union) => {
  const answerTo = createAnswerer(union);
  return (message) => {
    const answer = answerTo(message);
    if (answer !== null) self.postMessage(answer);
  };
});
