// Where the faces of a square plan are, found without following any outline: by cutting the plan along all sides of its
// bodies into cells and looking on which side of each cut there is concrete.

import type { Wall } from "../../src/plan/project.ts";
import { bodyRectangles } from "./orthogonalPlan.ts";

export interface FacePlaces {
  /** Places with concrete on one side only, ascending, mm of the plan. */
  readonly x: readonly number[];
  readonly y: readonly number[];
}

export function facePlaces(walls: readonly Wall[]): FacePlaces {
  const bodies = bodyRectangles(walls);
  const xs = ascending(bodies.flatMap(([a, , b]) => [a, b]));
  const ys = ascending(bodies.flatMap(([, a, , b]) => [a, b]));
  const isFilled = (x: number, y: number) =>
    bodies.some(([x1, y1, x2, y2]) => x1 < x && x < x2 && y1 < y && y < y2);
  const middles = (places: readonly number[]) => places.slice(1).map((place, k) => (place + places[k]!) / 2);
  const changes = (
    places: readonly number[],
    others: readonly number[],
    at: (a: number, b: number) => boolean,
  ) =>
    places.filter((place) =>
      middles(others).some((other) => at(place - 0.25, other) !== at(place + 0.25, other)),
    );
  return {
    x: changes(xs, ys, isFilled),
    y: changes(ys, xs, (y, x) => isFilled(x, y)),
  };
}

function ascending(places: readonly number[]): number[] {
  return [...new Set(places)].sort((a, b) => a - b);
}
