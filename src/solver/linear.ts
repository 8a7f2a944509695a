// What a linear solver is asked and what it answers, whichever library stands behind it.
//
// A model is columns (unknowns with a cost and bounds, some of them whole numbers) and rows (sums of them with bounds). What
// comes back is never believed: plans are counted again and bounds proven in whole numbers by those who ask.

/** A model, column by column: the entries of column j stand from `starts[j]` to before `starts[j + 1]`. Least cost is sought. */
export interface LinearModel {
  readonly cost: Float64Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** 1 where the column is a whole number; null: none is. */
  readonly isWhole: Int32Array | null;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  readonly starts: Int32Array;
  readonly rows: Int32Array;
  readonly values: Float64Array;
}

export interface SolveLimits {
  /** Most simplex steps of the search for whole numbers: unlike seconds, the same on every machine. */
  readonly steps?: number;
  /** The search may end once cost and bound are no further apart. */
  readonly gap?: number;
  /** Asked now and then; true ends the search with what there is. */
  readonly isStopped?: () => boolean;
}

export interface Solved {
  /** "limit": steps ran out. "stopped": {@link SolveLimits.isStopped} said so. */
  readonly status: "optimal" | "infeasible" | "limit" | "stopped" | "failed";
  /** The best answer found; null without one. Whole numbers come with the usual dust behind the point. */
  readonly values: Float64Array | null;
  /** What one more unit of each row's bound is worth, of a model without whole columns; null otherwise. */
  readonly duals: Float64Array | null;
}

/** The same model and limits give the same answer, unless it was stopped. */
export type Solver = (model: LinearModel, limits?: SolveLimits) => Solved;
