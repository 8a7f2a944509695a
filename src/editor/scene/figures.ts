// Dimensions of the selected thing and of what is being drawn: where their lines and figures stand on the screen. The
// figures themselves are fields of the page, so that they can be typed into and read out.
//
//        ╱──────── 2 900 ────────╱     the line stands off the thing it measures

import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import type { LiveDimension } from "../liveDimension.ts";
import type { Mark } from "../tools/protocol.ts";
import type { WordKey } from "../words/en.ts";
import { visibleShare } from "./clip.ts";
import { readable } from "./openings.ts";
import { type Pixel, toScreen, type Viewport } from "./viewport.ts";

export interface Figure {
  /** Which it is among those on the screen. */
  readonly key: string;
  readonly name: WordKey & `dimension.${string}`;
  readonly value: number;
  readonly unit: "mm" | "degrees";
  readonly from: Pixel;
  readonly to: Pixel;
  /** Middle of the figure and how it is turned, radians. */
  readonly at: Pixel;
  readonly turn: number;
  /** What stands in its field; null where nothing has been typed. */
  readonly typed: string | null;
  /** Typed keys go into it. */
  readonly isActive: boolean;
  /** A press on it begins typing; those of a line being drawn are reached by Tab. */
  readonly isOpen: boolean;
  /** The value before typing began. */
  readonly was: number | null;
}

const OFF = 24; // px from what is measured to the line
/** Distances along a wall stand off its panels; clear widths lie in the room they measure. */
const LIES_FREE: readonly string[] = [
  "dimension.clear",
  "dimension.across",
  "dimension.upright",
  "dimension.position",
];

interface FigureContext {
  readonly marks: readonly Mark[];
  /** Half the thickness of the wall that is measured, and its panels. */
  readonly halfWall: Mm;
  /** Middles of names that a figure should not cover. */
  readonly inTheWay: readonly Pixel[];
}

/** Figures of the selection. Those without a line in the plan are shown elsewhere. */
export function liveFigures(
  viewport: Viewport,
  dimensions: readonly LiveDimension[],
  { marks, halfWall, inTheWay }: FigureContext,
): readonly Figure[] {
  const typing = marks.find((mark) => mark.kind === "typing");
  return dimensions.flatMap(({ key, name, value, line }): readonly Figure[] => {
    if (line === null) return [];
    const away = LIES_FREE.includes(name) ? 0 : halfWall * viewport.scale + OFF;
    const isActive = typing?.key === key;
    const typed = isActive ? typing.text : null;
    const was = isActive ? typing.was : null;
    const rest = { key, name, value, unit: "mm", typed, isActive, isOpen: true, was } as const;
    return [{ ...rest, ...placedLine(viewport, line, { away, inTheWay, isField: isActive }) }];
  });
}

/** Figures of a gesture. An angle stands at the beginning of its line, a length beside its middle. */
export function markFigures(viewport: Viewport, marks: readonly Mark[], halfWall: Mm): readonly Figure[] {
  return marks.flatMap((mark): readonly Figure[] => {
    if (mark.kind !== "figure") return [];
    const { name, value, unit, from, to, typed, isActive } = mark;
    const isAngle = unit === "degrees";
    const away = LIES_FREE.includes(name) ? 0 : halfWall * viewport.scale + OFF;
    const line = placedLine(viewport, [from, to], { away, inTheWay: [], isField: isActive });
    const [x, y] = toScreen(viewport, to);
    const at: Pixel = isAngle ? [x + 40, y - 26] : line.at;
    const rest = { key: name, name, value, unit, typed, isActive, isOpen: false, was: null } as const;
    return [{ ...line, ...rest, at, turn: isAngle ? 0 : line.turn }];
  });
}

const FIELD: Pixel = [44, 26]; // px, from a line to the middle of a field beside and below it

interface Placing {
  readonly away: number;
  readonly inTheWay: readonly Pixel[];
  readonly isField: boolean;
}

// Off to the lower or the right side of the line, where a hand that reads from there expects it.
function placedLine(
  viewport: Viewport,
  [from, to]: readonly [Position, Position],
  { away, inTheWay, isField }: Placing,
): Pick<Figure, "from" | "to" | "at" | "turn"> {
  const [a, b] = [toScreen(viewport, from), toScreen(viewport, to)];
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const length = Math.sqrt(dx * dx + dy * dy) || 1;
  const isUpright = Math.abs(dy) > Math.abs(dx);
  const side = isUpright ? (dy > 0 ? -1 : 1) : dx > 0 ? 1 : -1;
  const [ox, oy] = [((-dy * away) / length) * side, ((dx * away) / length) * side];
  const moved = ([x, y]: Pixel): Pixel => [Math.round(x + ox) + 0.5, Math.round(y + oy) + 0.5];
  const [start, end] = [moved(a), moved(b)];
  const [x, y] = figurePlace([start, end], viewport, inTheWay);
  // A field is wider than a figure: it goes further out, so that it covers neither the wall nor the next figure.
  const outward: Pixel = isUpright ? [FIELD[0], 0] : [0, length < FIELD[0] * 3 ? FIELD[1] : 0];
  return {
    from: start,
    to: end,
    at: isField && away > 0 ? [x + outward[0], y + outward[1]] : [x, y],
    turn: readable(Math.atan2(dy, dx)),
  };
}

const MARGIN = 44; // px from the edge of the drawing
const SHARES: readonly number[] = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8];
const LEAST_END = 34; // px from the end of a line: nearer it would stand in the way of the hand
const NAME: Pixel = [64, 26]; // px, half of a name with its area, and a figure

// In the middle of what can be seen of the line, or beside it where a name stands there.
function figurePlace(line: readonly [Pixel, Pixel], size: Viewport, inTheWay: readonly Pixel[]): Pixel {
  const [from, to] = line;
  const [start, end] = visibleShare(line, size, MARGIN) ?? [0, 1];
  const long = Math.sqrt((to[0] - from[0]) ** 2 + (to[1] - from[1]) ** 2) * (end - start);
  const shares = SHARES.filter((share) => share === 0.5 || Math.min(share, 1 - share) * long >= LEAST_END);
  const places = shares.map((share): Pixel => {
    const along = start + (end - start) * share;
    return [from[0] + (to[0] - from[0]) * along, from[1] + (to[1] - from[1]) * along];
  });
  const isFree = ([x, y]: Pixel) =>
    inTheWay.every(([a, b]) => Math.abs(a - x) > NAME[0] || Math.abs(b - y) > NAME[1]);
  return places.find(isFree) ?? places[0] ?? from;
}
