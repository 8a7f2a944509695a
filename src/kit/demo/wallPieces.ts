// The wall side of the demo kit: panels, corners, stop-ends and the closures of reveals.
//
//   +----+--------+--------+---+----+        a lintel panel is made lying: wider than it is high,
//   | C  |  600   |  600   |300| C  |        one piece over a door of common width
//   +----+--------+--------+---+----+

import { type Mm, squareMetres } from "../../units.ts";
import type { Piece } from "../kit.ts";
import { EDGE_HEIGHTS, THICKNESSES, WALL_HEIGHTS } from "./heights.ts";
import { angle, plated } from "./plain.ts";

/** The one standard width; every other is a filler. Common practice, no source. */
const STANDARD_WIDTH: Mm = 600;
const WIDTHS: readonly Mm[] = [600, 550, 500, 450, 400, 350, 300, 250, 200, 150, 100, 50];
const LINTEL_WIDTH: Mm = 900;
const LINTEL_HEIGHTS: readonly Mm[] = [400, 350, 300, 250, 200, 150];
const CORNER_LEG: Mm = 150;
const REVEAL_LENGTHS: readonly Mm[] = [
  1500, 1200, 1000, 900, 800, 700, 600, 500, 450, 400, 300, 250, 200, 150, 100,
];

/** Panels, corners, stop-ends and reveal closures, family by family. */
export const WALL_PIECES: readonly Piece[] = [
  ...WALL_HEIGHTS.flatMap((height) => WIDTHS.map((width) => panel(width, height, width === STANDARD_WIDTH))),
  ...LINTEL_HEIGHTS.map((height) => panel(LINTEL_WIDTH, height, true)),
  ...WALL_HEIGHTS.map(insideCorner),
  ...EDGE_HEIGHTS.map(
    (length): Piece => ({ family: "outside-corner", length, ...angle(`Angle${length}`, length) }),
  ),
  ...THICKNESSES.flatMap((width) => EDGE_HEIGHTS.map((height) => stopEnd(width, height))),
  ...THICKNESSES.flatMap((width) => REVEAL_LENGTHS.map((length) => revealClosure(width, length))),
];

function panel(width: Mm, height: Mm, standard: boolean): Piece {
  const plain = plated(`W${width}x${height}`, squareMetres(width, height));
  return { family: "wall-panel", width, height, ...plain, standard };
}

function insideCorner(height: Mm): Piece {
  return {
    family: "inside-corner",
    legs: [CORNER_LEG, CORNER_LEG],
    height,
    ...plated(`Corner${CORNER_LEG}x${height}`, squareMetres(2 * CORNER_LEG, height)),
  };
}

function stopEnd(width: Mm, height: Mm): Piece {
  return {
    family: "stop-end",
    width,
    height,
    ...plated(`End${width}x${height}`, squareMetres(width, height)),
  };
}

function revealClosure(width: Mm, length: Mm): Piece {
  return {
    family: "reveal-closure",
    width,
    length,
    ...plated(`Reveal${width}x${length}`, squareMetres(width, length)),
  };
}
