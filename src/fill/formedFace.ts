// The faces that get formed: the faces of the outline, cut where a balcony slab begins or ends along the outside.
//
//   outside ──────────┬── under the slab ──┬────────── outside
//                     flush end            flush end
//
// Also says how each end of a face meets its neighbour and what stands above its panels.

import type { Face, Outline, Room } from "../plan/face.ts";
import type { Position, SlabOutline, Unit } from "../plan/project.ts";
import type { Mm } from "../units.ts";

/**
 * How a face ends. "inside" and "outside" are square corners, "inside-special" and "outside-special" are not square,
 * "flush": the concrete goes straight on in another face.
 */
export type FaceEnd = "inside" | "inside-special" | "outside" | "outside-special" | "flush";

/** What is above the panels: a slab inside ("room"), a slab outside the walls, or nothing but the slab's edge. */
export type Exposure = "room" | "under-slab" | "outside" | "open";

export interface FormedOpposite {
  readonly face: number;
  /** Along this face, mm from its `from`, as drawn. */
  readonly start: Mm;
  readonly end: Mm;
  readonly thickness: Mm;
}

export interface FormedFace {
  readonly index: number;
  readonly outlineFace: Face;
  readonly from: Position;
  readonly to: Position;
  readonly fromEnd: FaceEnd;
  readonly toEnd: FaceEnd;
  readonly next: number;
  readonly previous: number;
  readonly exposure: Exposure;
  readonly room: number | null;
  readonly isFreeEnd: boolean;
  /** Names of the walls it belongs to, along the face. */
  readonly walls: readonly string[];
  readonly opposite: readonly FormedOpposite[];
}

const ALONG = 2; // mm: how near a slab's edge must run to a face to lie along it; the tie tolerance

/**
 * The faces of a unit in the order of the outline.
 *
 * A room without a kind counts as a room; asking is left to the checks.
 */
export function formedFaces(outline: Outline, unit: Unit): readonly FormedFace[] {
  const parts = outline.faces.map((face) => splitPoints(face, unit.slabs));
  const drawn = new Map(unit.walls.map((wall) => [wall.id, wall.thickness]));
  const first: number[] = [];
  let count = 0;
  for (const part of parts) {
    first.push(count);
    count += part.length;
  }
  return outline.faces.flatMap((face) => {
    const own = parts[face.index]!;
    return own.map((part, k): FormedFace => {
      const isFirst = k === 0;
      const isLast = k === own.length - 1;
      const nextParts = parts[face.next]!;
      return {
        index: first[face.index]! + k,
        outlineFace: face,
        from: isFirst ? face.from : along(face, part.start),
        to: isLast ? face.to : along(face, part.end),
        fromEnd: isFirst ? endKind(face.fromCorner) : "flush",
        toEnd: isLast ? endKind(face.toCorner) : "flush",
        next: isLast ? first[face.next]! : first[face.index]! + k + 1,
        previous: isFirst
          ? first[face.previous]! + parts[face.previous]!.length - 1
          : first[face.index]! + k - 1,
        exposure: part.underSlab ? "under-slab" : exposureOf(face, outline.rooms),
        room: face.room,
        isFreeEnd: face.isFreeEnd && own.length === 1 && nextParts.length > 0,
        walls: wallsWithin(face, part.start, part.end),
        opposite: oppositeWithin(face, part, { parts, first, faces: outline.faces, drawn }),
      };
    });
  });
}

interface Part {
  readonly start: Mm;
  readonly end: Mm;
  readonly underSlab: boolean;
}

function endKind(corner: Face["fromCorner"]): FaceEnd {
  return corner.isSquare ? corner.turn : `${corner.turn}-special`;
}

function exposureOf(face: Face, rooms: readonly Room[]): Exposure {
  if (face.room === null) return "outside";
  return rooms[face.room]!.kind === "open" ? "open" : "room";
}

function along(face: Face, distance: Mm): Position {
  const t = distance / face.length;
  return [face.from[0] + (face.to[0] - face.from[0]) * t, face.from[1] + (face.to[1] - face.from[1]) * t];
}

