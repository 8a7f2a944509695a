// Where ties go: through joints that both faces of a wall share, at every row where both have pieces on both sides.
//
//   face L  ──┬──────┬───┬─
//   concrete  │ tie  │   │      one tie line, its first face sets first and owns it
//   face R  ──┴──────┴───┴─

import { type Kit, ruleValue } from "../kit/kit.ts";
import { tieOf } from "../kit/ties.ts";
import { type Mm, roundTo } from "../units.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { type FaceJoints, jointsOf, MOST_ROWS, rowsAt } from "./joints.ts";
import { pointInside } from "./onFace.ts";
import { counted, lengthText, type ProblemLog } from "./problems.ts";
import type { TieLine } from "./result.ts";
import { checkRowLevels } from "./rowLevels.ts";
import type { SettledOpening } from "./settled.ts";

/** A tie line with what the spacing check needs. */
export interface PlacedTie {
  readonly tie: TieLine;
  readonly place: Mm;
  /** Indices of the two faces, the owner first. */
  readonly owner: number;
  readonly other: number;
}

export interface TieContext {
  readonly drafts: readonly FaceDraft[];
  readonly kit: Kit;
  readonly log: ProblemLog;
}

/** The code of a tie the kit does not have: the joint is known, the tie is not listed. */
const NO_TIE = "";

/** Whether the kit has this tie. */
export function isInKit({ tie }: PlacedTie): boolean {
  return tie.code !== NO_TIE;
}

/**
 * Ties of a unit, by owner face and place. A thickness without a tie in the kit is one problem; its joints come too, so
 * that the spacing is judged by the joints and not by the kit.
 */
export function placeTies({ drafts, kit, log }: TieContext): readonly PlacedTie[] {
  const rows = ruleValue(kit, "tieRows");
  if (rows === undefined) {
    log.add("warning", "missing-rule", "The kit gives no tie rows (rule tieRows): no ties are placed.", {});
    return [];
  }
  if (rows.length > MOST_ROWS) {
    const message = `The kit gives ${rows.length} tie rows; at most ${MOST_ROWS} can be placed: take some away.`;
    log.add("error", "missing-rule", message, {});
    return [];
  }
  checkRowLevels(drafts, rows, log);
  const edge = ruleValue(kit, "tieEdge") ?? 0;
  const joints = acrossFlushEnds(
    drafts,
    drafts.map((draft) => jointsOf(draft, rows)),
  );
  const heightsOf = heightsByBits(rows);
  const lacking = new Map<Mm, number>();
  const found: PlacedTie[] = [];
  for (const draft of drafts) {
    const index = draft.settled.index;
    for (const pair of draft.settled.formed.opposite) {
      if (pair.face < index) continue;
      const other = drafts[pair.face]!;
      const [owner, second] = ownerFirst(draft, other);
      const thickness = roundTo(pair.thickness, 0);
      const code = tieOf(kit, thickness)?.code ?? NO_TIE;
      const faces = [owner.id, second.id] as const;
      for (const [place, bits] of sharedRows(draft, other, {
        pair,
        mine: joints[index]!,
        theirs: joints[pair.face]!,
      })) {
        const clear = bits & ~rowsNearOpenings(draft, other, { place, rows, edge });
        if (clear === 0) continue;
        const heights = heightsOf(clear);
        if (code === NO_TIE) lacking.set(thickness, (lacking.get(thickness) ?? 0) + heights.length);
        const at = pointInside(owner.settled, place, pair.thickness / 2);
        found.push({
          tie: { at, heights, faces, length: thickness, code },
          place,
          owner: owner.settled.index,
          other: second.settled.index,
        });
      }
    }
  }
  for (const [thickness, count] of [...lacking].sort(([a], [b]) => a - b)) {
    const message =
      `The kit has no tie ${lengthText(thickness)} mm long: ${counted(count, "tie")} in walls of that thickness ` +
      `cannot be placed; add the tie to the kit.`;
    log.add("error", "missing-piece", message, {});
  }
  return found.sort((a, b) => a.owner - b.owner || a.place - b.place || a.other - b.other);
}

