// The lines of a search over its time: the best so far comes down in steps, what is proven comes up to meet it.

import type { Told } from "./optimiser.ts";

export interface ChartBox {
  readonly width: number;
  readonly height: number;
}

/** Paths of an SVG in the box given. */
export interface Lines {
  readonly best: string;
  readonly bound: string;
  /** What is open between the two. */
  readonly between: string;
  /** Heights of the last of both. */
  readonly ends: { readonly best: number; readonly bound: number };
}

/**
 * Early bounds are far below: the picture shows from the least best to the greatest, and as much again below; a bound under
 * that runs along the foot.
 *
 * @param told - in order of time; null is drawn of none
 */
export function chartLines(told: readonly Told[], { width, height }: ChartBox): Lines | null {
  const last = told.at(-1);
  const [first] = told;
  if (last === undefined || first === undefined) return null;
  const top = told.reduce((most, { best }) => Math.max(most, best), 0);
  const spread = Math.max(top - last.bound, top * LEAST_SPREAD);
  const foot = last.bound - spread * FOOT;
  const span = Math.max(1, last.at - first.at);
  const x = ({ at }: Told) => round((width * (at - first.at)) / span);
  const y = (value: number) => round(height - (height * (Math.max(foot, value) - foot)) / (top - foot));
  const best = steps(told.map((each) => [x(each), y(each.best)]));
  const bound = steps(told.map((each) => [x(each), y(each.bound)]));
  const end = told.length === 1 ? width : x(last);
  const closed = (line: readonly Place[]): readonly Place[] => [...line, [end, line.at(-1)?.[1] ?? 0]];
  return {
    best: pathOf(closed(best)),
    bound: pathOf(closed(bound)),
    between: `${pathOf([...closed(best), ...[...closed(bound)].reverse()])}Z`,
    ends: { best: y(last.best), bound: y(last.bound) },
  };
}

const LEAST_SPREAD = 1e-4; // of the cost: a search that ends at once is a line, not noise
const FOOT = 0.35; // of what is open, below the last bound

type Place = readonly [x: number, y: number];

// A value holds until the next is told.
function steps(places: readonly Place[]): readonly Place[] {
  return places.flatMap(([x, y], k): readonly Place[] => {
    const before = places[k - 1];
    return before === undefined || before[1] === y
      ? [[x, y]]
      : [
          [x, before[1]],
          [x, y],
        ];
  });
}

function pathOf(places: readonly Place[]): string {
  return places.map(([x, y], k) => `${k === 0 ? "M" : "L"}${x} ${y}`).join("");
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
