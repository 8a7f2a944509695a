// What does this JSON text hold, and where is it broken?
//
// A reader of our own, because the language's JSON.parse takes the last of two members of one name, lets a member
// reach the prototype of what it is copied to, words its errors differently from machine to machine and names no line.
// Recursion is bounded by MAX_DEPTH, memory by MAX_LENGTH and MAX_VALUES; time is linear in the length of the text.

import { formatPath, type Issue, MAX_ISSUES, quoted } from "./issue.ts";
import { fragmentAt, lineColumn, type Scan, skipSpace, takeNumber, takeText } from "./scan.ts";
import { bareObject, isReservedName, type Json } from "./value.ts";

/** The most characters (UTF-16 units) a text may have: 64 MB where it is plain Latin text. */
export const MAX_LENGTH = 64_000_000;
/** How deep lists and objects may stand in one another. */
export const MAX_DEPTH = 64;
/** The most values (numbers, texts, lists, objects …) in one text: about ten units of 20,000 walls. */
export const MAX_VALUES = 2_500_000;

/**
 * "read": the whole text was understood; `issues` are flaws that leave it readable (two members of one name, reserved
 * names, numbers too large, broken characters). "broken": reading ended at the last issue.
 */
export type ParseResult =
  | { readonly status: "read"; readonly value: Json; readonly issues: readonly Issue[] }
  | { readonly status: "broken"; readonly issues: readonly Issue[] };

interface Reading extends Scan {
  readonly keys: (string | number)[];
  readonly issues: Issue[];
  values: number;
  /** Set once the text cannot be followed any further. */
  broken: Issue | null;
}

/** Reads strict JSON, with or without a byte order mark before it. Minus zero is read as 0. */
export function parseJson(text: string): ParseResult {
  if (text.length > MAX_LENGTH) {
    const expected = `a text of at most ${MAX_LENGTH} characters`;
    return { status: "broken", issues: [{ path: "", expected, found: `${text.length} characters` }] };
  }
  const at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  const reading: Reading = { text, at, keys: [], issues: [], values: 0, broken: null };
  const value = readValue(reading);
  skipSpace(reading);
  if (reading.broken === null && reading.at < text.length)
    stop(reading, "nothing after the end of the value");
  if (reading.broken !== null) {
    return { status: "broken", issues: [...reading.issues.slice(0, MAX_ISSUES - 1), reading.broken] };
  }
  return { status: "read", value, issues: reading.issues };
}

const WORDS: readonly (readonly [string, Json])[] = [
  ["true", true],
  ["false", false],
  ["null", null],
];

// Gives null once the text is broken: every caller looks at `broken` before it goes on.
function readValue(reading: Reading): Json {
  skipSpace(reading);
  reading.values++;
  if (reading.values > MAX_VALUES) return stop(reading, `at most ${MAX_VALUES} values in the file`);
  const next = reading.text[reading.at];
  if (next === "{") return readObject(reading);
  if (next === "[") return readList(reading);
  if (next === '"') return readText(reading) ?? null;
  for (const [word, value] of WORDS) {
    if (reading.text.startsWith(word, reading.at)) {
      reading.at += word.length;
      return value;
    }
  }
  const value = takeNumber(reading);
  if (value === null) return stop(reading, "a value");
  if (!Number.isFinite(value)) flaw(reading, "a number below 1.8e308", "a larger one");
  return value + 0; // −0 + 0 is 0
}

function readText(reading: Reading): string | undefined {
  const taken = takeText(reading);
  if (taken.status === "broken") {
    stop(reading, taken.expected);
    return undefined;
  }
  if (/\p{Cs}/u.test(taken.value)) {
    flaw(reading, "a text without half characters (lone surrogates)", quoted(taken.value));
  }
  return taken.value;
}

function readList(reading: Reading): Json {
  if (!enter(reading)) return null;
  const items: Json[] = [];
  const depth = reading.keys.length;
  while (follows(reading, items.length === 0, "]")) {
    reading.keys.push(items.length);
    items.push(readValue(reading));
    reading.keys.length = depth;
  }
  return items;
}

function readObject(reading: Reading): Json {
  if (!enter(reading)) return null;
  const members = bareObject<Json>();
  const depth = reading.keys.length;
  for (let isFirst = true; follows(reading, isFirst, "}"); isFirst = false) {
    skipSpace(reading);
    if (reading.text[reading.at] !== '"') return stop(reading, 'the name of a member, between "');
    const name = readText(reading);
    if (name === undefined) return null;
    skipSpace(reading);
    if (reading.text[reading.at] !== ":") return stop(reading, "a colon after the name of a member");
    reading.at++;
    reading.keys.push(name);
    addMember(reading, members, name);
    reading.keys.length = depth;
  }
  return members;
}

// The first of two members of one name stands; the second is read only to follow the text.
function addMember(reading: Reading, members: { [name: string]: Json }, name: string): void {
  const isReserved = isReservedName(name);
  if (isReserved) flaw(reading, "a member name that is not reserved", quoted(name));
  const isDouble = Object.hasOwn(members, name);
  if (isDouble) flaw(reading, "one member of this name", "a second one");
  const value = readValue(reading);
  if (!isReserved && !isDouble) members[name] = value;
}

function enter(reading: Reading): boolean {
  if (reading.keys.length >= MAX_DEPTH) {
    stop(reading, `at most ${MAX_DEPTH} lists and objects inside one another`);
    return false;
  }
  reading.at++;
  return true;
}

/** Whether another item follows. Takes the comma before it, or the closing bracket. */
function follows(reading: Reading, isFirst: boolean, closing: "]" | "}"): boolean {
  if (reading.broken !== null) return false;
  skipSpace(reading);
  const next = reading.text[reading.at];
  if (next === closing) {
    reading.at++;
    return false;
  }
  if (isFirst) return true;
  if (next !== ",") {
    stop(reading, `a comma or ${closing}`);
    return false;
  }
  reading.at++;
  skipSpace(reading);
  if (reading.text[reading.at] !== closing) return true;
  stop(reading, `no comma before ${closing}`);
  return false;
}

function stop(reading: Reading, expected: string): null {
  const { line, column } = lineColumn(reading.text, reading.at);
  reading.broken ??= {
    path: "",
    expected: `${expected} at line ${line}, column ${column}`,
    found: fragmentAt(reading),
  };
  return null;
}

function flaw(reading: Reading, expected: string, found: string): void {
  if (reading.issues.length < MAX_ISSUES) {
    reading.issues.push({ path: formatPath(reading.keys), expected, found });
  }
}
