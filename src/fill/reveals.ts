// Closes the reveals of band openings: jambs with stop-ends, lintel soffit and sill with reveal closures.
//
//      ┌──────── head ────────┐        corner pieces between jamb and lintel where the kit has them,
//   left                      right    else the jamb runs through from sill to head
//      └──────── sill ────────┘

import { revealClosuresOf, revealCornerOf } from "../kit/ends.ts";
import type { Family, Kit } from "../kit/kit.ts";
import { type Mm, roundTo } from "../units.ts";
import { coverEdge, type LengthPiece } from "./edgeCover.ts";
import { type EdgeOffers, edgeOffers, stopEndOffers } from "./edgeOffers.ts";
import type { FaceDraft } from "./faceDraft.ts";
import type { PieceBook } from "./pieceBook.ts";
import { counted, type ProblemLog } from "./problems.ts";
import type { Reveal, RevealPiece, RevealSide } from "./result.ts";
import type { SettledOpening } from "./settled.ts";

export interface RevealContext {
  readonly drafts: readonly FaceDraft[];
  readonly openings: readonly SettledOpening[];
  readonly kit: Kit;
  readonly book: PieceBook;
  readonly log: ProblemLog;
}

/** Reveals of all band openings, each left, right, head, sill as seen from the face that is set first. */
export function placeReveals(context: RevealContext): readonly Reveal[] {
  const { drafts, openings, kit, book, log } = context;
  const lacking = new Map<string, { thickness: Mm; what: string; count: number }>();
  const reveals: Reveal[] = [];
  for (const opening of openings) {
    const { sill, head, formed, id } = opening.placed.opening;
    if (formed !== "band") continue;
    const thickness = thicknessAt(opening, drafts);
    const leg = cornerLegOf(kit, thickness);
    const height = head - sill;
    const width = opening.high - opening.low;
    const corners =
      leg === null || width < 2 * leg.across || height < leg.up * (sill > 0 ? 2 : 1) ? null : leg;
    const sides: RevealSide[] = sill > 0 ? ["left", "right", "head", "sill"] : ["left", "right", "head"];
    for (const side of sides) {
      const isJamb = side === "left" || side === "right";
      const from = corners === null ? 0 : isJamb ? (sill > 0 ? corners.up : 0) : corners.across;
      const taken = corners === null ? 0 : isJamb ? corners.up * (sill > 0 ? 2 : 1) : 2 * corners.across;
      const length = (isJamb ? height : width) - taken;
      const offers = isJamb ? stopEndOffers(kit, thickness) : closureOffers(kit, thickness);
      const cover = coverEdge(length, offers, book);
      if (cover === null) {
        const what = isJamb ? "stop-end for the jambs" : "reveal closure for lintel and sill";
        const key = `${what} ${thickness}`;
        const known = lacking.get(key) ?? { thickness, what, count: 0 };
        lacking.set(key, { ...known, count: known.count + 1 });
      }
      const family: Family = isJamb ? "stop-end" : "reveal-closure";
      const pieces = (cover ?? []).map((piece) => revealPiece(piece, { family, from, thickness }, book));
      if (corners !== null && isJamb)
        pieces.push(...cornerPieces(corners, { height, sill, thickness }, book));
      reveals.push({ opening: id, side, pieces });
    }
  }
  for (const { thickness, what, count } of lacking.values()) {
    log.add(
      "error",
      "missing-piece",
      `The kit has no ${what} ${thickness} mm wide: ${counted(count, "reveal")} in walls of that thickness stay open; ` +
        `add the piece to the kit.`,
      {},
    );
  }
  return reveals;
}

interface CornerLegs {
  readonly code: string;
  readonly up: Mm;
  readonly across: Mm;
}

function cornerLegOf(kit: Kit, thickness: Mm): CornerLegs | null {
  const piece = revealCornerOf(kit, thickness);
  return piece === null ? null : { code: piece.code, up: piece.legs[0], across: piece.legs[1] };
}

function closureOffers(kit: Kit, thickness: Mm): EdgeOffers {
  return edgeOffers(kit, `reveal ${thickness}`, () =>
    revealClosuresOf(kit, thickness).map((piece) => ({ piece, length: piece.length })),
  );
}

function revealPiece(
  piece: LengthPiece,
  { family, from, thickness }: { family: Family; from: Mm; thickness: Mm },
  book: PieceBook,
): RevealPiece {
  return {
    piece: book.nextId(),
    code: piece.code,
    family,
    at: from + piece.at,
    length: piece.length,
    width: thickness,
    ...(piece.isMadeToMeasure ? { madeToMeasure: true as const } : {}),
  };
}

// The corners stand with the jamb: one at its head, one at its foot where the opening has a sill.
function cornerPieces(
  corner: CornerLegs,
  { height, sill, thickness }: { height: Mm; sill: Mm; thickness: Mm },
  book: PieceBook,
): readonly RevealPiece[] {
  const at = sill > 0 ? [0, height - corner.up] : [height - corner.up];
  return at.map((place) => ({
    piece: book.nextId(),
    code: corner.code,
    family: "reveal-corner",
    at: place,
    length: corner.up,
    width: thickness,
  }));
}

/** Thickness of the wall at an opening, whole mm. */
export function thicknessAt(opening: SettledOpening, drafts: readonly FaceDraft[]): Mm {
  const [left, right] = opening.placed.faces;
  const pair = drafts[left]!.settled.formed.opposite.find((each) => each.face === right);
  return roundTo(pair?.thickness ?? 0, 0);
}
