// The kit being edited: rows as they are typed, taken into the project as one step as soon as every cell can be read.

import { useMemo, useState } from "react";
import type { Kit } from "../../kit/kit.ts";
import { readKitCsv } from "../../kit/kitCsv.ts";
import { type CellIssue, type KitRow, kitToRows, rowsToKit } from "../../kit/kitRows.ts";
import { serializeKit } from "../../kit/serialize.ts";
import { isSame } from "../../plan/document.ts";
import { useBench, useEditorState } from "../live/useWorkbench.tsx";
import { kitOf } from "../live/workbench.ts";
import { takeStep } from "../state/editorState.ts";
import { type Words, words } from "../words/say.ts";

export interface KitDraft {
  readonly kit: Kit | null;
  readonly isShipped: boolean;
  readonly rows: readonly KitRow[];
  readonly issues: readonly CellIssue[];
  /** What kept a table from being read at all. */
  readonly refusals: readonly Words[];
  readonly apply: (rows: readonly KitRow[]) => void;
  readonly readCsv: (text: string) => void;
  /** Gives up what could not be taken. */
  readonly discard: () => void;
}

const MOST_TOLD = 4;

export function useKitDraft(): KitDraft {
  const bench = useBench();
  const { history } = useEditorState();
  const kit = kitOf(history.doc);
  const [typed, setTyped] = useState<readonly KitRow[] | null>(null);
  const [refusals, setRefusals] = useState<readonly Words[]>([]);
  const kept = useMemo(() => (kit === null ? [] : kitToRows(kit)), [kit]);
  const rows = typed ?? kept;
  const issues = useMemo(() => {
    const answer = typed === null ? null : rowsToKit(typed);
    return answer?.status === "invalid" ? answer.issues : [];
  }, [typed]);
  const take = (next: Kit) => {
    setTyped(null);
    if (kit !== null && isSame(serializeKit(kit), serializeKit(next))) return;
    bench.editor.set((state) =>
      takeStep(
        state,
        words("step.kit"),
        [{ kind: "change-project", set: { kit: serializeKit(next) } }],
        state.session.selection.items,
      ),
    );
  };
  return {
    kit,
    isShipped: typeof history.doc.kit === "string",
    rows,
    issues,
    refusals,
    apply: (next) => {
      setRefusals([]);
      const answer = rowsToKit(next);
      if (answer.status === "ok") take(answer.kit);
      else setTyped(next);
    },
    readCsv: (text) => {
      const answer = readKitCsv(text);
      if (answer.status === "ok") {
        setRefusals([]);
        take(answer.kit);
        return;
      }
      const told = answer.issues.slice(0, MOST_TOLD);
      setRefusals(
        told.map(({ line, expected, found }) => words("kit.line", { line: String(line), expected, found })),
      );
      if (answer.rows.length > 0) setTyped(answer.rows);
    },
    discard: () => {
      setTyped(null);
      setRefusals([]);
    },
  };
}
