// What the choice of one set changed, against filling every interval by itself: as written to a file, part of `set`.

import type { Family } from "../kit/kit.ts";
import type { Mm } from "../units.ts";

/**
 * What the cost of a set is made of. `fixed`, the other pieces to buy at the kit's prices, is not in the cost: where joints
 * move, some ties, pins and wedges more or fewer go along, and the choice does not weigh them.
 */
export interface SetParts {
  readonly set: number;
  readonly handling: number;
  readonly closures: number;
  readonly distinctSizes: number;
  /** Where the objective charges fillers. */
  readonly fillers?: number;
  readonly fixed: number;
}

export interface BeforeAfter {
  /** With every interval filled by itself. */
  readonly before: number;
  /** As chosen. */
  readonly after: number;
}

/** What one pour takes of a code. */
export interface PourCount extends BeforeAfter {
  readonly pour: string;
}

/** What became of one code: every wall panel and closure strip, and whatever else the bills differ in. */
export interface CodeChange {
  readonly code: string;
  readonly family: Family;
  /** Over all pours. */
  readonly placed: BeforeAfter;
  /** What the set has to hold. */
  readonly needed: BeforeAfter;
  /** Of what is to buy, counted as `SetPiece.price` is; null where one has no price. Closures are paid for in `parts`. */
  readonly cost: BeforeAfter | null;
  /** In working order, those that take any. */
  readonly pours: readonly PourCount[];
}

/** Widths of a free interval, left to right on its first face. */
export interface ChangedSequence {
  readonly widths: readonly Mm[];
  /** The place of the closure among them; null without one. */
  readonly closure: number | null;
}

/** A free interval that is filled otherwise than by itself. */
export interface IntervalChange {
  readonly unit: string;
  readonly wall: string;
  /** The faces that share the sequence; the places are on the first. */
  readonly faces: readonly string[];
  readonly from: Mm;
  readonly to: Mm;
  readonly before: ChangedSequence;
  readonly after: ChangedSequence;
  /**
   * What this change saves alone, all others filled by themselves; less than 0 where it costs. Null where either takes more
   * panels than there are.
   */
  readonly alone: number | null;
  /** What the set would cost more with only this one filled as before; null where that takes more panels than there are. */
  readonly undone: number | null;
  /** Why it is not filled as before. */
  readonly because: string;
}

/** Changes of one cause, gathered. */
export interface ChangeCause {
  readonly message: string;
  readonly intervals: number;
  /** On all faces of these intervals, in one pour of each. */
  readonly fillers: number;
  readonly closures: number;
}

export interface SetChanges {
  /** What filling every interval by itself costs. */
  readonly before: SetParts;
  /** In the order of bills. */
  readonly codes: readonly CodeChange[];
  /** By unit, then face, then place. */
  readonly intervals: readonly IntervalChange[];
  /** Most intervals first. */
  readonly causes: readonly ChangeCause[];
}
