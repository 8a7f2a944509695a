// The checks of a project as its sheets ask for them: loads and concrete read on the way, every entry checked once.

import type { FillDocument } from "../fill/result.ts";
import { formatIssue, type Issue } from "../json/issue.ts";
import type { Kit } from "../kit/kit.ts";
import { readConcrete } from "../plan/concrete.ts";
import { readLoads } from "../plan/loads.ts";
import type { Project } from "../plan/project.ts";
import { assessFill } from "./assessFill.ts";
import type { CheckDocument } from "./checkDocument.ts";

/** "unread": what the project says of loads and concrete cannot be understood; each fault with its place in the file. */
export type ProjectChecks =
  | { readonly status: "checked"; readonly document: CheckDocument }
  | { readonly status: "unread"; readonly issues: readonly Issue[] };

/** The faults for which nothing could be checked, in words, each with its place. */
export function unreadFaults(issues: readonly Issue[]): readonly string[] {
  return issues.map(formatIssue);
}

/** Checks all entries of a fill. A slip in the loads keeps nobody from the other sheets: it is told, not thrown. */
export function checkProject(given: {
  readonly project: Project;
  readonly kit: Kit;
  readonly fill: FillDocument;
}): ProjectChecks {
  const loads = readLoads(given.project.loads);
  const concrete = readConcrete(given.project.concrete);
  if (loads.status === "invalid" || concrete.status === "invalid") {
    const issues = [loads, concrete].flatMap((each) => (each.status === "invalid" ? each.issues : []));
    return { status: "unread", issues };
  }
  const document = assessFill({
    ...given,
    loads: loads.value,
    defaults: loads.defaults,
    concrete: concrete.value,
    concreteDefaults: concrete.defaults,
  });
  return { status: "checked", document };
}
