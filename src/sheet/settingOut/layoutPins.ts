// The layout pins along both faces of every wall, clear of every service, and the stretches where none can stand.
//
//   ·    ·    ·  ╱╱○╱   ·        A pin in the clearance of a service gives way to the nearest place that is free and
//   ───────────╱s1╱──────        keeps the pitch; where there is none the stretch is listed with the service.
//
// Pins stand where there is concrete at the floor: not in a door, but under a window, whose panels need them too.

import { distanceToPath } from "../../geom/path.ts";
import type { Position, Service } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { PIN_RULES, pinRow } from "./pinRow.ts";
import { placeOn, type SetFace } from "./setFace.ts";

export interface LayoutPin {
  readonly at: Position;
  /** Name of its face. */
  readonly face: string;
  /** Services it gave way to; empty where it stands as it would without any. */
  readonly movedOff: readonly string[];
}

/** A stretch of a face without the pins it should have. */
export interface PinGap {
  readonly face: string;
  readonly from: Position;
  readonly to: Position;
  readonly length: Mm;
  /** The services in the way. */
  readonly services: readonly string[];
}

export interface LayoutPins {
  readonly pins: readonly LayoutPin[];
  readonly gaps: readonly PinGap[];
}

/** Pins of the faces in the order given, along each face. Cost: about the length of the walls, less where services are far. */
export function layoutPins(faces: readonly SetFace[], services: readonly Service[]): LayoutPins {
  const found = faces.filter(({ isFreeEnd }) => !isFreeEnd).map((face) => pinsOf(face, services));
  return { pins: found.flatMap(({ pins }) => pins), gaps: found.flatMap(({ gaps }) => gaps) };
}

function pinsOf(face: SetFace, services: readonly Service[]): LayoutPins {
  const pins: LayoutPin[] = [];
  const gaps: PinGap[] = [];
  const near = services.filter((service) => isNear(face, service));
  const blocking = (x: Mm) => {
    const at = placeOn(face, x);
    return near.filter(({ path, clearance }) => distanceToPath(at, path) < clearance);
  };
  for (const [low, high] of floorStretches(face)) {
    const stands = (x: Mm) => !isBarred(face, x);
    const stretch = {
      low,
      high,
      pieces: face.floor
        .map(({ x, width }) => ({ low: x, high: x + width }))
        .filter((piece) => piece.high > low && piece.low < high),
    };
    const wished = pinRow({ ...stretch, isFree: stands });
    const lost = wished.filter((x) => blocking(x).length > 0);
    const row =
      lost.length === 0
        ? wished
        : pinRow({ ...stretch, isFree: (x) => stands(x) && blocking(x).length === 0, keep: wished });
    for (const x of row) {
      const movedOff = wished.includes(x) ? [] : namesOf(nearest(lost, x).flatMap(blocking));
      pins.push({ at: placeOn(face, x), face: face.id, movedOff });
    }
    if (lost.length > 0) gaps.push(...gapsOf({ face, low, high, row, lost, blocking }));
  }
  return { pins, gaps };
}

function isNear(face: SetFace, { path, clearance }: Service): boolean {
  const reach = clearance + 1;
  const within = (axis: 0 | 1) => {
    const [a, b] = [Math.min(face.from[axis], face.to[axis]), Math.max(face.from[axis], face.to[axis])];
    const places = path.map((place) => place[axis]);
    return Math.min(...places) - reach <= b && Math.max(...places) + reach >= a;
  };
  return path.length > 0 && within(0) && within(1);
}

/** Where the face has concrete at the floor: less the openings that reach down to it. */
function floorStretches({ length, openings }: SetFace): readonly (readonly [Mm, Mm])[] {
  const found: (readonly [Mm, Mm])[] = [];
  let low = 0;
  for (const opening of [...openings].sort((a, b) => a.x - b.x)) {
    if (opening.sill > 0) continue;
    if (opening.x > low) found.push([low, opening.x]);
    low = Math.max(low, opening.x + opening.width);
  }
  if (length > low) found.push([low, length]);
  return found;
}

// Not behind a closure, which is cut on the spot and has no foot of its own, and not on the jamb line of a window.
function isBarred({ floor, openings }: SetFace, x: Mm): boolean {
  const isBehindClosure = floor.some(
    (piece) => piece.family === "closure-strip" && x >= piece.x && x <= piece.x + piece.width,
  );
  const isOnJamb = openings.some(
    (opening) =>
      opening.formed === "band" &&
      [opening.x, opening.x + opening.width].some((jamb) => Math.abs(jamb - x) < PIN_RULES.leastEnd),
  );
  return isBehindClosure || isOnJamb;
}

function gapsOf(row: {
  readonly face: SetFace;
  readonly low: Mm;
  readonly high: Mm;
  readonly row: readonly Mm[];
  readonly lost: readonly Mm[];
  readonly blocking: (x: Mm) => readonly Service[];
}): readonly PinGap[] {
  const { face, low, high, lost, blocking } = row;
  const places = [low, ...row.row, high];
  return places.slice(1).flatMap((end, k): readonly PinGap[] => {
    const start = places[k]!;
    const isEnd = k === 0 || k === places.length - 2;
    const inside = lost.filter((x) => x > start && x < end);
    const limit = isEnd ? PIN_RULES.greatestEnd : PIN_RULES.greatestGap;
    if (end - start <= limit || inside.length === 0) return [];
    const services = namesOf(inside.flatMap(blocking));
    return [
      {
        face: face.id,
        from: placeOn(face, start),
        to: placeOn(face, end),
        length: Math.round(end - start),
        services,
      },
    ];
  });
}

function nearest(places: readonly Mm[], x: Mm): readonly Mm[] {
  return [...places].sort((a, b) => Math.abs(a - x) - Math.abs(b - x) || a - b).slice(0, 1);
}

function namesOf(services: readonly Service[]): readonly string[] {
  return [...new Set(services.map(({ id }) => id))].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
}
