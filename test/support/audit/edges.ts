// Edges and reveals: an angle up every outside corner and round every band opening, a closure on every reveal.

import type { EdgePiece } from "../../../src/fill/result.ts";
import { along, type PlanFace, spanOf } from "./planFaces.ts";
import type { AuditPlan } from "./walls.ts";

/** Outside corners, jambs and reveals that are not covered from end to end exactly once. */
export function edgeFaults(plan: AuditPlan): string[] {
  return [...cornerFaults(plan), ...jambFaults(plan), ...revealFaults(plan)];
}

function cornerFaults(plan: AuditPlan): string[] {
  const faults: string[] = [];
  for (const face of plan.faces.filter(({ toTurn }) => toTurn === "outside")) {
    const [x, y] = face.face.to;
    const next = plan.faces[face.next]!;
    // Under a slab outside the walls one face ends at the soffit, and so does the corner.
    const height = Math.min(face.face.height, next.face.height);
    const here = plan.fill.corners.filter((one) => isAt(one.from, x, y) && isAt(one.to, x, y));
    const isExcused = plan.fill.problems.some((one) => one.severity === "error");
    if (!isExcused) faults.push(...spanFaults(`outside corner at ${x}, ${y}`, here.map(rise), [0, height]));
  }
  return faults;
}

function jambFaults(plan: AuditPlan): string[] {
  const faults: string[] = [];
  for (const face of plan.faces) {
    for (const { id, x, width, sill, head, formed } of face.face.openings) {
      if (formed !== "band") continue;
      for (const at of [x, x + width]) {
        const [px, py] = place(face, at);
        const here = plan.fill.corners.filter((one) => isAt(one.from, px, py) && isAt(one.to, px, py));
        faults.push(...spanFaults(`jamb of ${id} on ${face.face.id}`, here.map(rise), [sill, head]));
      }
      // Under a slab as high as its head an opening of a room has no edge: the soffit goes on through it.
      const isOpenAbove = face.face.room !== null && head === face.face.height;
      for (const z of [...(sill > 0 ? [sill] : []), ...(isOpenAbove ? [] : [head])]) {
        const ends = spanOf(face, x, width);
        const spans = plan.fill.corners
          .filter((one) => one.from[2] === z && one.to[2] === z && isOnLine(face, one))
          .map(({ from, to }) => ordered(from[face.axis], to[face.axis]))
          .filter(([low]) => low >= ends[0] && low < ends[1]);
        faults.push(...spanFaults(`edge at ${z} of ${id} on ${face.face.id}`, spans, ends));
      }
    }
  }
  return faults;
}

function revealFaults(plan: AuditPlan): string[] {
  const faults: string[] = [];
  const openings = new Map(plan.fill.faces.flatMap((face) => face.openings.map((one) => [one.id, one])));
  for (const [id, { formed, sill, head, width }] of openings) {
    const own = plan.fill.reveals.filter(({ opening }) => opening === id);
    const due = formed === "box" ? [] : ["left", "right", "head", ...(sill > 0 ? ["sill"] : [])];
    if ([...own.map(({ side }) => side)].sort().join() !== due.sort().join())
      faults.push(`reveals of ${id}: ${own.map(({ side }) => side)}`);
    for (const { side, pieces } of own) {
      const length = side === "left" || side === "right" ? head - sill : width;
      const spans = pieces.map((one) => [one.at, one.at + one.length] as const);
      faults.push(...spanFaults(`${side} reveal of ${id}`, spans, [0, length]));
    }
  }
  return faults;
}

function spanFaults(
  what: string,
  spans: readonly (readonly [number, number])[],
  [low, high]: readonly [number, number],
): string[] {
  let at = low;
  for (const [from, to] of [...spans].sort((a, b) => a[0] - b[0])) {
    if (from !== at) return [`${what}: nothing or two pieces at ${Math.min(from, at)}`];
    at = to;
  }
  return at === high ? [] : [`${what}: covered to ${at} of ${high}`];
}

function rise({ from, to }: EdgePiece): readonly [number, number] {
  return ordered(from[2], to[2]);
}

function ordered(a: number, b: number): readonly [number, number] {
  return a < b ? [a, b] : [b, a];
}

function isAt(point: EdgePiece["from"], x: number, y: number): boolean {
  return Math.abs(point[0] - x) < 0.01 && Math.abs(point[1] - y) < 0.01;
}

function place(face: PlanFace, x: number): [number, number] {
  return face.axis === 0 ? [along(face, x), face.line] : [face.line, along(face, x)];
}

function isOnLine(face: PlanFace, { from, to }: EdgePiece): boolean {
  const across = face.axis === 0 ? 1 : 0;
  return Math.abs(from[across] - face.line) < 0.01 && Math.abs(to[across] - face.line) < 0.01;
}
