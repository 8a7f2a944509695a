// The rows of running numbers on the four sides of the plan: walls in the outer row, openings of the outside in the inner.
//
// A wall's number stands on the side the wall is nearer to, on both where it reaches as near to both.

import type { Mm } from "../../units.ts";
import type { Mark } from "../mark.ts";
import type { OpeningMark } from "./openingMarks.ts";
import type { PlanPlace, Side } from "./planPlace.ts";
import type { RunningNumber } from "./running.ts";
import { type RowNumber, runningRow } from "./runningRow.ts";
import type { SettingOut } from "./settingOut.ts";

const SIDES: readonly Side[] = ["top", "bottom", "left", "right"];

/** A number at a jamb, with the side of its line on which the opening is. */
export interface JambNumber {
  readonly at: Mm;
  readonly open: -1 | 1;
}

/** The jambs of an opening along its axis, the lesser first; none where its wall runs aslant. */
export function jambNumbers({ axis, near }: OpeningMark): readonly JambNumber[] {
  if (axis === null) return [];
  const along = axis === "x" ? 0 : 1;
  const [a, b] = [near[0][along], near[1][along]];
  return [
    { at: Math.min(a, b), open: 1 },
    { at: Math.max(a, b), open: -1 },
  ];
}

/** The side of the plan on which an opening of the outside has its numbers; null for all others. */
export function sideOf({ axis, near, isOutside }: OpeningMark, layout: SettingOut): Side | null {
  if (axis === null || !isOutside) return null;
  const across = axis === "x" ? 1 : 0;
  const isFar = near[0][across] > (layout.corner[across] + layout.extent[across]) / 2;
  if (axis === "x") return isFar ? "top" : "bottom";
  return isFar ? "right" : "left";
}

export function planRows(layout: SettingOut, place: PlanPlace): readonly Mark[] {
  return SIDES.flatMap((side) => [
    ...rowMarks(side, "inner", innerNumbers(side, layout, place), { layout, place }),
    ...rowMarks(side, "outer", outerNumbers(side, layout, place), { layout, place }),
  ]);
}

function innerNumbers(side: Side, layout: SettingOut, place: PlanPlace): readonly RowNumber[] {
  const found = new Map<string, RowNumber>();
  for (const opening of layout.openings) {
    if (sideOf(opening, layout) !== side) continue;
    for (const { at, open } of jambNumbers(opening))
      found.set(`${at} ${open}`, rowNumber(side, at, open, { place, isReference: false }));
  }
  return [...found.values()];
}

function outerNumbers(side: Side, layout: SettingOut, place: PlanPlace): readonly RowNumber[] {
  return layout.running
    .filter((number) => isOnSide(number, side, layout))
    .map(({ at, open, isReference }) => rowNumber(side, at, open, { place, isReference }));
}

function isOnSide({ axis, spans }: RunningNumber, side: Side, { corner, extent }: SettingOut): boolean {
  if (axis !== (side === "top" || side === "bottom" ? "x" : "y")) return false;
  const across = axis === "x" ? 1 : 0;
  const fromLow = Math.min(...spans.map(([low]) => low)) - corner[across];
  const fromHigh = extent[across] - Math.max(...spans.map(([, high]) => high));
  return side === "bottom" || side === "left" ? fromLow <= fromHigh : fromHigh <= fromLow;
}

function rowNumber(
  side: Side,
  reading: Mm,
  open: -1 | 1,
  { place, isReference }: { readonly place: PlanPlace; readonly isReference: boolean },
): RowNumber {
  const isLevel = side === "top" || side === "bottom";
  const at = place.at([reading, reading])[isLevel ? 0 : 1];
  // Paper runs downward, the plan upward.
  const turned = isLevel ? open : open === 1 ? -1 : 1;
  return { place: at, reading, open: turned, isReference };
}

function rowMarks(
  side: Side,
  row: "inner" | "outer",
  numbers: readonly RowNumber[],
  { layout, place }: { readonly layout: SettingOut; readonly place: PlanPlace },
): readonly Mark[] {
  const { rows, region, at } = place;
  const isLevel = side === "top" || side === "bottom";
  const { inner, outer } = rows[side];
  const [start, length] = isLevel ? [region.x, region.width] : [region.y, region.height];
  const axis = isLevel ? 0 : 1;
  const hasNought = layout.corner[axis] === 0;
  return runningRow(numbers, {
    side,
    edge: edgeOf(side, place),
    begin: row === "outer" && outer > inner ? inner + 0.8 : 2.6,
    row: row === "inner" ? inner : outer,
    height: 3.5,
    weights: row === "inner" ? [400, 400] : [600, 400],
    reach: [start, start + length],
    datum: hasNought ? at([0, 0])[axis] : null,
    // Control lines go out by the sides at which their bubbles stand.
    crossed:
      side === "bottom" || side === "left"
        ? layout.controls
            .filter((control) => control.axis === (isLevel ? "y" : "x"))
            .map(({ from }) => at(from)[axis])
        : [],
  });
}

function edgeOf(side: Side, { concrete }: PlanPlace): number {
  switch (side) {
    case "top":
      return concrete.y;
    case "bottom":
      return concrete.y + concrete.height;
    case "left":
      return concrete.x;
    case "right":
      return concrete.x + concrete.width;
    default:
      return side satisfies never;
  }
}
