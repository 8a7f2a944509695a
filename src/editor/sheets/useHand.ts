// Where the hand is in the list: which row, which sheet shows, what is listed at all.

import { useMemo, useState } from "react";
import { type Filter, keptFilter, type Row, rowsOf, type SheetEntry, type SheetList } from "./sheetList.ts";

export interface Hand {
  readonly rows: readonly Row[];
  readonly filter: Filter;
  /** Id of the row in hand. */
  readonly row: string;
  /** The sheet that shows; null where none is listed. */
  readonly sheet: SheetEntry | null;
  /** Its place among the sheets that are listed, from 0, and how many there are. */
  readonly place: number;
  readonly count: number;
  readonly take: (row: Row) => void;
  /** Goes on by so many sheets, or back. */
  readonly walk: (by: number) => void;
  readonly setFilter: (filter: Filter) => void;
}

const ALL: Filter = { kind: null, room: null };

export function useHand(list: SheetList | null): Hand {
  const [wanted, setFilter] = useState(ALL);
  const [row, setRow] = useState("");
  const [shown, setShown] = useState("");
  const filter = useMemo(() => (list === null ? wanted : keptFilter(wanted, list)), [wanted, list]);
  const rows = useMemo(() => (list === null ? [] : rowsOf(list, filter)), [list, filter]);
  const sheets = rows.flatMap((each) => (each.kind === "sheet" ? each.sheet : []));
  const place = Math.max(
    0,
    sheets.findIndex(({ key }) => key === shown),
  );
  const sheet = sheets[place] ?? null;
  const take = (to: Row) => {
    setRow(to.id);
    if (to.kind === "sheet") setShown(to.sheet.key);
  };
  return {
    rows,
    filter,
    row: rows.some(({ id }) => id === row) ? row : (sheet?.key ?? ""),
    sheet,
    place,
    count: sheets.length,
    take,
    walk: (by) => {
      const to = rows.find(({ id }) => id === sheets[place + by]?.key);
      if (to !== undefined) take(to);
    },
    setFilter,
  };
}
