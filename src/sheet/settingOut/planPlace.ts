// Where the plan lies on the paper: the largest scale at which it fits with its rows of numbers, and the room left beside it.
//
//   ┌──────────────┬─────┐
//   │ top rows     │     │      rows stand on all four sides; control lines end in bubbles
//   │ ┌──────────┐ │ side│      below and on the left
//   │ │ concrete │ │     │
//   └─┴──────────┴─┴─────┘

import type { Position } from "../../plan/project.ts";
import type { Box } from "../box.ts";
import type { Frame } from "../frame.ts";
import { textWidth } from "../lettering.ts";
import type { Point } from "../mark.ts";
import { PLAN_SCALES } from "../planView.ts";
import { numberText } from "./numberText.ts";
import type { SettingOut } from "./settingOut.ts";

/** Least breadth that the text beside the plan needs, and the paper between them. */
const LEAST_SIDE = 84;
const GAP = 6;

export type Side = "top" | "bottom" | "left" | "right";

/** From the edge of the concrete outward, mm of paper: the lines of the two rows, and where numbers end. */
export interface Rows {
  readonly inner: number;
  readonly outer: number;
  readonly end: number;
}

export interface PlanPlace {
  readonly scale: number;
  readonly at: (place: Position) => Point;
  /** Paper the plan may use, rows and bubbles included. */
  readonly region: Box;
  /** The rectangle round the concrete. */
  readonly concrete: Box;
  readonly rows: Readonly<Record<Side, Rows>>;
  /** Paper for text beside the plan; null where the plan leaves none. */
  readonly side: Box | null;
  /** Whether the plan uses the paper beside the title block. */
  readonly isDeep: boolean;
}

export const BUBBLE = 4.5;
const FIRST = 7.5;
/** Paper over a number: from the line of its row. */
export const OVER = 0.8;

export function planPlace(layout: SettingOut, frame: Frame, hasInner: (side: Side) => boolean): PlanPlace {
  const longestOf = (axis: 0 | 1) => textWidth(numberText(layout.extent[axis]), { height: 3.5, weight: 600 });
  const rowsOf = (side: Side): Rows => {
    const longest = longestOf(side === "top" || side === "bottom" ? 0 : 1);
    const inner = FIRST;
    const outer = hasInner(side) ? inner + OVER + longest + 2 : FIRST;
    return { inner, outer, end: outer + OVER + longest };
  };
  const rows = { top: rowsOf("top"), bottom: rowsOf("bottom"), left: rowsOf("left"), right: rowsOf("right") };
  const bubbles = layout.controls.length > 0 ? 2 * BUBBLE + 3 : 0;
  // A bubble carries its reading beside it on the left.
  const reading = bubbles === 0 ? 0 : longestOf(1);
  const around = {
    width: rows.left.end + rows.right.end + Math.max(bubbles, reading) + 2,
    height: rows.top.end + rows.bottom.end + bubbles + 2,
  };
  const size = [layout.extent[0] - layout.corner[0], layout.extent[1] - layout.corner[1]] as const;
  const { content, beside } = frame;
  for (const scale of PLAN_SCALES) {
    const width = size[0] / scale + around.width;
    const height = size[1] / scale + around.height;
    for (const leaves of [LEAST_SIDE + GAP, 0]) {
      const isDeep = height > content.height;
      const deepest = beside === null ? content.height : content.height + beside.height;
      const widest = isDeep ? (beside?.width ?? 0) : content.width;
      if (width > Math.min(widest, content.width - leaves) || height > deepest) continue;
      const region = { x: content.x, y: content.y, width, height: isDeep ? deepest : content.height };
      return placed(layout, { scale, region, rows, around, size, content, isDeep, leaves });
    }
  }
  // A wall drawn kilometres off by mistake is no reason to print nothing.
  const scale = Math.ceil(
    Math.max(size[0] / (content.width - around.width), size[1] / (content.height - around.height)),
  );
  const region = { ...content, width: size[0] / scale + around.width };
  return placed(layout, { scale, region, rows, around, size, content, isDeep: false, leaves: 0 });
}

function placed(
  { corner }: SettingOut,
  made: {
    readonly scale: number;
    readonly region: Box;
    readonly rows: Readonly<Record<Side, Rows>>;
    readonly around: { readonly width: number; readonly height: number };
    readonly size: readonly [number, number];
    readonly content: Box;
    readonly isDeep: boolean;
    readonly leaves: number;
  },
): PlanPlace {
  const { scale, region, rows, around, size, content, isDeep, leaves } = made;
  const [width, height] = [size[0] / scale, size[1] / scale];
  const x = region.x + around.width - rows.right.end - 2;
  const spare = region.height - height - around.height;
  const y = region.y + rows.top.end + 1 + Math.max(0, Math.min(spare / 2, 12));
  const concrete = { x, y, width, height };
  const sideX = region.x + region.width + GAP;
  return {
    scale,
    region,
    rows,
    concrete,
    isDeep,
    at: ([px, py]) => [x + (px - corner[0]) / scale, y + height - (py - corner[1]) / scale],
    side:
      leaves === 0
        ? null
        : { x: sideX, y: content.y, width: content.x + content.width - sideX, height: content.height },
  };
}
