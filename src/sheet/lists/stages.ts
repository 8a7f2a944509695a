// When each family is needed on site, so that what is needed first comes off the lorry first.
//
// Corners and panels, then what closes them, what keeps them in line, the head of the wall, and last the slab.
// Common practice, no source.

import { FAMILIES, type Family } from "../../kit/kit.ts";

const STAGES: readonly (readonly Family[])[] = [
  ["pin", "wedge", "tie", "tie-sleeve"],
  ["inside-corner"],
  ["wall-panel"],
  ["closure-strip"],
  ["outside-corner", "stop-end", "reveal-closure", "reveal-corner", "opening-brace"],
  ["wall-bracket", "alignment-ledger", "brace", "facade-aligner"],
  ["wall-slab-connector", "connector-corner", "slab-edge-cap", "cap-corner"],
  ["shoring-strip", "prop", "slab-panel"],
];

/** Families in the order in which they are set; the number is the same for no two. */
export function stageOf(family: Family): number {
  const stage = STAGES.findIndex((families) => families.includes(family));
  return (stage < 0 ? STAGES.length : stage) * FAMILIES.length + FAMILIES.indexOf(family);
}
