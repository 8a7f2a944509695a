// What the command `fill` needs of the core, as a record of functions, so that the command can be tried without it.

import type { FillDocument } from "../fill/result.ts";
import type { Kit } from "../kit/kit.ts";
import type { Project } from "../plan/project.ts";

/** A file read, or what is wrong with it: one sentence for each fault, with its path inside the file. */
export type Read<Value> =
  | { readonly status: "ok"; readonly value: Value; readonly warnings: readonly string[] }
  | { readonly status: "invalid"; readonly faults: readonly string[] };

/** A sheet as it is printed. The title becomes its file's name; two sheets may share one. */
export interface PrintedSheet {
  readonly title: string;
  readonly svg: string;
}

export interface FillTools {
  readonly readProject: (text: string) => Read<Project>;
  /** Paths of faults begin with `kit`. */
  readonly readKit: (kit: Project["kit"]) => Read<Kit>;
  readonly fill: (project: Project, kit: Kit) => Promise<FillDocument>;
  readonly sheets: (fill: FillDocument, project: Project, kit: Kit) => readonly PrintedSheet[];
}
