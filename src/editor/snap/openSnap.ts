// Snapping where the pointer may go anywhere.
//
// A line (a centreline, a square, an extension, an alignment) fixes the place across itself; along itself the place
// still goes to an alignment or to the grid, so that lengths come out round.

import { alongLine, asideOfLine, type Line, pointAt } from "../../geom/line.ts";
import { distance } from "../../geom/point.ts";
import { endAt, isOnWall, JOINT_REACH, tidyPosition, wallLength, wallLine } from "../../plan/editAxis.ts";
import type { Position, Wall } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { type PlanIndex, wallsNear } from "./planIndex.ts";
import { bestCandidate, type Candidate, LINE_REACH, type Snap, type SnapQuery, snapOf } from "./snap.ts";

/** The place taken for a free pointer. Cost grows with the number of walls. */
export function snapOpen(index: PlanIndex, query: SnapQuery): Snap {
  const walls = index.walls.filter((wall) => !query.exclude.has(wall.id));
  const near = wallsNear(index, query.at, query.reach).filter((wall) => !query.exclude.has(wall.id));
  const best = bestCandidate([
    ...near.flatMap((wall) => endCandidates(wall, query)),
    ...near.flatMap((wall) => centrelineCandidates(wall, query, walls)),
    ...walls.flatMap((wall) => squareCandidates(wall, query, walls)),
    ...walls.flatMap((wall) => extensionCandidates(wall, query, walls)),
    ...alignmentCandidates(walls, query),
    ...gridCandidates(query),
  ]);
  return best === null ? { at: wholePlace(query.at), reason: null } : snapOf(best, best.at, query.grid);
}

/** A place to the whole millimetre. */
export function wholePlace([x, y]: Position): Position {
  return [Math.round(x) + 0, Math.round(y) + 0];
}

function endCandidates(wall: Wall, { at, reach }: SnapQuery): Candidate[] {
  return [wall.from, wall.to].flatMap((end) => {
    const gap = distance(end, at);
    return gap > reach ? [] : [{ kind: "end", at: end, gap, far: 0, from: end, wall: wall.id }];
  });
}

// The line under the pointer. Where the foot of the start is within reach, the line drawn meets the wall at a square.
function centrelineCandidates(wall: Wall, query: SnapQuery, walls: readonly Wall[]): Candidate[] {
  const line = wallLine(wall);
  const along = alongLine(line, query.at);
  const gap = Math.abs(asideOfLine(line, query.at));
  const length = wallLength(wall);
  if (gap > query.reach || along < 0 || along > length) return [];
  const end = along * 2 < length ? wall.from : wall.to;
  const base = { gap, far: 0, from: end, wall: wall.id };
  const foot = query.from === null ? null : alongLine(line, query.from);
  const isSquare = foot !== null && foot >= 0 && foot <= length && Math.abs(foot - along) <= query.reach;
  if (isSquare && query.from !== null && Math.abs(asideOfLine(line, query.from)) > JOINT_REACH) {
    const at = tidyPosition(pointAt(line, foot, 0));
    return [{ ...base, kind: "centreline", named: "perpendicular", at, gap: 0 }];
  }
  const settled = Math.max(0, Math.min(settleAlong(line, query, walls), length));
  return [{ ...base, kind: "centreline", at: tidyPosition(pointAt(line, settled, 0)) }];
}

// The line through the start, square to a wall the start lies on.
function squareCandidates(wall: Wall, query: SnapQuery, walls: readonly Wall[]): Candidate[] {
  const { from, at, reach } = query;
  if (from === null || (endAt(wall, from) === null && !isOnWall(wall, from))) return [];
  const { ux, uy } = wallLine(wall);
  const line: Line = { x: from[0], y: from[1], ux: 0 - uy, uy: ux };
  const gap = Math.abs(asideOfLine(line, at));
  if (gap > reach || distance(from, at) <= reach) return [];
  const place = tidyPosition(pointAt(line, settleAlong(line, query, walls), 0));
  return [{ kind: "perpendicular", at: place, gap, far: 0, from, wall: wall.id }];
}

function extensionCandidates(wall: Wall, query: SnapQuery, walls: readonly Wall[]): Candidate[] {
  const line = wallLine(wall);
  const along = alongLine(line, query.at);
  const gap = Math.abs(asideOfLine(line, query.at));
  const far = along < 0 ? -along : along - wallLength(wall);
  if (gap > query.reach || far <= 0 || far > LINE_REACH) return [];
  const end = along < 0 ? wall.from : wall.to;
  const at = tidyPosition(pointAt(line, settleAlong(line, query, walls), 0));
  return [{ kind: "extension", at, gap, far, from: end, wall: wall.id }];
}

// Level with an end: the nearest end in x and the nearest in y; where both are in reach the place takes both.
function alignmentCandidates(walls: readonly Wall[], query: SnapQuery): Candidate[] {
  const across = nearestLevel(walls, query, 0);
  const upright = nearestLevel(walls, query, 1);
  const x = across?.value ?? settleValue(query.at[0], query);
  const y = upright?.value ?? settleValue(query.at[1], query);
  return [across, upright].flatMap((level) =>
    level === null
      ? []
      : [
          {
            kind: "alignment",
            at: [x, y],
            gap: level.gap,
            far: level.far,
            from: level.end,
            wall: level.wall,
          },
        ],
  );
}

interface Level {
  readonly value: Mm;
  readonly gap: Mm;
  readonly far: Mm;
  readonly end: Position;
  readonly wall: string;
}

function nearestLevel(walls: readonly Wall[], { at, reach }: SnapQuery, axis: 0 | 1): Level | null {
  let best: Level | null = null;
  for (const wall of walls) {
    for (const end of [wall.from, wall.to]) {
      const gap = Math.abs(end[axis] - at[axis]);
      const far = distance(end, at);
      if (gap > reach || far > LINE_REACH) continue;
      if (best === null || gap < best.gap || (gap === best.gap && far < best.far)) {
        best = { value: end[axis], gap, far, end, wall: wall.id };
      }
    }
  }
  return best;
}

function gridCandidates({ at, reach, grid }: SnapQuery): Candidate[] {
  if (grid <= 0) return [];
  const node: Position = [toStep(at[0], grid), toStep(at[1], grid)];
  const gap = Math.max(Math.abs(node[0] - at[0]), Math.abs(node[1] - at[1]));
  return gap > reach ? [] : [{ kind: "grid", at: node, gap, far: 0, from: node, wall: null }];
}

/** The multiple of `step` nearest to a value. */
export function toStep(value: Mm, step: Mm): Mm {
  return Math.round(value / step) * step + 0;
}

/** A coordinate on the grid where that is within reach, else to the whole millimetre. */
export function settleValue(value: Mm, { reach, grid }: Pick<SnapQuery, "reach" | "grid">): Mm {
  const node = grid > 0 ? toStep(value, grid) : value;
  return grid > 0 && Math.abs(node - value) <= reach ? node : Math.round(value) + 0;
}

// How far along a line the place goes: along an axis to the level of an end, else to the grid; on other lines to steps
// from the line's own start.
function settleAlong(line: Line, query: SnapQuery, walls: readonly Wall[]): Mm {
  const along = alongLine(line, query.at);
  const axis = line.uy === 0 ? 0 : line.ux === 0 ? 1 : null;
  if (axis === null) return settleValue(along, query);
  const level = nearestLevel(walls, query, axis);
  const value = level?.value ?? settleValue(query.at[axis], query);
  return axis === 0 ? (value - line.x) * line.ux : (value - line.y) * line.uy;
}
