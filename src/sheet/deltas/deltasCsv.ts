// The delta lists as a table for a spreadsheet: one row for each kind of piece and way, RFC 4180, lines end in CR LF.
//
// Columns carry plain ASCII names, for programs as much as for people. A place is room, outside, shared or store.

import { sizeText, textCell } from "../../fill/billCsv.ts";
import { pieceFinder } from "../../fill/dayNeeds.ts";
import type { CarriedLine, DeliverPlan, PourPlace } from "../../fill/deliver/deliverPlan.ts";
import type { PourNeed } from "../../fill/deliver/pourNeeds.ts";
import type { Kit } from "../../kit/kit.ts";

const COLUMNS =
  "pour,unit,hand,day,action,family,code,size_mm,from_pour,from_place,from_room,to_pour,to_place,to_room,quantity,free_on_day";

type End = readonly [pour: string, place: string, room: string];

const STORE: End = ["", "store", ""];

/**
 * Actions: `along` to a room's own room, `move` between others, `fetch` and `return` from and to the store, `stay` in
 * place when the pour is struck, `idle` in the store meanwhile (under the first pour of the day). Days count from 1. Of each pour `along`, `move` and `fetch` sum
 * to what it needs.
 */
export function deltasCsv(plan: DeliverPlan, kit: Kit): string {
  const exact = new Map(kit.pieces.map((piece) => [piece.code, piece]));
  const find = pieceFinder(kit);
  const sizeOf = (code: string, cut: string | null) => {
    const piece = exact.get(code);
    if (cut !== null) return cut.replace("×", "x");
    return piece === undefined
      ? find(code) === undefined
        ? ""
        : code.slice(code.lastIndexOf("/") + 1)
      : sizeText(piece);
  };
  const rows: (readonly (string | number)[])[] = [];
  const add = (need: PourNeed, action: string, line: CarriedLine, ends: readonly [End, End], freeOn = "") => {
    const { item, quantity } = line;
    rows.push([
      ...[need.pour ?? "", need.name, need.mirror ? "mirrored" : "as drawn", need.day + 1, action],
      ...[item.family, item.code, sizeOf(item.code, item.cut), ...ends[0], ...ends[1], quantity, freeOn],
    ]);
  };
  for (const { pours, idle } of plan.days) {
    for (const { need, moves, fetched, returned, staying } of pours) {
      for (const line of moves)
        add(need, line.kind === "own-room" ? "along" : "move", line, [endOf(line.from), endOf(line.to)]);
      for (const line of returned) add(need, "return", line, [endOf(line.at), STORE]);
      for (const line of fetched) add(need, "fetch", line, [STORE, endOf(line.at)]);
      const here: End = [need.pour ?? "", "", ""];
      for (const line of staying)
        add(need, "stay", line, [here, here], line.freeOn === null ? "" : `${line.freeOn + 1}`);
    }
    for (const line of idle) add(pours[0]!.need, "idle", line, [STORE, STORE]);
  }
  const lines = rows.map((row) =>
    row.map((cell) => (typeof cell === "number" ? `${cell}` : textCell(cell))).join(","),
  );
  return `${[COLUMNS, ...lines].join("\r\n")}\r\n`;
}

function endOf({ pour, place }: PourPlace): End {
  const { kind, name } = pour.places[place]!;
  return [pour.pour ?? "", kind, name];
}
