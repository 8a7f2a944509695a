// How many of each code does a fill list, wherever it lists them? A piece under one id is counted once.

import type { UnitFill } from "../fill/result.ts";

/** Counts by code. */
export function countedPieces(fill: UnitFill): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const seen = new Set<string>();
  const add = (code: string, quantity: number) => {
    if (quantity > 0 && code !== "") counts.set(code, (counts.get(code) ?? 0) + quantity);
  };
  const once = (pieces: readonly { readonly piece: string; readonly code: string }[]) => {
    for (const { piece, code } of pieces) {
      if (seen.has(piece)) continue;
      seen.add(piece);
      add(code, 1);
    }
  };
  for (const { pieces } of fill.faces) once(pieces);
  once(fill.corners);
  for (const { pieces } of fill.reveals) once(pieces);
  for (const { pieces, props } of fill.soffits) {
    once(pieces);
    once(props);
  }
  once(fill.fittings);
  for (const { code, heights } of fill.ties) add(code, heights.length);
  for (const { code, quantity } of fill.accessories) add(code, quantity);
  return counts;
}
