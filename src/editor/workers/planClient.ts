// The page's side of a worker that is about a whole plan: sends it kit and project when they change, and matches answers to
// asks. Sheets, checks and the counts of pours are all asked for by it.

import type { WorkPlan } from "../over/workPlan.ts";
import { holdWorker } from "./held.ts";
import { createNewest } from "./newest.ts";
import type { FromPlanWorker, ToPlanWorker } from "./planProtocol.ts";
import type { StartPort } from "./port.ts";

export interface PlanClient<Ask, Answer> {
  /**
   * Asks about a plan; of several such asks only the newest waits. Null where a newer one has taken its place, or the
   * client was ended. Rejects with the reason where it breaks down.
   *
   * @param onPart - is told the answer so far, while more is on the way
   */
  readonly about: (plan: WorkPlan, ask: Ask, onPart?: (answer: Answer) => void) => Promise<Answer | null>;
  /** Asks about what was made last. Rejects with the reason where it breaks down; once ended, it is not answered. */
  readonly ask: (ask: Ask) => Promise<Answer>;
  /** Ends the worker; the next ask begins another. */
  readonly end: () => void;
}

/** How a worker of this kind is begun. */
export type StartPlanWorker<Ask, Answer> = StartPort<ToPlanWorker<Ask>, FromPlanWorker<Answer>>;

interface AboutPlan<Ask, Answer> {
  readonly plan: WorkPlan;
  readonly ask: Ask;
  readonly onPart: (answer: Answer) => void;
}

type Last<Answer> = Exclude<FromPlanWorker<Answer>, { readonly kind: "part" }>;

export function createPlanClient<Ask, Answer>(start: StartPlanWorker<Ask, Answer>): PlanClient<Ask, Answer> {
  const jobs = new Map<number, (told: FromPlanWorker<Answer>) => void>();
  let last = 0;
  let sent: WorkPlan | null = null;

  const hear = (told: FromPlanWorker<Answer>) => {
    const found = jobs.get(told.job);
    if (told.kind !== "part") jobs.delete(told.job);
    found?.(told);
  };
  const worker = holdWorker(start, {
    onAnswer: hear,
    onFailure: (reason) => {
      for (const job of [...jobs.keys()]) hear({ kind: "broken", job, reason });
    },
  });
  const post = (plan: WorkPlan | null, ask: Ask, onTold: (told: FromPlanWorker<Answer>) => void) => {
    last += 1;
    const job = last;
    jobs.set(job, onTold);
    worker.send((isNew) => {
      const known = isNew ? null : sent;
      sent = plan ?? known;
      return [...newsOf<Ask>(plan, known), { kind: "job", job, ask }];
    });
  };
  const line = createNewest<AboutPlan<Ask, Answer>, Last<Answer>>(({ plan, ask, onPart }, done) =>
    post(plan, ask, (told) => (told.kind === "part" ? onPart(told.answer) : done(told))),
  );
  return {
    about: (plan, ask, onPart = () => undefined) =>
      new Promise((resolve, reject) => {
        line.give({ plan, ask, onPart }, (told) => {
          if (told?.kind === "broken") reject(new Error(told.reason));
          else resolve(told === null ? null : told.answer);
        });
      }),
    ask: (ask) =>
      new Promise((resolve, reject) => {
        post(null, ask, (told) => {
          if (told.kind === "broken") reject(new Error(told.reason));
          else resolve(told.answer);
        });
      }),
    end: () => {
      worker.end();
      jobs.clear();
      line.drop(null);
    },
  };
}

// What the worker has to be sent before it can be asked about this plan.
function newsOf<Ask>(plan: WorkPlan | null, known: WorkPlan | null): readonly ToPlanWorker<Ask>[] {
  if (plan === null) return [];
  const isOther = known?.kit !== plan.kit;
  return [
    ...(isOther ? [{ kind: "kit" as const, kit: plan.kit }] : []),
    ...(isOther || known?.project !== plan.project
      ? [{ kind: "project" as const, project: plan.project }]
      : []),
  ];
}
