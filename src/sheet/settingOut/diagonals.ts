// The distances a tape checks before any pin is drilled: the diagonals of every room, of the outside, of the control.
//
//   ┌────────┐        A rectangle has two. In a room of another shape each corner gets at least one sight that stays
//   │╲      ╱│        inside it, the longest first; round a bent outside the four corners that reach farthest out are
//   │  ╲  ╱  │        measured crosswise.

import { distance } from "../../geom/point.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import type { SetRing } from "./setFace.ts";
import type { StakePoint } from "./stakePoints.ts";

export interface Diagonal {
  readonly from: Position;
  readonly to: Position;
  /** Names of the two points. */
  readonly points: readonly [string, string];
  /** To the nearest millimetre. */
  readonly length: Mm;
}

export interface RoomCheck {
  readonly room: string;
  /** The middle of the widest place of the room, where its name can stand. */
  readonly at: Position;
  /** Clear width along x and along y of a rectangular room; null for others. */
  readonly clear: readonly [Mm, Mm] | null;
  readonly diagonals: readonly Diagonal[];
  /** In the order of the walk. */
  readonly corners: readonly Position[];
}

/** The checks of one room; `inner`: rings of what stands in it. */
export function roomCheck(
  ring: SetRing,
  inner: readonly SetRing[],
  points: readonly StakePoint[],
): Omit<RoomCheck, "at"> {
  const corners = cornersOf(ring);
  const isRectangle =
    corners.length === 4 &&
    ring.faces.every(({ axis }) => axis !== null) &&
    new Set(corners.map(([x]) => x)).size === 2 &&
    new Set(corners.map(([, y]) => y)).size === 2;
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  return {
    room: ring.room ?? "",
    clear: isRectangle ? [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)] : null,
    corners,
    diagonals: sights(corners, [ring, ...inner])
      .map(([from, to]) => diagonal(from, to, points))
      .filter((one) => one !== null),
  };
}

/** The two crosswise distances between the corners that reach farthest out; fewer where these are not four. */
export function crosswise(places: readonly Position[], points: readonly StakePoint[]): readonly Diagonal[] {
  const most = (score: (at: Position) => number): Position | undefined =>
    [...places].sort((a, b) => score(b) - score(a) || a[0] - b[0] || a[1] - b[1])[0];
  const pairs = [
    [most(([x, y]) => -x - y), most(([x, y]) => x + y)],
    [most(([x, y]) => x - y), most(([x, y]) => y - x)],
  ] as const;
  const found: Diagonal[] = [];
  for (const [from, to] of pairs) {
    const one = from === undefined || to === undefined ? null : diagonal(from, to, points);
    if (one === null || one.length === 0) continue;
    // On a single line of points both ways are one.
    if (!found.some((known) => one.points.every((point) => known.points.includes(point)))) found.push(one);
  }
  return found;
}

function diagonal(from: Position, to: Position, points: readonly StakePoint[]): Diagonal | null {
  const named = (at: Position) => points.find((point) => point.at[0] === at[0] && point.at[1] === at[1])?.id;
  const [a, b] = [named(from), named(to)];
  if (a === undefined || b === undefined) return null;
  return { from, to, points: [a, b], length: Math.round(distance(from, to)) };
}

/** Corners of a ring, without the places where it goes straight on. */
export function cornersOf({ faces }: SetRing): readonly Position[] {
  return faces
    .map(({ from }) => from)
    .filter((at, k, all) => {
      const [before, after] = [all[(k + all.length - 1) % all.length]!, all[(k + 1) % all.length]!];
      const area = Math.abs(turn(before, at, after));
      return area > 1e-6 * distance(before, at) * distance(at, after);
    });
}

function turn(a: Position, b: Position, c: Position): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

// The longest sights first, as long as they reach a corner that none has reached yet.
function sights(
  corners: readonly Position[],
  rings: readonly SetRing[],
): readonly (readonly [Position, Position])[] {
  const all = corners.flatMap((from, i) =>
    corners.slice(i + 2).flatMap((to, offset) => {
      const isNeighbour = i === 0 && i + 2 + offset === corners.length - 1;
      return isNeighbour
        ? []
        : [{ from, to, length: distance(from, to), pair: [i, i + 2 + offset] as const }];
    }),
  );
  all.sort((a, b) => b.length - a.length || a.pair[0] - b.pair[0] || a.pair[1] - b.pair[1]);
  const reached = new Set<number>();
  const found: (readonly [Position, Position])[] = [];
  // A corner that only a column hides is measured over it: nothing stands when the slab is marked.
  for (const inTheWay of [rings, rings.slice(0, 1)]) {
    for (const { from, to, pair } of all) {
      if (reached.has(pair[0]) && reached.has(pair[1])) continue;
      if (!isSight(from, to, inTheWay)) continue;
      reached.add(pair[0]).add(pair[1]);
      found.push([from, to]);
    }
  }
  return found;
}

// A sight crosses no face and does not lie in the concrete.
function isSight(from: Position, to: Position, rings: readonly SetRing[]): boolean {
  const isBlocked = rings.some(({ faces }) =>
    faces.some((face) => {
      const [a, b] = [turn(from, to, face.from), turn(from, to, face.to)];
      const [c, d] = [turn(face.from, face.to, from), turn(face.from, face.to, to)];
      return a * b < 0 && c * d < 0;
    }),
  );
  if (isBlocked) return false;
  // Corners that a sight passes through are no crossing: between them it must still run in the open.
  const stops = rings
    .flatMap(({ faces }) => faces.map((face) => face.from))
    .map((at) => shareOf(from, to, at))
    .filter((share) => share !== null);
  const shares = [0, ...stops, 1].sort((a, b) => a - b);
  return shares.slice(1).every((share, k) => {
    const before = shares[k]!;
    if (share - before < 1e-9) return true;
    const half = (share + before) / 2;
    return isOpen([from[0] + (to[0] - from[0]) * half, from[1] + (to[1] - from[1]) * half], rings);
  });
}

function shareOf(from: Position, to: Position, at: Position): number | null {
  const length = distance(from, to);
  if (Math.abs(turn(from, to, at)) > 1e-6 * length * length) return null;
  const share =
    ((at[0] - from[0]) * (to[0] - from[0]) + (at[1] - from[1]) * (to[1] - from[1])) / (length * length);
  return share > 0 && share < 1 ? share : null;
}

/** Whether a place lies in the room of the first ring and in none of the others. */
export function isOpen(at: Position, rings: readonly SetRing[]): boolean {
  return rings.every(({ faces }, k) => isWithin(at, faces) === (k === 0));
}

function isWithin([x, y]: Position, faces: SetRing["faces"]): boolean {
  let inside = false;
  for (const { from, to } of faces) {
    if (from[1] > y === to[1] > y) continue;
    if (from[0] + ((y - from[1]) / (to[1] - from[1])) * (to[0] - from[0]) > x) inside = !inside;
  }
  return inside;
}
