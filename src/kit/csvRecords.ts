// Tables as text, read apart into records: RFC 4180 and what spreadsheets of different languages make of it.

export interface CsvRecord {
  /** On which it begins, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** `line`, what belongs there and what was found. */
export interface BrokenRecord {
  readonly line: number;
  readonly expected: string;
  readonly found: string;
}

export type Records =
  | { readonly status: "ok"; readonly records: readonly CsvRecord[] }
  | { readonly status: "broken"; readonly issue: BrokenRecord };

/** A table without the byte order mark that some programs put before it. */
export function withoutMark(text: string): string {
  return text.replace(/^\uFEFF/, "");
}

/** The sign that stands between the names of the first line. */
export function separatorOf(text: string): string {
  const [head = ""] = text.split(/[\r\n]/, 1);
  return [";", "\t"].find((sign) => head.includes(sign)) ?? ",";
}

/** In one pass; a quoted cell may hold separators, line ends and doubled quotes. */
export function recordsOf(text: string, separator: string): Records {
  const records: CsvRecord[] = [];
  let cells: string[] = [];
  let line = 1;
  let startLine = 1;
  let at = 0;
  const endRecord = () => {
    records.push({ line: startLine, cells });
    cells = [];
    startLine = line;
  };
  while (at < text.length) {
    if (text[at] === '"') {
      const quoted = quotedCell(text, at);
      if (quoted === null) return broken(line, "a closing quote", "the end of the text");
      cells.push(quoted.cell);
      line += quoted.lines;
      at = quoted.end;
      const next = text[at];
      if (next !== undefined && next !== separator && next !== "\r" && next !== "\n")
        return broken(line, "the end of the cell after its closing quote", JSON.stringify(next));
    } else {
      const end = endOfCell(text, at, separator);
      cells.push(text.slice(at, end));
      at = end;
    }
    if (text[at] === separator) {
      at += 1;
      if (at < text.length && text[at] !== "\r" && text[at] !== "\n") continue;
      cells.push("");
    }
    if (text[at] === "\r" && text[at + 1] === "\n") at += 1;
    at += 1;
    line += 1;
    endRecord();
  }
  return { status: "ok", records };
}

function broken(line: number, expected: string, found: string): Records {
  return { status: "broken", issue: { line, expected, found } };
}

function quotedCell(text: string, from: number): { cell: string; end: number; lines: number } | null {
  let end = from + 1;
  for (;;) {
    const quote = text.indexOf('"', end);
    if (quote < 0) return null;
    if (text[quote + 1] !== '"') {
      end = quote;
      break;
    }
    end = quote + 2;
  }
  const cell = text.slice(from + 1, end).replaceAll('""', '"');
  return { cell, end: end + 1, lines: cell.split(/\r\n|\r|\n/).length - 1 };
}

function endOfCell(text: string, from: number, separator: string): number {
  let end = from;
  while (end < text.length && text[end] !== separator && text[end] !== "\r" && text[end] !== "\n") end += 1;
  return end;
}
