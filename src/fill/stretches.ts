// Cuts the faces of every line of wall into free intervals and zones, between the forced joints of both faces.
//
//   face L  ├leg┤════ interval ════├leg┤      stem      ├leg┤═══ interval ═══
//   face R  ────┤════ interval ════├────── zone 2c + t ─────┤═══ interval ═══
//
// Where both faces of the wall carry panels is a free interval: one sequence of widths, used on both. Where the
// opposite face carries a corner leg, a joining wall or nothing, there is a zone: one piece, or one and a closure.

import type { Mm } from "../units.ts";
import { bandOpenings, type FaceLegs, type LegState, runsOf } from "./corners.ts";
import { roundHalfUp } from "./lines.ts";
import type { SettledFace } from "./settled.ts";

/** A place where a joint is forced, and what forces it, in words. */
export interface ForcedJoint {
  readonly at: Mm;
  readonly label: string;
  /** The inside corners whose legs end here, each by the face whose `from` it is; empty at other joints. */
  readonly corners: readonly number[];
}

/** What a stretch of a face carries before it is filled. */
export type Segment =
  | { readonly kind: "free"; readonly low: Mm; readonly high: Mm }
  | { readonly kind: "leg"; readonly low: Mm; readonly high: Mm; readonly corner: number }
  | { readonly kind: "void"; readonly low: Mm; readonly high: Mm; readonly problem: number };

/** A stretch to be covered. `opposite` null: a zone. */
export interface Stretch {
  readonly face: number;
  readonly opposite: number | null;
  readonly low: Mm;
  readonly high: Mm;
  readonly lowJoint: ForcedJoint;
  readonly highJoint: ForcedJoint;
}

export interface FaceLayout {
  readonly segments: readonly Segment[];
  readonly stretches: readonly Stretch[];
}

const LEG_LABEL = "the corner leg";
const SAME = 2.5; // mm: a drawn end and its settled place differ by the tolerance and half a millimetre at most

/** Segments and stretches of every face, by place. Cost: about linear in faces plus joints. */
export function layOut(
  faces: readonly SettledFace[],
  legs: readonly FaceLegs[],
  leg: Mm,
): readonly FaceLayout[] {
  const parts = faces.map((face) => segmentsOf(face, legs[face.index]!, leg));
  return faces.map((face) => {
    const own = parts[face.index]!;
    const opposite = oppositeFree(face, faces, parts);
    return { segments: own.segments, stretches: stretchesOf(face, own, { faces, parts, opposite }) };
  });
}

interface FaceParts {
  readonly segments: readonly Segment[];
  /** Joints this face forces on itself and on the face opposite. */
  readonly joints: readonly ForcedJoint[];
}

function segmentsOf(face: SettledFace, legs: FaceLegs, leg: Mm): FaceParts {
  const segments: Segment[] = [];
  const joints: ForcedJoint[] = [];
  const bands = bandOpenings(face);
  const lowCorner = face.isReversed ? face.formed.next : face.index;
  const highCorner = face.isReversed ? face.index : face.formed.next;
  runsOf(face).forEach((run, k) => {
    const lowState: LegState = run.cornerAtLow ? legs.low : { kind: "none" };
    const highState: LegState = run.cornerAtHigh ? legs.high : { kind: "none" };
    const lowLabel = k === 0 ? face.lowLabel : `the jamb of ${bands[k - 1]!.placed.opening.id}`;
    const highLabel = k === bands.length ? face.highLabel : `the jamb of ${bands[k]!.placed.opening.id}`;
    const short = lowState.kind === "short" ? lowState : highState.kind === "short" ? highState : null;
    if (short !== null) {
      if (run.high > run.low)
        segments.push({ kind: "void", low: run.low, high: run.high, problem: short.problem });
      joints.push(
        { at: run.low, label: lowLabel, corners: [] },
        { at: run.high, label: highLabel, corners: [] },
      );
      return;
    }
    const low = lowState.kind === "none" ? run.low : run.low + leg;
    const high = highState.kind === "none" ? run.high : run.high - leg;
    pushLeg(segments, lowState, { low: run.low, high: low, corner: lowCorner });
    if (high > low) segments.push({ kind: "free", low, high });
    pushLeg(segments, highState, { low: high, high: run.high, corner: highCorner });
    joints.push(
      lowState.kind === "none"
        ? { at: low, label: lowLabel, corners: [] }
        : { at: low, label: LEG_LABEL, corners: [lowCorner] },
      highState.kind === "none"
        ? { at: high, label: highLabel, corners: [] }
        : { at: high, label: LEG_LABEL, corners: [highCorner] },
    );
  });
  return { segments, joints };
}