// Where slab outlines run along an outside face. Inside a room or a courtyard a slab outline has no meaning here.
function splitPoints(face: Face, slabs: readonly SlabOutline[]): readonly Part[] {
  const whole: Part = { start: 0, end: face.length, underSlab: false };
  if (face.room !== null || slabs.length === 0) return [whole];
  const covered = slabs
    .flatMap((slab) =>
      slab.outline.map((p, k) => edgeAlong(face, p, slab.outline[(k + 1) % slab.outline.length]!)),
    )
    .filter((stretch) => stretch !== null)
    .sort((a, b) => a[0] - b[0]);
  const parts: Part[] = [];
  let reached = 0;
  for (const [start, end] of covered) {
    if (end <= reached + ALONG) continue;
    const begin = Math.max(start, reached);
    if (begin > reached + ALONG) parts.push({ start: reached, end: begin, underSlab: false });
    const previous = parts[parts.length - 1];
    if (previous?.underSlab && begin <= previous.end) parts[parts.length - 1] = { ...previous, end };
    else parts.push({ start: begin > reached + ALONG ? begin : reached, end, underSlab: true });
    reached = end;
  }
  if (reached < face.length - ALONG) parts.push({ start: reached, end: face.length, underSlab: false });
  else if (parts.length > 0) parts[parts.length - 1] = { ...parts[parts.length - 1]!, end: face.length };
  return parts.length > 0 ? parts : [whole];
}

function edgeAlong(face: Face, p: Position, q: Position): readonly [Mm, Mm] | null {
  const ux = (face.to[0] - face.from[0]) / face.length;
  const uy = (face.to[1] - face.from[1]) / face.length;
  const offset = (r: Position) => ux * (r[1] - face.from[1]) - uy * (r[0] - face.from[0]);
  if (Math.abs(offset(p)) > ALONG || Math.abs(offset(q)) > ALONG) return null;
  const distance = (r: Position) => ux * (r[0] - face.from[0]) + uy * (r[1] - face.from[1]);
  const start = Math.max(0, Math.min(distance(p), distance(q)));
  const end = Math.min(face.length, Math.max(distance(p), distance(q)));
  return end - start > ALONG ? [start, end] : null;
}

function wallsWithin(face: Face, start: Mm, end: Mm): readonly string[] {
  const names: string[] = [];
  for (const part of face.walls) {
    if (part.start < end - ALONG && part.end > start + ALONG && !names.includes(part.wall))
      names.push(part.wall);
  }
  if (names.length === 0 && face.walls[0] !== undefined) names.push(face.walls[0].wall);
  return names;
}

function oppositeWithin(
  face: Face,
  own: Part,
  all: {
    parts: readonly (readonly Part[])[];
    first: readonly number[];
    faces: readonly Face[];
    drawn: ReadonlyMap<string, Mm>;
  },
): readonly FormedOpposite[] {
  const found: FormedOpposite[] = [];
  for (const pair of face.opposite) {
    const other = all.parts[pair.face]!;
    const otherFace = all.faces[pair.face]!;
    other.forEach((part, k) => {
      // The opposite face runs the other way: its stretch, seen along this face, is turned round.
      const [a, b] = other.length === 1 ? [pair.start, pair.end] : seenFrom(face, otherFace, part);
      const start = Math.max(own.start, pair.start, a);
      const end = Math.min(own.end, pair.end, b);
      if (end - start <= 0) return;
      found.push({
        face: all.first[pair.face]! + k,
        start: start - own.start,
        end: end - own.start,
        thickness: drawnThickness(wallsWithin(face, start, end), pair.thickness, all.drawn),
      });
    });
  }
  return found;
}

// A face brought flush by a hair leaves the wall as thick as drawn: its ties and ends are ordered for that thickness.
function drawnThickness(walls: readonly string[], measured: Mm, drawn: ReadonlyMap<string, Mm>): Mm {
  let best = measured;
  let nearest = ALONG;
  for (const wall of walls) {
    const thickness = drawn.get(wall) ?? measured;
    const off = Math.abs(thickness - measured);
    if (off > nearest || (off === nearest && thickness >= best)) continue;
    nearest = off;
    best = thickness;
  }
  return best;
}

function seenFrom(face: Face, other: Face, part: Part): readonly [Mm, Mm] {
  const ux = (face.to[0] - face.from[0]) / face.length;
  const uy = (face.to[1] - face.from[1]) / face.length;
  const at = (distance: Mm) => {
    const p = along(other, distance);
    return ux * (p[0] - face.from[0]) + uy * (p[1] - face.from[1]);
  };
  const a = at(part.start);
  const b = at(part.end);
  return a < b ? [a, b] : [b, a];
}
