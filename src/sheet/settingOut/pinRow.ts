// Where the layout pins of one straight stretch of wall stand, so that no gap is wider than the pitch.
//
//   |·    ┊     ·     ┊     ·     ┊  · |     · in the middle of a panel, ┊ joint: frames' feet and tie pins are there
//   corner   600         600       350  jamb
//
// A shortest path over places 5 mm apart and the middles of panels: each pin costs one, standing off the middle and
// near a joint cost something, a gap over the pitch costs more than all of that together.

import type { Mm } from "../../units.ts";

/** Common practice, no source: about 600 apart, the first within 150 of a corner or jamb, none nearer an edge than 50. */
export const PIN_RULES = { greatestGap: 600, greatestEnd: 150, leastEnd: 50, offJoint: 50 } as const;

export interface PinStretch {
  readonly low: Mm;
  readonly high: Mm;
  /** Pieces that stand on the floor. */
  readonly pieces: readonly { readonly low: Mm; readonly high: Mm }[];
  /** Whether a pin may stand at a place at all. */
  readonly isFree: (x: Mm) => boolean;
  /** Places to keep where they are free: a row that gives way to a service moves as few pins as it can. */
  readonly keep?: readonly Mm[];
}

const STEP = 5;
const PIN = 10;
const OFF_MIDDLE = 12;
const NEAR_JOINT = 25;
const MOVED = 6;
const FAR_END = 30;
const OPEN_GAP = 100_000;

/** Places of the pins, ascending. Empty where nothing is free or the stretch is too short for one. */
export function pinRow(stretch: PinStretch): readonly Mm[] {
  const places = placesOf(stretch);
  const best: { cost: number; before: number }[] = [];
  let answer = { cost: Number.POSITIVE_INFINITY, before: -1 };
  for (const [k, x] of places.entries()) {
    let found = { cost: endCost(x - stretch.low), before: -1 };
    for (let j = k - 1; j >= 0; j--) {
      const cost = best[j]!.cost + gapCost(x - places[j]!);
      if (cost < found.cost) found = { cost, before: j };
      // Over the pitch the nearest pin is the best that can be had, or one a little farther back.
      if (x - places[j]! > 3 * PIN_RULES.greatestGap) break;
    }
    const ended = endCost(stretch.high - x);
    const own = pinCost(x, stretch);
    best.push({ cost: found.cost + own, before: found.before });
    if (found.cost + own + ended < answer.cost) answer = { cost: found.cost + own + ended, before: k };
  }
  const row: Mm[] = [];
  for (let k = answer.before; k >= 0; k = best[k]!.before) row.push(places[k]!);
  return row.reverse();
}

function placesOf({ low, high, pieces, isFree, keep = [] }: PinStretch): readonly Mm[] {
  const { leastEnd } = PIN_RULES;
  const found = new Set<Mm>();
  for (let x = Math.ceil((low + leastEnd) / STEP) * STEP; x <= high - leastEnd; x += STEP) found.add(x);
  for (const piece of pieces) found.add(Math.floor((piece.low + piece.high) / 2));
  for (const x of [low + 100, high - 100, ...keep]) found.add(x);
  return [...found]
    .filter((x) => x >= low + leastEnd && x <= high - leastEnd && isFree(x))
    .sort((a, b) => a - b);
}

function gapCost(gap: Mm): number {
  const over = gap - PIN_RULES.greatestGap;
  return over <= 0 ? 0 : OPEN_GAP + over;
}

// Within reach of the end any place will do; beyond it the corner is held less well by each step.
function endCost(fromEnd: Mm): number {
  const { greatestEnd, greatestGap } = PIN_RULES;
  if (fromEnd <= greatestEnd) return 0;
  return fromEnd <= greatestGap ? FAR_END + fromEnd / 10 : OPEN_GAP + fromEnd;
}

function pinCost(x: Mm, { low, high, pieces, keep }: PinStretch): number {
  if (keep?.includes(x)) return PIN / 2;
  const moved = keep === undefined ? 0 : MOVED;
  const piece = pieces.find((one) => x >= one.low && x <= one.high);
  if (piece === undefined) return PIN + moved;
  const half = Math.max(1, (piece.high - piece.low) / 2);
  const off = Math.abs(x - (piece.low + piece.high) / 2);
  // Beside a corner or a jamb the pin holds the end, wherever the middle of its panel is.
  const isEnd = Math.min(x - low, high - x) <= PIN_RULES.greatestEnd;
  const joints = [piece.low, piece.high].filter((joint) => joint > low && joint < high);
  const isNearJoint = joints.some((joint) => Math.abs(joint - x) < PIN_RULES.offJoint);
  const fromEnd = Math.abs(Math.min(x - low, high - x) - Math.min(100, half));
  const fromMiddle = isEnd ? fromEnd / 25 : (OFF_MIDDLE * off) / half;
  return PIN + moved + fromMiddle + (isNearJoint ? NEAR_JOINT : 0);
}