function pushLeg(
  segments: Segment[],
  state: LegState,
  { low, high, corner }: { low: Mm; high: Mm; corner: number },
): void {
  if (high <= low) return;
  if (state.kind === "stands") segments.push({ kind: "leg", low, high, corner });
  else if (state.kind === "left-out") segments.push({ kind: "void", low, high, problem: state.problem });
}

interface OppositeFree {
  readonly face: number;
  readonly low: Mm;
  readonly high: Mm;
}

// Where the face opposite is free for panels, in places on the line.
function oppositeFree(
  face: SettledFace,
  faces: readonly SettledFace[],
  parts: readonly FaceParts[],
): readonly OppositeFree[] {
  const found: OppositeFree[] = [];
  for (const pair of face.formed.opposite) {
    const other = faces[pair.face]!;
    const a = face.isReversed ? face.drawnHigh - pair.end : face.drawnLow + pair.start;
    const b = face.isReversed ? face.drawnHigh - pair.start : face.drawnLow + pair.end;
    const low = settledEnd(a, face, other);
    const high = settledEnd(b, face, other);
    for (const segment of parts[pair.face]!.segments) {
      if (segment.kind !== "free") continue;
      const from = Math.max(low, segment.low);
      const to = Math.min(high, segment.high);
      if (to > from) found.push({ face: pair.face, low: from, high: to });
    }
  }
  return found.sort((p, q) => p.low - q.low || p.face - q.face);
}

// A stretch ends where one of the two faces does; only bodies drawn across each other make it end elsewhere.
function settledEnd(drawn: Mm, a: SettledFace, b: SettledFace): Mm {
  let best = roundHalfUp(drawn);
  let nearest = SAME;
  for (const face of [a, b]) {
    for (const [was, is] of [
      [face.drawnLow, face.low],
      [face.drawnHigh, face.high],
    ] as const) {
      const distance = Math.abs(was - drawn);
      if (distance < nearest) {
        nearest = distance;
        best = is;
      }
    }
  }
  return best;
}

interface StretchContext {
  readonly faces: readonly SettledFace[];
  readonly parts: readonly FaceParts[];
  readonly opposite: readonly OppositeFree[];
}

function stretchesOf(face: SettledFace, own: FaceParts, context: StretchContext): readonly Stretch[] {
  const joints = new Map<Mm, ForcedJoint>();
  const add = (joint: ForcedJoint) => {
    const before = joints.get(joint.at);
    if (before === undefined) joints.set(joint.at, joint);
    // A corner leg says more than a jamb or an end at the same place, and the closing end depends on every one.
    else if (joint.corners.length > 0) {
      joints.set(joint.at, { ...joint, corners: [...before.corners, ...joint.corners] });
    }
  };
  for (const joint of own.joints) add(joint);
  const seen = new Set<number>();
  for (const { face: other } of face.formed.opposite) {
    if (seen.has(other)) continue;
    seen.add(other);
    for (const joint of context.parts[other]!.joints) add(joint);
  }
  for (const free of context.opposite) {
    for (const at of [free.low, free.high]) add({ at, label: "the end of the wall opposite", corners: [] });
  }
  const order = [...joints.values()].sort((a, b) => a.at - b.at);
  const stretches: Stretch[] = [];
  let first = 0;
  for (const segment of own.segments) {
    if (segment.kind !== "free") continue;
    while (order[first]!.at < segment.low) first++;
    for (let k = first; order[k]!.at < segment.high; k++) {
      const low = order[k]!;
      const high = order[k + 1]!;
      const middle = (low.at + high.at) / 2;
      const across = context.opposite.find((free) => free.low < middle && middle < free.high);
      stretches.push({
        face: face.index,
        opposite: across?.face ?? null,
        low: low.at,
        high: high.at,
        lowJoint: low,
        highJoint: high,
      });
    }
  }
  return stretches;
}
