// The checks of a project, as written to a file: the format "panelwright-check", version 1.
//
// The order of the members is the order in the file. A check that could not be made says why; it never passes for one
// that was.

import type { Concrete } from "../plan/concrete.ts";
import type { Loads } from "../plan/loads.ts";
import type { Position } from "../plan/project.ts";
import type { Celsius, Hour, KiloPascal, MegaPascal, Mm } from "../units.ts";

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
  /** Empty where the check is of no room, no piece, no code. */
  readonly room: string;
  readonly piece: string;
  readonly code: string;
  /** null: the check is of the whole unit. */
  readonly at: Position | null;
  readonly face?: string;
  /** Along the face, and above the floor. */
  readonly x?: Mm;
  readonly z?: Mm;
  readonly opening?: string;
}

export interface Check {
  readonly id: string;
  /** What is checked, one word for all checks of a sort: "tie-load". */
  readonly kind: string;
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

/** Pressure over the height of one entry's placing: points from the floor to the surface, straight lines between. */
export interface PressureTable {
  readonly unit: string;
  readonly model: string;
  readonly greatest: KiloPascal;
  readonly points: readonly { readonly z: Mm; readonly pressure: KiloPascal }[];
}

/** Who must carry by two: a piece of the bill over the limit of one person. */
export interface TwoPersonPiece {
  readonly unit: string;
  readonly code: string;
  readonly mass: number;
  readonly quantity: number;
}

/** The slab at one reading of its log. */
export interface MaturityPoint {
  readonly hour: Hour;
  readonly temperature: Celsius;
  /** Over the project's datum, °C·h. */
  readonly maturity: number | null;
  /** Equivalent age at 20 °C. */
  readonly age: Hour | null;
  /** Estimated, less the margin of an estimate; null where nothing holds. */
  readonly strength: MegaPascal | null;
}

/** When the slabs of one entry have the strength at which their panels may come down, as estimated from the log. */
export interface StrikingPrediction {
  readonly unit: string;
  readonly needed: MegaPascal | null;
  /** Measured, or estimated at the hour of striking less the margin of an estimate. */
  readonly strength: MegaPascal | null;
  /** After placing; null: `note` says why. */
  readonly hour: Hour | null;
  /** false: after the end of the log, as if the slab stayed as cold as the log ever was. */
  readonly isLogged: boolean;
  /** From then to the hour of striking; negative: struck too early. */
  readonly margin: Hour | null;
  readonly note: string;
}

/** What the striking rules say of one soffit, side by side. Hours, or a strength in MPa; null: the rule says nothing. */
export interface StrikingRow {
  readonly unit: string;
  readonly room: string;
  readonly rule: string;
  readonly part: string;
  readonly hours: number | null;
  readonly strength: number | null;
  readonly source: string;
  /** Why it says nothing, or within which limits it says something. */
  readonly note: string;
}

/** One step of shoring: what each level carries behind it, in slabs. Levels upward from 1. */
export interface ShoringRow {
  readonly step: string;
  readonly slabs: readonly number[];
  readonly shores: readonly number[];
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
  readonly concrete: Concrete;
  /** Members of `concrete` that the project leaves out. */
  readonly concreteDefaults: readonly (keyof Concrete)[];
  readonly totals: CheckTotals;
  readonly pressure: readonly PressureTable[];
  readonly twoPersons: readonly TwoPersonPiece[];
  readonly maturity: readonly MaturityPoint[];
  readonly predictions: readonly StrikingPrediction[];
  readonly striking: readonly StrikingRow[];
  readonly shoring: readonly ShoringRow[];
  readonly checks: readonly Check[];
}
