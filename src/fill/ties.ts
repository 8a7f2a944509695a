// Where ties go: through joints that both faces of a wall share, at every row where both have pieces on both sides.
//
//   face L  ──┬──────┬───┬─
//   concrete  │ tie  │   │      one tie line, its first face sets first and owns it
//   face R  ──┴──────┴───┴─

import { type Kit, ruleValue } from "../kit/kit.ts";
import { tieOf } from "../kit/ties.ts";
import { type Mm, roundTo } from "../units.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { hasPiecesAt, type Joint, jointsOf } from "./joints.ts";
import { pointInside } from "./onFace.ts";
import type { ClosurePart } from "./parts.ts";
import { counted, lengthText, type ProblemLog } from "./problems.ts";
import type { TieLine } from "./result.ts";
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
  const edge = ruleValue(kit, "tieEdge") ?? 0;
  const joints = drafts.map(jointsOf);
  const lacking = new Map<Mm, number>();
  const found: PlacedTie[] = [];
  for (const draft of drafts) {
    const index = draft.settled.index;
    for (const pair of draft.settled.formed.opposite) {
      if (pair.face < index) continue;
      const other = drafts[pair.face]!;
      const [owner, second] = ownerFirst(draft, other);
      const thickness = roundTo(pair.thickness, 0);
      const code = tieOf(kit, thickness)?.code ?? null;
      for (const place of sharedPlaces(draft, other, pair)) {
        const mine = joints[index]!.get(place);
        const theirs = joints[other.settled.index]!.get(place);
        if (mine === undefined || theirs === undefined) continue;
        const heights = rows.filter((z) => isTied({ mine, theirs, place, z }, { draft, other, edge }));
        if (heights.length === 0) continue;
        if (code === null) lacking.set(thickness, (lacking.get(thickness) ?? 0) + heights.length);
        const at = pointInside(owner.settled, place, pair.thickness / 2);
        found.push({
          tie: { at, heights, faces: [owner.id, second.id], length: thickness, code: code ?? NO_TIE },
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

// Places on the line where the two faces stand opposite each other, by place.
function sharedPlaces(draft: FaceDraft, other: FaceDraft, pair: { start: Mm; end: Mm }): readonly Mm[] {
  const face = draft.settled;
  const low = (face.isReversed ? face.drawnHigh - pair.end : face.drawnLow + pair.start) - SETTLING;
  const high = (face.isReversed ? face.drawnHigh - pair.start : face.drawnLow + pair.end) + SETTLING;
  const places = new Set<Mm>();
  const add = (place: Mm) => {
    if (place >= low && place <= high) places.add(place);
  };
  for (const part of draft.parts) {
    add(part.low);
    add(part.high);
  }
  // Joints of bands lie between the jambs and are shared by both faces.
  for (const piece of draft.pieces) {
    add(face.isReversed ? face.high - piece.x : face.low + piece.x);
    add(face.isReversed ? face.high - piece.x - piece.width : face.low + piece.x + piece.width);
  }
  for (const skipped of [...closingSides(draft), ...closingSides(other)]) places.delete(skipped);
  return [...places].sort((a, b) => a - b);
}

const SETTLING = 2.5; // mm: how far a settled place may lie from the drawn one

// A closure counts as one joint: it is tied on its side away from the closing end.
function closingSides(draft: FaceDraft): readonly Mm[] {
  return draft.parts
    .filter((part): part is ClosurePart => part.kind === "closure" && !part.isZone)
    .map((part) => (part.closingSide === "low" ? part.low : part.high));
}

function isTied(
  { mine, theirs, place, z }: { mine: Joint; theirs: Joint; place: Mm; z: Mm },
  { draft, other, edge }: { draft: FaceDraft; other: FaceDraft; edge: Mm },
): boolean {
  if (!hasPiecesAt(mine, z) || !hasPiecesAt(theirs, z)) return false;
  const clear = (opening: SettledOpening) => distanceTo(opening, place, z) >= edge;
  return draft.settled.openings.every(clear) && other.settled.openings.every(clear);
}

function distanceTo({ placed, low, high }: SettledOpening, place: Mm, z: Mm): number {
  const dx = Math.max(low - place, 0, place - high);
  const dz = Math.max(placed.opening.sill - z, 0, z - placed.opening.head);
  return Math.sqrt(dx * dx + dz * dz);
}
