// Small kits for tests: pieces with the fields that matter given, the rest plain.

import type { Kit, Piece, Rules } from "../../src/kit/kit.ts";

const PLAIN = { mass: 10, price: null, standard: false, hand: null, stays: 0 } as const;

type Given<P> = P extends Piece ? Omit<P, keyof typeof PLAIN> & Partial<P> : never;

export function piece(given: Given<Piece>): Piece {
  return { ...PLAIN, ...given };
}

/** A wall panel with the code "width×height" unless another is given. */
export function panel(width: number, height: number, given: Partial<Piece> = {}): Piece {
  const { code = `${width}×${height}`, mass = 10, standard = false } = given;
  return piece({ family: "wall-panel", code, width, height, mass, standard });
}

export function kitOf(pieces: readonly Piece[], rules: Rules = {}): Kit {
  return { name: "test", currency: null, pieces, rules };
}
