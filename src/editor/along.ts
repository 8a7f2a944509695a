// What stands along a wall: openings, and the bodies of walls that join or cross it. The free stretches between them
// are where an opening may go, and their ends are what its distances are measured to.
//
//   ▓▓▓▓                    ▓▓▓▓
//   ▓▓▓▓━━━━━━[ door ]━━━━━━▓▓▓▓━━━━━━━
//      ◀─────▶        ◀────▶
//      left            right

import { alongLine, asideOfLine, intersectLines } from "../geom/line.ts";
import { cross } from "../geom/point.ts";
import { listed, type UnitDocument } from "../plan/document.ts";
import { bodySpan, JOINT_REACH, tidy, wallLength, wallLine } from "../plan/editAxis.ts";
import type { Wall } from "../plan/project.ts";
import type { Mm } from "../units.ts";

/** A stretch of a wall's drawn line, from its `from`. */
export interface Stretch {
  readonly start: Mm;
  readonly end: Mm;
}

const LEAST_SINE = 0.1; // flatter than about 6° a wall runs along this one rather than across it

/** The stretches of a wall taken by openings (but `except`) and by other walls' bodies, by their start. */
export function takenAlong(unit: UnitDocument, wall: Wall, except: string | null): readonly Stretch[] {
  const openings = listed(unit.openings)
    .filter((opening) => opening.wall === wall.id && opening.id !== except)
    .map(({ at, width }) => ({ start: at, end: at + width }));
  return byStart([...openings, ...bodiesAlong(unit, wall)]);
}

/** The stretches of a wall between other walls' bodies, the longest first; equal ones by their start. */
export function baysAlong(unit: UnitDocument, wall: Wall): readonly Stretch[] {
  const bays: Stretch[] = [];
  let start: Mm = 0;
  for (const body of byStart(bodiesAlong(unit, wall))) {
    if (body.start > start) bays.push({ start, end: body.start });
    start = Math.max(start, body.end);
  }
  const length = wallLength(wall);
  if (start < length) bays.push({ start, end: length });
  return bays.sort((a, b) => b.end - b.start - (a.end - a.start) || a.start - b.start);
}

function bodiesAlong(unit: UnitDocument, wall: Wall): readonly Stretch[] {
  return listed(unit.walls).flatMap((other) => {
    const stretch = other.id === wall.id ? null : crossingStretch(wall, other);
    return stretch === null ? [] : [stretch];
  });
}

function byStart(stretches: readonly Stretch[]): Stretch[] {
  return [...stretches].sort((a, b) => a.start - b.start || a.end - b.end);
}

/** The free stretch round a place: between the nearest taken ones on either side, or the ends of the wall. */
export function freeAround(unit: UnitDocument, wall: Wall, place: Mm, except: string | null): Stretch {
  let start = 0;
  let end = wallLength(wall);
  for (const stretch of takenAlong(unit, wall, except)) {
    const middle = (stretch.start + stretch.end) / 2;
    if (middle <= place) start = Math.max(start, stretch.end);
    else end = Math.min(end, stretch.start);
  }
  return { start, end };
}

// Where the body of another wall that touches this one's lies along it.
function crossingStretch(wall: Wall, other: Wall): Stretch | null {
  const line = wallLine(wall);
  const otherLine = wallLine(other);
  const sine = Math.abs(cross(line.ux, line.uy, otherLine.ux, otherLine.uy));
  const crossing = intersectLines(line, otherLine);
  if (crossing === null || sine < LEAST_SINE) return null;

  const own = alongLine(line, crossing);
  const theirs = alongLine(otherLine, crossing);
  const reach = (wall.thickness + JOINT_REACH) / sine;
  if (own < -other.thickness / sine || own > wallLength(wall) + other.thickness / sine) return null;
  if (theirs < -reach || theirs > wallLength(other) + reach) return null;

  const [right, left] = bodySpan(other);
  // The other wall's left is this wall's `to` side or its `from` side, by the way it is drawn.
  const way = asideOfLine(otherLine, [crossing[0] + line.ux, crossing[1] + line.uy]) > 0 ? 1 : -1;
  const edges = [own + (way * right) / sine, own + (way * left) / sine];
  return { start: tidy(Math.min(...edges)), end: tidy(Math.max(...edges)) };
}
