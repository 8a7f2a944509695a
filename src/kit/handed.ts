// The partner of a handed piece: what takes its place in a mirrored pour.

import { familyOf } from "./byFamily.ts";
import type { Kit, Piece } from "./kit.ts";
import { compareCodes, preferred } from "./preference.ts";

/**
 * The piece that is the mirror image of this one: the piece itself if it has no hand, otherwise the one of the other hand
 * with the same sizes, its legs swapped. Null where the kit lacks it.
 */
export function partnerOf(kit: Kit, piece: Piece): Piece | null {
  if (piece.hand === null) return piece;
  const wanted = sizeKey(piece, true);
  const others = familyOf(kit, piece.family).filter(
    (other: Piece) => other.hand !== null && other.hand !== piece.hand && sizeKey(other, false) === wanted,
  );
  return preferred(others);
}

// Equal for pieces of equal sizes, in whatever order their fields were read.
function sizeKey(piece: Piece, isMirrored: boolean): string {
  const {
    code: _code,
    mass: _mass,
    price: _price,
    standard: _standard,
    hand: _hand,
    stays: _stays,
    ...sizes
  } = piece;
  const entries = Object.entries(sizes).map(([name, value]): [string, unknown] => [
    name,
    isMirrored && Array.isArray(value) ? [...value].reverse() : value,
  ]);
  return JSON.stringify(entries.sort(([a], [b]) => compareCodes(a, b)));
}
