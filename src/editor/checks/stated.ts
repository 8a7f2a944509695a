// What becomes of loads and concrete when a figure in their forms is changed: taken, waiting for more, or refused.
//
// Both are kept in the project as they came, so a member this version does not know stays where it is. A choice that asks
// for further figures waits with them, and is taken as one step when all are there.

import type { Issue } from "../../json/issue.ts";
import type { Json, JsonObject } from "../../json/value.ts";
import { readConcrete } from "../../plan/concrete.ts";
import { readLoads } from "../../plan/loads.ts";

/** The two members of a project that the checks ask for. */
export type StatedName = "loads" | "concrete";

/** `next` is the member as it then is. */
export type Tried =
  | { readonly status: "taken"; readonly next: JsonObject }
  /** Names of what it still asks for. */
  | { readonly status: "waiting"; readonly next: JsonObject; readonly lacks: readonly string[] }
  | { readonly status: "refused"; readonly issue: Issue };

/** Tries a change of `given`; a value undefined takes the member out, which puts its default in its place. */
export function tried(
  name: StatedName,
  given: JsonObject,
  change: { readonly [member: string]: Json | undefined },
): Tried {
  const next = withChange(given, change);
  const read = name === "loads" ? readLoads(next) : readConcrete(next);
  if (read.status === "ok") return { status: "taken", next };
  const lacks: string[] = [];
  for (const issue of read.issues) {
    const member = issue.path.slice(name.length + 1);
    // A mistake the file came with elsewhere is no reason to refuse mending this one.
    const isOwn = Object.keys(change).some((each) => member === each || member.startsWith(`${each}.`));
    const isAbsent = !Object.hasOwn(next, member);
    if (isAbsent && issue.found === "nothing") lacks.push(member);
    else if (isOwn) return { status: "refused", issue };
  }
  return { status: "waiting", next, lacks };
}

function withChange(given: JsonObject, change: { readonly [member: string]: Json | undefined }): JsonObject {
  const kept = Object.entries(given).filter(([member]) => !Object.hasOwn(change, member));
  const set = Object.entries(change).flatMap(([member, value]) =>
    value === undefined ? [] : [[member, value] as const],
  );
  return Object.fromEntries([...kept, ...set]);
}
