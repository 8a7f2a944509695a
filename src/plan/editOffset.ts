// Walls drawn again beside themselves: parallel copies at a distance, mitred where the originals meet two and two.
//
//   ●━━━━━━━━━━●          distance to the left of the first wall (negative: to its right); the others of its chain
//   ┊  ●━━━━━━━━          follow on the same side of the chain, whichever way they were drawn

import { intersectLines, type Line, offsetLine, pointAt } from "../geom/line.ts";
import type { Mm } from "../units.ts";
import {
  type Entry,
  freshId,
  ID_PREFIX,
  type ItemRef,
  listed,
  nextRank,
  put,
  type UnitDraft,
} from "./document.ts";
import {
  endAt,
  LEAST_WALL,
  spanLength,
  tidyPosition,
  type WallEnd,
  wallLength,
  wallLine,
} from "./editAxis.ts";
import { done, type EditOutcome, refused } from "./editOutcome.ts";
import type { Position, Wall } from "./project.ts";

export interface OffsetWalls {
  readonly kind: "offset-walls";
  readonly unit: string;
  readonly walls: readonly string[];
  readonly distance: Mm;
}

interface Neighbour {
  readonly wall: Entry<Wall>;
  readonly end: WallEnd;
}

export function offsetWalls(unit: UnitDraft, edit: OffsetWalls): EditOutcome {
  const wanted = new Set(edit.walls);
  const walls = listed(unit.walls).filter(({ id }) => wanted.has(id));
  if (walls.length < wanted.size || walls.length === 0) return refused("no-such-item");
  if (edit.distance === 0) return refused("bad-size");
  const lines = offsetLines(walls, edit.distance);
  const copies: Wall[] = [];
  for (const wall of walls) {
    const from = offsetEnd(walls, lines, wall, "from");
    const to = offsetEnd(walls, lines, wall, "to");
    const { ux, uy } = wallLine(wall);
    const isTurned = (to[0] - from[0]) * ux + (to[1] - from[1]) * uy <= 0;
    if (isTurned || spanLength(from, to) < LEAST_WALL) return refused("offset-too-far", wall.id);
    copies.push({ ...wall, from, to });
  }
  const made: ItemRef[] = [];
  for (const copy of copies) {
    const id = freshId(unit.walls, ID_PREFIX.walls);
    put(unit.walls, { ...copy, id, rank: nextRank(unit.walls) });
    made.push({ bucket: "walls", id });
  }
  return done(made);
}

// The copies' lines. A neighbour drawn against the way of the wall it was reached from lies on its other side.
function offsetLines(walls: readonly Entry<Wall>[], distance: Mm): Map<string, Line> {
  const sides = new Map<string, Mm>();
  for (const first of walls) {
    if (sides.has(first.id)) continue;
    sides.set(first.id, distance);
    const queue = [first];
    for (const wall of queue) {
      for (const end of ["from", "to"] as const) {
        const next = neighbourAt(walls, wall, end);
        if (next === null || sides.has(next.wall.id)) continue;
        const side = sides.get(wall.id) ?? distance;
        sides.set(next.wall.id, next.end === end ? -side : side);
        queue.push(next.wall);
      }
    }
  }
  return new Map(walls.map((wall) => [wall.id, offsetLine(wallLine(wall), sides.get(wall.id) ?? distance)]));
}

function offsetEnd(
  walls: readonly Entry<Wall>[],
  lines: ReadonlyMap<string, Line>,
  wall: Entry<Wall>,
  end: WallEnd,
): Position {
  const own = lines.get(wall.id) ?? wallLine(wall);
  const next = neighbourAt(walls, wall, end);
  const other = next && lines.get(next.wall.id);
  const mitre = other ? intersectLines(own, other) : null;
  return tidyPosition(mitre ?? pointAt(own, end === "from" ? 0 : wallLength(wall), 0));
}

// The one other chosen wall with an end at this joint; null where none or several meet there.
function neighbourAt(walls: readonly Entry<Wall>[], wall: Entry<Wall>, end: WallEnd): Neighbour | null {
  const found: Neighbour[] = [];
  for (const other of walls) {
    const meets = other.id === wall.id ? null : endAt(other, wall[end]);
    if (meets !== null) found.push({ wall: other, end: meets });
  }
  const [only] = found;
  return found.length === 1 && only !== undefined ? only : null;
}
