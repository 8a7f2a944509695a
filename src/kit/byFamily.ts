// The pieces of a kit sorted into families once, however often they are asked for.

import { FAMILIES, type Family, type Kit, type Piece, piecesOf } from "./kit.ts";

export type PieceOf<F extends Family> = Extract<Piece, { family: F }>;

type Sorted = { readonly [F in Family]?: readonly PieceOf<F>[] };

const remembered = new WeakMap<Kit, Sorted>();

/** As `piecesOf`, remembered for each kit object. */
export function familyOf<F extends Family>(kit: Kit, family: F): readonly PieceOf<F>[] {
  const sorted = remembered.get(kit) ?? sortPieces(kit);
  const found: Sorted[F] = sorted[family];
  return found ?? [];
}

function sortPieces(kit: Kit): Sorted {
  const sorted: Sorted = Object.fromEntries(FAMILIES.map((family) => [family, piecesOf(kit, family)]));
  remembered.set(kit, sorted);
  return sorted;
}
