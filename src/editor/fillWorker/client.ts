// The page's side of the fill in a worker: one worker for the life of the page, one job in it, the newest ask waiting.
//
// The worker cannot be spoken to while it fills: to cancel is to end it, and the next ask starts another.

import type { Kit } from "../../kit/kit.ts";
import type { FillAsk } from "../live/liveFill.ts";
import { holdWorker } from "../workers/held.ts";
import { createNewest } from "../workers/newest.ts";
import type { StartPort } from "../workers/port.ts";
import type { Filled, FromWorker, ToWorker } from "./protocol.ts";

export type FillAnswer =
  | {
      readonly status: "filled";
      readonly filled: Filled;
      /** The revision it was asked for. */
      readonly revision: number;
      /** Nothing newer has been asked since: only then is it the fill of what is on the screen. */
      readonly isCurrent: boolean;
    }
  /** A newer ask took its place, or the job was cancelled. */
  | { readonly status: "put-aside" }
  /** The fill of this unit broke down: a fault of the program. */
  | { readonly status: "broken"; readonly reason: string }
  /** There is no worker to be had. */
  | { readonly status: "no-worker"; readonly reason: string };

export interface FillClient {
  /** @param revision - rises with every state of the plan; comes back with the answer */
  readonly fill: (ask: FillAsk, revision: number) => Promise<FillAnswer>;
  /** Ends the job in hand at once and puts the waiting one aside. */
  readonly cancel: () => void;
}

interface Asked {
  readonly ask: FillAsk;
  readonly revision: number;
}

interface Running extends Asked {
  readonly job: number;
  readonly done: (answer: FillAnswer) => void;
}

/** Makes a client. `start` begins a worker that tells its events to the listeners given. */
export function createFillClient(start: StartPort<ToWorker, FromWorker>): FillClient {
  let running: Running | null = null;
  let jobs = 0;
  let newest = Number.NEGATIVE_INFINITY;
  let sent: { readonly kit: Kit; readonly number: number } | null = null;
  let kits = 0;

  const settleAll = (answer: FillAnswer | null) => {
    running = null;
    line.drop(answer);
  };
  const worker = holdWorker(start, {
    onAnswer: (answer) => {
      if (running?.job !== answer.job) return;
      const { done, revision } = running;
      running = null;
      done(
        answer.kind === "broken"
          ? { status: "broken", reason: answer.reason }
          : { status: "filled", filled: answer.filled, revision, isCurrent: revision === newest },
      );
    },
    onFailure: (reason) => settleAll({ status: "no-worker", reason }),
  });
  const line = createNewest<Asked, FillAnswer>((asked, done) => {
    jobs += 1;
    const job = jobs;
    running = { ...asked, job, done };
    const { kit, ...ask } = asked.ask;
    worker.send((isNew) => {
      const known = !isNew && sent?.kit === kit ? sent : null;
      if (known === null) kits += 1;
      sent = known ?? { kit, number: kits };
      const news: readonly ToWorker[] = known === null ? [{ kind: "kit", kit: kits, value: kit }] : [];
      return [...news, { kind: "job", job, kit: sent.number, ask: withoutPicture(ask) }];
    });
  });

  return {
    fill: (ask, revision) =>
      new Promise((settle) => {
        newest = Math.max(newest, revision);
        line.give({ ask, revision }, (answer) => settle(answer ?? { status: "put-aside" }));
      }),
    cancel: () => {
      if (running !== null) worker.end();
      settleAll(null);
    },
  };
}

// A traced picture may weigh megabytes and fills nothing.
function withoutPicture(ask: Omit<FillAsk, "kit">): Omit<FillAsk, "kit"> {
  const { underlay: _, ...unit } = ask.unit;
  return { ...ask, unit };
}
