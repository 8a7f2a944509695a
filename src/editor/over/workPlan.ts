// What the workers of the views over the plan are sent.

import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";

/** A project with its kit. Nothing of it changes while it is in hand. */
export interface WorkPlan {
  readonly project: Project;
  readonly kit: Kit;
}
