// What holds the forms of the demo kit together, in line and upright. Masses are common practice, no source.

import type { Mm } from "../../units.ts";
import type { Piece } from "../kit.ts";
import { THICKNESSES } from "./heights.ts";
import { accessory, bought } from "./plain.ts";

const LEDGER_LENGTHS: readonly Mm[] = [3000, 1500];
const LEDGER_KG_PER_METRE = 3;

/** Ties, sleeves, the closure strip and the accessories, family by family. */
export const SMALL_PIECES: readonly Piece[] = [
  ...THICKNESSES.map((length): Piece => ({ family: "tie", length, ...bought(`Tie${length}`, 0.3, 0.9) })),
  ...THICKNESSES.map(
    (length): Piece => ({ family: "tie-sleeve", length, ...bought(`Sleeve${length}`, 0.02, 0.1) }),
  ),
  // On a 50 grid the residues 1 to 9 need a strip of 51 to 59, so 10..59 closes every one of them.
  { family: "closure-strip", least: 10, greatest: 59, ...bought("Closure10-59", 1.5, 12) },
  accessory("pin", null, bought("Pin", 0.18, 0.35)),
  accessory("wedge", null, bought("Wedge", 0.12, 0.25)),
  accessory("wall-bracket", null, bought("Bracket", 2.2, 9)),
  ...LEDGER_LENGTHS.map((length) =>
    accessory(
      "alignment-ledger",
      length,
      bought(`Ledger${length}`, (LEDGER_KG_PER_METRE * length) / 1000, length / 100),
    ),
  ),
  accessory("brace", null, bought("Brace", 14, 55)),
  accessory("opening-brace", null, bought("Spreader", 4.5, 24)),
  accessory("facade-aligner", null, bought("Aligner", 9, 40)),
];
