// The choice of one panel set for every pour, as counts and whole numbers: which runs there are, what may cover them, what a
// piece costs.
//
//   day 1   unit A                   need of a kind of piece = the greatest need of any day
//   day 2   unit B + unit A mirrored                     set = what that need takes beyond the pieces owned
//
// A run is a free interval; both faces take one sequence, so a column of it is pieces on two faces. A unit has one fill in
// all of its pours, so its runs stand here once and what they take stands once for each day. Amounts are whole numbers of
// the smallest unit any price has ("units"), so that sums and bounds are exact.

import type { Mm } from "../../units.ts";

/** A kind of piece, by its code. */
export interface Kind {
  /** Of one piece beyond those owned, units. */
  readonly price: number;
  readonly owned: number;
  /** As many as there can be, those owned among them; Infinity where any number may be bought. */
  readonly most: number;
}

/** So many pieces of a kind on a day, each time the column is used. */
export interface Use {
  readonly day: number;
  readonly kind: number;
  readonly count: number;
}

/** A width on offer, as it stands on both faces of a run. */
export interface Column {
  readonly width: Mm;
  /** Of handling, over all pours, units. */
  readonly cost: number;
  /** How little it is liked among columns that cost the same: 0 for a standard width. */
  readonly blemish: number;
  readonly uses: readonly Use[];
}

/** A closure that a run may have, at most one. */
export interface Closure {
  readonly width: Mm;
  /** Over all faces and pours, units. */
  readonly cost: number;
}

/** What the runs of a unit, or of some of its walls, may be covered with. */
export interface Offer {
  /** Widest first; each width once. */
  readonly columns: readonly Column[];
  /** Narrowest first. */
  readonly closures: readonly Closure[];
}

/** Runs of one length and offer. */
export interface Run {
  readonly offer: number;
  readonly length: Mm;
  readonly count: number;
}

export interface SetProblem {
  readonly kinds: readonly Kind[];
  readonly days: number;
  /** What else stands on a day, by day and kind: day × kinds + kind. */
  readonly standing: readonly number[];
  readonly offers: readonly Offer[];
  readonly runs: readonly Run[];
  /** For each kind of which there is at least one, units. */
  readonly kindCharge: number;
  /** For each piece beyond the most there can be, units: so dear that a plan has such pieces only if none does without. */
  readonly shortage: number;
  /** What no choice changes, units. */
  readonly constant: number;
  /** Every cost is a multiple of this, units. */
  readonly step: number;
  /** Most distinct widths that a plan may place; absent: any number. */
  readonly mostWidths?: number;
}

/** One way to cover a run: how many of each column, and the place of its closure in the offer, −1 for none. */
export interface Layout {
  readonly counts: readonly number[];
  readonly closure: number;
}

export interface LaidOut {
  readonly layout: Layout;
  /** Of the run's count. */
  readonly times: number;
}

/** The layouts of each run, by its place; their times sum to the run's count. */
export type Plan = readonly (readonly LaidOut[])[];

/** Amounts within proofs are thousandths of a unit. */
export const FINE = 1000;

/** The place of a day and a kind in a list such as `standing`. */
export function placeIn(problem: SetProblem, day: number, kind: number): number {
  return day * problem.kinds.length + kind;
}
