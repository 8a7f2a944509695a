// Where the points of a curve stand in their picture: few at the left, many at the right, dear at the top.

import type { CurvePoint } from "../../fill/optimise/tradeOff.ts";

export type CurveName = "widths" | "fillers";

export interface PlottedPoint {
  readonly x: number;
  readonly y: number;
  /** Of what no choice undercuts there. */
  readonly boundY: number;
}

export interface PlotBox {
  readonly width: number;
  readonly height: number;
}

/** The points in the order given. Amounts are drawn from the least bound to the greatest cost. */
export function plotted(
  points: readonly CurvePoint[],
  curve: CurveName,
  { width, height }: PlotBox,
): readonly PlottedPoint[] {
  const counts = points.map((point) => point[curve]);
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  const low = Math.min(...points.map(({ lowerBound }) => lowerBound));
  const high = Math.max(...points.map(({ cost }) => cost));
  const along = (value: number, from: number, to: number) => (to > from ? (value - from) / (to - from) : 0.5);
  const y = (amount: number) => round(height * (1 - along(amount, low, high)));
  return points.map((point) => ({
    x: round(width * along(point[curve], least, most)),
    y: y(point.cost),
    boundY: y(point.lowerBound),
  }));
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

/** By how much each point is dearer than the cheapest of its curve, of that one's cost, percent. */
export function dearerBy(points: readonly CurvePoint[]): readonly number[] {
  const least = Math.min(...points.map(({ cost }) => cost));
  return points.map(({ cost }) => (least > 0 ? (100 * (cost - least)) / least : 0));
}
