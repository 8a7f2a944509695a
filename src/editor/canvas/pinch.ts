// Two fingers on the drawing: the paper under each of them stays under it.

import { type Pixel, panned, type Viewport, zoomedAt } from "../scene/viewport.ts";
import type { View } from "../state/session.ts";

export interface Pinch {
  /** Where the fingers were and are on the page, by their ids. */
  readonly before: ReadonlyMap<number, Pixel>;
  readonly after: ReadonlyMap<number, Pixel>;
  /** Upper left corner of the drawing on the page. */
  readonly corner: Pixel;
}

/** The view after two fingers have moved: shifted by their middle, nearer by how much further apart they are. */
export function pinched(viewport: Viewport, { before, after, corner }: Pinch): View | null {
  const [a, b] = before.values();
  const [c, d] = after.values();
  if (!a || !b || !c || !d) return null;
  const [old, middle] = [middleOf(a, b), middleOf(c, d)];
  const moved = { ...viewport, ...panned(viewport, middle[0] - old[0], middle[1] - old[1]) };
  const at: Pixel = [middle[0] - corner[0], middle[1] - corner[1]];
  return zoomedAt(moved, gap(c, d) / Math.max(gap(a, b), 1), at);
}

/** How far apart two places on the screen are, px. */
export function gap(a: Pixel, b: Pixel): number {
  return Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2);
}

function middleOf(a: Pixel, b: Pixel): Pixel {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}
