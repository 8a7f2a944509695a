// Which part of a regular grid does one prop carry? Common practice, no source: plain halving between neighbours.
//
//   corner ── edge ── edge        a × b inside, half of it at an edge, a quarter in a corner
//     │         │       │
//    edge ── inside ── inside

import { type Mm, type SquareMetre, squareMetres } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

export type GridPlace = "interior" | "edge" | "corner";

const PART: Readonly<Record<GridPlace, number>> = { interior: 1, edge: 2, corner: 4 };
const SPACING = { input: "prop spacing", least: 1, greatest: 10_000, unit: "mm" } as const;

/** Area one prop carries in a grid of `along` × `across`, m²; each 1 to 10 000 mm, otherwise refused. */
export function tributaryArea(along: Mm, across: Mm, place: GridPlace): Answer<SquareMetre> {
  const refusal = refusalOf([along, SPACING], [across, SPACING]);
  return refusal ?? computed(squareMetres(along, across) / PART[place]);
}
