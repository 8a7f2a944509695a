// A kit as a table for a spreadsheet, written and read: RFC 4180, lines end in CR LF, one row for the kit, each piece
// and each rule.
//
// Names and codes come from a file somebody else may have written, so no cell may act as a formula where it is opened:
// such a cell gets an apostrophe before it, which reading takes off again.

import { recordsOf, separatorOf, withoutMark } from "./csvRecords.ts";
import type { Kit } from "./kit.ts";
import { type CellIssue, COLUMNS, type Column, type KitRow, kitToRows, rowOf, rowsToKit } from "./kitRows.ts";

/** A mistake in the text: its line, counted from 1, and what belongs there. `column` null: the line as a whole. */
export interface CsvIssue extends Omit<CellIssue, "row" | "column"> {
  readonly line: number;
  readonly column: Column | null;
}

export type CsvAnswer =
  | { readonly status: "ok"; readonly kit: Kit; readonly rows: readonly KitRow[] }
  /** `rows` holds what could be told apart, for a table in which it can be mended; empty where nothing could. */
  | { readonly status: "invalid"; readonly issues: readonly CsvIssue[]; readonly rows: readonly KitRow[] };

const LONGEST = 8_000_000; // characters: ten times the largest kit
const FORMULA_START = /^'*[=+\-@\t\r\n\uFF0B\uFF0D\uFF1D\uFF20]/;
const NEEDS_QUOTES = /[",\r\n]/;

/** @see RFC 4180, section 2 (records, quotes, line ends) */
export function kitCsv(kit: Kit): string {
  const lines = kitToRows(kit).map((row) => COLUMNS.map((column) => cellText(row[column])).join(","));
  return `${[COLUMNS.join(","), ...lines].join("\r\n")}\r\n`;
}

/**
 * The kit in a table. Takes a byte order mark, line ends of any kind, columns in any order, and commas, semicolons or
 * tabs between cells, as spreadsheets of different languages write them; with semicolons or tabs a comma in a number
 * is its decimal sign. `readKitCsv(kitCsv(kit))` gives an equal kit.
 */
export function readKitCsv(text: string): CsvAnswer {
  if (text.length > LONGEST)
    return refused([
      { line: 1, column: null, expected: `a table of up to ${LONGEST} characters`, found: "more" },
    ]);
  const plain = withoutMark(text);
  const separator = separatorOf(plain);
  const parsed = recordsOf(plain, separator);
  if (parsed.status === "broken") return refused([{ ...parsed.issue, column: null }]);
  const [head, ...body] = parsed.records;
  const names = (head?.cells ?? []).map((cell) => cell.trim().toLowerCase());
  const wrong = headIssues(names);
  if (wrong.length > 0) return refused(wrong);
  const filled = body.filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  const long = filled.find(({ cells }) => cells.slice(names.length).some((cell) => cell !== ""));
  if (long !== undefined) {
    const found = `${long.cells.length}`;
    return refused([
      { line: long.line, column: null, expected: `${names.length} cells as in the first line`, found },
    ]);
  }
  const rows = filled.map(({ cells }) => rowFrom(names, cells, separator !== ","));
  const answer = rowsToKit(rows);
  if (answer.status === "ok") return { status: "ok", kit: answer.kit, rows };
  const issues = answer.issues.map(({ row, ...issue }) => ({ line: filled[row]?.line ?? 1, ...issue }));
  return { status: "invalid", issues, rows };
}

function refused(issues: readonly CsvIssue[]): CsvAnswer {
  return { status: "invalid", issues, rows: [] };
}

function headIssues(names: readonly string[]): CsvIssue[] {
  const unknown = names.filter((name) => name !== "" && !COLUMNS.some((column) => column === name));
  const doubled = names.filter((name, k) => name !== "" && names.indexOf(name) < k);
  const issues: CsvIssue[] = [...unknown, ...doubled].map((name) => ({
    line: 1,
    column: null,
    expected: `columns named, each once: ${COLUMNS.join(", ")}`,
    found: JSON.stringify(name),
  }));
  for (const needed of ["record", "name"] as const) {
    if (!names.includes(needed))
      issues.push({ line: 1, column: needed, expected: `a column named ${needed}`, found: "none" });
  }
  return issues;
}

const NUMBERS: readonly Column[] = [
  ...(["mass", "price", "stays", "width", "height", "length", "depth"] as const),
  ...(["leg_left", "leg_right", "least", "greatest", "value"] as const),
];

const WORDS: readonly Column[] = ["record", "family", "standard", "hand", "turn"];

function rowFrom(names: readonly string[], cells: readonly string[], hasCommas: boolean): KitRow {
  const row: { [column in Column]?: string } = {};
  names.forEach((name, k) => {
    const column = COLUMNS.find((each) => each === name);
    const cell = cells[k];
    if (column === undefined || cell === undefined) return;
    const text = FORMULA_START.test(cell) && cell.startsWith("'") ? cell.slice(1) : cell;
    row[column] = hasCommas && NUMBERS.includes(column) ? text.replaceAll(",", ".") : tidied(text, column);
  });
  return rowOf(row);
}

// Spaces may be part of a name; round a word of the format they are a slip.
function tidied(text: string, column: Column): string {
  return WORDS.includes(column) ? text.trim() : text;
}

function cellText(text: string): string {
  const guarded = FORMULA_START.test(text) ? `'${text}` : text;
  return NEEDS_QUOTES.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}
