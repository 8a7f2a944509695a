// The sheets of the project on the screen: made beside the page, and made anew whenever project, kit or fields change.

import { useEffect, useMemo, useState } from "react";
import type { PlanDocument } from "../../plan/document.ts";
import { documentToProject } from "../../plan/documentProject.ts";
import type { Project } from "../../plan/project.ts";
import { useEditorState } from "../live/useWorkbench.tsx";
import { kitOf } from "../live/workbench.ts";
import { createSheetClient, type SheetClient } from "./client.ts";
import type { Fields } from "./fields.ts";
import type { SheetList } from "./sheetList.ts";
import { startBeside, startHere } from "./startMaker.ts";

/** The sheets made last. `list` is the same object as long as they are the same sheets. */
export interface Sheets {
  readonly client: SheetClient;
  readonly list: SheetList | null;
  /** They are of an earlier state; those of this one are on the way. */
  readonly isStale: boolean;
  /** Why they could not be made; "kit" = the kit cannot be read. */
  readonly failure: string | null;
}

interface Made {
  readonly of: object | null;
  readonly list: SheetList | null;
  readonly failure: string | null;
}

export function useSheets(fields: Fields): Sheets {
  const document = useEditorState().history.doc;
  const client = useMemo(() => createSheetClient(startBeside, startHere), []);
  useEffect(() => client.end, [client]);
  const ask = useMemo(() => ({ plan: planOf(document), fields }), [document, fields]);
  const [made, setMade] = useState<Made>({ of: null, list: null, failure: null });
  useEffect(() => {
    if (ask.plan === null) return;
    let isWanted = true;
    client.make(ask.plan, ask.fields).then(
      (list) => {
        if (isWanted && list !== null) setMade({ of: ask, list, failure: null });
      },
      (reason: unknown) => {
        if (isWanted) setMade({ of: ask, list: null, failure: String(reason) });
      },
    );
    return () => {
      isWanted = false;
    };
  }, [client, ask]);
  if (ask.plan === null) return { client, list: null, isStale: false, failure: KIT };
  return { client, list: made.list, isStale: made.of !== ask, failure: made.failure };
}

/** The failure of a project whose kit cannot be read. */
export const KIT = "kit";

const plans = new WeakMap<PlanDocument, { readonly project: Project }>();

// One object for each state, by which the maker tells whether the fill it has is of this one.
function planOf(document: PlanDocument) {
  const kit = kitOf(document);
  if (kit === null) return null;
  const known = plans.get(document);
  const { project } = known ?? { project: withoutPictures(documentToProject(document)) };
  plans.set(document, { project });
  return { project, kit };
}

// A traced picture may weigh megabytes and is on no sheet.
function withoutPictures(project: Project): Project {
  return {
    ...project,
    units: project.units.map(({ underlay: _, ...unit }) => unit),
  };
}
