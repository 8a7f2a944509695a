// Which face stands opposite which, and what each face carries where: worked out from the drawn walls and the corners of
// the faces, before a single piece is looked at.
//
//   free ── leg │ corner           a leg that does not fit leaves its length "void"; so does a run under two legs
//
// Orthogonal plans only.

import type { UnitFill } from "../../../src/fill/result.ts";
import type { Kit } from "../../../src/kit/kit.ts";
import type { Storey, Unit, Wall } from "../../../src/plan/project.ts";
import { along, type PlanFace, planFaces, spanOf } from "./planFaces.ts";

/** What a face carries at a place, at full height. "unclear": an opening and a corner leg in one place. */
export type State = "free" | "leg" | "void" | "opening" | "end" | "unclear";

/** A stretch along the axis of the plan where a face is one thing. */
export interface Stretch {
  readonly low: number;
  readonly high: number;
  readonly state: State;
}

export interface AuditPlan {
  readonly fill: UnitFill;
  readonly unit: Unit;
  readonly storey: Storey;
  readonly kit: Kit;
  readonly leg: number;
  readonly faces: readonly PlanFace[];
  /** By face, in rising order along its axis, from end to end. */
  readonly stretches: readonly (readonly Stretch[])[];
}

/** The plan of a fill, or null where a face strays from its axis by more than `aside` mm. */
export function auditPlan(
  fill: UnitFill,
  given: Pick<AuditPlan, "unit" | "storey" | "kit">,
  aside = 0.01,
): AuditPlan | null {
  const faces = planFaces(fill.faces, aside);
  if (faces === null) return null;
  const leg = given.kit.rules.cornerLeg?.value ?? 0;
  const stretches = faces.map((face) => stretchesOf(face, faces, { leg, unit: given.unit }));
  return { fill, ...given, leg, faces, stretches };
}

interface Site {
  readonly leg: number;
  readonly unit: Unit;
}

function stretchesOf(face: PlanFace, faces: readonly PlanFace[], site: Site): Stretch[] {
  const { leg } = site;
  const { length } = face.face;
  if (isFreeEnd(face, site.unit)) return [{ low: face.low, high: face.high, state: "end" }];
  const left = face.fromTurn === "inside" ? legState(faces[face.previous]!, face, leg) : null;
  const right = face.toTurn === "inside" ? legState(face, faces[face.next]!, leg) : null;
  const isShort = left !== null && right !== null && length < 2 * leg;
  const marks: { x: number; width: number; state: State }[] = face.face.openings
    .filter(({ formed }) => formed === "band")
    .map(({ x, width }) => ({ x, width, state: "opening" }));
  if (isShort) marks.push({ x: 0, width: length, state: "void" });
  if (left !== null && !isShort) marks.push({ x: 0, width: Math.min(leg, length), state: left });
  if (right !== null && !isShort)
    marks.push({ x: Math.max(0, length - leg), width: Math.min(leg, length), state: right });
  const xs = [0, length, ...marks.flatMap(({ x, width }) => [x, x + width])];
  const cuts = [...new Set(xs)].filter((x) => x >= 0 && x <= length).sort((a, b) => a - b);
  const found = cuts.slice(1).map((end, k): Stretch => {
    const middle = (cuts[k]! + end) / 2;
    const here = marks.filter(({ x, width }) => middle > x && middle < x + width).map(({ state }) => state);
    const state = here.length === 0 ? "free" : here.length === 1 ? here[0]! : "unclear";
    const [low, high] = spanOf(face, cuts[k]!, end - cuts[k]!);
    return { low, high, state };
  });
  return face.dir === 1 ? found : found.reverse();
}

// Both legs of a corner stand or neither does. `before` ends at the corner, `after` begins there.
function legState(before: PlanFace, after: PlanFace, leg: number): State {
  const need = (face: PlanFace) =>
    (face.fromTurn === "inside" ? leg : 0) + (face.toTurn === "inside" ? leg : 0);
  if (need(before) > before.face.length || need(after) > after.face.length) return "void";
  const isCut =
    before.face.openings.some((o) => o.formed === "band" && o.x + o.width > before.face.length - leg) ||
    after.face.openings.some((o) => o.formed === "band" && o.x < leg);
  return isCut ? "unclear" : "leg";
}

