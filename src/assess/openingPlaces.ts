// The openings of a fill, each once, with the thickness of its wall and the corner its jamb stands near.

import type { FaceOpening, FilledFace, UnitFill } from "../fill/result.ts";
import { asideOfLine, lineThrough } from "../geom/line.ts";
import type { Position } from "../plan/project.ts";
import type { Mm } from "../units.ts";

export interface PlacedOpening {
  readonly opening: FaceOpening;
  readonly face: FilledFace;
  /** Middle of the opening on the face. */
  readonly at: Position;
  /** null where only one face of the wall shows the opening. */
  readonly thickness: Mm | null;
  /** Leg of the nearest inside corner within {@link NEAR} of a jamb, on either face; 0: none is that near. */
  readonly cornerLeg: Mm;
}

/** So near an inside corner a jamb takes the thrust of the corner's leg, mm. Common practice, no source. */
export const NEAR: Mm = 600;

/** In the order of the faces. */
export function placedOpenings(fill: UnitFill): readonly PlacedOpening[] {
  const first = new Map<string, { face: FilledFace; opening: FaceOpening }>();
  const second = new Map<string, { face: FilledFace; opening: FaceOpening }>();
  for (const face of fill.faces) {
    for (const opening of face.openings) {
      const known = first.has(opening.id) ? second : first;
      if (!known.has(opening.id)) known.set(opening.id, { face, opening });
    }
  }
  return [...first.values()].map(({ face, opening }): PlacedOpening => {
    const other = second.get(opening.id);
    const legs = [{ face, opening }, ...(other === undefined ? [] : [other])].map((each) => legNear(each));
    return {
      opening,
      face,
      at: pointOn(face, opening.x + opening.width / 2),
      thickness:
        other === undefined ? null : Math.abs(asideOfLine(lineThrough(face.from, face.to), other.face.from)),
      cornerLeg: Math.max(...legs),
    };
  });
}

function legNear({ face, opening }: { face: FilledFace; opening: FaceOpening }): Mm {
  const corners = face.pieces.filter(({ family }) => family === "inside-corner");
  const near = corners.filter(({ x, width }) => {
    const before = opening.x - x;
    const behind = x + width - (opening.x + opening.width);
    return (before > 0 && before <= NEAR) || (behind > 0 && behind <= NEAR);
  });
  return near.reduce((widest, { width }) => Math.max(widest, width), 0);
}

/** The point of the plan at a place along a face. */
export function pointOn({ from, to, length }: FilledFace, x: Mm): Position {
  const part = length === 0 ? 0 : x / length;
  return [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part];
}
