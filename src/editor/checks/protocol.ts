// What the worker that checks is asked, and how it answers. It knows no worker.

import { type AnswerAsk, sentPlan } from "../workers/planProtocol.ts";
import type { Checked, Checker, Stated } from "./checker.ts";
import type { CheckDetail } from "./checkList.ts";

/** A job for the checker. `version` names the list that it makes, or that a check is asked of. */
export type Ask =
  | { readonly kind: "make"; readonly stated: Stated; readonly version: number }
  | { readonly kind: "detail"; readonly version: number; readonly index: number };

export type Answer =
  | { readonly kind: "made"; readonly checked: Checked }
  /** null: it is of another list than the one made last. */
  | { readonly kind: "detail"; readonly detail: CheckDetail | null };

export function checkAnswers(checker: Checker): AnswerAsk<Ask, Answer> {
  return (plan, ask) =>
    ask.kind === "detail"
      ? { kind: "detail", detail: checker.detail(ask.version, ask.index) }
      : { kind: "made", checked: checker.make(sentPlan(plan), ask.stated, ask.version) };
}
