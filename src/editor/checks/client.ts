// The checker as the page asks it: for the list of a plan, and for one check of it.

import type { WorkPlan } from "../over/workPlan.ts";
import { createPlanClient, type StartPlanWorker } from "../workers/planClient.ts";
import type { Checked, Stated } from "./checker.ts";
import type { CheckDetail } from "./checkList.ts";
import type { Answer, Ask } from "./protocol.ts";

export interface CheckClient {
  /** Null where a newer ask has taken its place. Rejects with the reason where there is no answer. */
  readonly make: (plan: WorkPlan, stated: Stated) => Promise<Checked | null>;
  /** A check of the list with that version; null where that list has gone, or nobody answers. */
  readonly detail: (version: number, index: number) => Promise<CheckDetail | null>;
  readonly end: () => void;
}

export function createCheckClient(start: StartPlanWorker<Ask, Answer>): CheckClient {
  const jobs = createPlanClient(start);
  // Counted here, so that a checker begun after another broke down gives no list the version of an earlier one.
  let version = 0;
  return {
    make: async (plan, stated) => {
      version += 1;
      const answer = await jobs.about(plan, { kind: "make", stated, version });
      return answer?.kind === "made" ? answer.checked : null;
    },
    detail: (wanted, index) =>
      jobs.ask({ kind: "detail", version: wanted, index }).then(
        (answer) => (answer.kind === "detail" ? answer.detail : null),
        () => null,
      ),
    end: jobs.end,
  };
}
