// The page's side of the checker: sends it kit and project when they change, and matches answers to asks. Of several asks
// to check anew only the newest waits, so that the checker never falls behind the hand.

import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import type { Checked, Plan, Stated } from "./checker.ts";
import type { CheckDetail } from "./checkList.ts";
import type { Answer, Ask, FromChecker, ToChecker } from "./protocol.ts";

/** What the client needs of whoever checks. */
export interface CheckerPort {
  readonly send: (message: ToChecker) => void;
  readonly end: () => void;
}

export interface CheckerEvents {
  readonly onAnswer: (answer: FromChecker) => void;
  /** It did not start, or broke down outside a job. */
  readonly onFailure: (reason: string) => void;
}

export interface CheckClient {
  /** Null where a newer ask has taken its place. Rejects with the reason where there is no answer. */
  readonly make: (plan: Plan, stated: Stated) => Promise<Checked | null>;
  /** A check of the list with that version; null where that list has gone, or nobody answers. */
  readonly detail: (version: number, index: number) => Promise<CheckDetail | null>;
  readonly end: () => void;
}

interface Waiting {
  readonly plan: Plan;
  readonly stated: Stated;
  readonly settle: (answer: Answer | null) => void;
}

const NOTHING = { project: null, kit: null };

/** @param start - begins a checker that tells its events to the listeners given */
export function createCheckClient(start: (events: CheckerEvents) => CheckerPort): CheckClient {
  const jobs = new Map<number, (answer: Answer) => void>();
  let last = 0;
  let port: CheckerPort | null = null;
  let sent: { readonly project: Project | null; readonly kit: Kit | null } = NOTHING;
  let isMaking = false;
  let waiting: Waiting | null = null;

  const settle = (job: number, answer: Answer) => {
    const found = jobs.get(job);
    jobs.delete(job);
    found?.(answer);
  };
  const end = () => {
    port?.end();
    port = null;
    sent = NOTHING;
  };
  // The next ask begins another.
  const fail = (reason: string) => {
    end();
    for (const job of [...jobs.keys()]) settle(job, { kind: "broken", reason });
  };
  const begun = (): CheckerPort => {
    const own: CheckerPort = start({
      onAnswer: ({ job, ...answer }) => settle(job, answer),
      onFailure: (reason) => {
        if (port === own) fail(reason);
      },
    });
    return own;
  };
  const give = (ask: Ask, plan: Plan | null, done: (answer: Answer) => void) => {
    last += 1;
    jobs.set(last, done);
    try {
      port ??= begun();
      if (plan !== null && sent.kit !== plan.kit) port.send({ kind: "kit", kit: plan.kit });
      if (plan !== null && (sent.kit !== plan.kit || sent.project !== plan.project))
        port.send({ kind: "project", project: plan.project });
      if (plan !== null) sent = plan;
      port.send({ job: last, ...ask });
    } catch (reason) {
      fail(String(reason));
    }
  };
  const next = () => {
    if (isMaking || waiting === null) return;
    const { plan, stated, settle: done } = waiting;
    waiting = null;
    isMaking = true;
    give({ kind: "make", stated }, plan, (answer) => {
      isMaking = false;
      done(answer);
      next();
    });
  };
  return {
    make: (plan, stated) =>
      new Promise((resolve, reject) => {
        waiting?.settle(null);
        waiting = {
          plan,
          stated,
          settle: (answer) => {
            if (answer?.kind === "broken") reject(new Error(answer.reason));
            else if (answer?.kind === "list") resolve({ status: "checked", list: answer.list });
            else if (answer?.kind === "unread") resolve({ status: "unread", issues: answer.issues });
            else resolve(null);
          },
        };
        next();
      }),
    detail: (version, index) =>
      new Promise((resolve) => {
        give({ kind: "detail", version, index }, null, (answer) =>
          resolve(answer.kind === "detail" ? answer.detail : null),
        );
      }),
    end,
  };
}
