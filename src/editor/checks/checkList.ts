// The checks as the page lists them: rows without inputs, formula and source, which are handed out one check at a time.

import type { Check, CheckDocument } from "../../assess/checkDocument.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";

/** A check as a row. */
export interface CheckRow extends Omit<Check, "inputs" | "formula" | "source"> {
  /** Its place in the document. */
  readonly index: number;
  /** Walls of the face it is on, joined by "+"; empty where it is on none. */
  readonly walls: string;
}

/** An entry of the fill: a unit at a storey height. */
export interface CheckedUnit {
  /** As in the places of the checks: "A", "A@2". */
  readonly name: string;
  /** Id of the unit in the plan, and what it is called. */
  readonly unit: string;
  readonly label: string;
  /** Where the unit is poured at several heights; else null. */
  readonly clearHeight: Mm | null;
}

export interface CheckList {
  /** Which making it is of: a check is asked for by its place in it. */
  readonly version: number;
  readonly units: readonly CheckedUnit[];
  readonly rows: readonly CheckRow[];
  readonly document: Omit<CheckDocument, "checks">;
}

/** Where a check is to be looked at in the plan. */
export interface Spot {
  readonly unit: string;
  readonly at: Position | null;
  readonly face: FaceSpot | null;
  /** Ids and names as the plan has them; empty where there is none. */
  readonly opening: string;
  readonly room: string;
  /** In the soffit: what is there shows over the plan. */
  readonly overhead: "no" | "piece" | "prop";
}

export interface FaceSpot {
  /** Id as the fill of the unit alone has it. */
  readonly id: string;
  readonly walls: readonly string[];
  readonly level: "face" | "piece" | "tie";
  readonly x: Mm;
  readonly z: Mm;
}

/** One check whole, and where to look at it; null where nothing of the plan shows it. */
export interface CheckDetail {
  readonly check: Check;
  readonly spot: Spot | null;
}
