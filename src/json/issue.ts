// One thing wrong with a file, as data: where in it, what belongs there, what was found instead.
//
// A file may be hostile, so everything quoted from it is shortened and stripped of characters that would move the
// cursor, turn the line round or forge a second message.

import { isObject, type Json } from "./value.ts";

export interface Issue {
  /** Members and places from the top of the file, as `units[0].walls[3].thickness`; "" = the file itself. */
  readonly path: string;
  /** What belongs there, as a noun: "a number from 20 to 2000 mm". */
  readonly expected: string;
  /** What was found, already shortened. */
  readonly found: string;
}

/** The most issues one reading collects. */
export const MAX_ISSUES = 50;

const QUOTED_LENGTH = 60;
/** A path deeper or wordier than this is a file made to be a nuisance; its end says most. */
const PATH_LENGTH = 300;

/** One sentence on one line: `units[0].walls[3].thickness: expected a number from 20 to 2000 mm, found 5.` */
export function formatIssue(issue: Issue): string {
  const path = issue.path === "" ? "the file" : visible(issue.path);
  return `${path}: expected ${visible(issue.expected)}, found ${visible(shortened(issue.found, 2 * QUOTED_LENGTH))}.`;
}

/** Says what a value is, in at most about 60 characters: `"1200"`, `[0, 12.5]`, `a list of 9`, `nothing` where it is absent. */
export function describeFound(value: Json | undefined): string {
  if (value === undefined) return "nothing";
  if (typeof value === "string") return quoted(value);
  if (Array.isArray(value)) return describeList(value);
  if (isObject(value)) return `an object with ${describeMembers(value)}`;
  return String(value);
}

/** Text from a file between double quotes, shortened and with its control characters escaped. */
export function quoted(text: string): string {
  return visible(JSON.stringify(shortened(text, QUOTED_LENGTH)));
}

/** Joins the keys on the way from the top of the file: names by dots, places in lists by brackets. */
export function formatPath(keys: readonly (string | number)[]): string {
  let path = "";
  for (const key of keys) {
    if (typeof key === "number") path += `[${key}]`;
    else if (!/^[\p{L}_$][\p{L}\p{N}_$-]{0,59}$/u.test(key)) path += `[${quoted(key)}]`;
    else path += path === "" ? key : `.${key}`;
  }
  return path.length > PATH_LENGTH ? `…${path.slice(-PATH_LENGTH)}` : path;
}

function describeList(items: readonly Json[]): string {
  if (items.length === 0) return "an empty list";
  // A point says more when shown; at most three numbers stay well under the length of a quotation.
  const isShown = items.length <= 3 && items.every((item) => typeof item === "number");
  return isShown ? `[${items.join(", ")}]` : `a list of ${items.length}`;
}

function describeMembers(value: Json & object): string {
  let first: string | undefined;
  let count = 0;
  for (const key in value) {
    first ??= key;
    count++;
  }
  if (first === undefined) return "no members";
  return count === 1 ? `the member ${quoted(first)}` : `the member ${quoted(first)} and ${count - 1} more`;
}

function shortened(text: string, length: number): string {
  return text.length > length ? `${text.slice(0, length - 1)}…` : text;
}

/** Writes control, format, line-breaking and broken characters as escapes. */
function visible(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (character) => {
    const code = character.codePointAt(0) ?? 0;
    return code > 0xffff ? `\\u{${code.toString(16)}}` : `\\u${code.toString(16).padStart(4, "0")}`;
  });
}
