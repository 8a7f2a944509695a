// Does a JSON value have the shape it should have? Small checkers that combine into larger ones.
//
//   const wall = object("a wall", {
//     id: required(text({ least: 1, greatest: 64 })),
//     thickness: required(number({ least: 20, greatest: 2000, unit: "mm" })),
//     justify: optional(oneOf("centre", "left", "right"), "centre"),
//   });
//   const report = emptyReport();
//   const value = wall.read(json, top(report));   // undefined exactly when it reported an issue
//
// A checker goes on after a mistake, so that one reading reports them all (up to 50). Members of objects are in
// `members.ts`. Checkers recurse as deep as they are written, never as deep as the file is.

import { describeFound, formatPath, type Issue, MAX_ISSUES } from "./issue.ts";
import { bareObject, isObject, type Json, type JsonObject } from "./value.ts";

/** Collects what the checkers find; at most one issue per path, and at most 50 of each sort. */
export interface Report {
  readonly issues: Issue[];
  readonly warnings: Issue[];
}

/** Where in the file a value stands. */
export interface Place {
  readonly report: Report;
  readonly parent: Place | null;
  readonly key: string | number;
}

export interface Checker<T> {
  /** What belongs there, as a noun phrase for a message. */
  readonly expected: string;
  /** The checked value, or undefined exactly when an issue was reported. */
  readonly read: (value: Json, place: Place) => T | undefined;
}

/** What a checker yields. */
export type Checked<C> = C extends Checker<infer T> ? T : never;

/** A report with nothing in it, or with the issues a parser found already. */
export function emptyReport(issues: readonly Issue[] = []): Report {
  return { issues: [...issues], warnings: [] };
}

/** The place of the file itself. */
export function top(report: Report): Place {
  return { report, parent: null, key: "" };
}

/** The place of a member or of an item of a list. */
export function inside(place: Place, key: string | number): Place {
  return { report: place.report, parent: place, key };
}

/** Reports an issue at a place. Gives undefined, so that a checker can return it. */
export function fail(place: Place, expected: string, found: Json | undefined): undefined {
  add(place.report.issues, place, { expected, found: describeFound(found) });
}

/** As {@link fail}, with words of its own for what was found: "a wall of 0 mm". */
export function failSaying(place: Place, expected: string, found: string): undefined {
  add(place.report.issues, place, { expected, found });
}

/** Reports something the reader can live with. */
export function warn(place: Place, expected: string, found: Json | undefined): void {
  add(place.report.warnings, place, { expected, found: describeFound(found) });
}

function add(to: Issue[], place: Place, issue: Omit<Issue, "path">): void {
  if (to.length >= MAX_ISSUES) return;
  const path = pathOf(place);
  if (!to.some((other) => other.path === path)) to.push({ path, ...issue });
}

function pathOf(place: Place): string {
  const keys: (string | number)[] = [];
  for (let at = place; at.parent !== null; at = at.parent) keys.push(at.key);
  return formatPath(keys.reverse());
}

export interface NumberLimits {
  readonly least?: number;
  readonly greatest?: number;
  /** Only whole numbers. */
  readonly whole?: boolean;
  /** Said in messages: "mm". */
  readonly unit?: string;
}

/** A finite number within limits, both included. Gives 0 for −0. */
export function number(limits: NumberLimits = {}): Checker<number> {
  const { least, greatest, whole = false } = limits;
  const expected = numberExpected(limits);
  return {
    expected,
    read: (value, place) => {
      const fits =
        typeof value === "number" &&
        Number.isFinite(value) &&
        (!whole || Number.isSafeInteger(value)) &&
        value >= (least ?? value) &&
        value <= (greatest ?? value);
      return fits ? value + 0 : fail(place, expected, value);
    },
  };
}

function numberExpected({ least, greatest, whole, unit }: NumberLimits): string {
  const range =
    least !== undefined && greatest !== undefined
      ? ` from ${least} to ${greatest}`
      : least !== undefined
        ? ` of at least ${least}`
        : greatest !== undefined
          ? ` of at most ${greatest}`
          : "";
  return `a ${whole ? "whole " : ""}number${range}${unit === undefined ? "" : ` ${unit}`}`;
}

export interface TextLimits {
  /** Said in messages: "an id". Default "a text". */
  readonly what?: string;
  /** Least and greatest count of characters (UTF-16 units). */
  readonly least?: number;
  readonly greatest: number;
  /** Characters that may not occur, with their words: `{ pattern: /\//, words: "without /" }`. No `g` or `y` flag. */
  readonly not?: { readonly pattern: RegExp; readonly words: string };
}

