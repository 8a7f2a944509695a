// A face as a bare stretch of outline, before walls, corners and rooms are known.

import { type Line, lineThrough } from "../geom/line.ts";
import { distance, type Point } from "../geom/point.ts";
import type { Ring } from "../geom/ring.ts";
import type { Mm } from "../units.ts";

/** One straight stretch of a ring. Its line begins at `from`. */
export interface FaceDraft {
  readonly from: Point;
  readonly to: Point;
  readonly line: Line;
  readonly length: Mm;
  readonly ring: number;
  readonly next: number;
  readonly previous: number;
}

/** The faces of all rings, ring by ring from the ring's first corner. */
export function draftFaces(rings: readonly Ring[]): FaceDraft[] {
  const faces: FaceDraft[] = [];
  rings.forEach((corners, ring) => {
    const first = faces.length;
    const count = corners.length;
    corners.forEach((from, i) => {
      const to = corners[(i + 1) % count]!;
      faces.push({
        from,
        to,
        line: lineThrough(from, to),
        length: distance(from, to),
        ring,
        next: first + ((i + 1) % count),
        previous: first + ((i + count - 1) % count),
      });
    });
  });
  return faces;
}
