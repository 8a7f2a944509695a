// The cells of the first sheet of a workbook: the parts of an XLSX file that hold them, unpacked and read strictly.
//
//   _rels/.rels ─▶ xl/workbook.xml ─▶ its rels ─▶ first visible sheet, shared strings ─▶ rows of texts
//
// Read here and not by a library: one has to say on which line a cell stands, tell a formula that was never worked out
// from an empty cell, and refuse a file that unpacks to more than fits, all in the page and on the command line alike.

import { partOf, utf8Text } from "../packed.ts";
import { XmlFault, xmlTokens } from "./xmlTags.ts";

export interface SheetCell {
  readonly text: string;
  /** Holds a number, written with a point whatever the language. */
  readonly isNumber: boolean;
  /** A formula whose value is not in the file. */
  readonly isUnknown: boolean;
}

/** Cells from column A on; undefined = empty. */
export interface SheetRow {
  /** As numbered in the sheet, from 1. */
  readonly line: number;
  readonly cells: readonly (SheetCell | undefined)[];
}

export type XlsxAnswer =
  | { readonly status: "ok"; readonly rows: readonly SheetRow[] }
  /** `reason` completes "the workbook cannot be read: …". */
  | { readonly status: "broken"; readonly reason: string };

/** Bytes that the parts of a workbook may unpack to in all: a list of ten thousand pieces takes one hundredth. */
const MOST_BYTES = 64_000_000;
const MOST_ROWS = 200_000;
const MOST_COLUMNS = 256;

/** @see ECMA-376, part 1, 18.3 (worksheets) and 18.4 (shared strings); part 2 (packages) */
export function readXlsx(bytes: Uint8Array): XlsxAnswer {
  try {
    const find = partFinder(bytes);
    const book = targetOf(relations(find, "_rels/.rels", ""), "/officeDocument");
    if (book === undefined) throw new XmlFault("it names no workbook");
    const folder = book.slice(0, book.lastIndexOf("/") + 1);
    const name = book.slice(folder.length);
    const inBook = relations(find, `${folder}_rels/${name}.rels`, folder);
    const id = firstSheet(find(book));
    const sheet = inBook.find((each) => each.id === id)?.target;
    if (sheet === undefined) throw new XmlFault("it has no sheet that can be seen");
    const strings = targetOf(inBook, "/sharedStrings");
    return {
      status: "ok",
      rows: sheetRows(find(sheet), strings === undefined ? [] : sharedStrings(find(strings))),
    };
  } catch (error) {
    // The library that unpacks throws errors of its own, whatever is wrong with the bytes.
    return { status: "broken", reason: error instanceof XmlFault ? error.message : "it is no whole archive" };
  }
}

/** Gives the text of a part, all parts together within {@link MOST_BYTES}. */
function partFinder(bytes: Uint8Array): (path: string) => string {
  let left = MOST_BYTES;
  return (path) => {
    const part = partOf(bytes, path, left);
    if (part.status === "too-large") throw new XmlFault(`it unpacks to more than ${MOST_BYTES / 1e6} MB`);
    if (part.status === "none") throw new XmlFault(`it has no part "${path}"`);
    left -= part.bytes.length;
    return utf8Text(part.bytes);
  };
}

interface Relation {
  readonly id: string;
  readonly type: string;
  readonly target: string;
}

function relations(find: (path: string) => string, path: string, folder: string): readonly Relation[] {
  const found: Relation[] = [];
  for (const token of xmlTokens(find(path))) {
    if (token.kind !== "open" || token.name !== "Relationship") continue;
    const { attributes } = token;
    if (attributes.get("TargetMode") === "External") continue;
    const target = attributes.get("Target") ?? "";
    found.push({
      id: attributes.get("Id") ?? "",
      type: attributes.get("Type") ?? "",
      target: target.startsWith("/") ? target.slice(1) : folder + target,
    });
  }
  return found;
}

function targetOf(all: readonly Relation[], type: string): string | undefined {
  return all.find((each) => each.type.endsWith(type))?.target;
}

