// What stands where after each step of shoring: slabs with what they carry, and the shores or reshores under them.

import type { ShoringRow } from "../../assess/checkDocument.ts";

export interface ShoringLevel {
  /** Upward from 1. */
  readonly level: number;
  /** Part of one slab's weight the slab carries itself, and what stands under it. */
  readonly slab: number;
  readonly shore: number;
  readonly support: "shores" | "reshores" | "none";
}

export interface ShoringStepName {
  readonly kind: "pour" | "remove" | "reshore";
  readonly level: number;
}

const KINDS = ["pour", "remove", "reshore"] as const;

/** "pour 3" in its parts; null where a step is called otherwise. */
export function stepName(step: string): ShoringStepName | null {
  const [word = "", number = ""] = step.split(" ");
  const kind = KINDS.find((each) => each === word);
  const level = Number(number);
  return kind === undefined || !Number.isInteger(level) || level < 1 ? null : { kind, level };
}

/** The levels after the step at an index, lowest first. The steps say what was put under a slab and taken out. */
export function levelsAfter(rows: readonly ShoringRow[], index: number): readonly ShoringLevel[] {
  const supports: ShoringLevel["support"][] = [];
  for (const { step } of rows.slice(0, index + 1)) {
    const name = stepName(step);
    if (name === null) continue;
    supports[name.level - 1] =
      name.kind === "pour" ? "shores" : name.kind === "reshore" ? "reshores" : "none";
  }
  const row = rows[index];
  if (row === undefined) return [];
  return row.slabs.map((slab, k) => ({
    level: k + 1,
    slab,
    shore: row.shores[k] ?? 0,
    support: supports[k] ?? "none",
  }));
}

export interface Peak {
  readonly ratio: number;
  readonly index: number;
  readonly level: number;
}

/** The greatest of a row of figures and where it first is; null where there is none over nothing. */
export function peakOf(rows: readonly ShoringRow[], of: "slabs" | "shores"): Peak | null {
  let peak: Peak | null = null;
  for (const [index, row] of rows.entries()) {
    for (const [k, ratio] of row[of].entries()) {
      // Figures that differ by binary noise alone are equals.
      if (ratio > (peak?.ratio ?? 0) + 1e-9) peak = { ratio, index, level: k + 1 };
    }
  }
  return peak;
}

/** The levels worth telling of: from the top down to the lowest that still carries more than itself, or on anything. */
export function tellingLevels(levels: readonly ShoringLevel[]): readonly ShoringLevel[] {
  const isTelling = ({ slab, shore, support }: ShoringLevel) =>
    support !== "none" || shore !== 0 || Math.abs(slab - 1) > 1e-9;
  const lowest = levels.findIndex(isTelling);
  if (lowest < 0) return levels.slice(-1).toReversed();
  return levels.slice(Math.max(0, lowest - 1)).toReversed();
}
