// The marks of a JSON text one by one: space, numbers, texts. What they make together is `parse.ts`.

import { quoted } from "./issue.ts";

/** A text and how far it is read. */
export interface Scan {
  readonly text: string;
  at: number;
}

/** A text read to its closing mark, or what was expected at the place where `at` stands. */
export type TakenText =
  | { readonly status: "ok"; readonly value: string }
  | { readonly status: "broken"; readonly expected: string };

/** Goes on to the next character that is not a space, a tab or a line end. */
export function skipSpace(scan: Scan): void {
  while (isSpace(scan.text.charCodeAt(scan.at))) scan.at++;
}

function isSpace(code: number): boolean {
  return code === 0x20 || code === 0x0a || code === 0x0d || code === 0x09;
}

const NUMBER = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y;

/** Takes a number. Null, and nothing taken, where none stands. May be infinite. */
export function takeNumber(scan: Scan): number | null {
  NUMBER.lastIndex = scan.at;
  const digits = NUMBER.exec(scan.text)?.[0];
  if (digits === undefined) return null;
  scan.at += digits.length;
  return Number(digits);
}

const ESCAPES: ReadonlyMap<string, string> = new Map([
  ['"', '"'],
  ["\\", "\\"],
  ["/", "/"],
  ["b", "\b"],
  ["f", "\f"],
  ["n", "\n"],
  ["r", "\r"],
  ["t", "\t"],
]);

/** Takes a text from its opening mark, where `at` stands, to its closing one. */
export function takeText(scan: Scan): TakenText {
  const { text } = scan;
  const parts: string[] = [];
  let from = ++scan.at;
  for (;;) {
    const code = text.charCodeAt(scan.at);
    if (code === 0x22) {
      parts.push(text.slice(from, scan.at++));
      return { status: "ok", value: parts.join("") };
    }
    if (Number.isNaN(code)) return { status: "broken", expected: 'a closing "' };
    if (code < 0x20) return { status: "broken", expected: "no line end or control character inside a text" };
    if (code !== 0x5c) {
      scan.at++;
      continue;
    }
    parts.push(text.slice(from, scan.at));
    const escaped = takeEscape(scan);
    if (escaped === null) return { status: "broken", expected: 'an escape as \\n, \\" or \\u00e9' };
    parts.push(escaped);
    from = scan.at;
  }
}

function takeEscape(scan: Scan): string | null {
  const letter = scan.text[scan.at + 1] ?? "";
  const plain = ESCAPES.get(letter);
  if (plain !== undefined) {
    scan.at += 2;
    return plain;
  }
  const digits = scan.text.slice(scan.at + 2, scan.at + 6);
  if (letter !== "u" || !/^[0-9a-fA-F]{4}$/.test(digits)) return null;
  scan.at += 6;
  return String.fromCharCode(Number.parseInt(digits, 16));
}

/** Line and column of a place in a text, both from 1. A line ends with LF, CR or CR LF. */
export function lineColumn(text: string, at: number): { readonly line: number; readonly column: number } {
  let line = 1;
  let start = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  for (let i = start; i < at; i++) {
    const code = text.charCodeAt(i);
    if (code !== 0x0a && (code !== 0x0d || text.charCodeAt(i + 1) === 0x0a)) continue;
    line++;
    start = i + 1;
  }
  return { line, column: Math.max(1, at - start + 1) };
}

/** The word or character at which reading stands, quoted. */
export function fragmentAt({ text, at }: Scan): string {
  if (at >= text.length) return "the end of the file";
  const ahead = text.slice(at, at + 40);
  const word = /^[\p{L}\p{N}_.+-]+/u.exec(ahead)?.[0];
  return quoted(word ?? String.fromCodePoint(ahead.codePointAt(0) ?? 0));
}
