// The partner of a handed piece: what takes its place in a mirrored pour.

import type { Kit, Piece } from "./kit.ts";
import { compareCodes, preferred } from "./preference.ts";

const remembered = new WeakMap<Kit, ReadonlyMap<string, readonly Piece[]>>();

/**
 * The piece that is the mirror image of this one: the piece itself if it has no hand, otherwise the one of the other hand
 * with the same sizes, its legs swapped. Null where the kit lacks it. Remembered for each kit object.
 */
export function partnerOf(kit: Kit, piece: Piece): Piece | null {
  if (piece.hand === null) return piece;
  return preferred(bySize(kit).get(sizeKey(piece, true)) ?? []);
}

/** The handed pieces of a kit whose mirror image it lacks, in the order of the kit. */
export function withoutPartner(kit: Kit): readonly Piece[] {
  return kit.pieces.filter((piece) => partnerOf(kit, piece) === null);
}

function bySize(kit: Kit): ReadonlyMap<string, readonly Piece[]> {
  const known = remembered.get(kit);
  if (known !== undefined) return known;
  const sizes = new Map<string, Piece[]>();
  for (const piece of kit.pieces.filter((one) => one.hand !== null)) {
    const key = sizeKey(piece, false);
    const group = sizes.get(key);
    if (group === undefined) sizes.set(key, [piece]);
    else group.push(piece);
  }
  remembered.set(kit, sizes);
  return sizes;
}

// Equal for pieces of one family, hand and size, in whatever order their members were read.
function sizeKey(piece: Piece, isMirrored: boolean): string {
  const { code: _code, mass: _mass, price: _price, standard: _standard, stays: _pours, ...sizes } = piece;
  const entries = Object.entries(sizes).map(([name, value]): [string, unknown] => {
    // Legs at a reveal are jamb and lintel, not left and right: they stay what they are in a mirror.
    const stays = !isMirrored || (name === "legs" && piece.family === "reveal-corner");
    return [name, stays ? value : mirrored(value)];
  });
  return JSON.stringify(entries.sort(([a], [b]) => compareCodes(a, b)));
}

function mirrored(value: unknown): unknown {
  if (value === "left") return "right";
  if (value === "right") return "left";
  return Array.isArray(value) ? [...value].reverse() : value;
}
