// The bill of every unit as one table for a spreadsheet: comma separated, RFC 4180, lines end in CR LF.
//
// Names and codes come from a file somebody else may have written, so no cell may act as a formula where it is
// opened. The columns carry plain ASCII names and numbers with a point, for programs as much as for people.

import type { Kit, Piece } from "../kit/kit.ts";
import { roundTo } from "../units.ts";
import { entryNames } from "./entryNames.ts";
import type { FillDocument } from "./result.ts";

const COLUMNS = ["unit", "family", "code", "size_mm", "quantity", "mass_kg", "area_m2"] as const;

/**
 * One row for each line of each unit's bill, in the order of the fill. Units are named by {@link entryNames}.
 * Masses to 0.01 kg and areas to 0.0001 m², of all pieces of the line.
 *
 * @param kit - gives the size of each code; a code it lacks leaves the cell empty
 * @see RFC 4180, section 2 (records, quotes, line ends)
 */
export function billCsv(fill: FillDocument, kit: Kit): string {
  const pieceByCode = new Map(kit.pieces.map((piece) => [piece.code, piece]));
  const names = entryNames(fill);
  const rows: string[] = [COLUMNS.join(",")];
  for (const [index, unit] of fill.units.entries()) {
    for (const line of unit.bill) {
      const piece = pieceByCode.get(line.code);
      const texts = [names[index]!, line.family, line.code, piece === undefined ? "" : sizeText(piece)];
      const figures = [roundTo(line.quantity, 0), roundTo(line.mass, 2), roundTo(line.area, 4)];
      rows.push([...texts.map(textCell), ...figures.map(String)].join(","));
    }
  }
  return `${rows.join("\r\n")}\r\n`;
}

/** The size of a piece in mm, its parts joined as people say them: "600 x 2250", corner legs "150 + 150 x 2250". */
export function sizeText(piece: Piece): string {
  switch (piece.family) {
    case "wall-panel":
    case "stop-end":
      return `${piece.width} x ${piece.height}`;
    case "reveal-closure":
    case "slab-panel":
    case "shoring-strip":
      return `${piece.width} x ${piece.length}`;
    case "inside-corner":
    case "cap-corner":
      return `${piece.legs.join(" + ")} x ${piece.height}`;
    case "reveal-corner":
      return `${piece.legs.join(" + ")} x ${piece.width}`;
    case "connector-corner":
      return `${piece.legs.join(" + ")} x ${piece.height} x ${piece.depth}`;
    case "wall-slab-connector":
      return `${piece.height} x ${piece.depth} x ${piece.length}`;
    case "slab-edge-cap":
      return `${piece.height} x ${piece.length}`;
    case "prop":
    case "closure-strip":
      return `${piece.least} to ${piece.greatest}`;
    case "outside-corner":
    case "tie":
    case "tie-sleeve":
      return `${piece.length}`;
    case "pin":
    case "wedge":
    case "wall-bracket":
    case "alignment-ledger":
    case "brace":
    case "opening-brace":
    case "facade-aligner":
      return piece.length === null ? "" : `${piece.length}`;
    default:
      return piece satisfies never;
  }
}

// What a spreadsheet takes for the beginning of a formula, the full-width forms of the signs included.
const FORMULA_START = /^[=+\-@\t\r\n\uFF0B\uFF0D\uFF1D\uFF20]/;
const NEEDS_QUOTES = /[",\r\n]/;

/** A text as a cell: never a formula, quoted where it must be. */
export function textCell(text: string): string {
  const guarded = FORMULA_START.test(text) ? `'${text}` : text;
  return NEEDS_QUOTES.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}
