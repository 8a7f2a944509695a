// Rings, rooms, areas and the order of stripping: which side the concrete lies on, whether rooms run clockwise, whether
// the outline is as long as that of the drawn bodies, which piece comes out first and which ring is locked.

import { bodyRectangles, measureRectangles, type Rectangle } from "../orthogonalPlan.ts";
import { isAtOpening } from "./covers.ts";
import { doubleArea, type PlanFace, ringsOf, spanOf } from "./planFaces.ts";
import { segmentsOf } from "./segments.ts";
import { type AuditPlan, isFreeEnd, stateAt } from "./walls.ts";

/** Orientation, rooms' areas, and the outline against cells counted on the drawn bodies. Whole drawings only. */
export function ringFaults(plan: AuditPlan): string[] {
  const faults: string[] = [];
  const bodies = bodyRectangles(plan.unit.walls);
  for (const face of plan.faces) {
    if (face.previous < 0 || face.next < 0) faults.push(`${face.face.id} ends at no other face`);
    if (!isConcrete(bodies, face, 1)) faults.push(`${face.face.id} has no concrete on its left`);
    if (isConcrete(bodies, face, -1)) faults.push(`${face.face.id} has concrete on its right`);
  }
  const rings = ringsOf(plan.faces);
  const { area, perimeter } = measureRectangles(bodies);
  const drawn = plan.faces.reduce((sum, { face }) => sum + face.length, 0);
  if (drawn !== perimeter) faults.push(`the faces are ${drawn} long together, the drawn bodies ${perimeter}`);
  const enclosed = rings.reduce((sum, ring) => sum + doubleArea(ring), 0) / 2;
  if (Math.abs(enclosed - area) > 1) faults.push(`the rings hold ${enclosed} mm², the drawn bodies ${area}`);
  for (const room of plan.fill.rooms) {
    const own = rings.filter(([first]) => first!.face.room === room.name);
    const clear = -own.reduce((sum, ring) => sum + doubleArea(ring), 0) / 2e6;
    if (Math.abs(clear - room.area) > 0.00006) faults.push(`${room.name} has ${clear} m², not ${room.area}`);
    const clockwise = own.filter((ring) => doubleArea(ring) < 0);
    if (clockwise.length !== 1) faults.push(`${room.name} has ${clockwise.length} rings that run clockwise`);
    const ids = plan.faces.filter(({ face }) => face.room === room.name).map(({ face }) => face.id);
    if ([...ids].sort().join() !== [...room.faces].sort().join())
      faults.push(`${room.name} lists ${room.faces.join(" ")}, its faces are ${ids.join(" ")}`);
  }
  for (const ring of rings.filter(([first]) => first!.face.room === null)) {
    if (doubleArea(ring) < 0) faults.push(`the outside ring of ${ring[0]!.face.id} runs clockwise`);
  }
  return faults;
}

function isConcrete(bodies: readonly Rectangle[], face: PlanFace, side: 1 | -1): boolean {
  // Off the seam of two bodies drawn end to end.
  const middle = (face.low + face.high) / 2 + 0.3;
  const across = face.line + face.inward * side * 3;
  const [x, y] = face.axis === 0 ? [middle, across] : [across, middle];
  return bodies.some(([x1, y1, x2, y2]) => x > x1 && x < x2 && y > y1 && y < y2);
}

interface Column {
  readonly low: number;
  readonly high: number;
  readonly width: number;
  readonly isMarked: boolean;
}

// Panels and closures from the floor to connector or cap.
function columnsOf(face: PlanFace): Column[] {
  return face.face.pieces
    .filter(({ family, x, z, width }) => {
      const isRight = family === "wall-panel" || family === "closure-strip";
      return isRight && z === 0 && !isAtOpening(face, x, x + width);
    })
    .map(({ x, width, firstOut }) => {
      const [low, high] = spanOf(face, x, width);
      return { low, high, width, isMarked: firstOut === true };
    });
}

