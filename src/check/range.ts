// Is an input one for which a formula holds? Outside its range a formula gives no figure, only the range.

import { roundSignificant } from "../units.ts";

/** An input with the range in which a formula takes it, both ends included. */
export interface Bounds {
  /** In words, to stand after "the": "slab thickness". */
  readonly input: string;
  readonly least: number;
  readonly greatest: number;
  readonly unit: string;
}

/** An input outside its range, with that range: the answer in place of a figure. */
export interface Refusal extends Bounds {
  readonly status: "refused";
  readonly value: number;
}

export interface Computed<V> {
  readonly status: "computed";
  readonly value: V;
}

/** The figure, or why there is none. */
export type Answer<V> = Computed<V> | Refusal;

/** The first input that is outside its range, or null. NaN is outside every range. */
export function refusalOf(...inputs: readonly (readonly [value: number, bounds: Bounds])[]): Refusal | null {
  for (const [value, bounds] of inputs) {
    if (!(value >= bounds.least && value <= bounds.greatest)) return { status: "refused", value, ...bounds };
  }
  return null;
}

export function computed<V>(value: V): Computed<V> {
  return { status: "computed", value };
}

/** In figures as people write them. "the prop's extension is 3600 mm; the figure holds from 2000 to 3500 mm" */
export function refusalText({ input, value, least, greatest, unit }: Refusal): string {
  const behind = unit === "" ? "" : ` ${unit}`;
  const [is, from, to] = [value, least, greatest].map(written);
  return `the ${input} is ${is}${behind}; the figure holds from ${from} to ${to}${behind}`;
}

// A figure that was worked out has digits to no end; one that is none at all is said as it is.
function written(value: number): number {
  return Number.isFinite(value) ? roundSignificant(value) : value;
}
