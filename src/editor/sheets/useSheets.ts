// The sheets of the project on the screen: made beside the page, and made anew whenever project, kit or fields change.

import { useEffect, useMemo, useState } from "react";
import { useEditorState } from "../live/useWorkbench.tsx";
import { planInHand } from "../over/planInHand.ts";
import { createSheetClient, type SheetClient } from "./client.ts";
import type { Fields } from "./fields.ts";
import type { SheetList } from "./sheetList.ts";
import { startMaker } from "./startMaker.ts";

/** The sheets made last. `list` is the same object as long as they are the same sheets. */
export interface Sheets {
  readonly client: SheetClient;
  readonly list: SheetList | null;
  /** Those of this state are on the way. */
  readonly isMaking: boolean;
  /** What there is is of an earlier state. */
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
  const client = useMemo(() => createSheetClient(startMaker), []);
  useEffect(() => client.end, [client]);
  const ask = useMemo(() => ({ plan: planInHand(document), fields }), [document, fields]);
  const [made, setMade] = useState<Made>({ of: null, list: null, failure: null });
  const isFirst = made.list === null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a first list that has come is no reason to ask again
  useEffect(() => {
    const { plan, fields: given } = ask;
    if (plan === null) return;
    let isWanted = true;
    // While the old sheets are there, parts of the new ones would only flicker.
    const onPart = (list: SheetList) => {
      if (isWanted && isFirst) setMade({ of: null, list, failure: null });
    };
    const make = () => {
      client.make(plan, given, onPart).then(
        (list) => {
          if (isWanted && list !== null) setMade({ of: ask, list, failure: null });
        },
        (reason: unknown) => {
          if (isWanted) setMade({ of: ask, list: null, failure: String(reason) });
        },
      );
    };
    const timer = setTimeout(make, isFirst ? 0 : REST_MS);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [client, ask]);
  if (ask.plan === null) return { client, list: null, isMaking: false, isStale: false, failure: KIT };
  const isMaking = made.of !== ask;
  return {
    client,
    list: made.list,
    isMaking,
    isStale: isMaking && made.of !== null,
    failure: made.failure,
  };
}

const REST_MS = 200; // the hand that types has paused

/** The failure of a project whose kit cannot be read. */
export const KIT = "kit";
