// The worker's answers as the live fill takes them: a fill, null for one put aside, a rejection for one that broke down.

import type { FillAsk } from "../live/liveFill.ts";
import type { FillClient } from "./client.ts";
import type { Filled } from "./protocol.ts";

/**
 * Fills beside the page; where the browser gives no worker, in it with `fillHere`, which holds the page up: only for the
 * ask that is still the newest after `rest`.
 */
export function fillBeside(
  client: FillClient,
  fillHere: (ask: FillAsk) => Promise<Filled>,
  rest: () => Promise<unknown>,
): (ask: FillAsk) => Promise<Filled | null> {
  let revision = 0;
  return async (ask) => {
    revision += 1;
    const own = revision;
    const answer = await client.fill(ask, own);
    switch (answer.status) {
      case "filled":
        return answer.filled;
      case "put-aside":
        return null;
      case "broken":
        throw new Error(answer.reason);
      case "no-worker":
        await rest();
        return own === revision ? fillHere(ask) : null;
      default:
        return answer satisfies never;
    }
  };
}
