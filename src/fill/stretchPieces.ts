// What stands on one free interval or zone of a filled unit, and what forces the joints at its two ends.
//
//   ├leg┤ 100 │ 600 │ 600 │ 600 ├ jamb        A: the corner leg of wall 3      B: the jamb of door 2

import type { Mm } from "../units.ts";
import { bandOpenings } from "./corners.ts";
import type { FilledUnit } from "./fillWalls.ts";
import { xOf } from "./onFace.ts";
import type { OrderedPiece } from "./order.ts";
import type { SettledFace } from "./settled.ts";
import type { ForcedJoint, Stretch } from "./stretches.ts";

/** What forces a joint: moving that moves the joint. */
export type JointCause =
  /** The end of an inside corner's leg; `walls` are those across, that the corner leans on. */
  | { readonly kind: "leg"; readonly walls: readonly string[] }
  | { readonly kind: "jamb"; readonly opening: string }
  | { readonly kind: "free-end"; readonly wall: string }
  /** A corner without leg, or the end of the wall opposite. */
  | { readonly kind: "end"; readonly walls: readonly string[] };

/** A joint on a face. */
export interface FaceJoint {
  readonly x: Mm;
  /** Its place on the line of wall. */
  readonly at: Mm;
  /** All that force it; none where only the drawing of the wall itself does. */
  readonly causes: readonly JointCause[];
}

/** A piece of the sequence where it stands on the face. */
export interface PlacedWidth extends OrderedPiece {
  readonly x: Mm;
}

/** A free interval or zone as the person facing it sees it. */
export interface SeenStretch {
  readonly stretch: Stretch;
  readonly isZone: boolean;
  readonly x: Mm;
  readonly length: Mm;
  readonly left: FaceJoint;
  readonly right: FaceJoint;
  /** Left to right; empty where the stretch could not be covered. */
  readonly pieces: readonly PlacedWidth[];
}

/**
 * The stretches of a face from left to right; none on a free end, which its stop-end closes.
 *
 * @param face - index in the fill's list of faces
 */
export function stretchesSeen(filled: FilledUnit, face: number): readonly SeenStretch[] {
  const settled = filled.drafts[face]!.settled;
  if (settled.formed.isFreeEnd) return [];
  const seen = filled.stretches[face]!.map((stretch): SeenStretch => {
    const low = jointSeen(stretch.lowJoint, stretch, filled);
    const high = jointSeen(stretch.highJoint, stretch, filled);
    return {
      stretch,
      isZone: stretch.opposite === null,
      x: xOf(settled, stretch.low, stretch.high),
      length: stretch.high - stretch.low,
      left: settled.isReversed ? high : low,
      right: settled.isReversed ? low : high,
      pieces: piecesSeen(filled, stretch),
    };
  });
  return seen.sort((a, b) => a.x - b.x);
}

/** The stretch of a face that holds the place `x`; null in corners, openings and what is unfilled. */
export function stretchAt(filled: FilledUnit, face: number, x: Mm): SeenStretch | null {
  return stretchesSeen(filled, face).find((seen) => seen.x <= x && x < seen.x + seen.length) ?? null;
}

/** The sequence of a stretch from low to high along the line of wall. */
export function lowToHigh<T>(face: SettledFace, leftToRight: readonly T[]): readonly T[] {
  return face.isReversed ? [...leftToRight].reverse() : leftToRight;
}

function piecesSeen({ drafts }: FilledUnit, stretch: Stretch): readonly PlacedWidth[] {
  const { settled, parts } = drafts[stretch.face]!;
  const own = parts.flatMap((part): readonly PlacedWidth[] => {
    if (part.kind !== "panel" && part.kind !== "closure") return [];
    if (part.low < stretch.low || part.high > stretch.high) return [];
    return [{ x: xOf(settled, part.low, part.high), width: part.high - part.low, kind: part.kind }];
  });
  return [...own].sort((a, b) => a.x - b.x);
}

function jointSeen({ at, corners }: ForcedJoint, stretch: Stretch, filled: FilledUnit): FaceJoint {
  const settled = filled.drafts[stretch.face]!.settled;
  const causes = [
    ...legCauses(corners, settled, filled),
    ...jambCauses(at, stretch, filled),
    ...(corners.length === 0 ? endCauses(at, settled, filled) : []),
  ];
  return { x: settled.isReversed ? settled.high - at : at - settled.low, at, causes };
}

// A corner stands between the face that begins there and the one before; the one off this line is across.
function legCauses(corners: readonly number[], settled: SettledFace, { drafts }: FilledUnit) {
  return corners.map((corner): JointCause => {
    const begins = drafts[corner]!.settled;
    const before = drafts[begins.formed.previous]!.settled;
    const across = begins.line === settled.line ? before : begins;
    return { kind: "leg", walls: across.formed.walls };
  });
}

function jambCauses(at: Mm, stretch: Stretch, { drafts }: FilledUnit): readonly JointCause[] {
  const faces = stretch.opposite === null ? [stretch.face] : [stretch.face, stretch.opposite];
  const found = new Set<string>();
  for (const face of faces) {
    for (const opening of bandOpenings(drafts[face]!.settled)) {
      if (opening.low === at || opening.high === at) found.add(opening.placed.opening.id);
    }
  }
  return [...found].map((opening) => ({ kind: "jamb", opening }));
}

// Where a face of this line of wall ends: at a free end, or at the wall across.
function endCauses(at: Mm, settled: SettledFace, { drafts }: FilledUnit): readonly JointCause[] {
  const causes = new Map<string, JointCause>();
  for (const { settled: face } of drafts) {
    if (face.line !== settled.line || face.length === 0) continue;
    const isLow = face.low === at;
    if (!isLow && face.high !== at) continue;
    const neighbour = drafts[isLow === face.isReversed ? face.formed.next : face.formed.previous]!.settled;
    const wall = face.formed.walls[0] ?? "";
    if (neighbour.formed.isFreeEnd) causes.set(`free ${wall}`, { kind: "free-end", wall });
    else if (neighbour.line !== settled.line) {
      const walls = neighbour.formed.walls;
      causes.set(`end ${walls.join(" ")}`, { kind: "end", walls });
    }
  }
  return [...causes.values()];
}
