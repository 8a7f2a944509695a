// Settles the drawing on whole millimetres, line by line of wall, before anything is filled.
//
//   face L   ──┐ corner          jamb     jamb            ┌──
//   face R  ───┘ corner          jamb     jamb            └───    → one place for both faces, rounded once
//
// A line of wall is a set of faces that stand opposite one another. Places are projected on it, directed to greater
// x, then greater y; places within the tie tolerance become one, the lower; each is rounded half up. Last, a jamb or a
// free end within the tolerance of the end of a corner leg goes to it.

import type { Position } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { FormedFace } from "./formedFace.ts";

/** What a place is, in words for a sentence, and whether it may still move to the end of a corner leg. */
export interface PlaceInput {
  readonly at: Mm;
  readonly label: string;
  readonly isMovable: boolean;
}

/** A place after settling. `drawn` keeps where it was. */
export interface Place {
  readonly drawn: Mm;
  readonly label: string;
  value: Mm;
}

export interface LineOfWall {
  readonly direction: Position;
  /** Indices of the formed faces, ascending. */
  readonly faces: readonly number[];
}

const ROUNDING_NOISE = 1e-6; // mm: what projecting on an oblique line may lose

/** Rounds half up: 2.5 → 3, −2.5 → −2. */
export function roundHalfUp(value: Mm): Mm {
  return Math.floor(value + 0.5 + ROUNDING_NOISE) + 0;
}

/** Distance along a line of wall. */
export function placeOf(direction: Position, p: Position): Mm {
  // An axis-parallel line keeps the coordinate itself, free of any rounding.
  if (direction[1] === 0) return p[0];
  if (direction[0] === 0) return p[1];
  return direction[0] * p[0] + direction[1] * p[1];
}

/** The lines of wall, by their first face. Every face is on exactly one. */
export function linesOfWall(faces: readonly FormedFace[]): readonly LineOfWall[] {
  const parent = faces.map((_, k) => k);
  const root = (k: number): number => {
    let at = k;
    while (parent[at] !== at) {
      parent[at] = parent[parent[at]!]!;
      at = parent[at]!;
    }
    return at;
  };
  for (const face of faces) {
    for (const pair of face.opposite) {
      const a = root(face.index);
      const b = root(pair.face);
      if (a !== b) parent[Math.max(a, b)] = Math.min(a, b);
    }
  }
  const members = new Map<number, number[]>();
  for (const face of faces) {
    const key = root(face.index);
    const list = members.get(key);
    if (list === undefined) members.set(key, [face.index]);
    else list.push(face.index);
  }
  return [...members.values()].map((indices) => ({ direction: directionOf(faces, indices), faces: indices }));
}

const STRAIGHT_WITHIN = 2; // mm: the tie tolerance
const HAIR_SLOPE = 0.01; // about half a degree

// The longest face gives the direction: on a drawing a hair off square it is the least uncertain.
function directionOf(faces: readonly FormedFace[], indices: readonly number[]): Position {
  let best: FormedFace = faces[indices[0]!]!;
  for (const index of indices) {
    const face = faces[index]!;
    if (face.outlineFace.length > best.outlineFace.length) best = face;
  }
  const dx = best.outlineFace.to[0] - best.outlineFace.from[0];
  const dy = best.outlineFace.to[1] - best.outlineFace.from[1];
  const length = Math.sqrt(dx * dx + dy * dy);
  // Off the axis by no more than the tolerance over its length, and by no real angle: meant to be parallel to it.
  const hair = Math.min(STRAIGHT_WITHIN, length * HAIR_SLOPE);
  if (Math.abs(dy) <= hair) return [1, 0];
  if (Math.abs(dx) <= hair) return [0, 1];
  const sign = dx > 0 ? 1 : -1;
  return [(sign * dx) / length, (sign * dy) / length];
}

/** Rounds the places of one line in place of use: equal groups share one settled value. Cost: n log n. */
export function settlePlaces(inputs: readonly PlaceInput[], tolerance: Mm): readonly Place[] {
  const order = inputs.map((_, k) => k).sort((a, b) => inputs[a]!.at - inputs[b]!.at);
  const places: Place[] = inputs.map((input) => ({ drawn: input.at, label: input.label, value: 0 }));
  let lowest = Number.NEGATIVE_INFINITY;
  for (const k of order) {
    const at = inputs[k]!.at;
    if (at - lowest > tolerance + ROUNDING_NOISE) lowest = at;
    places[k]!.value = roundHalfUp(lowest);
  }
  return places;
}

/**
 * Moves jambs and free ends to the end of a corner leg that lies within the tolerance.
 *
 * A place that shares its group with a corner stays: the corner decides there.
 */
export function moveToLegEnds(
  inputs: readonly PlaceInput[],
  places: readonly Place[],
  legEnds: readonly Mm[],
  tolerance: Mm,
): void {
  if (legEnds.length === 0) return;
  const ends = [...new Set(legEnds)].sort((a, b) => a - b);
  const fixed = new Set<Mm>();
  inputs.forEach((input, k) => {
    if (!input.isMovable) fixed.add(places[k]!.value);
  });
  inputs.forEach((input, k) => {
    const place = places[k]!;
    if (!input.isMovable || fixed.has(place.value)) return;
    let nearest: Mm | null = null;
    for (const end of ends) {
      const distance = Math.abs(end - place.value);
      if (distance <= tolerance && (nearest === null || distance < Math.abs(nearest - place.value)))
        nearest = end;
    }
    if (nearest !== null) place.value = nearest;
  });
}
