// Moves marks from the coordinates they were made in to their place on the sheet.

import { moved } from "./box.ts";
import type { Mark, Point } from "./mark.ts";

/** The mark moved by (dx, dy), mm of paper. */
export function placedMark(mark: Mark, dx: number, dy: number): Mark {
  const at = ([x, y]: Point): Point => [x + dx, y + dy];
  switch (mark.kind) {
    case "line":
      return { ...mark, from: at(mark.from), to: at(mark.to) };
    case "polyline":
    case "polygon":
      return { ...mark, points: mark.points.map(at) };
    case "rect":
    case "hatch":
      return { ...mark, box: moved(mark.box, dx, dy) };
    case "circle":
      return { ...mark, centre: at(mark.centre) };
    case "text":
      return { ...mark, at: at(mark.at) };
    default:
      return mark satisfies never;
  }
}