function firstSheet(book: string): string | undefined {
  for (const token of xmlTokens(book)) {
    if (token.kind !== "open" || token.name !== "sheet") continue;
    if ((token.attributes.get("state") ?? "visible") !== "visible") continue;
    return [...token.attributes].find(([name]) => name.endsWith(":id"))?.[1];
  }
  return undefined;
}

function sharedStrings(part: string): readonly string[] {
  const strings: string[] = [];
  let text: string | null = null;
  let isText = false;
  // What is told of how to speak a text is no part of it.
  let isSpoken = false;
  for (const token of xmlTokens(part)) {
    if (token.kind === "text") {
      if (isText && !isSpoken && text !== null) text += token.text;
    } else if (token.name === "si") {
      if (token.kind === "close") strings.push(text ?? "");
      text = token.kind === "open" ? "" : null;
    } else if (token.name === "t") isText = token.kind === "open";
    else if (token.name === "rPh") isSpoken = token.kind === "open";
  }
  return strings;
}

function sheetRows(part: string, strings: readonly string[]): readonly SheetRow[] {
  const rows: { line: number; cells: (SheetCell | undefined)[] }[] = [];
  let cell: { column: number; type: string; text: string; hasFormula: boolean; hasValue: boolean } | null =
    null;
  let isValue = false;
  let isSpoken = false;
  for (const token of xmlTokens(part)) {
    const row = rows.at(-1);
    if (token.kind === "text") {
      if (cell !== null && isValue && !isSpoken) cell.text += token.text;
    } else if (token.name === "row" && token.kind === "open") {
      const line = numberOf(token.attributes.get("r"), (row?.line ?? 0) + 1, 1_048_576);
      if (line <= (row?.line ?? 0)) throw new XmlFault(`its rows are out of order at ${line}`);
      if (rows.length === MOST_ROWS) throw new XmlFault(`it has more than ${MOST_ROWS} rows`);
      rows.push({ line, cells: [] });
    } else if (token.name === "c" && row !== undefined) {
      if (token.kind === "open") {
        const column = columnOf(token.attributes.get("r"), row.cells.length);
        const type = token.attributes.get("t") ?? "n";
        cell = { column, type, text: "", hasFormula: false, hasValue: false };
      } else if (cell !== null) {
        if (cell.column < MOST_COLUMNS) row.cells[cell.column] = cellOf(cell, strings);
        cell = null;
      }
    } else if (cell !== null && (token.name === "v" || (token.name === "t" && cell.type === "inlineStr"))) {
      isValue = token.kind === "open";
      cell.hasValue = true;
    } else if (cell !== null && token.name === "f") cell.hasFormula = true;
    else if (token.name === "rPh") isSpoken = token.kind === "open";
  }
  return rows;
}

function cellOf(
  cell: {
    readonly type: string;
    readonly text: string;
    readonly hasFormula: boolean;
    readonly hasValue: boolean;
  },
  strings: readonly string[],
): SheetCell | undefined {
  const { type, text, hasFormula, hasValue } = cell;
  if (!hasValue || (text === "" && hasFormula))
    return hasFormula ? { text: "", isNumber: false, isUnknown: true } : undefined;
  if (type === "s") {
    const shared = strings[numberOf(text, -1, strings.length - 1)];
    if (shared === undefined) throw new XmlFault("it points at a text that is not there");
    return { text: shared, isNumber: false, isUnknown: false };
  }
  return { text, isNumber: type === "n", isUnknown: false };
}

function numberOf(text: string | undefined, otherwise: number, greatest: number): number {
  if (text === undefined) return otherwise;
  const value = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  if (!(value <= greatest)) throw new XmlFault(`a place "${text.slice(0, 20)}" that no sheet has`);
  return value;
}

/** From 0; "C7" is 2. */
function columnOf(address: string | undefined, otherwise: number): number {
  if (address === undefined) return otherwise;
  const letters = /^([A-Z]{1,3})\d{1,7}$/.exec(address)?.[1];
  if (letters === undefined) throw new XmlFault(`a cell "${address.slice(0, 20)}" that no sheet has`);
  let column = 0;
  for (const letter of letters) column = column * 26 + letter.charCodeAt(0) - 64;
  return column - 1;
}
