// Straight pieces that are set end to end, by their lengths: what `coverLength` is given and what its answer is looked up in.

import type { Mm } from "../units.ts";
import { familyOf, type PieceOf } from "./byFamily.ts";
import type { Kit, Piece } from "./kit.ts";
import { preferred } from "./preference.ts";

/** Families set end to end along a line. */
export type LinearFamily =
  | "outside-corner"
  | "reveal-closure"
  | "wall-slab-connector"
  | "slab-edge-cap"
  | "shoring-strip";

/**
 * The pieces of a family that pass the filter, one for each length, longest first. Of several of one length the standard
 * one is taken, then the lighter one, then the one whose code comes first.
 */
export function lengthsOf<F extends LinearFamily>(
  kit: Kit,
  family: F,
  filter: (piece: PieceOf<F>) => boolean = () => true,
): readonly PieceOf<F>[] {
  return onePerSize(familyOf(kit, family).filter(filter), (piece) => lengthOf(piece) ?? 0);
}

/** The length of a piece, mm; null where its family has none or the kit does not say. */
export function lengthOf(piece: Piece): Mm | null {
  return "length" in piece ? piece.length : null;
}

/** The preferred piece of each size, greatest size first. */
export function onePerSize<P extends Parameters<typeof preferred>[0][number]>(
  pieces: readonly P[],
  sizeOf: (piece: P) => Mm,
): readonly P[] {
  const groups = new Map<Mm, P[]>();
  for (const piece of pieces) {
    const size = sizeOf(piece);
    const group = groups.get(size);
    if (group === undefined) groups.set(size, [piece]);
    else group.push(piece);
  }
  const sorted = [...groups].sort(([a], [b]) => b - a);
  return sorted.flatMap(([, group]) => preferred(group) ?? []);
}
