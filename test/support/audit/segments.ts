// Free intervals and zones of every face, cut by the definition: at leg ends of either face, jambs, ends of faces that are
// no inside corner, steps of thickness. Where the definition leaves something open the stretch is "unclear" and only the
// tiling of it is audited.
//
//   a  |leg|══════ interval ══════|leg| stem |leg|════
//   b  |══ interval ══════════════|══ zone 2c + t ═══|════

import { along, type PlanFace } from "./planFaces.ts";
import { type AuditPlan, jambs, legEnds, oppositeAt, stateAt } from "./walls.ts";

export interface Segment {
  readonly face: PlanFace;
  readonly low: number;
  readonly high: number;
  readonly kind: "interval" | "zone" | "unclear";
  /** The face that shares an interval. */
  readonly opposite: PlanFace | null;
  /** At which end the closing end is; null where the definition leaves it open. */
  readonly closing: "low" | "high" | null;
  /** Whether a leg of either face ends at the lower and at the upper end. */
  readonly cornerAt: readonly [low: boolean, high: boolean];
}

interface Cell {
  readonly low: number;
  readonly high: number;
  readonly kind: Segment["kind"];
  readonly opposite: PlanFace | null;
}

const known = new WeakMap<PlanFace, readonly Segment[]>();

/** The segments of a face, in rising order along its axis. */
export function segmentsOf(plan: AuditPlan, face: PlanFace): readonly Segment[] {
  const segments = known.get(face) ?? cutSegments(plan, face);
  known.set(face, segments);
  return segments;
}

function cutSegments(plan: AuditPlan, face: PlanFace): Segment[] {
  const cells = cellsOf(plan, face);
  const merged: Cell[] = [];
  for (const cell of cells) {
    const last = merged.at(-1);
    const isOne =
      last !== undefined &&
      last.high === cell.low &&
      last.kind === cell.kind &&
      (cell.kind === "zone" || last.opposite === cell.opposite) &&
      !isForced(plan, face, cell.low, [last.opposite, cell.opposite]);
    if (isOne) merged[merged.length - 1] = { ...cell, low: last.low };
    else merged.push(cell);
  }
  return merged.map(withDoubt).map((cell) => {
    const cornerAt = [isCornerAt(plan, cell.low, face), isCornerAt(plan, cell.high, face)] as const;
    const opposite = cell.kind === "interval" ? cell.opposite : null;
    return { face, ...cell, opposite, cornerAt, closing: closingOf(plan, { face, ...cell }, cornerAt) };
  });
}

// What adjoins a doubtful stretch may be one zone with it.
function withDoubt(cell: Cell, k: number, all: readonly Cell[]): Cell {
  const isDoubtful = [all[k - 1], all[k + 1]].some(
    (other) => other?.kind === "unclear" && (other.high === cell.low || other.low === cell.high),
  );
  return cell.kind === "zone" && isDoubtful ? { ...cell, kind: "unclear" } : cell;
}

function cellsOf(plan: AuditPlan, face: PlanFace): Cell[] {
  const across = plan.faces.filter((other) => other.axis === face.axis && other.inward !== face.inward);
  const places = [face, ...across].flatMap((one) =>
    plan.stretches[one.index]!.flatMap(({ low, high }) => [low, high]),
  );
  const cuts = [...new Set(places)]
    .filter((place) => place >= face.low && place <= face.high)
    .sort((a, b) => a - b);
  const cells: Cell[] = [];
  for (const [k, high] of cuts.entries()) {
    const low = cuts[k - 1];
    if (low === undefined) continue;
    const middle = (low + high) / 2;
    const state = stateAt(plan, face, middle);
    const opposite = oppositeAt(plan, face, middle);
    const across = opposite === null ? "leg" : stateAt(plan, opposite, middle);
    if (state === "unclear") cells.push({ low, high, kind: "unclear", opposite });
    if (state !== "free") continue;
    const kind = across === "free" ? "interval" : across === "leg" ? "zone" : "unclear";
    cells.push({ low, high, kind, opposite });
  }
  return cells;
}

function isForced(
  plan: AuditPlan,
  face: PlanFace,
  place: number,
  opposites: readonly (PlanFace | null)[],
): boolean {
  if (jambs(face).includes(place) || legEnds(plan, face).includes(place)) return true;
  return opposites.some(
    (other) =>
      other !== null &&
      (jambs(other).includes(place) ||
        legEnds(plan, other).includes(place) ||
        (along(other, 0) === place && other.fromTurn !== "inside") ||
        (along(other, other.face.length) === place && other.toTurn !== "inside")),
  );
}

// A leg of this face or of the one across it ends here.
function isCornerAt(plan: AuditPlan, place: number, face: PlanFace): boolean {
  if (legEnds(plan, face).includes(place)) return true;
  return [-0.5, 0.5].some((by) => {
    const other = place + by > face.low && place + by < face.high ? oppositeAt(plan, face, place + by) : null;
    return other !== null && legEnds(plan, other).includes(place);
  });
}

function closingOf(
  plan: AuditPlan,
  { face, low, high, kind }: Pick<Segment, "face" | "low" | "high" | "kind">,
  cornerAt: readonly [boolean, boolean],
): Segment["closing"] {
  const starts = [isStartOnly(plan, low, face), isStartOnly(plan, high, face)];
  if (kind !== "interval") return cornerAt[0] === cornerAt[1] ? "high" : cornerAt[0] ? "low" : "high";
  if (starts[0] || starts[1]) {
    // The start corner closes nowhere: with a corner at the other end that one closes.
    const other = starts[0] ? cornerAt[1] : cornerAt[0];
    if (other) return starts[0] ? "high" : "low";
    return null;
  }
  return cornerAt[0] === cornerAt[1] ? "high" : cornerAt[0] ? "low" : "high";
}

/** Whether the only legs that end here belong to the start corner of a room without openings. */
function isStartOnly(plan: AuditPlan, place: number, face: PlanFace): boolean {
  const here = [face];
  for (const by of [-0.5, 0.5]) {
    if (place + by <= face.low || place + by >= face.high) continue;
    const other = oppositeAt(plan, face, place + by);
    if (other !== null && !here.includes(other)) here.push(other);
  }
  const owners = here.filter((one) => legEnds(plan, one).includes(place));
  return owners.length > 0 && owners.every((one) => isStartLeg(plan, one, place));
}

function isStartLeg(plan: AuditPlan, face: PlanFace, place: number): boolean {
  const { room } = face.face;
  if (room === null) return false;
  const own = plan.faces.filter((one) => one.face.room === room);
  if (own.some((one) => one.face.openings.length > 0)) return false;
  const corner = [...own].map(({ face: f }) => f.from).sort((a, b) => a[0] - b[0] || a[1] - b[1])[0]!;
  const isAtFrom = along(face, plan.leg) === place && face.fromTurn === "inside";
  const at = isAtFrom ? face.face.from : face.face.to;
  return at[0] === corner[0] && at[1] === corner[1];
}
