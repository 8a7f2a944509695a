// Puts a linear model together, row by row and column by column.

import type { LinearModel } from "./linear.ts";

/** One entry of a column: the row it stands in and its factor there. */
export type Entry = readonly [row: number, value: number];

export interface ModelBuilder {
  /** @returns the place of the row */
  readonly addRow: (lower: number, upper: number) => number;
  /** @returns the place of the column */
  readonly addColumn: (column: NewColumn) => number;
  readonly columnCount: () => number;
  readonly build: () => LinearModel;
}

interface NewColumn {
  readonly cost: number;
  /** 0 at least. */
  readonly upper?: number;
  readonly isWhole?: boolean;
  /** Each row at most once. */
  readonly entries: readonly Entry[];
}

export function createModelBuilder(): ModelBuilder {
  const cost: number[] = [];
  const upper: number[] = [];
  const whole: number[] = [];
  const rowLower: number[] = [];
  const rowUpper: number[] = [];
  const starts: number[] = [0];
  const rows: number[] = [];
  const values: number[] = [];
  return {
    addRow(low, high) {
      rowLower.push(low);
      rowUpper.push(high);
      return rowLower.length - 1;
    },
    addColumn(column) {
      cost.push(column.cost);
      upper.push(column.upper ?? Number.POSITIVE_INFINITY);
      whole.push(column.isWhole === true ? 1 : 0);
      for (const [row, value] of column.entries) {
        rows.push(row);
        values.push(value);
      }
      starts.push(rows.length);
      return cost.length - 1;
    },
    columnCount: () => cost.length,
    build: () => ({
      cost: Float64Array.from(cost),
      lower: new Float64Array(cost.length),
      upper: Float64Array.from(upper),
      isWhole: whole.includes(1) ? Int32Array.from(whole) : null,
      rowLower: Float64Array.from(rowLower),
      rowUpper: Float64Array.from(rowUpper),
      starts: Int32Array.from(starts),
      rows: Int32Array.from(rows),
      values: Float64Array.from(values),
    }),
  };
}
