// The faces of a filled unit in the plan: which way each runs, its neighbours round the ring, how it turns there.
// Written from the format of the fill alone; it shares no code with the program.
//
//        left = concrete
//   from ●───────────────→ to          only faces along the axes; others are left out of what needs them

import type { FilledFace } from "../../../src/fill/result.ts";

export type Turn = "inside" | "outside" | "straight";

export interface PlanFace {
  readonly index: number;
  readonly face: FilledFace;
  /** 0 runs along x, 1 along y. */
  readonly axis: 0 | 1;
  readonly dir: 1 | -1;
  /** Coordinate along the axis at x = 0, and across it. Whole for whole drawings. */
  readonly start: number;
  readonly line: number;
  /** Sign of the way across into the concrete. */
  readonly inward: 1 | -1;
  readonly low: number;
  readonly high: number;
  readonly previous: number;
  readonly next: number;
  readonly fromTurn: Turn;
  readonly toTurn: Turn;
}

const SAME_PLACE = 0.01; // mm; places are written to 0.001

/** Everything of a face in plan coordinates, or null where some face strays from its axis by more than `aside` mm. */
export function planFaces(faces: readonly FilledFace[], aside: number): PlanFace[] | null {
  const runs = faces.map((face) => runOf(face, aside));
  if (runs.some((run) => run === null)) return null;
  return faces.map((face, index) => {
    const run = runs[index]!;
    const next = faces.findIndex((other) => isNear(face.to, other.from));
    const previous = faces.findIndex((other) => isNear(face.from, other.to));
    const end = run.start + run.dir * face.length;
    return {
      index,
      face,
      ...run,
      low: Math.min(run.start, end),
      high: Math.max(run.start, end),
      previous,
      next,
      fromTurn: previous < 0 ? "straight" : turnBetween(runs[previous]!, run),
      toTurn: next < 0 ? "straight" : turnBetween(run, runs[next]!),
    };
  });
}

type Run = Pick<PlanFace, "axis" | "dir" | "start" | "line" | "inward">;

function runOf({ from, to }: FilledFace, aside: number): Run | null {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  if (Math.min(Math.abs(dx), Math.abs(dy)) > aside) return null;
  const axis = Math.abs(dx) > Math.abs(dy) ? 0 : 1;
  const dir = (axis === 0 ? dx : dy) > 0 ? 1 : -1;
  // The left of east is north, of north west.
  const inward = axis === 0 ? dir : dir === 1 ? -1 : 1;
  return { axis, dir, inward, start: from[axis], line: from[axis === 0 ? 1 : 0] };
}

// Concrete lies on the left, so turning left goes round a convex edge of it.
function turnBetween(a: Run, b: Run): Turn {
  const [ax, ay] = a.axis === 0 ? [a.dir, 0] : [0, a.dir];
  const [bx, by] = b.axis === 0 ? [b.dir, 0] : [0, b.dir];
  const cross = ax * by - ay * bx;
  return cross > 0 ? "outside" : cross < 0 ? "inside" : "straight";
}

function isNear(a: readonly [number, number], b: readonly [number, number]): boolean {
  return Math.abs(a[0] - b[0]) <= SAME_PLACE && Math.abs(a[1] - b[1]) <= SAME_PLACE;
}

/** Coordinate along the axis of the plan at `x` along the face. */
export function along(face: PlanFace, x: number): number {
  return face.start + face.dir * x;
}

/** A stretch of a face as lower and upper coordinate along its axis. */
export function spanOf(face: PlanFace, x: number, width: number): readonly [number, number] {
  const a = along(face, x);
  const b = along(face, x + width);
  return a < b ? [a, b] : [b, a];
}

/** The rings of faces, each from its first face in the list. */
export function ringsOf(faces: readonly PlanFace[]): PlanFace[][] {
  const seen = new Set<number>();
  const rings: PlanFace[][] = [];
  for (const face of faces) {
    if (seen.has(face.index)) continue;
    const ring: PlanFace[] = [];
    for (let at = face.index; at >= 0 && !seen.has(at); at = faces[at]!.next) {
      seen.add(at);
      ring.push(faces[at]!);
    }
    rings.push(ring);
  }
  return rings;
}

/** Twice the signed area of a ring of faces, positive where it runs counter-clockwise. */
export function doubleArea(ring: readonly PlanFace[]): number {
  let sum = 0;
  for (const { face } of ring) sum += face.from[0] * face.to[1] - face.to[0] * face.from[1];
  return sum;
}
