// The openings of a unit with their jambs on both faces of the wall: what is marked, and on which side first.
//
//   other face      ─────┐      ┌─────
//                        │ void │           jambs are marked on the face that is set first
//   reference face  ─────┘      └─────

import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { type Axis, placeOn, type SetFace } from "./setFace.ts";

export interface OpeningMark {
  readonly id: string;
  readonly width: Mm;
  readonly sill: Mm;
  readonly head: Mm;
  /** Boxed out between unbroken panels: nothing of it is marked on the floor. */
  readonly isBoxed: boolean;
  readonly axis: Axis;
  /** One side of it is outside. */
  readonly isOutside: boolean;
  /** The face on which it is marked, by name. */
  readonly face: string;
  /** Its two jambs on that face, left to right for a person before it. */
  readonly near: readonly [Position, Position];
  /** The same two jambs on the other face of the wall; those of the near face where no other has it. */
  readonly far: readonly [Position, Position];
}

/** Openings in the order in which their faces are walked. */
export function openingMarks(faces: readonly SetFace[]): readonly OpeningMark[] {
  const sides = new Map<string, SetFace[]>();
  for (const face of faces) {
    for (const { id } of face.openings) sides.set(id, [...(sides.get(id) ?? []), face]);
  }
  const marks: OpeningMark[] = [];
  for (const face of faces) {
    for (const opening of [...face.openings].sort((a, b) => a.x - b.x)) {
      const both = sides.get(opening.id) ?? [face];
      const near = both.find(({ isReference }) => isReference) ?? both[0];
      if (near !== face) continue;
      const other = both.find((one) => one !== face);
      const own = jambs(face, opening.id);
      const { id, width, sill, head } = opening;
      marks.push({
        ...{ id, width, sill, head },
        isBoxed: opening.formed === "box",
        axis: face.axis,
        isOutside: both.some(({ room }) => room === null),
        face: face.id,
        near: own,
        far: other === undefined ? own : turned(jambs(other, id)),
      });
    }
  }
  return marks;
}

function jambs(face: SetFace, id: string): readonly [Position, Position] {
  const opening = face.openings.find((one) => one.id === id);
  if (opening === undefined) return [face.from, face.to];
  return [placeOn(face, opening.x), placeOn(face, opening.x + opening.width)];
}

// Seen from the other side of the wall left is right.
function turned([a, b]: readonly [Position, Position]): readonly [Position, Position] {
  return [b, a];
}
