// Running dimensions: one number for each wall face along an axis, all from the one datum, never chained.

import type { Mm } from "../../units.ts";
import { openSide, type SetFace } from "./setFace.ts";

export interface RunningNumber {
  /** The axis along which it is measured: "x" for faces that run along y. */
  readonly axis: "x" | "y";
  readonly at: Mm;
  /** On which side of the line the room or the open air is: −1 towards the datum, 1 away from it. */
  readonly open: -1 | 1;
  /** Some face on the line is set first. */
  readonly isReference: boolean;
  /** Stretches of the other axis in which there are such faces. */
  readonly spans: readonly (readonly [low: Mm, high: Mm])[];
}

/** Numbers of both axes, ascending along x, then along y. Faces aslant have none: their end points are listed. */
export function runningNumbers(faces: readonly SetFace[]): readonly RunningNumber[] {
  return (["x", "y"] as const).flatMap((axis) => {
    const coordinate = axis === "x" ? 0 : 1;
    const crossing = faces.filter((face) => face.axis === (axis === "x" ? "y" : "x") && face.length > 0);
    const places = [...new Set(crossing.map(({ from }) => from[coordinate]))].sort((a, b) => a - b);
    return places.map((at): RunningNumber => {
      const own = crossing.filter(({ from }) => from[coordinate] === at);
      const openness = own.reduce((sum, face) => sum + openSide(face) * face.length, 0);
      return {
        axis,
        at,
        open: openness < 0 ? -1 : 1,
        isReference: own.some(({ isReference }) => isReference),
        spans: own.map((face) => spanOf(face, coordinate === 0 ? 1 : 0)),
      };
    });
  });
}

function spanOf({ from, to }: SetFace, along: 0 | 1): readonly [Mm, Mm] {
  return [Math.min(from[along], to[along]), Math.max(from[along], to[along])];
}
