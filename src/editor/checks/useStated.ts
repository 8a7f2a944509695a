// A form of loads or concrete in hand: a change is taken as one step, waits for what it still asks for, or is refused.

import { useEffect, useState } from "react";
import { formatIssue } from "../../json/issue.ts";
import type { Json, JsonObject } from "../../json/value.ts";
import { useBench, useEditorState } from "../live/useWorkbench.tsx";
import { takeStep } from "../state/editorState.ts";
import { words } from "../words/say.ts";
import { type StatedName, tried } from "./stated.ts";

export interface StatedForm {
  /** The member as the form shows it: with what waits. */
  readonly values: JsonObject;
  /** What a change that waits still asks for, as paths below the member; null: nothing waits. */
  readonly lacks: readonly string[] | null;
  /** Why the last change was not taken; null: it was. */
  readonly refusal: string | null;
  /** undefined takes a member out. */
  readonly change: (change: { readonly [member: string]: Json | undefined }) => void;
  /** Forgets what waits. */
  readonly drop: () => void;
}

interface Waiting {
  readonly on: JsonObject;
  readonly next: JsonObject;
  readonly lacks: readonly string[];
}

export function useStated(name: StatedName): StatedForm {
  const bench = useBench();
  const given = useEditorState().history.doc[name];
  const [kept, setWaiting] = useState<Waiting | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another state of the project has other reasons
  useEffect(() => setRefusal(null), [given]);
  // What waited on an earlier state of the project waits no more.
  const waiting = kept?.on === given ? kept : null;
  const values = waiting?.next ?? given;
  return {
    values,
    lacks: waiting?.lacks ?? null,
    refusal,
    change: (change) => {
      // A file takes its time to be read: what the project says by then is changed, not what the form showed before.
      const now = bench.editor.get().history.doc[name];
      const answer = tried(name, kept?.on === now ? kept.next : now, change);
      setRefusal(answer.status === "refused" ? formatIssue(answer.issue) : null);
      if (answer.status === "refused") return;
      if (answer.status === "waiting") {
        setWaiting({ on: now, next: answer.next, lacks: answer.lacks });
        return;
      }
      setWaiting(null);
      bench.editor.set((state) =>
        takeStep(
          state,
          words(name === "loads" ? "step.loads" : "step.concrete"),
          [{ kind: "change-project", set: { [name]: answer.next } }],
          state.session.selection.items,
        ),
      );
    },
    drop: () => {
      setWaiting(null);
      setRefusal(null);
    },
  };
}
