// The checks of the project on the screen: made beside the page, and made anew whenever project, kit, loads or concrete
// change.

import { useEffect, useMemo, useRef, useState } from "react";
import type { Issue } from "../../json/issue.ts";
import type { PlanDocument } from "../../plan/document.ts";
import { useEditorState } from "../live/useWorkbench.tsx";
import { planInHand } from "../over/planInHand.ts";
import type { WorkPlan } from "../over/workPlan.ts";
import type { Stated } from "./checker.ts";
import type { CheckDetail, CheckList, CheckRow } from "./checkList.ts";
import { type CheckClient, createCheckClient } from "./client.ts";
import { startChecker } from "./startChecker.ts";

/** The checks made last. */
export interface Checks {
  readonly client: CheckClient;
  readonly list: CheckList | null;
  /** Those of this state are on the way. */
  readonly isMaking: boolean;
  /** What there is is of an earlier state. */
  readonly isStale: boolean;
  /** Mistakes in loads and concrete, for which nothing could be checked. */
  readonly issues: readonly Issue[];
  /** Why they could not be made; {@link KIT} = the kit cannot be read. */
  readonly failure: string | null;
}

interface Made {
  readonly of: object | null;
  readonly list: CheckList | null;
  readonly issues: readonly Issue[];
  readonly failure: string | null;
}

const REST_MS = 200; // the hand that types has paused
const NOTHING: Made = { of: null, list: null, issues: [], failure: null };

/** The failure of a project whose kit cannot be read. */
export const KIT = "kit";

export function useChecks(): Checks {
  const document = useEditorState().history.doc;
  const client = useMemo(() => createCheckClient(startChecker), []);
  useEffect(() => client.end, [client]);
  const plan = usePlan(document);
  const { loads, concrete } = document;
  const stated = useMemo<Stated>(() => ({ loads, concrete }), [loads, concrete]);
  const ask = useMemo(() => ({ plan, stated }), [plan, stated]);
  const [made, setMade] = useState(NOTHING);
  const isFirst = made.of === null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a first list that has come is no reason to ask again
  useEffect(() => {
    const { plan: own } = ask;
    if (own === null) return;
    let isWanted = true;
    const make = () => {
      client.make(own, ask.stated).then(
        (answer) => {
          if (!isWanted || answer === null) return;
          if (answer.status === "checked") setMade({ ...NOTHING, of: ask, list: answer.list });
          else setMade({ ...NOTHING, of: ask, issues: answer.issues });
        },
        (reason: unknown) => {
          if (isWanted) setMade({ ...NOTHING, of: ask, failure: String(reason) });
        },
      );
    };
    const timer = setTimeout(make, isFirst ? 0 : REST_MS);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [client, ask]);
  if (plan === null) return { client, ...NOTHING, isMaking: false, isStale: false, failure: KIT };
  const isMaking = made.of !== ask;
  const { list, issues, failure } = made;
  return { client, list, issues, failure, isMaking, isStale: isMaking && made.of !== null };
}

/** What the fill does not depend on: a change of these alone lets the plan be the same object. */
const BESIDE: readonly (keyof PlanDocument)[] = ["loads", "concrete", "language", "revision", "objective"];

function usePlan(document: PlanDocument): WorkPlan | null {
  const kept = useRef<{ readonly document: PlanDocument; readonly plan: WorkPlan } | null>(null);
  const { current } = kept;
  if (current !== null && isSamePlan(current.document, document)) return current.plan;
  const plan = planInHand(document);
  kept.current = plan === null ? null : { document, plan };
  return plan;
}

function isSamePlan(a: PlanDocument, b: PlanDocument): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]) as ReadonlySet<keyof PlanDocument>;
  return [...keys].every((key) => BESIDE.includes(key) || Object.is(a[key], b[key]));
}

/** A check that is looked at, the worst of so many. */
export interface LookedAt {
  readonly detail: CheckDetail;
  readonly of: number;
}

/**
 * One check whole, asked for when it is first looked at; the last one stays until the next is there.
 *
 * @param rows - the worst first
 */
export function useDetail({ client, list }: Checks, rows: readonly CheckRow[]): LookedAt | null {
  const [detail, setDetail] = useState<LookedAt | null>(null);
  const index = rows[0]?.index ?? null;
  const of = rows.length;
  useEffect(() => {
    if (list === null || index === null) {
      setDetail(null);
      return;
    }
    let isWanted = true;
    client.detail(list.version, index).then((found) => {
      if (isWanted && found !== null) setDetail({ detail: found, of });
    });
    return () => {
      isWanted = false;
    };
  }, [client, list, index, of]);
  return detail;
}
