// The worker that counts pours.

import { sentPlan } from "../workers/planProtocol.ts";
import { servePlan } from "../workers/serve.ts";
import { createCounter } from "./counter.ts";

servePlan((union) => {
  const count = createCounter(union);
  return (plan) => count(sentPlan(plan));
});
