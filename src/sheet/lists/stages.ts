// When each family is needed on site, so that what is needed first comes off the lorry first.
//
// Corners and panels, then what closes them, what keeps them in line, the head of the wall, and last the slab.
// Common practice, no source.

import { FAMILIES, type Family } from "../../kit/kit.ts";

const ORDER: readonly Family[] = [
  ...(["tie", "tie-sleeve", "pin", "wedge"] as const),
  ...(["inside-corner", "wall-panel", "closure-strip"] as const),
  ...(["stop-end", "outside-corner", "reveal-closure", "reveal-corner", "opening-brace"] as const),
  ...(["wall-bracket", "alignment-ledger", "brace", "facade-aligner"] as const),
  ...(["wall-slab-connector", "connector-corner", "slab-edge-cap", "cap-corner"] as const),
  ...(["shoring-strip", "prop", "slab-panel"] as const),
];

/** Place of a family in the order in which its pieces are needed; a family that is not in it comes last. */
export function stageOf(family: Family): number {
  const stage = ORDER.indexOf(family);
  return stage < 0 ? ORDER.length + FAMILIES.indexOf(family) : stage;
}
