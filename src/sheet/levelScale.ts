// Heights above the floor at the left of a row of walls, each with a tick at its true height.

import type { Mm } from "../units.ts";
import type { Mark } from "./mark.ts";
import { FINE, THIN } from "./pieceMark.ts";
import { spreadOut } from "./spread.ts";

export interface Level {
  readonly height: Mm;
  /** Told from the others by heavier figures. */
  readonly isStrong: boolean;
}

/** Paper that one figure takes, mm. */
const PITCH = 2.9;

/**
 * The levels, the highest first in the order given; figures that would meet are moved apart.
 *
 * @param at - left end of the walls, their floor and the upper edge of the tallest, mm of paper
 */
export function levelScale(
  levels: readonly Level[],
  at: { readonly left: number; readonly floor: number; readonly head: number; readonly scale: number },
): readonly Mark[] {
  const { left, floor, head, scale } = at;
  const items = levels.map((level) => ({ ...level, wish: floor - level.height / scale, width: PITCH }));
  return spreadOut(items, head - 1.5, floor + 1.5).flatMap(
    ([{ height, isStrong, wish }, y]): readonly Mark[] => [
      {
        kind: "text",
        at: [left - 3.2, y + 1.25],
        text: `${height}`,
        height: 2.5,
        weight: isStrong ? 600 : 400,
        ink: "ink",
        anchor: "end",
      },
      {
        kind: "polyline",
        points: [
          [left - 2.8, y],
          [left - 1.9, y],
          [left - 0.6, wish],
        ],
        stroke: isStrong ? FINE : THIN,
      },
    ],
  );
}
