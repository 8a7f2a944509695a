// Everything the layout person marks out, in coordinates from one datum.
//
//   y                        The datum is the least corner of the concrete. Where a control line would read less
//   │ K1 ·                   than nothing, that corner reads a round number of metres instead.
//   └────── x
//
// A mirrored pour is the reflection of what is worked out in the hand as drawn, numbers of points and pins included;
// only the datum is taken anew, at the least corner of the reflection.

import { mirrorPosition } from "../../fill/mirror.ts";
import type { UnitFill } from "../../fill/result.ts";
import { distance } from "../../geom/point.ts";
import type { Position, Service, Unit } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { type Control, controlsOf } from "./controls.ts";
import { cornersOf, crosswise, type Diagonal, isOpen, type RoomCheck, roomCheck } from "./diagonals.ts";
import { type LayoutPin, layoutPins, type PinGap } from "./layoutPins.ts";
import { type OpeningMark, openingMarks } from "./openingMarks.ts";
import { type RunningNumber, runningNumbers } from "./running.ts";
import { type SetFace, type SetRing, setRings } from "./setFace.ts";
import { type StakePoint, stakePoints } from "./stakePoints.ts";

/** A wall face aslant: it is marked between two points. */
export interface ObliqueFace {
  readonly points: readonly [string, string];
  readonly length: Mm;
}

export interface SettingOut {
  /** What the least corner of the concrete reads; 0, 0 unless a control line lies before it. */
  readonly corner: Position;
  /** What the far corner of the rectangle round the concrete reads. */
  readonly extent: Position;
  /** Outlines of concrete and of voids in it, the wider before what lies inside. */
  readonly outlines: readonly { readonly isConcrete: boolean; readonly places: readonly Position[] }[];
  readonly faces: readonly SetFace[];
  readonly running: readonly RunningNumber[];
  readonly openings: readonly OpeningMark[];
  readonly points: readonly StakePoint[];
  readonly rooms: readonly RoomCheck[];
  readonly outer: readonly Diagonal[];
  readonly control: readonly Diagonal[];
  readonly controls: readonly Control[];
  readonly oblique: readonly ObliqueFace[];
  readonly services: readonly Service[];
  readonly pins: readonly LayoutPin[];
  readonly gaps: readonly PinGap[];
}

const ROUND = 1000; // mm: what the corner reads is a whole number of metres

/** What to mark out for a unit. `isMirrored`: the fill is the reflection of the unit. */
export function settingOutOf(
  fill: Pick<UnitFill, "faces" | "ties" | "rooms">,
  unit: Pick<Unit, "services" | "controlLines">,
  isMirrored: boolean,
): SettingOut {
  const rings = setRings(fill, isMirrored);
  const drawn = rings.flatMap(({ faces }) => faces);
  const openings = openingMarks(drawn);
  const points = stakePoints(rings, openings, unit.controlLines);
  const { pins, gaps } = layoutPins(drawn, unit.services);
  const outside = rings.filter(({ room, isConcrete }) => room === null && isConcrete);
  const { at, corner } = datumOf(drawn, unit, isMirrored);

  const moved = (one: Diagonal): Diagonal => ({ ...one, from: at(one.from), to: at(one.to) });
  const lines = unit.controlLines.map((line) => ({ ...line, from: at(line.from), to: at(line.to) }));
  const faces = drawn.map((face) => movedFace(face, at, isMirrored));
  const places = faces.flatMap(({ from, to }) => [from, to]);
  return {
    corner,
    extent: [greatest(places, 0), greatest(places, 1)],
    outlines: outlinesOf(rings, at),
    faces,
    running: runningNumbers(faces),
    openings: openings.map((one) => ({
      ...one,
      near: [at(one.near[0]), at(one.near[1])],
      far: [at(one.far[0]), at(one.far[1])],
    })),
    points: points.map((point) => ({
      ...point,
      at: at(point.at),
      open: isMirrored ? mirrorPosition(point.open) : point.open,
    })),
    rooms: roomChecks(rings, points).map((check) => ({
      ...check,
      at: at(check.at),
      corners: check.corners.map(at),
      diagonals: check.diagonals.map(moved),
    })),
    outer: crosswise(outside.flatMap(cornersOf), points).map(moved),
    control: crosswise(
      points.filter(({ kind }) => kind === "control").map((point) => point.at),
      points,
    ).map(moved),
    controls: controlsOf(lines, faces),
    oblique: obliqueFaces(drawn, points),
    services: unit.services.map((service) => ({ ...service, path: service.path.map(at) })),
    pins: pins.map((pin) => ({ ...pin, at: at(pin.at) })),
    gaps: gaps.map((gap) => ({ ...gap, from: at(gap.from), to: at(gap.to) })),
  };
}

/** What a place reads from the datum, the place given in the hand of the fill. */
export function readingOf(
  fill: Pick<UnitFill, "faces" | "rooms" | "ties">,
  unit: Pick<Unit, "controlLines">,
  isMirrored: boolean,
): (place: Position) => Position {
  const drawn = setRings(fill, isMirrored).flatMap(({ faces }) => faces);
  const { at } = datumOf(drawn, unit, isMirrored);
  return (place) => at(isMirrored ? mirrorPosition(place) : place);
}