/**
 * The face that is set first, then the one that closes: the room side of a facade; between two rooms the one whose
 * lower left outline point has the lesser x, then y, which is the order of the rooms.
 */
export function ownerFirst(a: FaceDraft, b: FaceDraft): readonly [FaceDraft, FaceDraft] {
  const rank = (face: FaceDraft) => face.settled.formed.room ?? Number.POSITIVE_INFINITY;
  if (rank(a) !== rank(b)) return rank(a) < rank(b) ? [a, b] : [b, a];
  return a.settled.index < b.settled.index ? [a, b] : [b, a];
}

// Tie lines repeat the same few sets of rows thousands of times: they share one list each.
function heightsByBits(rows: readonly Mm[]): (bits: number) => readonly Mm[] {
  const known = new Map<number, readonly Mm[]>();
  return (bits) => {
    const before = known.get(bits);
    if (before !== undefined) return before;
    const heights = rows.filter((_, k) => (bits & (1 << k)) !== 0);
    known.set(bits, heights);
    return heights;
  };
}

const SETTLING = 2.5; // mm: how far a settled place may lie from the drawn one

// Where the concrete goes straight on in another face the two share a joint: it counts with the face above it on the line,
// which takes over what ends there.
function acrossFlushEnds(drafts: readonly FaceDraft[], joints: readonly FaceJoints[]): readonly FaceJoints[] {
  return joints.map((own, k) => {
    const { formed, isReversed, low, lowEnd } = drafts[k]!.settled;
    if (lowEnd !== "flush") return own;
    const below = joints[isReversed ? formed.next : formed.previous]!.ends.get(low) ?? 0;
    return { ...own, ends: new Map(own.ends).set(low, below) };
  });
}

// Places at which both faces have a joint, with its rows as bits, by place.
function sharedRows(
  draft: FaceDraft,
  other: FaceDraft,
  { pair, mine, theirs }: { pair: { start: Mm; end: Mm }; mine: FaceJoints; theirs: FaceJoints },
): readonly (readonly [Mm, number])[] {
  const face = draft.settled;
  const low = (face.isReversed ? face.drawnHigh - pair.end : face.drawnLow + pair.start) - SETTLING;
  const high = (face.isReversed ? face.drawnHigh - pair.start : face.drawnLow + pair.end) + SETTLING;
  const found: (readonly [Mm, number])[] = [];
  for (const place of mine.begins.keys()) {
    if (place < low || place > high) continue;
    const bits = rowsAt(mine, place) & rowsAt(theirs, place);
    if (bits !== 0 && !isClosingSide(draft, place) && !isClosingSide(other, place)) found.push([place, bits]);
  }
  return found.sort(([a], [b]) => a - b);
}

// A closure counts as one joint: it is tied on its side away from the closing end.
function isClosingSide(draft: FaceDraft, place: Mm): boolean {
  return draft.parts.some(
    (part) =>
      part.kind === "closure" &&
      !part.isZone &&
      (part.closingSide === "low" ? part.low : part.high) === place,
  );
}

function rowsNearOpenings(
  draft: FaceDraft,
  other: FaceDraft,
  { place, rows, edge }: { place: Mm; rows: readonly Mm[]; edge: Mm },
): number {
  let bits = 0;
  for (const face of [draft.settled, other.settled]) {
    for (const opening of face.openings) {
      if (place < opening.low - edge || place > opening.high + edge) continue;
      rows.forEach((z, k) => {
        if (distanceTo(opening, place, z) < edge) bits |= 1 << k;
      });
    }
  }
  return bits;
}

function distanceTo({ placed, low, high }: SettledOpening, place: Mm, z: Mm): number {
  const dx = Math.max(low - place, 0, place - high);
  const dz = Math.max(placed.opening.sill - z, 0, z - placed.opening.head);
  return Math.sqrt(dx * dx + dz * dz);
}
