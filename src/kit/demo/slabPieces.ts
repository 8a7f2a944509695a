// Where wall meets slab, and the slab: connectors, caps, slab panels, shoring strips and props of the demo kit.
//
//   room side            outside
//   ____________ soffit  |    |
//   | depth                   | cap = connector + slab
//   | height                  |
//
// A cap stays one pour as the next storey's kicker, strips and props stay two: invented for the demo.

import { type Mm, squareMetres } from "../../units.ts";
import type { Piece, Turn } from "../kit.ts";
import { CAP_HEIGHTS, CONNECTOR_HEIGHTS } from "./heights.ts";
import { angle, bought, plated } from "./plain.ts";

const DEPTH: Mm = 150;
const CONNECTOR_LENGTHS: readonly Mm[] = [1200, 600, 300];
const CAP_LENGTHS: readonly Mm[] = [1200, 600, 300, 200];
const CORNER_LEG: Mm = 150;
/** An outside cap corner is an angle behind the frames; it takes no width on the face. */
const ANGLE_LEG: Mm = 65;
const TURNS: readonly Turn[] = ["inside", "outside"];

const SLAB_WIDTHS: readonly Mm[] = [600, 550, 500, 450, 400, 350, 300, 250, 200, 150, 100, 50];
const SLAB_LENGTHS: readonly Mm[] = [1200, 600, 550, 500, 450, 400, 350, 300];
const STRIP_WIDTH: Mm = 150;
const STRIP_LENGTHS: readonly Mm[] = [1200, 600, 300, 200, 150, 100];
const CAP_STAYS = 1;
const SHORING_STAYS = 2;

/** Connectors, caps, slab panels, strips and props, family by family. */
export const SLAB_PIECES: readonly Piece[] = [
  ...CONNECTOR_HEIGHTS.flatMap((height) => CONNECTOR_LENGTHS.map((length) => connector(height, length))),
  ...CONNECTOR_HEIGHTS.flatMap((height) => TURNS.map((turn) => connectorCorner(turn, height))),
  ...CAP_HEIGHTS.flatMap((height) => CAP_LENGTHS.map((length) => cap(height, length))),
  ...CAP_HEIGHTS.flatMap((height) => TURNS.map((turn) => capCorner(turn, height))),
  ...SLAB_LENGTHS.flatMap((length) =>
    SLAB_WIDTHS.filter((width) => width <= length).map((width) => slabPanel(width, length)),
  ),
  ...STRIP_LENGTHS.map(strip),
  {
    family: "prop",
    least: 2000,
    greatest: 3500,
    // Classes are those of EN 1065, from memory; that this prop is of class B is invented for the demo.
    class: "B",
    ...bought("Prop2000-3500", 12.5, 38),
    stays: SHORING_STAYS,
  },
];

function connector(height: Mm, length: Mm): Piece {
  const plain = plated(`Conn${height}x${length}`, squareMetres(height + DEPTH, length));
  return { family: "wall-slab-connector", height, depth: DEPTH, length, ...plain };
}

function connectorCorner(turn: Turn, height: Mm): Piece {
  const soffit = squareMetres(DEPTH, DEPTH);
  const area = turn === "inside" ? soffit + squareMetres(2 * DEPTH, height) : soffit;
  return {
    family: "connector-corner",
    turn,
    height,
    depth: DEPTH,
    legs: [DEPTH, DEPTH],
    ...plated(`Conn${height}${turn}`, area),
  };
}

function cap(height: Mm, length: Mm): Piece {
  const plain = plated(`Cap${height}x${length}`, squareMetres(height, length));
  return { family: "slab-edge-cap", height, length, ...plain, stays: CAP_STAYS };
}

function capCorner(turn: Turn, height: Mm): Piece {
  const code = `Cap${height}${turn}`;
  const isInside = turn === "inside";
  const leg = isInside ? CORNER_LEG : ANGLE_LEG;
  const plain = isInside ? plated(code, squareMetres(2 * leg, height)) : angle(code, height);
  return { family: "cap-corner", turn, height, legs: [leg, leg], ...plain, stays: CAP_STAYS };
}

function slabPanel(width: Mm, length: Mm): Piece {
  const plain = plated(`S${width}x${length}`, squareMetres(width, length));
  return { family: "slab-panel", width, length, ...plain, standard: width === 600 && length === 1200 };
}

function strip(length: Mm): Piece {
  const plain = plated(`Strip${STRIP_WIDTH}x${length}`, squareMetres(STRIP_WIDTH, length));
  return { family: "shoring-strip", width: STRIP_WIDTH, length, ...plain, stays: SHORING_STAYS };
}