function datumOf(
  faces: readonly SetFace[],
  { controlLines }: Pick<Unit, "controlLines">,
  isMirrored: boolean,
) {
  const hand = (at: Position): Position => (isMirrored ? mirrorPosition(at) : at);
  const places = faces.flatMap(({ from, to }) => [hand(from), hand(to)]);
  const least: Position = [-greatest(places.map(minus), 0), -greatest(places.map(minus), 1)];
  // A line along y reads x, a line along x reads y: where the line itself ends is nothing that is read.
  const readings = controlLines.map(({ from, to }): Position => {
    const [a, b] = [hand(from), hand(to)];
    const [dx, dy] = [Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1])];
    const far = Number.POSITIVE_INFINITY;
    return dx <= dy ? [Math.min(a[0], b[0]), far] : [far, Math.min(a[1], b[1])];
  });
  const corner = [0, 1].map((axis) => {
    const lowest = readings.reduce(
      (low, reading) => Math.min(low, reading[axis === 0 ? 0 : 1]),
      0 + least[axis === 0 ? 0 : 1],
    );
    return Math.ceil((least[axis === 0 ? 0 : 1] - lowest) / ROUND) * ROUND + 0;
  });
  const [cornerX = 0, cornerY = 0] = corner;
  const at = (place: Position): Position => {
    const [x, y] = hand(place);
    return [x - least[0] + cornerX + 0, y - least[1] + cornerY + 0];
  };
  return { at, corner: [cornerX, cornerY] as const };
}

function minus([x, y]: Position): Position {
  return [-x, -y];
}

function greatest(places: readonly Position[], axis: 0 | 1): Mm {
  return places.length === 0 ? 0 : places.reduce((most, place) => Math.max(most, place[axis]), -Infinity) + 0;
}

// Reflected, a face is walked the other way, so that its open side stays on its right.
function movedFace(face: SetFace, at: (place: Position) => Position, isMirrored: boolean): SetFace {
  const [from, to] = isMirrored ? [at(face.to), at(face.from)] : [at(face.from), at(face.to)];
  return { ...face, from, to };
}

function outlinesOf(rings: readonly SetRing[], at: (place: Position) => Position) {
  const width = (places: readonly Position[]) =>
    greatest(places, 0) +
    greatest(places.map(minus), 0) +
    greatest(places, 1) +
    greatest(places.map(minus), 1);
  return rings
    .map(({ isConcrete, faces }) => ({ isConcrete, places: faces.map(({ from }) => at(from)) }))
    .sort((a, b) => width(b.places) - width(a.places));
}

function roomChecks(rings: readonly SetRing[], points: readonly StakePoint[]): readonly RoomCheck[] {
  return rings
    .filter(({ room, isConcrete }) => room !== null && !isConcrete)
    .map((ring): RoomCheck => {
      const inner = rings.filter((other) => other !== ring && other.isConcrete && other.room === ring.room);
      return { ...roomCheck(ring, inner, points), at: middleOf(ring, inner) };
    });
}

const GRID = 24;

// The place farthest from every face, on a grid over the room.
function middleOf(ring: SetRing, inner: readonly SetRing[]): Position {
  const places = ring.faces.map(({ from }) => from);
  const [right, top] = [greatest(places, 0), greatest(places, 1)];
  const [left, foot] = [-greatest(places.map(minus), 0), -greatest(places.map(minus), 1)];
  const rings = [ring, ...inner];
  let best: { at: Position; clear: Mm } = { at: [(left + right) / 2, (foot + top) / 2], clear: -1 };
  for (let i = 1; i < GRID; i++) {
    for (let k = 1; k < GRID; k++) {
      const at: Position = [left + ((right - left) * i) / GRID, foot + ((top - foot) * k) / GRID];
      if (!isOpen(at, rings)) continue;
      const clear = rings.reduce((least, { faces }) => Math.min(least, nearestFace(at, faces)), Infinity);
      if (clear > best.clear + 1e-6) best = { at, clear };
    }
  }
  return best.at;
}

function nearestFace(at: Position, faces: readonly SetFace[]): Mm {
  return faces.reduce((least, { from, to, length }) => {
    if (length === 0) return least;
    const along = ((at[0] - from[0]) * (to[0] - from[0]) + (at[1] - from[1]) * (to[1] - from[1])) / length;
    const share = Math.max(0, Math.min(1, along / length));
    const foot: Position = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
    return Math.min(least, distance(at, foot));
  }, Infinity);
}

function obliqueFaces(faces: readonly SetFace[], points: readonly StakePoint[]): readonly ObliqueFace[] {
  const named = (at: Position) => points.find((point) => distance(point.at, at) < 0.5)?.id;
  return faces.flatMap((face): readonly ObliqueFace[] => {
    if (face.axis !== null) return [];
    const [from, to] = [named(face.from), named(face.to)];
    return from === undefined || to === undefined
      ? []
      : [{ points: [from, to], length: Math.round(face.length) }];
  });
}
