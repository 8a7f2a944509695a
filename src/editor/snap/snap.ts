// Where the pointer is taken to be, and why: the nearest thing worth meeting, with its reason in view.
//
//   ●━━━━━━━ wall 11 ━━━━━━●─ · ─ · ─ · ─ ◎  "In line with wall 11"
//                        from             to
//
// One reason at a time, the first of these that is within reach: end, centreline (said to be square where it is that,
// too), perpendicular, extension, alignment, grid.

import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { type Words, words } from "../words/say.ts";

export type SnapKind = "end" | "centreline" | "perpendicular" | "extension" | "alignment" | "grid";

/** The order of precedence. */
export const SNAP_ORDER: readonly SnapKind[] = [
  "end",
  "centreline",
  "perpendicular",
  "extension",
  "alignment",
  "grid",
];

/** Why a place was taken: draw the chain line from `from` to `to`, mark `to`, and say `said`. */
export interface SnapReason {
  readonly kind: SnapKind;
  readonly from: Position;
  readonly to: Position;
  /** The wall snapped to; null for the grid. */
  readonly wall: string | null;
  readonly said: Words;
}

export interface Snap {
  readonly at: Position;
  readonly reason: SnapReason | null;
}

/** A line the place may not leave: while drawing straight, or moving a wall across itself. (ux, uy) has length 1. */
export interface Rail {
  readonly origin: Position;
  readonly ux: number;
  readonly uy: number;
}

export interface SnapQuery {
  /** Where the pointer is. */
  readonly at: Position;
  /** How near a thing must be, mm in the plan. */
  readonly reach: Mm;
  /** Step of the grid, mm; 0 = none. */
  readonly grid: Mm;
  /** Start of the line being drawn, for squares. */
  readonly from: Position | null;
  readonly rail: Rail | null;
  /** Walls that move with the hand and are not met. */
  readonly exclude: ReadonlySet<string>;
  /** Snapping suspended: the place is only rounded to a whole millimetre, on the rail if there is one. */
  readonly isFree: boolean;
}

/** A place that could be taken, `gap` mm from the pointer, `far` mm from the thing that gives the reason. */
export interface Candidate {
  readonly kind: SnapKind;
  /** What it is said to be, where it is more than its kind: a centreline met at a square. */
  readonly named?: SnapKind;
  readonly at: Position;
  readonly gap: Mm;
  readonly far: Mm;
  readonly from: Position;
  readonly wall: string | null;
}

/** Further than this from the pointer a wall gives no line to stand in: it would be off the screen. */
export const LINE_REACH = 15_000;

/** The candidate that is taken: the first kind in the order, then the nearest, then the one whose wall is nearest. */
export function bestCandidate(candidates: readonly Candidate[]): Candidate | null {
  let best: Candidate | null = null;
  for (const candidate of candidates) if (best === null || isBetter(candidate, best)) best = candidate;
  return best;
}

function isBetter(a: Candidate, b: Candidate): boolean {
  const rank = SNAP_ORDER.indexOf(a.kind) - SNAP_ORDER.indexOf(b.kind);
  if (rank !== 0) return rank < 0;
  return a.gap !== b.gap ? a.gap < b.gap : a.far < b.far;
}

/** The snap that a candidate makes at the place finally taken. */
export function snapOf(candidate: Candidate, at: Position, grid: Mm): Snap {
  const { from, wall } = candidate;
  const kind = candidate.named ?? candidate.kind;
  return { at, reason: { kind, from, to: at, wall, said: reasonWords(kind, wall ?? "", grid) } };
}

function reasonWords(kind: SnapKind, wall: string, step: Mm): Words {
  switch (kind) {
    case "end":
      return words("snap.end", { wall });
    case "centreline":
      return words("snap.centreline", { wall });
    case "perpendicular":
      return words("snap.perpendicular", { wall });
    case "extension":
      return words("snap.extension", { wall });
    case "alignment":
      return words("snap.alignment", { wall });
    case "grid":
      return words("snap.grid", { step });
    default:
      return kind satisfies never;
  }
}
