// The faces of a unit as they are marked out on the slab: settled ends, what stands on the floor, which side is set first.
//
// Everything is worked out in the hand in which the unit is drawn; a mirrored pour gets the reflection of the result,
// so that point 12 of the mirrored sheet is the mirror image of point 12.

import { mirrorFace } from "../../fill/mirror.ts";
import type { FacePiece, FilledFace, UnitFill } from "../../fill/result.ts";
import { ringArea } from "../../geom/ring.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { ringsOf } from "../faceRing.ts";

/** Along which axis a face runs; null: aslant. */
export type Axis = "x" | "y" | null;

export interface SetFace {
  readonly id: string;
  readonly room: string | null;
  readonly walls: readonly string[];
  readonly from: Position;
  readonly to: Position;
  /** Between the two ends, mm; whole along an axis. */
  readonly length: Mm;
  /** Height of the concrete it forms. */
  readonly height: Mm;
  readonly axis: Axis;
  /** Set first: its panels stand on the marks, those of the other side follow by the length of the ties. */
  readonly isReference: boolean;
  /** The end of a wall, closed by a stop-end between the two faces. */
  readonly isFreeEnd: boolean;
  readonly openings: FilledFace["openings"];
  /** The pieces that stand on the floor, by x. */
  readonly floor: readonly FacePiece[];
}

/** Faces that follow each other round a room, a column or the outside, as the assembler walks. */
export interface SetRing {
  readonly room: string | null;
  readonly faces: readonly SetFace[];
  /** True where concrete lies inside the ring. */
  readonly isConcrete: boolean;
}

/** The rings of a unit in the hand in which it is drawn. `isMirrored`: the fill is its reflection. */
export function setRings(fill: Pick<UnitFill, "faces" | "ties">, isMirrored: boolean): readonly SetRing[] {
  const first = new Set(fill.ties.map(({ faces }) => faces[0]));
  const second = new Set(fill.ties.map(({ faces }) => faces[1]));
  const drawn = isMirrored ? fill.faces.map((face) => mirrorFace(face)) : fill.faces;
  return ringsOf(drawn).map(({ faces }): SetRing => {
    const set = faces.map((face) =>
      setFace(face, first.has(face.id) || (face.room !== null && !second.has(face.id))),
    );
    return {
      room: set.find(({ room }) => room !== null)?.room ?? null,
      faces: set,
      isConcrete: ringArea(set.map(({ from }) => from)) > 0,
    };
  });
}

function setFace(face: FilledFace, isReference: boolean): SetFace {
  const [from, to] = face.settled;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return {
    id: face.id,
    room: face.room,
    walls: face.walls,
    from,
    to,
    length: dx === 0 || dy === 0 ? Math.abs(dx + dy) : Math.sqrt(dx * dx + dy * dy),
    height: face.height,
    axis: dy === 0 ? "x" : dx === 0 ? "y" : null,
    isReference,
    isFreeEnd: face.pieces.some(({ family, width }) => family === "stop-end" && width === face.length),
    openings: face.openings,
    floor: face.pieces.filter(({ z }) => z === 0).sort((a, b) => a.x - b.x),
  };
}

/** The place `x` along a face, on whole millimetres: where it is marked and drilled. */
export function placeOn({ from, to, length }: SetFace, x: Mm): Position {
  if (length === 0) return from;
  const share = x / length;
  return [
    Math.round(from[0] + (to[0] - from[0]) * share) + 0,
    Math.round(from[1] + (to[1] - from[1]) * share) + 0,
  ];
}

/**
 * Towards which end of the axis across it a face along an axis is open: on its right, so that a face along +y is open
 * towards +x.
 */
export function openSide({ axis, from, to }: SetFace): -1 | 1 {
  const isAscending = axis === "y" ? to[1] > from[1] : to[0] < from[0];
  return isAscending ? 1 : -1;
}
