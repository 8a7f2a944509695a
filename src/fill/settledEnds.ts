// Where the two ends of every face are once the plan is settled: what is marked out on the slab.
//
//        x(g)        A corner between a face along x and one along y takes its y from the first and its x from the
//   f ────┐ y(f)     second, so that every face along an axis is straight and true to it. Where the lines of a
//         │ g        face's two neighbours settled apart, the lower place stands, as it does for places on one line.

import type { Position } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import { roundHalfUp } from "./lines.ts";
import type { SettledEnds } from "./result.ts";
import type { SettledFace } from "./settled.ts";

/** The settled ends of every face, in the order given. Neighbours share their corner exactly. */
export function settledEnds(faces: readonly SettledFace[]): readonly SettledEnds[] {
  const across = faces.map((face) => acrossOf(face, faces));
  const coordinate = (face: SettledFace, axis: 0 | 1): Mm => {
    const both = [face, faces[face.formed.previous]!];
    const crossing = both.find((one) => one.direction[axis] === 0);
    if (crossing !== undefined) return across[crossing.index]!;
    const along = both.find((one) => one.direction[axis] === 1);
    if (along !== undefined) return placeAt(along, along === face ? "from" : "to");
    return roundHalfUp(face.formed.from[axis]);
  };
  const starts = faces.map((face): Position => [coordinate(face, 0), coordinate(face, 1)]);
  return faces.map((face, k): SettledEnds => [starts[k]!, starts[face.formed.next]!]);
}

function placeAt(face: SettledFace, end: "from" | "to"): Mm {
  return (end === "from") === face.isReversed ? face.high : face.low;
}

// The one coordinate of a face along an axis: the place at which its neighbours end on it, past faces it goes on in.
function acrossOf(face: SettledFace, faces: readonly SettledFace[]): Mm {
  const axis = face.direction[1] === 0 ? 1 : 0;
  const found: Mm[] = [];
  for (const way of ["previous", "next"] as const) {
    let at = face;
    let other = faces[face.formed[way]]!;
    while (other !== face && isFlush(at, way)) {
      at = other;
      other = faces[other.formed[way]]!;
    }
    if (other.direction[axis] === 1) found.push(placeAt(other, way === "previous" ? "to" : "from"));
  }
  return found.length === 0 ? roundHalfUp(face.formed.from[axis]) : Math.min(...found);
}

function isFlush({ formed }: SettledFace, way: "previous" | "next"): boolean {
  return (way === "previous" ? formed.fromEnd : formed.toEnd) === "flush";
}