/** `firstOut` on each room face: the narrowest column of at most `firstOutMax`, the nearer to its closing end on equals. */
export function firstOutFaults(plan: AuditPlan): string[] {
  const most = plan.kit.rules.firstOutMax?.value;
  return plan.faces.flatMap((face) => {
    const marked = columnsOf(face).filter(({ isMarked }) => isMarked);
    const fit = most === undefined ? [] : columnsOf(face).filter(({ width }) => width <= most);
    const isDue = face.face.room !== null && fit.length > 0;
    if (marked.length !== (isDue ? 1 : 0))
      return [`${face.face.id} marks ${marked.length} columns to come out first`];
    const [first] = marked;
    if (first === undefined) return [];
    const least = Math.min(...fit.map(({ width }) => width));
    if (first.width !== least)
      return [`${face.face.id} marks ${first.width} wide to come out first, not ${least}`];
    const equals = fit.filter(({ width }) => width === least).map((one) => toClosing(plan, face, one));
    const own = toClosing(plan, face, first);
    if (own === null || equals.includes(null)) return [];
    const isNearest = equals.every((other) => other !== null && own <= other);
    return isNearest ? [] : [`${face.face.id} marks a column ${own} from its closing end, another is nearer`];
  });
}

function toClosing(plan: AuditPlan, face: PlanFace, { low, high }: Column): number | null {
  const home = segmentsOf(plan, face).find((one) => one.low <= low && one.high >= high);
  if (home === undefined || home.kind !== "interval" || home.closing === null) return null;
  return home.closing === "low" ? low - home.low : home.high - high;
}

/** A ring of a room in which two adjacent faces have neither such a column nor an opening is locked, and said to be. */
export function lockedFaults(plan: AuditPlan): string[] {
  const most = plan.kit.rules.firstOutMax?.value ?? 0;
  const faults: string[] = [];
  for (const room of plan.fill.rooms) {
    const ring = ringsOf(plan.faces).find(
      ([one]) => one!.face.room === room.name && doubleArea(ringOf(plan, one!)) < 0,
    );
    if (ring === undefined || ring.some((face) => hasVoid(plan, face))) continue;
    // Left open: whether an opening boxed out inside unbroken panels lets a ring go, and whether two faces that meet at
    // an outside corner hold one another.
    const verdicts = [hasTightPair(ring, most, { boxed: true, outside: true })];
    verdicts.push(hasTightPair(ring, most, { boxed: true, outside: false }));
    verdicts.push(hasTightPair(ring, most, { boxed: false, outside: true }));
    verdicts.push(hasTightPair(ring, most, { boxed: false, outside: false }));
    const said = plan.fill.problems.filter(
      (one) => one.kind === "locked-ring" && one.where.room === room.name,
    );
    const isSaid = said.length > 0;
    if (!verdicts.includes(isSaid))
      faults.push(`${room.name} is ${isSaid ? "not " : ""}locked, but the fill says otherwise`);
    const isOpen = room.kind === "open" && ring.every(({ face }) => face.openings.length === 0);
    if (said.some(({ severity }) => severity !== "error") && isOpen)
      faults.push(`${room.name}: a locked ring of an open room without opening is an error`);
  }
  return faults;
}

interface Reading {
  /** Whether a boxed-out opening counts as one. */
  readonly boxed: boolean;
  /** Whether faces on either side of an outside corner count as adjacent. */
  readonly outside: boolean;
}

function hasTightPair(ring: readonly PlanFace[], most: number, { boxed, outside }: Reading): boolean {
  const isTight = ring.map(
    (face) =>
      !face.face.openings.some(({ formed }) => boxed || formed === "band") &&
      !columnsOf(face).some(({ width }) => width <= most),
  );
  return isTight.some(
    (tight, k) => tight && isTight[(k + 1) % isTight.length] && (outside || ring[k]!.toTurn === "inside"),
  );
}

function ringOf(plan: AuditPlan, face: PlanFace): PlanFace[] {
  return ringsOf(plan.faces).find((ring) => ring.includes(face))!;
}

function hasVoid(plan: AuditPlan, face: PlanFace): boolean {
  if (isFreeEnd(face, plan.unit)) return false;
  const middles = plan.stretches[face.index]!.map(({ low, high }) => (low + high) / 2);
  return face.face.unfilled.length > 0 || middles.some((place) => stateAt(plan, face, place) === "void");
}
