// A list of what is owned as rows of cells, from a table as text or a workbook: which sign parts the cells, which letters.

import { type CsvRecord, recordsOf, separatorOf, withoutMark } from "../../kit/csvRecords.ts";
import { utf8Text, westernText } from "../packed.ts";
import { readXlsx, type SheetCell, type SheetRow } from "../xlsx/readXlsx.ts";

export type TableAnswer =
  | { readonly status: "ok"; readonly rows: readonly SheetRow[] }
  /** A sentence without its full stop. */
  | { readonly status: "broken"; readonly line: number; readonly reason: string };

const MOST_TEXT = 8_000_000;
const MOST_WORKBOOK = 32_000_000;
const MOST_LINES = 200_000;

/** Reads bytes for what they are, whatever the name of the file. `isCode` tells which cells name a piece. */
export function stockTable(bytes: Uint8Array, isCode: (text: string) => boolean): TableAnswer {
  const starts = (...signs: readonly number[]) => signs.every((sign, k) => bytes[k] === sign);
  const tooLarge = (most: number) =>
    bytes.length > most ? broken(1, `the file is larger than ${most / 1e6} MB`) : null;
  if (starts(0x50, 0x4b)) {
    const refused = tooLarge(MOST_WORKBOOK);
    if (refused !== null) return refused;
    const read = readXlsx(bytes);
    return read.status === "ok" ? read : broken(1, `the workbook cannot be read: ${read.reason}`);
  }
  if (starts(0xd0, 0xcf, 0x11, 0xe0))
    return broken(
      1,
      "this is a workbook of the older form or one with a password; save it as XLSX without one",
    );
  return tooLarge(MOST_TEXT) ?? textTable(decoded(bytes), isCode);
}

// UTF-8, UTF-16 with its mark, else the letters of western Europe, as spreadsheets write "CSV" there.
function decoded(bytes: Uint8Array): string {
  const isLittle = bytes[0] === 0xff && bytes[1] === 0xfe;
  const isBig = bytes[0] === 0xfe && bytes[1] === 0xff;
  if (isLittle || isBig) {
    let text = "";
    for (let k = 2; k + 1 < bytes.length; k += 2) {
      text += String.fromCharCode(
        isLittle ? bytes[k]! + 256 * bytes[k + 1]! : 256 * bytes[k]! + bytes[k + 1]!,
      );
    }
    return text;
  }
  const text = utf8Text(bytes);
  return text.includes("\uFFFD") ? westernText(bytes) : text;
}

function textTable(given: string, isCode: (text: string) => boolean): TableAnswer {
  const text = withoutMark(given);
  if (text.includes("\u0000")) return broken(1, "this is neither a table as text nor a workbook");
  const named = /^sep=(.)\r?\n/.exec(text);
  const separators = named === null ? [";", "\t", ","] : [named[1]!];
  const read = separators.map((separator) => recordsOf(text, separator));
  // The sign that leaves most names of pieces standing in cells of their own.
  const hits = read.map((each) => (each.status === "ok" ? codesIn(each.records, isCode) : -1));
  const most = hits.reduce((best, each) => Math.max(best, each), 0);
  const at = most > 0 ? hits.indexOf(most) : Math.max(0, separators.indexOf(separatorOf(text)));
  const best = read[at]!;
  if (best.status === "broken") {
    const { line, expected, found } = best.issue;
    return broken(line, `expected ${expected}, found ${found}`);
  }
  if (best.records.length > MOST_LINES) return broken(MOST_LINES + 1, `more than ${MOST_LINES} lines`);
  const rows = best.records.map(({ line, cells }) => ({ line, cells: cells.map(cellOf) }));
  return { status: "ok", rows: named === null ? rows : rows.slice(1) };
}

function codesIn(records: readonly CsvRecord[], isCode: (text: string) => boolean): number {
  return records.filter(({ cells }) => cells.length > 1 && cells.some((cell) => isCode(cell.trim()))).length;
}

function cellOf(text: string): SheetCell | undefined {
  // An apostrophe before a text keeps a spreadsheet from working it out; it is no part of the text.
  const plain = text.trim().replace(/^'(?=[=+\-@])/, "");
  return plain === "" ? undefined : { text: plain, isNumber: false, isUnknown: false };
}

function broken(line: number, reason: string): TableAnswer {
  return { status: "broken", line, reason };
}
