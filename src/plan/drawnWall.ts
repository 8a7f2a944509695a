// The walls of a unit made independent of how they were drawn: directed to greater x, then y, sorted by place,
// and walls drawn twice taken as one.
//
//        left side   ───────────────────────────────   + left
//   from ●───────────── drawn line ────────────────▶● to
//        right side  ───────────────────────────────   + right (negative)

import { clusterPoints } from "../geom/cluster.ts";
import { type Line, lineThrough } from "../geom/line.ts";
import { comparePoints, distance, type Point } from "../geom/point.ts";
import type { Mm } from "../units.ts";
import type { WallSide } from "./face.ts";
import type { Wall } from "./project.ts";
import { TIE_TOLERANCE } from "./tolerance.ts";

/** A wall of the project as it lies under a {@link DrawnWall}. */
export interface WallName {
  readonly id: string;
  /** Drawn against the direction of the {@link DrawnWall}: left and right, from and to change places. */
  readonly isReversed: boolean;
}

/** One wall body, directed to greater x, then y. */
export interface DrawnWall {
  readonly from: Point;
  readonly to: Point;
  /** The drawn line: begins at `from`. */
  readonly line: Line;
  readonly length: Mm;
  readonly thickness: Mm;
  /** Where the two sides lie, measured to the left of the drawn line: left − right = thickness. */
  readonly left: Mm;
  readonly right: Mm;
  /** The walls of the project drawn here; more than one where a wall was drawn twice. */
  readonly names: readonly WallName[];
}

/** The walls of a unit in geometric order, and those too short to have a direction. */
export interface DrawnWalls {
  readonly walls: readonly DrawnWall[];
  readonly degenerate: readonly Wall[];
}

/**
 * Directs, sorts and joins the walls. Only walls drawn twice, which nothing but their names tells apart, are put in
 * the order of their names.
 */
export function directWalls(walls: readonly Wall[]): DrawnWalls {
  const isDegenerate = (wall: Wall) =>
    !(distance(wall.from, wall.to) > TIE_TOLERANCE) || !(wall.thickness > TIE_TOLERANCE);
  const directed = walls.filter((wall) => !isDegenerate(wall)).map(directWall);
  return { walls: joinTwins(directed.sort(compareWalls)), degenerate: walls.filter(isDegenerate) };
}

/** The side of the project's wall that is the given side of its body. */
export function namedSide(side: WallSide, name: WallName): WallSide {
  return name.isReversed ? OTHER_WAY[side] : side;
}

const OTHER_WAY = { left: "right", right: "left", from: "to", to: "from" } as const;

function directWall(wall: Wall): DrawnWall {
  const isReversed = comparePoints(wall.from, wall.to) > 0;
  const [from, to] = isReversed ? [wall.to, wall.from] : [wall.from, wall.to];
  const drawnLeft = wall.justify === "centre" ? 0.5 : wall.justify === "left" ? 0 : 1;
  const share = isReversed ? 1 - drawnLeft : drawnLeft;
  return {
    from,
    to,
    line: lineThrough(from, to),
    length: distance(from, to),
    thickness: wall.thickness,
    left: wall.thickness * share,
    right: -wall.thickness * (1 - share),
    names: [{ id: wall.id, isReversed }],
  };
}

function compareWalls(a: DrawnWall, b: DrawnWall): number {
  const place = comparePoints(a.from, b.from) || comparePoints(a.to, b.to);
  if (place !== 0) return place;
  const body = a.thickness - b.thickness || a.left - b.left;
  if (body !== 0) return body;
  const [idA, idB] = [a.names[0]!.id, b.names[0]!.id];
  return idA < idB ? -1 : idA > idB ? 1 : 0;
}

function joinTwins(walls: readonly DrawnWall[]): DrawnWall[] {
  const node = clusterPoints(
    walls.flatMap((wall) => [wall.from, wall.to]),
    TIE_TOLERANCE,
  );
  const bodies = new Map<string, number>();
  const joined: DrawnWall[] = [];
  walls.forEach((wall, i) => {
    const [from, to] = [node[2 * i]!, node[2 * i + 1]!];
    // An upright wall a hair out of plumb may be directed either way.
    const isTurned = from > to;
    const left = isTurned ? -wall.right : wall.left;
    const key = [Math.min(from, to), Math.max(from, to), wall.thickness, left].join(" ");
    const twin = bodies.get(key);
    if (twin === undefined) {
      bodies.set(key, joined.length);
      joined.push(wall);
      return;
    }
    const body = joined[twin]!;
    const isAgainst = wall.line.ux * body.line.ux + wall.line.uy * body.line.uy < 0;
    const names = wall.names.map((name) => ({ ...name, isReversed: name.isReversed !== isAgainst }));
    joined[twin] = { ...body, names: [...body.names, ...names] };
  });
  return joined;
}