/** A face that is the whole width of a wall's end. */
export function isFreeEnd(face: PlanFace, unit: Unit): boolean {
  if (face.fromTurn !== "outside" || face.toTurn !== "outside") return false;
  return unit.walls.some((wall) => {
    if (axisOf(wall) === face.axis) return false;
    const [low, high] = sidesOf(wall);
    const along = face.axis === 0 ? 1 : 0;
    return (
      isNear(low, face.low) &&
      isNear(high, face.high) &&
      (isNear(wall.from[along], face.line) || isNear(wall.to[along], face.line))
    );
  });
}

const NEAR = 2.2; // mm; what stands within 2 mm is one

function isNear(a: number, b: number): boolean {
  return Math.abs(a - b) <= NEAR;
}

export function axisOf(wall: Wall): 0 | 1 {
  return Math.abs(wall.to[0] - wall.from[0]) >= Math.abs(wall.to[1] - wall.from[1]) ? 0 : 1;
}

/** The two side lines of a wall, as coordinates across it. */
export function sidesOf(wall: Wall): readonly [number, number] {
  const axis = axisOf(wall);
  const line = wall.from[axis === 0 ? 1 : 0];
  const isForward = wall.to[axis] > wall.from[axis];
  // Left of east is greater y, left of north is lesser x.
  const leftIsUp = (axis === 0) === isForward;
  const left = wall.justify === "centre" ? wall.thickness / 2 : wall.justify === "left" ? 0 : wall.thickness;
  const right = wall.thickness - left;
  return leftIsUp ? [line - right, line + left] : [line - left, line + right];
}

/** The face across the wall at a place strictly inside `face`, or null where no wall along it has its other side there. */
export function oppositeAt(plan: AuditPlan, face: PlanFace, place: number): PlanFace | null {
  let nearest: PlanFace | null = null;
  for (const other of plan.faces) {
    if (other.axis !== face.axis || other.inward === face.inward) continue;
    if (place <= other.low || place >= other.high || depth(face, other) <= 0) continue;
    if (nearest === null || depth(face, other) < depth(face, nearest)) nearest = other;
  }
  if (nearest === null) return null;
  const lines = [face.line, nearest.line].sort((a, b) => a - b);
  const most = Math.max(...plan.unit.walls.map(({ thickness }) => thickness));
  const isWall = plan.unit.walls.some((wall) => {
    if (axisOf(wall) !== face.axis) return false;
    const [low, high] = sidesOf(wall);
    const [start, end] = [wall.from[face.axis], wall.to[face.axis]].sort((a, b) => a - b);
    const isThere = place > start! - most && place < end! + most;
    return isThere && isNear(low, lines[0]!) && isNear(high, lines[1]!);
  });
  return isWall ? nearest : null;
}

function depth(face: PlanFace, other: PlanFace): number {
  return (other.line - face.line) * face.inward;
}

/** What a face carries at a place that is on no edge. */
export function stateAt(plan: AuditPlan, face: PlanFace, place: number): State {
  return plan.stretches[face.index]!.find(({ low, high }) => place > low && place < high)?.state ?? "unclear";
}

/** The places along the axis where a leg of the face ends, also one that is left out. */
export function legEnds(plan: AuditPlan, face: PlanFace): number[] {
  const ends: number[] = [];
  const { length } = face.face;
  if (face.fromTurn === "inside") ends.push(along(face, plan.leg));
  if (face.toTurn === "inside") ends.push(along(face, length - plan.leg));
  return ends.filter((place) =>
    plan.stretches[face.index]!.some(
      ({ low, high, state }) => (state === "leg" || state === "void") && (low === place || high === place),
    ),
  );
}

/** The jambs of a face's band openings. */
export function jambs(face: PlanFace): number[] {
  return face.face.openings
    .filter(({ formed }) => formed === "band")
    .flatMap(({ x, width }) => [along(face, x), along(face, x + width)]);
}
