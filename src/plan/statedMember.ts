// How is a member of a project read that only the checks ask for: what it says, and what it leaves to the defaults?
//
// `loads` and `concrete` are passed on unread when a project is opened, so that a slip in them keeps nobody from drawing;
// they are read when something is to be checked.

import { type Checker, emptyReport, inside, top } from "../json/checker.ts";
import type { Issue } from "../json/issue.ts";
import type { JsonObject } from "../json/value.ts";

/** `defaults`: the members that the project leaves out. "invalid": every mistake, its path beginning with the member. */
export type StatedAnswer<T> =
  | {
      readonly status: "ok";
      readonly value: T;
      readonly defaults: readonly (keyof T)[];
      readonly warnings: readonly Issue[];
    }
  | { readonly status: "invalid"; readonly issues: readonly Issue[] };

/**
 * Reads the member `name` of a project.
 *
 * @param names - of all that the member may state, in the order in which results list them
 */
export function readStated<T>(
  given: JsonObject,
  name: string,
  { checker, names }: { readonly checker: Checker<T>; readonly names: readonly (keyof T & string)[] },
): StatedAnswer<T> {
  const report = emptyReport();
  const value = checker.read(given, inside(top(report), name));
  if (value === undefined) return { status: "invalid", issues: report.issues };
  return {
    status: "ok",
    value,
    defaults: names.filter((each) => !Object.hasOwn(given, each)),
    warnings: report.warnings,
  };
}
