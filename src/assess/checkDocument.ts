// The checks of a project, as written to a file: the format "panelwright-check", version 1.
//
// The order of the members is the order in the file. A check that could not be made says why; it never passes for one
// that was.

import type { Loads } from "../plan/loads.ts";
import type { Position } from "../plan/project.ts";

/** "not-checked": something is missing or out of range. "not-applicable": there is nothing to check. */
export type CheckStatus = "within" | "over" | "not-checked" | "not-applicable";

/** One figure or word that went into a check, under the sign its formula uses and in the unit it takes there. */
export interface CheckInput {
  readonly sign: string;
  readonly name: string;
  readonly value: number | string;
  /** Empty where there is none. */
  readonly unit: string;
}

export interface CheckPlace {
  /** The unit, with a number behind from its second storey on: "A@2". */
  readonly unit: string;
  readonly room: string;
  readonly piece: string;
  readonly code: string;
  readonly at: Position;
}

export interface Check {
  readonly id: string;
  readonly where: CheckPlace;
  /** null where it cannot be computed. */
  readonly value: number | null;
  readonly limit: number | null;
  /** Value over limit. */
  readonly utilisation: number | null;
  /** Of value and limit. */
  readonly unit: string;
  readonly inputs: readonly CheckInput[];
  readonly formula: string;
  /** Standard and edition of each figure, or from where it is remembered. */
  readonly source: string;
  readonly status: CheckStatus;
  /** Why there is no verdict; absent where there is one. */
  readonly reason?: string;
}

export interface CheckTotals {
  readonly within: number;
  readonly over: number;
  readonly notChecked: number;
  readonly notApplicable: number;
}

export interface CheckDocument {
  readonly format: "panelwright-check";
  readonly version: 1;
  readonly project: string;
  /** To be printed with every result. */
  readonly cautions: readonly string[];
  /** What the checks take for granted. */
  readonly assumptions: readonly string[];
  readonly loads: Loads;
  /** Members of `loads` that the project leaves out. */
  readonly defaults: readonly (keyof Loads)[];
  readonly totals: CheckTotals;
  readonly checks: readonly Check[];
}