/** A string within limits of length. */
export function text({ what = "a text", least = 0, greatest, not }: TextLimits): Checker<string> {
  const size = least > 0 ? `${least} to ${greatest} characters` : `up to ${greatest} characters`;
  const expected = `${what} of ${size}${not === undefined ? "" : ` ${not.words}`}`;
  return {
    expected,
    read: (value, place) => {
      if (typeof value !== "string" || value.length < least || value.length > greatest) {
        return fail(place, expected, value);
      }
      return not?.pattern.test(value) ? fail(place, expected, value) : value;
    },
  };
}

/** true or false. */
export const truth: Checker<boolean> = {
  expected: "true or false",
  read: (value, place) => (typeof value === "boolean" ? value : fail(place, "true or false", value)),
};

/** One of the given words or numbers. */
export function oneOf<const L extends string | number>(...literals: readonly L[]): Checker<L> {
  const words = literals.map((literal) => JSON.stringify(literal));
  const expected = words.length < 2 ? words.join() : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
  return {
    expected,
    read: (value, place) => literals.find((literal) => literal === value) ?? fail(place, expected, value),
  };
}

export interface ListLimits {
  /** Said in messages: "a list of walls". */
  readonly what: string;
  readonly least?: number;
  readonly greatest: number;
}

/** A list of items of one kind. A list that is too long is refused before any of its items is looked at. */
export function list<T>(item: Checker<T>, { what, least = 0, greatest }: ListLimits): Checker<readonly T[]> {
  const count = least > 0 ? `from ${least} to ${greatest}` : `up to ${greatest}`;
  const expected = `${what} (${count})`;
  return {
    expected,
    read: (value, place) => {
      if (!Array.isArray(value) || value.length < least || value.length > greatest) {
        return fail(place, expected, value);
      }
      return all(value.map((each: Json, index) => item.read(each, inside(place, index))));
    },
  };
}

/** A list of a fixed count of items, each with its own checker: `pair("a point [x, y]", mm, mm)`. */
export function pair<A, B>(
  expected: string,
  first: Checker<A>,
  second: Checker<B>,
): Checker<readonly [A, B]> {
  return {
    expected,
    read: (value, place) => {
      if (!Array.isArray(value) || value.length !== 2) return fail(place, expected, value);
      const a = first.read(value[0], inside(place, 0));
      const b = second.read(value[1], inside(place, 1));
      return a === undefined || b === undefined ? undefined : [a, b];
    },
  };
}

/** An object used as a table: any name, values of one kind. The result has no prototype. */
export function table<T>(
  expected: string,
  name: Checker<string>,
  item: Checker<T>,
): Checker<{ readonly [name: string]: T }> {
  return {
    expected,
    read: (value, place) => {
      if (!isObject(value)) return fail(place, expected, value);
      const result = bareObject<T>();
      let isSound = true;
      for (const [key, each] of Object.entries(value)) {
        const at = inside(place, key);
        const checkedName = name.read(key, at);
        const read = item.read(each, at);
        if (checkedName === undefined || read === undefined) isSound = false;
        else result[checkedName] = read;
      }
      return isSound ? result : undefined;
    },
  };
}

/** An object passed on without looking into it. */
export const anyObject: Checker<JsonObject> = {
  expected: "an object",
  read: (value, place) => (isObject(value) ? value : fail(place, "an object", value)),
};

/** A text or an object, each with its own checker: the first for a string, the second for everything else. */
export function textOr<A extends string, B>(ifText: Checker<A>, otherwise: Checker<B>): Checker<A | B> {
  const expected = `${ifText.expected} or ${otherwise.expected}`;
  return {
    expected,
    read: (value, place) => {
      if (typeof value === "string") return ifText.read(value, place);
      return isObject(value) ? otherwise.read(value, place) : fail(place, expected, value);
    },
  };
}

/** Goes on from a checked value: `next` gives the final value, or reports with {@link fail} and gives undefined. */
export function andThen<A, B>(
  checker: Checker<A>,
  next: (value: A, place: Place) => B | undefined,
): Checker<B> {
  return {
    expected: checker.expected,
    read: (value, place) => {
      const read = checker.read(value, place);
      return read === undefined ? undefined : next(read, place);
    },
  };
}

function all<T>(values: readonly (T | undefined)[]): readonly T[] | undefined {
  const read = values.filter((value) => value !== undefined);
  return read.length === values.length ? read : undefined;
}
