// What the commands need of the core, as a record of functions, so that a command can be tried without it.

import type { FillDocument } from "../fill/result.ts";
import type { Kit } from "../kit/kit.ts";
import type { Project } from "../plan/project.ts";
import type { InputTools } from "./inputs.ts";

/** A sheet as it is printed. The title becomes its file's name; two sheets may share one. */
export interface PrintedSheet {
  readonly title: string;
  readonly svg: string;
}

export interface FillTools extends InputTools {
  readonly fill: (project: Project, kit: Kit) => Promise<FillDocument>;
  readonly sheets: (fill: FillDocument, project: Project, kit: Kit) => readonly PrintedSheet[];
}
