// Which project the page opens on: that of its address, else the last one opened. One that cannot be read is not passed
// over in silence.

import { faultOf, type ProjectDatabase, type StorageFault } from "./database.ts";
import { listProjects, type OpenedProject, openProject } from "./projects.ts";

export interface DamagedProject {
  readonly name: string;
  readonly faults: readonly string[];
  readonly text: string;
}

export type Opened = Extract<OpenedProject, { readonly status: "open" }>;

/** `first` null: there is none, or it is damaged, or the store does not answer. */
export interface Found {
  readonly first: { readonly id: string; readonly opened: Opened } | null;
  readonly damaged: DamagedProject | null;
  readonly fault: StorageFault | null;
}

/** A browser that has kept nothing. */
export const NOTHING: Found = { first: null, damaged: null, fault: null };

/** @param wanted - the id in the page's address */
export async function firstProject(wanted: string | null, database: ProjectDatabase): Promise<Found> {
  try {
    const ids = [...(wanted === null ? [] : [wanted]), ...(await listProjects(database)).map(({ id }) => id)];
    for (const id of ids) {
      const opened = await openProject(database, id);
      if (opened.status === "open") return { ...NOTHING, first: { id, opened } };
      if (opened.status === "damaged") return { ...NOTHING, damaged: opened };
      if (opened.status === "failed") return { ...NOTHING, fault: opened.fault };
    }
    return NOTHING;
  } catch (reason) {
    return { ...NOTHING, fault: faultOf(reason) };
  }
}
