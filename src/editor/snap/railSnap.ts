// Snapping along a line that the place may not leave: drawing straight, or moving a wall across itself.
//
//                     ┊ end of another wall, level
//   origin ●──────────◎─────────▶ rail
//
// All gaps are measured along the rail.

import { alongLine, asideOfLine, intersectLines, type Line, pointAt } from "../../geom/line.ts";
import { distance } from "../../geom/point.ts";
import { JOINT_REACH, tidyPosition, wallLength, wallLine } from "../../plan/editAxis.ts";
import type { Position, Wall } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { toStep } from "./openSnap.ts";
import type { PlanIndex } from "./planIndex.ts";
import {
  bestCandidate,
  type Candidate,
  LINE_REACH,
  type Rail,
  type Snap,
  type SnapQuery,
  snapOf,
} from "./snap.ts";

/** The place taken on the rail. Cost grows with the number of walls. */
export function snapOnRail(index: PlanIndex, query: SnapQuery, rail: Rail): Snap {
  const line: Line = { x: rail.origin[0], y: rail.origin[1], ux: rail.ux, uy: rail.uy };
  const along = alongLine(line, query.at);
  const walls = index.walls.filter((wall) => !query.exclude.has(wall.id));
  const best = bestCandidate([
    ...walls.flatMap((wall) => endCandidates(wall, query, line)),
    ...walls.flatMap((wall) => crossingCandidates(wall, query, line)),
    ...gridCandidates(query, line),
  ]);
  if (best === null) return { at: placeOn(line, wholeAlong(line, along)), reason: null };
  return snapOf(best, best.at, query.grid);
}

/** The whole millimetre on a rail nearest to the pointer, for when snapping is suspended. */
export function wholeOnRail(at: Position, rail: Rail): Position {
  const line: Line = { x: rail.origin[0], y: rail.origin[1], ux: rail.ux, uy: rail.uy };
  return placeOn(line, wholeAlong(line, alongLine(line, at)));
}

function placeOn(line: Line, along: Mm): Position {
  return tidyPosition(pointAt(line, along, 0));
}

// On an axis the coordinate is whole; on other rails the distance from the origin is.
function wholeAlong(line: Line, along: Mm): Mm {
  return stepAlong(line, along, 1);
}

function stepAlong(line: Line, along: Mm, step: Mm): Mm {
  if (line.uy === 0) return (toStep(line.x + along * line.ux, step) - line.x) * line.ux;
  if (line.ux === 0) return (toStep(line.y + along * line.uy, step) - line.y) * line.uy;
  return toStep(along, step);
}

// An end on the rail is met; an end beside it gives the level at which it stands.
function endCandidates(wall: Wall, query: SnapQuery, line: Line): Candidate[] {
  const pointer = alongLine(line, query.at);
  return [wall.from, wall.to].flatMap((end): Candidate[] => {
    const along = alongLine(line, end);
    const gap = Math.abs(along - pointer);
    const far = distance(end, query.at);
    if (gap > query.reach || far > LINE_REACH) return [];
    const isMet = Math.abs(asideOfLine(line, end)) <= JOINT_REACH;
    const at = isMet ? end : placeOn(line, along);
    return [{ kind: isMet ? "end" : "alignment", at, gap, far, from: end, wall: wall.id }];
  });
}

// The rail crosses a wall's line: within the wall that is its centreline, beyond its ends the line carried on.
function crossingCandidates(wall: Wall, query: SnapQuery, line: Line): Candidate[] {
  const own = wallLine(wall);
  const crossing = intersectLines(line, own);
  if (crossing === null) return [];
  const at = tidyPosition(crossing);
  const gap = Math.abs(alongLine(line, at) - alongLine(line, query.at));
  if (gap > query.reach) return [];
  const along = alongLine(own, at);
  const length = wallLength(wall);
  const from = along * 2 < length ? wall.from : wall.to;
  if (along >= 0 && along <= length) return [{ kind: "centreline", at, gap, far: 0, from, wall: wall.id }];
  const far = along < 0 ? -along : along - length;
  return far > LINE_REACH ? [] : [{ kind: "extension", at, gap, far, from, wall: wall.id }];
}

function gridCandidates(query: SnapQuery, line: Line): Candidate[] {
  if (query.grid <= 0) return [];
  const pointer = alongLine(line, query.at);
  const along = stepAlong(line, pointer, query.grid);
  const at = placeOn(line, along);
  const gap = Math.abs(along - pointer);
  return gap > query.reach ? [] : [{ kind: "grid", at, gap, far: 0, from: at, wall: null }];
}
