// What a kit offers for one kind of edge: its pieces by the length that counts there, and the covers already found.
// Kept as long as the kit object lives.

import { stopEndsOf } from "../kit/ends.ts";
import type { Kit, Piece } from "../kit/kit.ts";
import type { LengthCover } from "../kit/lengths.ts";
import type { Mm } from "../units.ts";

/** A piece of the kit by the length that counts on this edge. */
export interface SizedPiece {
  readonly piece: Piece;
  readonly length: Mm;
}

export interface EdgeOffers {
  /** One for each length. */
  readonly pieces: readonly SizedPiece[];
  readonly lengths: readonly Mm[];
  readonly covers: Map<Mm, LengthCover | null>;
}

const remembered = new WeakMap<Kit, Map<string, EdgeOffers>>();

/** The offers of a kit under a name for the edge; `list` is asked once. */
export function edgeOffers(kit: Kit, edge: string, list: () => readonly SizedPiece[]): EdgeOffers {
  const known = remembered.get(kit) ?? new Map<string, EdgeOffers>();
  remembered.set(kit, known);
  const before = known.get(edge);
  if (before !== undefined) return before;
  const pieces = list();
  const offers = { pieces, lengths: pieces.map(({ length }) => length), covers: new Map() };
  known.set(edge, offers);
  return offers;
}

/** Stop-ends for a wall of this thickness, by height. */
export function stopEndOffers(kit: Kit, thickness: Mm): EdgeOffers {
  return edgeOffers(kit, `end ${thickness}`, () =>
    stopEndsOf(kit, thickness).map((piece) => ({ piece, length: piece.height })),
  );
}
