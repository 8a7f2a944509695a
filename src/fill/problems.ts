// Collects the problems of one unit in the order in which they are met, which is the order of the geometry.

import type { Mm } from "../units.ts";
import type { Problem, Severity } from "./result.ts";

export interface ProblemLog {
  /** Files a problem and gives its index, for the `unfilled` rectangles that point at it. */
  readonly add: (severity: Severity, kind: string, message: string, where?: Problem["where"]) => number;
  /** The same, once for each `key`: a cause that many places share is one problem. */
  readonly addOnce: (key: string, problem: Problem) => number;
  readonly list: readonly Problem[];
}

export function createProblemLog(): ProblemLog {
  const list: Problem[] = [];
  const known = new Map<string, number>();
  return {
    list,
    add(severity, kind, message, where = {}) {
      list.push({ severity, kind, message, where });
      return list.length - 1;
    },
    addOnce(key, problem) {
      const before = known.get(key);
      if (before !== undefined) return before;
      list.push(problem);
      known.set(key, list.length - 1);
      return list.length - 1;
    },
  };
}

/** "1 place", "3 places". English only: problems are worded in one language for the file. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** A length in a sentence: whole millimetres bare, anything else to one decimal. */
export function lengthText(length: Mm): string {
  return Number.isInteger(length) ? String(length) : (Math.round(length * 10) / 10).toString();
}

/** "a", "a and b", "a, b and c". */
export function listText(items: readonly string[]): string {
  if (items.length <= 1) return items[0] ?? "";
  return `${items.slice(0, -1).join(", ")} and ${items[items.length - 1]}`;
}
