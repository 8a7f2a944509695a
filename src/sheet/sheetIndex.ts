// The list of all sheets with their codes, as a table: what a code read off a sheet on the wall is looked up in.
//
// A code that is not in the list of the latest issue belongs to a stale sheet.

import { textCell } from "../fill/billCsv.ts";
import type { Sheet } from "./mark.ts";

const COLUMNS = ["file", "page", "title", "revision", "code"] as const;

/** A sheet and where it was written. */
export interface IndexRow {
  readonly file: string;
  /** From 1, in its file. */
  readonly page: number;
  readonly sheet: Sheet;
}

/** One row for each sheet, in order; RFC 4180, lines end in CR LF. */
export function sheetIndexCsv(rows: readonly IndexRow[], revision: string): string {
  const lines = rows.map(({ file, page, sheet }) =>
    [textCell(file), `${page}`, ...[sheet.title, revision, sheet.key ?? ""].map(textCell)].join(","),
  );
  return [COLUMNS.join(","), ...lines].map((line) => `${line}\r\n`).join("");
}
