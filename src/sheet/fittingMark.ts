// The small things on a wall: ledgers, brackets, braces. They are drawn lightly, for they come when the panels stand.

import type { Family } from "../kit/kit.ts";
import type { Mark, Point, Stroke } from "./mark.ts";

const LIGHT: Stroke = { weight: 0.18, ink: "soft" };

/** A fitting at height `y` from `from` to `to`; one without a length has its place at `from`. */
export function fittingMark(
  { family }: { readonly family: Family },
  from: number,
  to: number,
  y: number,
): Mark {
  if (to > from) {
    const box = { x: from, y: y - 0.3, width: to - from, height: 0.6 };
    return { kind: "rect", box, fill: "paper", stroke: LIGHT };
  }
  switch (family) {
    case "brace": // a foot that leans away from the wall
      return closed([
        [from, y - 1],
        [from + 0.9, y + 0.8],
        [from - 0.9, y + 0.8],
      ]);
    case "facade-aligner":
      return closed([
        [from, y - 1],
        [from + 0.7, y],
        [from, y + 1],
        [from - 0.7, y],
      ]);
    default:
      return { kind: "circle", centre: [from, y], radius: 0.5, fill: "paper", stroke: LIGHT };
  }
}

function closed(points: readonly Point[]): Mark {
  return { kind: "polygon", points, fill: "paper", stroke: { weight: 0.25, ink: "ink" } };
}
