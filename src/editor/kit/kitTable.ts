// The kit as the table on the screen: which rows and columns are shown, and what a change of a cell makes of them. Pure.

import { FAMILIES, type Family } from "../../kit/kit.ts";
import { type Column, columnsOf, type KitRow, rowOf } from "../../kit/kitRows.ts";

/** What the table is narrowed to. */
export interface KitFilter {
  readonly show: Family | "all" | "rules";
  /** A part of a code or a rule's name, case does not matter. */
  readonly text: string;
}

const PIECE_COLUMNS: readonly Column[] = [
  ...(["name", "family", "width", "height", "length", "depth", "leg_left", "leg_right"] as const),
  ...(["turn", "least", "greatest", "class", "mass", "price", "standard", "hand", "stays"] as const),
];
const RULE_COLUMNS: readonly Column[] = ["name", "value", "unit", "origin"];

/** The columns that say something about the rows shown. */
export function shownColumns({ show }: KitFilter): readonly Column[] {
  if (show === "rules") return RULE_COLUMNS;
  if (show === "all") return PIECE_COLUMNS;
  const own = columnsOf(rowOf({ record: "piece", family: show }));
  return PIECE_COLUMNS.filter((column) => own.includes(column));
}

/** Places in the whole list of the rows shown. A row that has something to mend is never hidden. */
export function shownRows(
  rows: readonly KitRow[],
  { show, text }: KitFilter,
  toMend: ReadonlySet<number>,
): readonly number[] {
  const wanted = text.trim().toLowerCase();
  return rows.flatMap((row, index) => {
    if (row.record === "kit") return [];
    const isRule = row.record === "rule";
    if (isRule !== (show === "rules")) return [];
    if (toMend.has(index)) return [index];
    const isOfFamily = show === "all" || isRule || row.family === show;
    return isOfFamily && row.name.toLowerCase().includes(wanted) ? [index] : [];
  });
}

export function withCell(
  rows: readonly KitRow[],
  index: number,
  column: Column,
  text: string,
): readonly KitRow[] {
  const row = rows[index];
  return row === undefined || row[column] === text ? rows : rows.with(index, { ...row, [column]: text });
}

export function withoutRow(rows: readonly KitRow[], index: number): readonly KitRow[] {
  return rows.filter((_, k) => k !== index);
}

/** A row to be filled in, behind the last of its sort; `at` is where it stands. */
export function withNewRow(
  rows: readonly KitRow[],
  row: KitRow,
): { readonly rows: readonly KitRow[]; readonly at: number } {
  const last = rows.findLastIndex(
    ({ record, family }) => record === row.record && (row.family === "" || family === row.family),
  );
  const at = (last < 0 ? rows.findLastIndex(({ record }) => record === row.record) : last) + 1 || rows.length;
  return { rows: [...rows.slice(0, at), row, ...rows.slice(at)], at };
}

/** A code that no piece has: the given one with the next free number behind it. */
export function freeCode(rows: readonly KitRow[], wanted: string): string {
  const taken = new Set(rows.map(({ name }) => name));
  for (let k = 2; ; k++) {
    if (!taken.has(`${wanted}-${k}`)) return `${wanted}-${k}`;
  }
}

export function isFamily(word: string): word is Family {
  return FAMILIES.some((family) => family === word);
}
