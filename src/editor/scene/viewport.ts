// Which part of the plan is on the screen, and the way from plan millimetres to pixels and back.
//
//   plan: x right, y up, mm        screen: x right, y down, px from the upper left corner of the drawing

import type { Position } from "../../plan/project.ts";
import { type Box, boxAround } from "../box.ts";
import type { View } from "../state/session.ts";

export interface Viewport extends View {
  /** Of the drawing, px. */
  readonly width: number;
  readonly height: number;
}

/** Room left free along the edges when the whole plan is shown, px. */
export interface Insets {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/** Pixels for one millimetre, at the furthest and at the nearest. */
export const LEAST_SCALE = 0.004;
export const GREATEST_SCALE = 4;

export type Pixel = readonly [x: number, y: number];

export function toScreen({ centre, scale, width, height }: Viewport, [x, y]: Position): Pixel {
  return [width / 2 + (x - centre[0]) * scale, height / 2 - (y - centre[1]) * scale];
}

export function toPlan({ centre, scale, width, height }: Viewport, [x, y]: Pixel): Position {
  return [centre[0] + (x - width / 2) / scale, centre[1] - (y - height / 2) / scale];
}

/** As {@link toScreen}, on the middle of a pixel, so that lines along the axes are crisp. */
export function toPixel(viewport: Viewport, place: Position): Pixel {
  const [x, y] = toScreen(viewport, place);
  return [Math.round(x - 0.5) + 0.5, Math.round(y - 0.5) + 0.5];
}

/** The part of the plan in view, `margin` px wider on all sides. */
export function visibleBox(viewport: Viewport, margin = 0): Box {
  const { width, height } = viewport;
  return boxAround([
    toPlan(viewport, [-margin, -margin]),
    toPlan(viewport, [width + margin, height + margin]),
  ]);
}

/** The view `factor` times nearer, with the place under `at` staying where it is. */
export function zoomedAt(viewport: Viewport, factor: number, at: Pixel): View {
  const scale = Math.min(GREATEST_SCALE, Math.max(LEAST_SCALE, viewport.scale * factor));
  const [x, y] = toPlan(viewport, at);
  const { width, height } = viewport;
  return { scale, centre: [x - (at[0] - width / 2) / scale, y + (at[1] - height / 2) / scale] };
}

/** The view moved with the hand, px. */
export function panned({ centre, scale }: View, dx: number, dy: number): View {
  return { scale, centre: [centre[0] - dx / scale, centre[1] + dy / scale] };
}

/** The view that shows all of a box; null where there is nothing to show or no room to show it in. */
export function fitted(
  box: Box,
  { width, height }: Pick<Viewport, "width" | "height">,
  insets: Insets,
): View | null {
  const [wide, high] = [width - insets.left - insets.right, height - insets.top - insets.bottom];
  const [across, upright] = [box.maxX - box.minX, box.maxY - box.minY];
  if (!(across >= 0 && upright >= 0) || wide <= 0 || high <= 0) return null;
  const wanted = Math.min(wide / Math.max(across, 1), high / Math.max(upright, 1));
  const scale = Math.min(GREATEST_SCALE, Math.max(LEAST_SCALE, wanted));
  const [x, y] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  return {
    scale,
    centre: [x - (insets.left - insets.right) / 2 / scale, y + (insets.top - insets.bottom) / 2 / scale],
  };
}
