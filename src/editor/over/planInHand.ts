// The project on the screen with its kit, as the workers of the views over the plan take it.

import type { PlanDocument } from "../../plan/document.ts";
import { documentToProject } from "../../plan/documentProject.ts";
import type { Project } from "../../plan/project.ts";
import { kitOf } from "../live/workbench.ts";
import type { WorkPlan } from "./workPlan.ts";

const projects = new WeakMap<PlanDocument, Project>();

/** One project for each state, by which a worker tells whether what it has is of this one; null without a readable kit. */
export function planInHand(document: PlanDocument): WorkPlan | null {
  const kit = kitOf(document);
  if (kit === null) return null;
  const project = projects.get(document) ?? withoutPictures(documentToProject(document));
  projects.set(document, project);
  return { project, kit };
}

// A traced picture may weigh megabytes, and nothing is counted or printed of it.
function withoutPictures(project: Project): Project {
  return {
    ...project,
    units: project.units.map(({ underlay: _, ...unit }) => unit),
  };
}
