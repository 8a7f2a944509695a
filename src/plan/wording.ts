// How walls and places are named in messages.

import type { Point } from "../geom/point.ts";
import { roundTo } from "../units.ts";
import type { DrawnWall } from "./drawnWall.ts";

/** "wall w1", or "walls w1 and w2" where two are drawn in one place. */
export function wallText(wall: DrawnWall): string {
  const ids = wall.names.map((name) => name.id);
  return ids.length === 1
    ? `wall ${ids[0]}`
    : `walls ${ids.slice(0, -1).join(", ")} and ${ids[ids.length - 1]}`;
}

/** "(1200, 50)", to a tenth of a millimetre. */
export function placeText([x, y]: Point): string {
  return `(${roundTo(x, 1)}, ${roundTo(y, 1)})`;
}

/** The sentence with its first letter large. */
export function sentence(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
