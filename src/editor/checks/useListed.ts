// Where the hand is in the list of checks: what is listed, which lines are open, which one is in hand.

import { useMemo, useState } from "react";
import type { CheckList } from "./checkList.ts";
import { type Filter, filtered, groupsOf, keptFilter, type Line, linesOf, NO_FILTER } from "./gather.ts";

export interface Listed {
  readonly filter: Filter;
  readonly setFilter: (filter: Filter) => void;
  readonly lines: readonly Line[];
  /** The line in hand; null where none is listed. */
  readonly line: Line | null;
  readonly take: (line: Line) => void;
  readonly toggle: (line: Line) => void;
}

const NONE_OPEN: ReadonlySet<string> = new Set();

export function useListed(list: CheckList | null): Listed {
  const [wanted, setFilter] = useState(NO_FILTER);
  const [open, setOpen] = useState(NONE_OPEN);
  const [hand, setHand] = useState("");
  const rows = list?.rows ?? NO_ROWS;
  const filter = useMemo(() => keptFilter(wanted, rows), [wanted, rows]);
  const groups = useMemo(() => groupsOf(filtered(rows, filter)), [rows, filter]);
  const lines = useMemo(() => linesOf(groups, open), [groups, open]);
  return {
    filter,
    setFilter,
    lines,
    line: lines.find(({ id }) => id === hand) ?? lines[0] ?? null,
    take: ({ id }) => setHand(id),
    toggle: ({ id }) => {
      setOpen((now) => {
        const next = new Set(now);
        if (!next.delete(id)) next.add(id);
        return next;
      });
    },
  };
}

const NO_ROWS: CheckList["rows"] = [];
