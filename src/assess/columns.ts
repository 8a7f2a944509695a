// Which faces are those of a column, a free-standing piece of wall no side of which is over 2 m? Two methods press harder
// on such a form than on a wall.

import type { FilledFace, UnitFill } from "../fill/result.ts";
import { isInside, ringArea, ringBox } from "../geom/ring.ts";
import type { Concrete } from "../plan/concrete.ts";
import type { Position } from "../plan/project.ts";
import type { Mm, SquareMetre } from "../units.ts";

/** Longest side of a column, mm: 2 m in CIRIA 108 (as at engineersedge.com) and ACI 347 (6.5 ft, from memory of it). */
const LONGEST: Mm = 2000;

/** What a pressure is for. */
export type PouredMember = "wall" | "column";

/** Ids of the faces round columns. */
export function columnFaces({ faces }: UnitFill): ReadonlySet<string> {
  const rings = ringsOf(faces);
  const points = rings.map((ring) => ring.map(({ settled }) => settled[0]));
  const columns = rings.filter((ring, k) => {
    const outline = points[k]!;
    // Concrete is on the left: a ring round concrete runs counter-clockwise.
    if (ringArea(outline) <= 0) return false;
    const { minX, maxX, minY, maxY } = ringBox(outline);
    if (Math.max(maxX - minX, maxY - minY) > LONGEST) return false;
    return ring.length > 0 && !points.some((other, j) => j !== k && holds(outline, other));
  });
  return new Set(columns.flat().map(({ id }) => id));
}

function holds(outer: readonly Position[], inner: readonly Position[]): boolean {
  const [first] = inner;
  return first !== undefined && isInside(outer, first);
}

/** Members of a fill that press by different equations under the project's method: walls, and columns where there are any. */
export function pouredMembers(fill: UnitFill, { pressureModel }: Concrete): readonly PouredMember[] {
  const tells = pressureModel !== "liquid head" && pressureModel !== "DIN 18218";
  return tells && columnFaces(fill).size > 0 ? ["wall", "column"] : ["wall"];
}

/** Concrete of walls and columns on plan, m²: what rises when they are filled. */
export function planArea({ faces }: UnitFill): SquareMetre {
  const twice = faces.reduce((sum, { settled: [a, b] }) => sum + a[0] * b[1] - a[1] * b[0], 0);
  return Math.max(0, twice / 2e6);
}

function ringsOf(faces: readonly FilledFace[]): readonly (readonly FilledFace[])[] {
  const starts = new Map<string, FilledFace[]>();
  for (const face of faces) {
    const key = keyOf(face.settled[0]);
    starts.set(key, [...(starts.get(key) ?? []), face]);
  }
  const used = new Set<FilledFace>();
  const rings: FilledFace[][] = [];
  for (const first of faces) {
    if (used.has(first)) continue;
    const ring: FilledFace[] = [];
    for (let face: FilledFace | undefined = first; face !== undefined; ) {
      used.add(face);
      ring.push(face);
      face = (starts.get(keyOf(face.settled[1])) ?? []).find((each) => !used.has(each));
    }
    rings.push(ring);
  }
  return rings;
}

function keyOf([x, y]: Position): string {
  return `${Math.round(x)} ${Math.round(y)}`;
}
