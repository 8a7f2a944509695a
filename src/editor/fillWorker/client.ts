// The page's side of the fill in a worker: one worker for the life of the page, one job in it, one waiting. A newer ask
// takes the place of the waiting one, so that the worker never falls behind a moving hand.
//
//   ask 1 ▶ in the worker      ask 2 ▶ waits      ask 3 ▶ waits in its place, 2 is put aside
//
// The worker cannot be spoken to while it fills: to cancel is to end it, and the next ask starts another.

import type { Kit } from "../../kit/kit.ts";
import type { FillAsk } from "../live/liveFill.ts";
import type { Filled, FromWorker, ToWorker } from "./protocol.ts";

/** What the client needs of a worker. */
export interface WorkerPort {
  readonly send: (message: ToWorker) => void;
  readonly terminate: () => void;
}

export interface WorkerEvents {
  readonly onAnswer: (answer: FromWorker) => void;
  /** The worker did not start, or broke down outside a job. */
  readonly onFailure: (reason: string) => void;
}

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

interface Waiting {
  readonly ask: FillAsk;
  readonly revision: number;
  readonly settle: (answer: FillAnswer) => void;
}

interface Running extends Waiting {
  readonly job: number;
}

/** Makes a client. `start` begins a worker that tells its events to the listeners given. */
export function createFillClient(start: (events: WorkerEvents) => WorkerPort): FillClient {
  let running: Running | null = null;
  let waiting: Waiting | null = null;
  let jobs = 0;
  let newest = Number.NEGATIVE_INFINITY;

  const settleAll = (answer: FillAnswer) => {
    const left = [running, waiting];
    running = null;
    waiting = null;
    for (const each of left) each?.settle(answer);
  };
  const crew = createCrew(start, {
    onAnswer: (answer) => {
      if (running?.job !== answer.job) return;
      const { settle, revision } = running;
      running = null;
      settle(
        answer.kind === "broken"
          ? { status: "broken", reason: answer.reason }
          : { status: "filled", filled: answer.filled, revision, isCurrent: revision === newest },
      );
      next();
    },
    onFailure: (reason) => settleAll({ status: "no-worker", reason }),
  });
  const next = () => {
    if (running !== null || waiting === null) return;
    jobs += 1;
    running = { ...waiting, job: jobs };
    waiting = null;
    crew.send(jobs, running.ask);
  };

  return {
    fill: (ask, revision) =>
      new Promise((settle) => {
        newest = Math.max(newest, revision);
        waiting?.settle({ status: "put-aside" });
        waiting = { ask, revision, settle };
        next();
      }),
    cancel: () => {
      if (running !== null) crew.end();
      settleAll({ status: "put-aside" });
    },
  };
}

interface Crew {
  /** Gives a job to the worker, which is begun where there is none. */
  readonly send: (job: number, ask: FillAsk) => void;
  /** Ends the worker. */
  readonly end: () => void;
}

// The one worker there is, and the kit it has been sent.
function createCrew(start: (events: WorkerEvents) => WorkerPort, events: WorkerEvents): Crew {
  let worker: WorkerPort | null = null;
  let sent: { readonly kit: Kit; readonly number: number } | null = null;
  let kits = 0;

  const end = () => {
    worker?.terminate();
    worker = null;
    sent = null;
  };
  const fail = (reason: string) => {
    end();
    events.onFailure(reason);
  };
  const begun = (): WorkerPort => {
    const own = start({
      // The last words of a worker that was ended are about a job that is over.
      onAnswer: events.onAnswer,
      onFailure: (reason) => {
        if (worker === own) fail(reason);
      },
    });
    return own;
  };
  const kitNumber = (port: WorkerPort, kit: Kit): number => {
    if (sent?.kit === kit) return sent.number;
    kits += 1;
    port.send({ kind: "kit", kit: kits, value: kit });
    sent = { kit, number: kits };
    return kits;
  };
  return {
    send: (job, { kit, ...ask }) => {
      try {
        worker ??= begun();
        worker.send({ kind: "job", job, kit: kitNumber(worker, kit), ask: withoutPicture(ask) });
      } catch (reason) {
        fail(String(reason));
      }
    },
    end,
  };
}

// A traced picture may weigh megabytes and fills nothing.
function withoutPicture(ask: Omit<FillAsk, "kit">): Omit<FillAsk, "kit"> {
  const { underlay: _, ...unit } = ask.unit;
  return { ...ask, unit };
}
