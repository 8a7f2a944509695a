// Which ring bounds or stands in which room, what each room is called and how large it is.
//
//   ┌───────────────┐
//   │  ┌─────────┐  │     the hole is a room; what stands in it is on its inner rings;
//   │  │   ▣     │  │     outside the outer ring there is no room
//   │  └─────────┘  │
//   └───────────────┘

import { comparePoints, type Point } from "../geom/point.ts";
import { type Box, isInBox, isInside, type Ring as Polygon, ringArea, ringBox } from "../geom/ring.ts";
import type { OutlineFinding, Ring, Room } from "./face.ts";
import type { RoomLabel } from "./project.ts";
import { placeText } from "./wording.ts";

/** Rings with their rooms; faces are filled in by the caller. */
export interface Enclosure {
  readonly rings: readonly Omit<Ring, "faces">[];
  readonly rooms: readonly Room[];
}

interface Loop {
  readonly polygon: Polygon;
  readonly box: Box;
  /** mm², always positive. */
  readonly size: number;
  readonly isOuter: boolean;
}

/** Finds the rooms among the rings, in ring order, and names them by the labels that lie in them. */
export function findRooms(
  polygons: readonly Polygon[],
  labels: readonly RoomLabel[],
  findings: OutlineFinding[],
): Enclosure {
  const loops = polygons.map((polygon): Loop => {
    const area = ringArea(polygon);
    return { polygon, box: ringBox(polygon), size: Math.abs(area), isOuter: area > 0 };
  });
  const holes = loops.flatMap((loop, ring) => (loop.isOuter ? [] : [ring]));
  const roomOfRing = new Map(holes.map((ring, room) => [ring, room] as const));
  const rings = loops.map((loop, ring) => {
    const around = loop.isOuter ? smallestAround(loops, holes, besideRing(loop.polygon)) : ring;
    return { isOuter: loop.isOuter, room: roomOfRing.get(around) ?? null };
  });
  const inner = holes.map((): number[] => []);
  rings.forEach(({ isOuter, room }, ring) => {
    if (isOuter && room !== null) inner[room]!.push(ring);
  });
  const named = placeLabels(loops, { labels, roomOfRing, rings }, findings);
  const names = nameRooms(holes.map((_, room) => named.get(room)?.name ?? null));
  const rooms = holes.map((ring, room): Room => {
    const label = named.get(room);
    const columns = inner[room]!.reduce((sum, column) => sum + loops[column]!.size, 0);
    return {
      name: names[room]!,
      kind: label?.kind ?? null,
      soffitDrop: label?.soffitDrop ?? 0,
      soffitAlong: label?.soffitAlong ?? null,
      ring,
      inner: inner[room]!,
      area: (loops[ring]!.size - columns) / 1e6,
      lowerLeft: loops[ring]!.polygon[0]!,
      isNamed: label !== undefined,
    };
  });
  return { rings, rooms };
}

// A place just inside an outer ring: rings may touch in a corner, but not along an edge.
function besideRing(polygon: Polygon): Point {
  const [a, b] = [polygon[0]!, polygon[1]!];
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

// The smallest of the given loops that has the point inside, −1 where there is none.
function smallestAround(loops: readonly Loop[], among: readonly number[], point: Point): number {
  let best = -1;
  for (const ring of among) {
    const loop = loops[ring]!;
    if (best >= 0 && loop.size >= loops[best]!.size) continue;
    if (isInBox(loop.box, point) && isInside(loop.polygon, point)) best = ring;
  }
  return best;
}

interface Placing {
  readonly labels: readonly RoomLabel[];
  readonly roomOfRing: ReadonlyMap<number, number>;
  readonly rings: readonly { readonly isOuter: boolean; readonly room: number | null }[];
}

// The label of each room: the geometrically first of those that lie in it.
function placeLabels(
  loops: readonly Loop[],
  { labels, roomOfRing }: Placing,
  findings: OutlineFinding[],
): ReadonlyMap<number, RoomLabel> {
  const all = loops.map((_, ring) => ring);
  const named = new Map<number, RoomLabel>();
  for (const label of [...labels].sort(compareLabels)) {
    const ring = smallestAround(loops, all, label.at);
    const room = ring < 0 ? undefined : roomOfRing.get(ring);
    if (room === undefined) {
      findings.push(ring < 0 ? outsideAll(label) : inConcrete(label));
      continue;
    }
    const first = named.get(room);
    if (first === undefined) named.set(room, label);
    else if (!isSameRoom(first, label)) findings.push(namedTwice(first, label));
  }
  return named;
}

function compareLabels(a: RoomLabel, b: RoomLabel): number {
  return comparePoints(a.at, b.at) || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0);
}

function isSameRoom(a: RoomLabel, b: RoomLabel): boolean {
  return (
    a.name === b.name && a.kind === b.kind && a.soffitDrop === b.soffitDrop && a.soffitAlong === b.soffitAlong
  );
}

// Rooms without a name are numbered among themselves, past any number the file has given away.
function nameRooms(names: readonly (string | null)[]): string[] {
  const taken = new Set(names);
  let number = 0;
  return names.map((name) => {
    if (name !== null) return name;
    do number++;
    while (taken.has(`Room ${number}`));
    return `Room ${number}`;
  });
}

function inConcrete(label: RoomLabel): OutlineFinding {
  return {
    severity: "error",
    kind: "room-point-in-wall",
    message: `The point of room "${label.name}" at ${placeText(label.at)} lies in the concrete. Move it into the room.`,
    where: { room: label.name, at: label.at },
  };
}

function outsideAll(label: RoomLabel): OutlineFinding {
  return {
    severity: "warning",
    kind: "room-point-outside",
    message:
      `The point of room "${label.name}" at ${placeText(label.at)} is not enclosed by walls. ` +
      "Close the walls round it, or move it into the room.",
    where: { room: label.name, at: label.at },
  };
}

function namedTwice(first: RoomLabel, second: RoomLabel): OutlineFinding {
  return {
    severity: "warning",
    kind: "room-named-twice",
    message:
      `Rooms "${first.name}" at ${placeText(first.at)} and "${second.name}" at ${placeText(second.at)} are one room; ` +
      `it is called "${first.name}". Draw the wall between them, or take one of the two points out.`,
    where: { room: second.name, at: second.at },
  };
}
