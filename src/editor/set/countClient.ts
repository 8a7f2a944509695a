// The page's side of the counter: one plan in it, one waiting. A newer plan takes the place of the waiting one.

import type { PourNeeds } from "../../fill/optimise/pourNeeds.ts";
import type { WorkPlan } from "../over/workPlan.ts";
import type { Counted } from "./protocol.ts";

export interface CountPort {
  readonly send: (plan: WorkPlan) => void;
  readonly end: () => void;
}

export interface CountEvents {
  readonly onAnswer: (answer: Counted) => void;
  /** It did not start, or broke down outside a count. */
  readonly onFailure: (reason: string) => void;
}

export interface CountClient {
  /** Null where a newer plan has taken its place. Rejects where the count breaks down. */
  readonly count: (plan: WorkPlan) => Promise<PourNeeds | null>;
  readonly end: () => void;
}

interface Asked {
  readonly plan: WorkPlan;
  readonly settle: (answer: Counted | null) => void;
}

/** @param start - begins a counter that tells its events to the listeners given */
export function createCountClient(start: (events: CountEvents) => CountPort): CountClient {
  let port: CountPort | null = null;
  let [inHand, waiting]: [Asked | null, Asked | null] = [null, null];
  const end = () => {
    port?.end();
    port = null;
  };
  const answered = (answer: Counted) => {
    const own = inHand;
    inHand = null;
    own?.settle(answer);
    next();
  };
  const fail = (reason: string) => {
    end();
    answered({ kind: "broken", reason });
  };
  const next = () => {
    if (inHand !== null || waiting === null) return;
    [inHand, waiting] = [waiting, null];
    try {
      port ??= start({ onAnswer: answered, onFailure: fail });
      port.send(inHand.plan);
    } catch (reason) {
      fail(String(reason));
    }
  };
  return {
    count: (plan) =>
      new Promise((resolve, reject) => {
        waiting?.settle(null);
        waiting = {
          plan,
          settle: (answer) => {
            if (answer?.kind === "broken") reject(new Error(answer.reason));
            else resolve(answer?.needs ?? null);
          },
        };
        next();
      }),
    end,
  };
}
