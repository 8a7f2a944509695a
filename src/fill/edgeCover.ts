// Covers an edge or a reveal with the lengths the kit has, one of them cut to measure where the lengths do not sum.

import { coverLength, type LengthCover } from "../kit/lengths.ts";
import type { Mm } from "../units.ts";
import type { EdgeOffers, SizedPiece } from "./edgeOffers.ts";
import type { PieceBook } from "./pieceBook.ts";

/** A piece on the edge: where it begins and how long it is. */
export interface LengthPiece {
  readonly code: string;
  readonly at: Mm;
  readonly length: Mm;
  readonly isMadeToMeasure: boolean;
}

/** The longest first, then what is made to measure; null where the kit has nothing for it. */
export function coverEdge(length: Mm, offers: EdgeOffers, book: PieceBook): readonly LengthPiece[] | null {
  const cover = coverOf(Math.max(0, length), offers);
  if (cover === null) return null;
  const found: LengthPiece[] = [];
  let at = 0;
  for (const own of cover.pieces) {
    const offer = offers.pieces.find((each) => each.length === own);
    if (offer !== undefined) found.push({ code: offer.piece.code, at, length: own, isMadeToMeasure: false });
    at += own;
  }
  const rest = cover.madeToMeasure;
  const stock = rest === null ? undefined : shortestHolding(offers.pieces, rest);
  if (rest !== null && stock !== undefined) {
    found.push({
      code: book.cutTo(stock.piece, stock.length, rest),
      at,
      length: rest,
      isMadeToMeasure: true,
    });
  }
  return found;
}

function coverOf(length: Mm, { lengths, covers }: EdgeOffers): LengthCover | null {
  const known = covers.get(length);
  if (known !== undefined) return known;
  const cover = coverLength(length, lengths);
  covers.set(length, cover);
  return cover;
}

/** The piece one of `length` is cut from: the shortest of the kit that is long enough. */
export function shortestHolding(offers: readonly SizedPiece[], length: Mm): SizedPiece | undefined {
  const sorted = [...offers].sort((a, b) => a.length - b.length);
  return sorted.find((offer) => offer.length >= length) ?? sorted[sorted.length - 1];
}
