// A rule of completeness: what must hold, and how the faults of an entry are found. Each becomes one check.

import type { Check, CheckInput } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";
import { faultless, input, notApplicable, notChecked, placeIn, unjudged } from "./judging.ts";

/** What a rule finds: faults, of which none is allowed; or why it cannot be asked, or has nothing to ask of. */
export type Finding =
  | readonly string[]
  | { readonly status: "not-checked" | "not-applicable"; readonly reason: string; readonly value?: number };

export interface WholeRule {
  readonly kind: string;
  /** What must hold. */
  readonly rule: string;
  /** Common practice, without one. */
  readonly source?: string;
  /** Of the value; faults, without one. */
  readonly unit?: string;
  readonly find: (entry: CheckedEntry) => Finding;
  /** Figures it goes by. */
  readonly inputs?: (entry: CheckedEntry) => readonly CheckInput[];
}

export const COMMON_PRACTICE = "common practice, no source";

/** The check of a rule on an entry. */
export function ruleCheck(entry: CheckedEntry, { kind, rule, source, unit, find, inputs }: WholeRule): Check {
  const start = unjudged({
    id: `${entry.name}/${kind}`,
    kind,
    where: placeIn(entry.name),
    unit: unit ?? "faults",
    inputs: inputs?.(entry) ?? [],
    formula: rule,
    source: source ?? COMMON_PRACTICE,
  });
  const found = find(entry);
  if (!("status" in found)) return faultless(start, found);
  const known = found.value === undefined ? start : { ...start, value: found.value };
  return found.status === "not-checked"
    ? notChecked(known, found.reason)
    : notApplicable(known, found.reason);
}

export function nothingToCheck(reason: string): Finding {
  return { status: "not-applicable", reason };
}

export function unknownHere(reason: string, value?: number): Finding {
  return { status: "not-checked", reason, ...(value !== undefined && { value }) };
}

/** A figure of the kit as a rule lists it; nothing where the kit does not give it. */
export function kitFigure(name: string, value: number | undefined, unit: string): readonly CheckInput[] {
  return value === undefined ? [] : [input("", name, value, unit)];
}
