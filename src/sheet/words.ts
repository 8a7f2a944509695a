// The words of the sheets that are not data, in one place.

import type { Family } from "../kit/kit.ts";
import type { Mm } from "../units.ts";

export const WORDS = {
  outside: "Outside",
  unnamed: "Unnamed room",
  outsideBehind: "outside",
  start: "start",
  close: "close",
  out: (order: number) => `out ${order}`,
  sill: (height: Mm) => `sill ${height}`,
  keyPlan: "Key plan",
  before: "before",
  after: "after",
  tieThere: "by neighbour",
  continued: "continued",
} as const;

/** Parts of the header. The sentence reads: Start AB, turn right B C, turn left A D, close CD. */
export const HEADER_WORDS = {
  unit: (name: string) => `Unit ${name}`,
  pieces: (count: number) => (count === 1 ? "1 piece" : `${count} pieces`),
  area: (squareMetres: string) => `${squareMetres} m²`,
  mirrored: "mirrored",
  start: "Start",
  right: "turn right",
  left: "turn left",
  /** Outside a building the next face lies round the corner, not ahead. */
  outsideRight: "go right",
  outsideLeft: "go left",
  close: "close",
  continued: (page: number, pages: number) => `page ${page} of ${pages}`,
} as const;

export const NOTE_WORDS = {
  errors: "To be settled before building",
  warnings: "To know",
  cautions: "On the wall",
  diagonals: (length: Mm) => `Before the first panel, both diagonals ${length}.`,
  order: "Corner, one panel each side, plumb, brace.",
  tieRows: (rows: readonly Mm[]) => `Tie rows ${rows.join(", ")}: bottom row first, none left out.`,
  twoLift: (limit: number) => `Double outline: two lift. Single: within the stated limit of ${limit} kg.`,
  noLimit: "No mass for one person is stated: lifts not checked.",
  zone: "Dots: no tie inside.",
  firstOut: "Notch: out first, as tagged.",
  hold: "Close no face before the inspector has signed.",
  edges: "Guard open edges. Nobody under a lifted piece.",
  strike: "Strike only on the engineer’s word.",
} as const;

export const TITLE_WORDS = {
  roomSheet: (room: string, isMirrored: boolean) => `Room sheet, ${room}${isMirrored ? ", mirrored" : ""}`,
} as const;

/** What a family is called in a list; a wall panel needs no word, its size says it. */
export const FAMILY_WORDS: { readonly [F in Family]: string } = {
  "wall-panel": "panel",
  "inside-corner": "inside corner",
  "outside-corner": "outside corner",
  "stop-end": "stop-end",
  "reveal-closure": "reveal",
  "reveal-corner": "reveal corner",
  "wall-slab-connector": "connector",
  "connector-corner": "connector corner",
  "slab-edge-cap": "edge cap",
  "cap-corner": "cap corner",
  "slab-panel": "slab panel",
  "shoring-strip": "shoring strip",
  prop: "prop",
  tie: "tie",
  "tie-sleeve": "tie sleeve",
  "closure-strip": "closure strip",
  pin: "pin",
  wedge: "wedge",
  "wall-bracket": "wall bracket",
  "alignment-ledger": "ledger",
  brace: "brace",
  "opening-brace": "opening brace",
  "facade-aligner": "facade aligner",
};
