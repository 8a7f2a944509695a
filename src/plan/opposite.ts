// Which face stands opposite, across concrete that runs along with it?
//
//   ──────────────────▶ F        from the side of a body straight across to its other side; where that is covered by
//   ─ ─ ─ ─ ─ ─ ─ ─ ─ ─          another body alongside, on to that one's far side.
//   ◀────────────────── G        Opposite a joining wall or beyond a corner there is none.

import { buildGridIndex, type GridIndex } from "../geom/gridIndex.ts";
import { type Interval, joinIntervals, overlap, subtractIntervals } from "../geom/intervals.ts";
import { asideOfLine, type Line, offsetLine, pointAt } from "../geom/line.ts";
import { cross } from "../geom/point.ts";
import type { Mm } from "../units.ts";
import { type Course, type CourseInput, measureCourses, runsAlong, stretchAlong } from "./course.ts";
import type { Opposite } from "./face.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { keepLength, keepPlace } from "./keep.ts";
import { ROUNDING, TIE_TOLERANCE } from "./tolerance.ts";

type Side = "left" | "right";
const OTHER = { left: "right", right: "left" } as const;

interface Crossing {
  readonly faces: readonly FaceDraft[];
  readonly courses: readonly Course[];
  /** Over the drawn lines. */
  readonly index: GridIndex;
  readonly thickest: Mm;
  /** Pairs found: stretches by face, then by the face opposite. */
  readonly found: readonly Map<number, Interval[]>[];
}

/** From a face, crossing a body towards one of its sides. */
interface Look {
  readonly face: number;
  readonly body: number;
  readonly away: Side;
}

const CELL = 1000; // mm

/** The opposite stretches of each face, by start. If F faces G over a stretch, G faces F over the same. */
export function findOpposites(input: CourseInput): Opposite[][] {
  const { walls, faces } = input;
  const crossing: Crossing = {
    faces,
    courses: measureCourses(input),
    index: buildGridIndex(
      walls.map((wall) => [wall.from, wall.to]),
      CELL,
    ),
    thickest: walls.reduce((most, wall) => Math.max(most, wall.thickness), 0),
    found: faces.map(() => new Map<number, Interval[]>()),
  };
  crossing.courses.forEach((course, body) => {
    for (const side of ["left", "right"] as const) {
      for (const shown of course[side])
        lookAcross(crossing, { face: shown.face, body, away: OTHER[side] }, shown);
    }
  });
  return faces.map((_, face) => oppositesOf(crossing, face));
}

// `stretch` runs along the drawn line of the body being crossed.
function lookAcross(crossing: Crossing, look: Look, stretch: Interval): void {
  const course = crossing.courses[look.body]!;
  const crossed = overlap(stretch, course.full, ROUNDING);
  if (crossed === null) return;
  const shown: Interval[] = [];
  for (const facing of course[look.away]) {
    const shared = overlap(crossed, facing, ROUNDING);
    if (shared === null) continue;
    shown.push(shared);
    notePair(crossing, [look.face, facing.face], { line: course.wall.line, shared });
  }
  for (const hidden of subtractIntervals(crossed, shown, TIE_TOLERANCE)) lookBeyond(crossing, look, hidden);
}

function notePair(
  crossing: Crossing,
  [face, facing]: readonly [number, number],
  { line, shared }: { readonly line: Line; readonly shared: Interval },
): void {
  for (const [own, other] of [
    [face, facing],
    [facing, face],
  ] as const) {
    const stretch = mapStretch(line, shared, crossing.faces[own]!.line);
    const pairs = crossing.found[own]!;
    const stretches = pairs.get(other);
    if (stretches === undefined) pairs.set(other, [stretch]);
    else stretches.push(stretch);
  }
}

// The body that reaches furthest beyond hides the far sides of all others, so the rest of them need no look.
function lookBeyond(crossing: Crossing, look: Look, hidden: Interval): void {
  const { line } = crossing.courses[look.body]!.wall;
  let rest: readonly Interval[] = [hidden];
  for (const { body, away } of bodiesAlongside(crossing, look, hidden)) {
    const { wall, full } = crossing.courses[body]!;
    const covered = mapStretch(wall.line, full, line);
    for (const piece of rest) {
      const shared = overlap(piece, covered, ROUNDING);
      if (shared !== null)
        lookAcross(crossing, { face: look.face, body, away }, mapStretch(line, shared, wall.line));
    }
    rest = rest.flatMap((piece) => subtractIntervals(piece, [covered], TIE_TOLERANCE));
  }
}

// Bodies that run along with this one, take in or touch its far side and reach beyond it; the furthest first.
function bodiesAlongside(crossing: Crossing, look: Look, hidden: Interval): { body: number; away: Side }[] {
  const { wall } = crossing.courses[look.body]!;
  const side = offsetLine(wall.line, wall[look.away]);
  const [from, to] = [pointAt(side, hidden.start, 0), pointAt(side, hidden.end, 0)];
  const found: { body: number; away: Side; beyond: Mm }[] = [];
  for (const body of crossing.index.near(from, to, crossing.thickest + TIE_TOLERANCE)) {
    if (body === look.body) continue;
    const other = crossing.courses[body]!.wall;
    const slope = Math.abs(cross(wall.line.ux, wall.line.uy, other.line.ux, other.line.uy));
    if (!runsAlong(wall.line, other.line) || slope * (hidden.end - hidden.start) > TIE_TOLERANCE) continue;
    const isAlong = wall.line.ux * other.line.ux + wall.line.uy * other.line.uy > 0;
    const away = isAlong ? look.away : OTHER[look.away];
    const outwards = away === "left" ? 1 : -1;
    const place = asideOfLine(other.line, pointAt(side, (hidden.start + hidden.end) / 2, 0));
    const beyond = (other[away] - place) * outwards;
    const before = (place - other[OTHER[away]]) * outwards;
    if (beyond > ROUNDING && before >= -TIE_TOLERANCE - ROUNDING) found.push({ body, away, beyond });
  }
  return found.sort((a, b) => b.beyond - a.beyond || a.body - b.body);
}

function mapStretch(line: Line, stretch: Interval, onto: Line): Interval {
  return stretchAlong(onto, pointAt(line, stretch.start, 0), pointAt(line, stretch.end, 0));
}

function oppositesOf(crossing: Crossing, face: number): Opposite[] {
  const own = crossing.faces[face]!;
  const opposites: Opposite[] = [];
  for (const [facing, stretches] of crossing.found[face]!) {
    for (const { start, end } of joinIntervals(stretches, TIE_TOLERANCE)) {
      if (end - start <= TIE_TOLERANCE) continue;
      const thickness = asideOfLine(crossing.faces[facing]!.line, pointAt(own.line, (start + end) / 2, 0));
      opposites.push({
        face: facing,
        start: keepPlace(start, own.length),
        end: keepPlace(end, own.length),
        thickness: keepLength(thickness),
      });
    }
  }
  return opposites.sort((a, b) => a.start - b.start || a.end - b.end || a.face - b.face);
}
