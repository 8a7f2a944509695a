// The part of a line on the screen that is in view.

import type { Pixel } from "./viewport.ts";

export interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * The part of a line within the drawing less a margin, as shares of its length; null where none of it is.
 *
 * @param margin - px along all edges
 */
export function visibleShare(
  [from, to]: readonly [Pixel, Pixel],
  { width, height }: Size,
  margin: number,
): readonly [start: number, end: number] | null {
  let [start, end] = [0, 1];
  const sides: readonly (readonly [origin: number, step: number, greatest: number])[] = [
    [from[0], to[0] - from[0], width - margin],
    [from[1], to[1] - from[1], height - margin],
  ];
  for (const [origin, step, greatest] of sides) {
    if (step === 0) {
      if (origin < margin || origin > greatest) return null;
      continue;
    }
    const [p, q] = [(margin - origin) / step, (greatest - origin) / step];
    start = Math.max(start, Math.min(p, q));
    end = Math.min(end, Math.max(p, q));
  }
  return start <= end ? [start, end] : null;
}
