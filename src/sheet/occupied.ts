// Paper that is taken, cell by cell, so that a thousand labels can ask for a free place without asking each other.
//
//   ▓▓▓░░░░░   A cell is taken when anything touches it: what is free here is free on paper, never the other
//   ▓▓▓░░▓▓░   way round.

import type { Box } from "./box.ts";
import type { Point } from "./mark.ts";

/** Side of a cell, mm of paper. */
const CELL = 0.25;

/** Slack for edges that lie on a cell's edge on paper but not in binary. */
const NOISE = 1e-6;

export interface Occupied {
  readonly take: (box: Box) => void;
  /** Takes a band about the line from `a` to `b`. */
  readonly takeLine: (a: Point, b: Point, breadth: number) => void;
  /** Whether the box lies in the area and meets nothing that is taken. */
  readonly isFree: (box: Box) => boolean;
  readonly isFreeLine: (a: Point, b: Point) => boolean;
  /** Puts everything back as it was when this was asked for. */
  readonly keep: () => () => void;
}

/** An area of paper with nothing on it. */
export function occupied(area: Box): Occupied {
  const columns = Math.ceil(area.width / CELL);
  const rows = Math.ceil(area.height / CELL);
  const cells = new Uint8Array(columns * rows);
  const span = (box: Box) => ({
    left: Math.floor((box.x - area.x) / CELL + NOISE),
    right: Math.ceil((box.x + box.width - area.x) / CELL - NOISE),
    top: Math.floor((box.y - area.y) / CELL + NOISE),
    foot: Math.ceil((box.y + box.height - area.y) / CELL - NOISE),
  });
  const take = (box: Box): void => {
    const { left, right, top, foot } = span(box);
    const [from, to] = [Math.max(left, 0), Math.min(right, columns)];
    if (from >= to) return;
    for (let row = Math.max(top, 0); row < Math.min(foot, rows); row++) {
      cells.fill(1, row * columns + from, row * columns + to);
    }
  };
  const isFree = (box: Box): boolean => {
    const { left, right, top, foot } = span(box);
    if (left < 0 || top < 0 || right > columns || foot > rows) return false;
    for (let row = top; row < foot; row++) {
      for (let cell = row * columns + left; cell < row * columns + right; cell++) {
        if (cells[cell] === 1) return false;
      }
    }
    return true;
  };
  const cell = (x: number, y: number): number => {
    const [column, row] = [Math.floor((x - area.x) / CELL + NOISE), Math.floor((y - area.y) / CELL + NOISE)];
    return column < 0 || row < 0 || column >= columns || row >= rows ? -1 : row * columns + column;
  };
  return {
    take,
    isFree,
    takeLine: (a, b, breadth) => {
      const count = stepCount(a, b);
      for (let step = 0; step <= count; step++) {
        const share = count === 0 ? 0 : step / count;
        const [x, y] = [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
        take({ x: x - breadth / 2, y: y - breadth / 2, width: breadth, height: breadth });
      }
    },
    isFreeLine: (a, b) => {
      const count = stepCount(a, b);
      for (let step = 0; step <= count; step++) {
        const share = count === 0 ? 0 : step / count;
        const at = cell(a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share);
        if (at < 0 || cells[at] === 1) return false;
      }
      return true;
    },
    keep: () => {
      const kept = cells.slice();
      return () => cells.set(kept);
    },
  };
}

/** Steps along the line, each less than a cell long. */
function stepCount(a: Point, b: Point): number {
  return Math.ceil(Math.max(Math.abs(b[0] - a[0]), Math.abs(b[1] - a[1])) / (CELL / 2));
}
