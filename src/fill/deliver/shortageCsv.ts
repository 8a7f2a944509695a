// The shortage list as a table for a spreadsheet: RFC 4180, lines end in CR LF.

import type { Kit } from "../../kit/kit.ts";
import { roundTo } from "../../units.ts";
import { sizeText, textCell } from "../billCsv.ts";
import type { Shortage } from "./shortage.ts";

const COLUMNS = "family,code,size_mm,needed,owned,short,spare,price,cost,pours,units";

/**
 * One row for each code that any pour needs, short of it or not. Prices and costs in the currency of the kit to 0.01,
 * empty where it has none; pours and units of the days on which it is short, with spaces between.
 */
export function shortageCsv({ lines }: Shortage, kit: Kit): string {
  const pieces = new Map(kit.pieces.map((piece) => [piece.code, piece]));
  const amount = (value: number | null) => (value === null ? "" : `${roundTo(value, 2)}`);
  const rows = lines.map((line) => {
    const piece = pieces.get(line.code);
    const texts = [line.family, line.code, piece === undefined ? "" : sizeText(piece)];
    const counts = [line.needed, line.owned, line.short, line.spare];
    return [
      ...texts.map(textCell),
      ...counts.map(String),
      amount(line.price),
      amount(line.short === 0 ? 0 : line.cost),
      ...[line.pours, line.units].map((ids) => textCell(ids.join(" "))),
    ].join(",");
  });
  return `${[COLUMNS, ...rows].join("\r\n")}\r\n`;
}
