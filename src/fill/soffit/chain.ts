// The settled corners of a ring or chain of faces, in the axes of the soffit they go round.

import type { Point } from "../../geom/point.ts";
import type { Position } from "../../plan/project.ts";
import { cornerPoint } from "../cornerPoint.ts";
import type { FaceDraft } from "../faceDraft.ts";
import { pointAt } from "../onFace.ts";

/** The points where the faces of a chain begin, settled; with an open chain also where the last one ends. */
export function chainPoints(
  drafts: readonly FaceDraft[],
  isClosed: boolean,
  all: readonly FaceDraft[],
): readonly Position[] {
  const points = drafts.map((draft) => {
    const { formed, isReversed, low, high } = draft.settled;
    if (formed.fromEnd === "flush") return pointAt(draft.settled, isReversed ? high : low);
    return cornerPoint(draft, all[formed.previous]!);
  });
  const last = drafts[drafts.length - 1];
  if (isClosed || last === undefined) return points;
  const { formed, isReversed, low, high } = last.settled;
  const end =
    formed.toEnd === "flush"
      ? pointAt(last.settled, isReversed ? low : high)
      : cornerPoint(all[formed.next]!, last);
  return [...points, end];
}

/** Off its axis by no more than this a wall is straight; the tie tolerance, mm. */
const ASKEW = 2;

/**
 * Points joined by edges, those edges that are askew by a hair brought onto their axis: a form is straight, whatever
 * the last digit of the drawing says.
 */
export function straightened(points: readonly Point[], isClosed: boolean): readonly Point[] {
  const result = points.map(([u, v]): [number, number] => [u, v]);
  const edges = isClosed ? result.length : result.length - 1;
  for (let k = 0; k < edges; k++) {
    const a = result[k]!;
    const b = result[(k + 1) % result.length]!;
    const [du, dv] = [Math.abs(b[0] - a[0]), Math.abs(b[1] - a[1])];
    if (du <= ASKEW && du < dv) a[0] = b[0] = Math.min(a[0], b[0]);
    else if (dv <= ASKEW && dv < du) a[1] = b[1] = Math.min(a[1], b[1]);
  }
  return result;
}
