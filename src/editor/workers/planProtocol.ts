// What the page and a worker that is about a whole plan say to each other, and how the worker answers. It knows no worker.
//
//   page ── kit ── project ── job 4, job 5 … ──▶ worker
//   page ◀── 4: a part, done   5: done, or why not ── worker
//
// Kit and project are sent when they change and are then in hand for every job that follows.

import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import type { WorkPlan } from "../over/workPlan.ts";

export type ToPlanWorker<Ask> =
  | { readonly kind: "kit"; readonly kit: Kit }
  | { readonly kind: "project"; readonly project: Project }
  | { readonly kind: "job"; readonly job: number; readonly ask: Ask };

export type FromPlanWorker<Answer> =
  /** What there is of the answer so far; more of the same job follows. */
  | { readonly kind: "part"; readonly job: number; readonly answer: Answer }
  | { readonly kind: "done"; readonly job: number; readonly answer: Answer }
  | { readonly kind: "broken"; readonly job: number; readonly reason: string };

/**
 * Answers one ask; null: no plan was sent. It looks at what is there before it awaits anything, so that every job finds
 * things as they are when its turn comes. What it throws breaks the job, not the worker.
 */
export type AnswerAsk<Ask, Answer> = (
  plan: WorkPlan | null,
  ask: Ask,
  onPart: (answer: Answer) => void,
) => Answer | Promise<Answer>;

/** Makes what takes messages in and answers by `tell`. */
export function createAnswerer<Ask, Answer>(
  answer: AnswerAsk<Ask, Answer>,
  tell: (told: FromPlanWorker<Answer>) => void,
): (message: ToPlanWorker<Ask>) => Promise<void> {
  let kit: Kit | null = null;
  let plan: WorkPlan | null = null;
  return async (message) => {
    if (message.kind === "kit") {
      ({ kit } = message);
      return;
    }
    if (message.kind === "project") {
      plan = kit === null ? null : { project: message.project, kit };
      return;
    }
    const { job, ask } = message;
    try {
      const onPart = (part: Answer) => tell({ kind: "part", job, answer: part });
      tell({ kind: "done", job, answer: await answer(plan, ask, onPart) });
    } catch (reason) {
      tell({ kind: "broken", job, reason: String(reason) });
    }
  };
}

/** @throws {Error} where no plan was sent */
export function sentPlan(plan: WorkPlan | null): WorkPlan {
  if (plan === null) throw new Error("no project was sent");
  return plan;
}
