// What is owned, from a list of codes and counts that a store keeps: CSV or XLSX in, the project's `stock` out.
//
// A list may hold more than the kit: such lines are left out and told. Everything that could make the stock wrong
// without a word (a code twice, half a piece, a number that reads two ways) keeps the list from being taken.

import { bareObject } from "../../json/value.ts";
import type { Kit } from "../../kit/kit.ts";
import type { SheetCell, SheetRow } from "../xlsx/readXlsx.ts";
import { type ColumnsAnswer, columnName, stockColumns } from "./stockColumns.ts";
import { stockTable } from "./stockTable.ts";
import { type CountAnswer, MOST_PIECES, wholeCount } from "./wholeCount.ts";

/** One thing to say of a line; `line` counts from 1, as spreadsheets number their rows. */
export interface StockRemark {
  readonly line: number;
  readonly kind:
    | "table"
    | "columns"
    | "unknown-code"
    | "no-code"
    | "twice"
    | Exclude<CountAnswer["status"], "count">
    | "no-count";
  /** In plain words, with the line, for a person. */
  readonly message: string;
}

export type StockAnswer =
  | {
      readonly status: "ok";
      /** In the order of the kit; what is owned none of is left out. */
      readonly stock: { readonly [code: string]: number };
      /** Lines that were left out. */
      readonly remarks: readonly StockRemark[];
      /** Lines that were taken. */
      readonly lines: number;
    }
  | { readonly status: "invalid"; readonly issues: readonly StockRemark[] };

const MOST_ISSUES = 50;

/** Reads the bytes of a CSV or an XLSX file. No file makes it throw. */
export function readStock(bytes: Uint8Array, kit: Kit): StockAnswer {
  const codes = new Map(kit.pieces.map(({ code }, place) => [code, place]));
  // A piece cut to a length of its own goes by the code it was cut from, a stroke and the length.
  const isCode = (text: string) => codes.has(text) || codes.has(text.replace(/\/\d+$/, ""));
  const table = stockTable(bytes, isCode);
  if (table.status === "broken") return refused(table.line, "table", table.reason);
  const rows = table.rows.map(trimmed);
  if (rows.every(({ cells }) => cells.every((cell) => cell === undefined)))
    return refused(1, "table", "there is nothing in it");
  const near = nearCodes(kit);
  const found = stockColumns(rows, isCode);
  if (found.status !== "ok") return refused(rows[0]?.line ?? 1, "columns", columnsFault(found));
  const { code: codeAt, quantity, first } = found.columns;
  const counts = new Map<string, { readonly count: number; readonly line: number }>();
  const remarks: StockRemark[] = [];
  const issues: StockRemark[] = [];
  for (const { line, cells } of rows.slice(first)) {
    const code = cells[codeAt]?.text ?? "";
    const cell = cells[quantity];
    if (code === "" && cell === undefined) continue;
    if (code === "") {
      remarks.push(
        remark(line, "no-code", `${quoted(cell!.text)} stands beside no code; the line is left out`),
      );
    } else if (!isCode(code)) {
      remarks.push(
        remark(
          line,
          "unknown-code",
          `the kit has no piece ${quoted(code)}${near(code)}; the line is left out`,
        ),
      );
    } else if (cell === undefined) {
      issues.push(remark(line, "no-count", `${quoted(code)} has no number`));
    } else {
      const read = wholeCount(cell);
      const known = counts.get(code);
      if (read.status !== "count")
        issues.push(remark(line, read.status, countFault(read.status, code, cell)));
      else if (known !== undefined)
        issues.push(
          remark(
            line,
            "twice",
            `${quoted(code)} stands on line ${known.line} already; make the two lines one`,
          ),
        );
      else counts.set(code, { count: read.count, line });
    }
    if (issues.length >= MOST_ISSUES) break;
  }
  if (issues.length > 0) return { status: "invalid", issues };
  if (counts.size === 0) return refused(rows[0]?.line ?? 1, "columns", "no line names a piece of the kit");
  return { status: "ok", stock: ordered(counts, codes), remarks, lines: counts.size };
}

function ordered(
  counts: ReadonlyMap<string, { readonly count: number }>,
  codes: ReadonlyMap<string, number>,
): { readonly [code: string]: number } {
  const place = (code: string) => codes.get(code) ?? codes.get(code.replace(/\/\d+$/, ""))!;
  const stock = bareObject<number>();
  const owned = [...counts].filter(([, { count }]) => count > 0);
  for (const [code, { count }] of owned.sort(([a], [b]) => place(a) - place(b) || (a < b ? -1 : 1)))
    stock[code] = count;
  return stock;
}

/** Cells without the spaces round their texts; one of spaces alone is empty. */
function trimmed({ line, cells }: SheetRow): SheetRow {
  const plain = Array.from(cells, (cell): SheetCell | undefined => {
    if (cell === undefined) return undefined;
    const text = cell.text.trim();
    return text === "" && !cell.isUnknown ? undefined : { ...cell, text };
  });
  return { line, cells: plain };
}

function columnsFault(found: Exclude<ColumnsAnswer, { status: "ok" }>): string {
  switch (found.status) {
    case "no-code":
      return 'no column is named "code", "código" or "codigo", and none holds codes of the kit';
    case "no-quantity":
      return 'no column is named "quantity", "cantidad" or "quantidade", and none holds numbers beside the codes';
    case "many-quantities": {
      const names = found.columns.map(columnName).join(", ");
      return found.isNamed
        ? `the columns ${names} are all named as the count of pieces; keep one`
        : `the columns ${names} all hold numbers; name the one that counts the pieces "quantity"`;
    }
    default:
      return found satisfies never;
  }
}

function countFault(
  status: Exclude<CountAnswer["status"], "count">,
  code: string,
  { text }: SheetCell,
): string {
  const of = `of ${quoted(code)}`;
  switch (status) {
    case "not-a-number":
      return `${quoted(text)} ${of} is no number`;
    case "negative":
      return `${quoted(text)} ${of} is less than none`;
    case "fractional":
      return `${quoted(text)} ${of} is no whole number of pieces`;
    case "huge":
      return `${quoted(text)} ${of} is more than ${MOST_PIECES}`;
    case "ambiguous":
      return `${quoted(text)} ${of} may be a thousand or a fraction; write it without dots and commas`;
    case "unknown-formula":
      return `the number ${of} is a formula that was not worked out; open the list in a spreadsheet and save it again`;
    default:
      return status satisfies never;
  }
}

function remark(line: number, kind: StockRemark["kind"], text: string): StockRemark {
  return { line, kind, message: `line ${line}: ${text}` };
}

function refused(line: number, kind: StockRemark["kind"], text: string): StockAnswer {
  return { status: "invalid", issues: [remark(line, kind, text)] };
}

const QUOTED = 60;

/** A text from the file, shortened. */
function quoted(text: string): string {
  return `"${text.length > QUOTED ? `${text.slice(0, QUOTED - 1)}…` : text}"`;
}

/** Tells of a code of the kit that differs in nothing but capitals and spaces. */
function nearCodes({ pieces }: Kit): (code: string) => string {
  const plain = (text: string) => text.toLowerCase().replaceAll(/[\s_-]/g, "");
  const byPlain = new Map([...pieces].reverse().map(({ code }) => [plain(code), code]));
  return (code) => {
    const meant = byPlain.get(plain(code));
    return meant === undefined ? "" : `; it has ${quoted(meant)}`;
  };
}
