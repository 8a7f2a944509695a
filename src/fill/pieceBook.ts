// What every code in a fill is: its family and mass, also for pieces cut or made to a length of their own.
//
// A piece that is made to measure has the code of the piece it is like, a stroke and its length: "K150-600/325".

import type { Family, Kit, Piece } from "../kit/kit.ts";
import type { Kg, Mm } from "../units.ts";

export interface BookEntry {
  readonly family: Family;
  readonly mass: Kg;
}

export interface PieceBook {
  readonly entry: (code: string) => BookEntry | undefined;
  /** The code of a piece of this one's section cut to `length`; its mass goes with its length. */
  readonly cutTo: (piece: Piece, fullLength: Mm, length: Mm) => string;
  /** The next piece number of the unit, as an id. */
  readonly nextId: () => string;
}

const remembered = new WeakMap<Kit, ReadonlyMap<string, BookEntry>>();

/** @param prefix - the unit's id, with its storey where it has several: "A" or "A@2" */
export function createPieceBook(kit: Kit, prefix: string): PieceBook {
  const whole = wholePieces(kit);
  const cuts = new Map<string, BookEntry>();
  let count = 0;
  return {
    entry: (code) => whole.get(code) ?? cuts.get(code),
    cutTo(piece, fullLength, length) {
      const code = `${piece.code}/${length}`;
      if (!cuts.has(code)) cuts.set(code, { family: piece.family, mass: (piece.mass * length) / fullLength });
      return code;
    },
    nextId() {
      count += 1;
      return `${prefix}/p${count}`;
    },
  };
}

function wholePieces(kit: Kit): ReadonlyMap<string, BookEntry> {
  const known = remembered.get(kit);
  if (known !== undefined) return known;
  const whole = new Map<string, BookEntry>();
  for (const { code, family, mass } of kit.pieces) whole.set(code, { family, mass });
  remembered.set(kit, whole);
  return whole;
}
