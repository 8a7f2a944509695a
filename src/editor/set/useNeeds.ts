// What every pour of the project on the screen adds to the set: counted beside the page, anew whenever the project changes.

import { useEffect, useMemo, useState } from "react";
import type { PoursAdd } from "../../fill/optimise/pourAdds.ts";
import { useEditorState } from "../live/useWorkbench.tsx";
import { planInHand } from "../over/planInHand.ts";
import type { WorkPlan } from "../over/workPlan.ts";
import { createPlanClient } from "../workers/planClient.ts";
import { inputsOf } from "./inputs.ts";
import { startCounter } from "./startWorkers.ts";

export interface Needs {
  /** Null where the kit cannot be read. */
  readonly plan: WorkPlan | null;
  /** The last count; null before the first. */
  readonly counted: PoursAdd | null;
  /** What the last count is of: see `inputsOf`. Null without one. */
  readonly inputs: string | null;
  /** The count is of an earlier state; its own is on the way. */
  readonly isStale: boolean;
  readonly failure: string | null;
}

interface Answer {
  readonly of: WorkPlan | null;
  readonly inputs: string | null;
  readonly counted: PoursAdd | null;
  readonly failure: string | null;
}

export function useNeeds(): Needs {
  const document = useEditorState().history.doc;
  const plan = useMemo(() => planInHand(document), [document]);
  const client = useMemo(() => createPlanClient(startCounter), []);
  useEffect(() => client.end, [client]);
  const [answer, setAnswer] = useState<Answer>({ of: null, inputs: null, counted: null, failure: null });
  useEffect(() => {
    if (plan === null) return;
    let isWanted = true;
    client.about(plan, "count").then(
      (counted) => {
        if (isWanted && counted !== null)
          setAnswer({ of: plan, inputs: inputsOf(document), counted, failure: null });
      },
      (reason: unknown) => {
        if (isWanted) setAnswer({ of: plan, inputs: null, counted: null, failure: String(reason) });
      },
    );
    return () => {
      isWanted = false;
    };
  }, [client, plan, document]);
  const { of, ...rest } = answer;
  return { plan, ...rest, isStale: of !== plan };
}
