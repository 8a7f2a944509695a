// The part of a straight line that lies in a box of the paper.

import type { Box } from "../box.ts";
import type { Point } from "../mark.ts";

/** Both ends of what is left of the line, or null. @see Liang and Barsky, ACM Transactions on Graphics 3 (1984) 1–22 */
export function clipped(from: Point, to: Point, box: Box): readonly [Point, Point] | null {
  let [start, end] = [0, 1];
  const sides = [
    [from[0] - to[0], from[0] - box.x],
    [to[0] - from[0], box.x + box.width - from[0]],
    [from[1] - to[1], from[1] - box.y],
    [to[1] - from[1], box.y + box.height - from[1]],
  ] as const;
  for (const [step, room] of sides) {
    if (step === 0 && room < 0) return null;
    if (step < 0) start = Math.max(start, room / step);
    if (step > 0) end = Math.min(end, room / step);
  }
  if (start >= end) return null;
  const at = (share: number): Point => [
    from[0] + (to[0] - from[0]) * share,
    from[1] + (to[1] - from[1]) * share,
  ];
  return [at(start), at(end)];
}

/** What two boxes share, or null. */
export function shared(a: Box, b: Box): Box | null {
  const [x, y] = [Math.max(a.x, b.x), Math.max(a.y, b.y)];
  const width = Math.min(a.x + a.width, b.x + b.width) - x;
  const height = Math.min(a.y + a.height, b.y + b.height) - y;
  return width > 0 && height > 0 ? { x, y, width, height } : null;
}
