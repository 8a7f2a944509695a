// What the page and the worker that checks say to each other, and how the worker answers. It knows no worker.
//
//   page ── kit ── project ── make 4, detail 5 … ──▶ worker
//   page ◀── 4: the list, or what could not be read   5: one check ── worker
//
// Kit and project are sent when they change and are then in hand for every job that follows.

import type { Issue } from "../../json/issue.ts";
import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import type { Checker, Plan, Stated } from "./checker.ts";
import type { CheckDetail, CheckList } from "./checkList.ts";

export type ToChecker =
  | { readonly kind: "kit"; readonly kit: Kit }
  | { readonly kind: "project"; readonly project: Project }
  | ({ readonly job: number } & Ask);

/** A job for the checker. */
export type Ask =
  | { readonly kind: "make"; readonly stated: Stated }
  | { readonly kind: "detail"; readonly version: number; readonly index: number };

export type FromChecker = { readonly job: number } & Answer;

export type Answer =
  | { readonly kind: "list"; readonly list: CheckList }
  | { readonly kind: "unread"; readonly issues: readonly Issue[] }
  /** null: it is of a list made earlier. */
  | { readonly kind: "detail"; readonly detail: CheckDetail | null }
  /** The job broke down. */
  | { readonly kind: "broken"; readonly reason: string };

/** Answers messages by `tell`, in the order in which they come. */
export function createAnswerer(
  checker: Checker,
  tell: (answer: FromChecker) => void,
): (message: ToChecker) => void {
  let kit: Kit | null = null;
  let plan: Plan | null = null;
  return (message) => {
    if (message.kind === "kit") {
      ({ kit } = message);
      return;
    }
    if (message.kind === "project") {
      plan = kit === null ? null : { project: message.project, kit };
      return;
    }
    const { job } = message;
    try {
      tell({ job, ...answer(checker, plan, message) });
    } catch (reason) {
      tell({ job, kind: "broken", reason: String(reason) });
    }
  };
}

function answer(checker: Checker, plan: Plan | null, ask: Ask): Answer {
  if (ask.kind === "detail") return { kind: "detail", detail: checker.detail(ask.version, ask.index) };
  if (plan === null) return { kind: "broken", reason: "no project was sent" };
  const made = checker.make(plan, ask.stated);
  return made.status === "checked"
    ? { kind: "list", list: made.list }
    : { kind: "unread", issues: made.issues };
}
