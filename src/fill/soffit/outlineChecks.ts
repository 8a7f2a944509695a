// Is what is drawn in the slab fit to be filled: does an outline cross itself, does a slab outside the walls lie over a room?

import { cross, type Point } from "../../geom/point.ts";
import type { Ring } from "../../geom/ring.ts";
import type { SlabOutline } from "../../plan/project.ts";
import { roundTo } from "../../units.ts";
import type { ProblemLog } from "../problems.ts";
import { areaOfCells, cellsInBoth } from "./cells.ts";

/** An overlap of less than this is a matter of the last digit drawn, mm². */
const LEAST_OVERLAP = 20_000;

/** Whether two edges of a ring that are not neighbours cross or touch. */
export function crossesItself(ring: Ring): boolean {
  return ring.some((a, i) =>
    ring.some((c, k) => {
      const apart = (k - i + ring.length) % ring.length;
      if (apart < 2 || apart > ring.length - 2) return false;
      return meet([a, ring[(i + 1) % ring.length]!], [c, ring[(k + 1) % ring.length]!]);
    }),
  );
}

function meet([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): boolean {
  const side = (p: Point, q: Point, r: Point) => cross(q[0] - p[0], q[1] - p[1], r[0] - p[0], r[1] - p[1]);
  const [s, t, u, v] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  return s * t < 0 && u * v < 0;
}

/** The outlines that do not cross themselves; the others are told and left out. */
export function soundOutlines(
  outlines: readonly SlabOutline[],
  what: "Slab" | "Slab opening",
  log: ProblemLog,
): readonly SlabOutline[] {
  return outlines.filter(({ id, outline }) => {
    if (!crossesItself(outline)) return true;
    log.add(
      "error",
      "outline-crosses",
      `${what} ${id} is drawn with an outline that crosses itself: nothing can be formed to it, and it is left out; draw it anew.`,
      { at: outline[0]! },
    );
    return false;
  });
}

/** Files every slab outside the walls that reaches over a room or over another slab: its forms would stand there twice. */
export function checkOverlaps(
  slabs: readonly SlabOutline[],
  rooms: readonly { readonly name: string; readonly ring: Ring }[],
  log: ProblemLog,
): void {
  const others = [...rooms];
  for (const { id, outline } of slabs) {
    for (const { name, ring } of others) {
      const area = areaOfCells(cellsInBoth(outline, ring, []));
      if (area < LEAST_OVERLAP) continue;
      log.add(
        "error",
        "slab-over-room",
        `Slab ${id} reaches over ${name} by ${roundTo(area / 1e6, 2)} m²: forms are counted twice there; draw the slab outside ` +
          `the walls only, its edge along their outside face.`,
        { room: name, at: outline[0]! },
      );
    }
    others.push({ name: id, ring: outline });
  }
}
