// The points to stake out as one table for a total station or a spreadsheet: metres with three decimals, both axis orders.
//
// Comma separated, RFC 4180, lines end in CR LF. Names of rooms come from a file somebody else may have written, so no
// cell may act as a formula where it is opened.

import { textCell } from "../../fill/billCsv.ts";
import type { Mm } from "../../units.ts";
import type { SettingOut } from "./settingOut.ts";
import type { PointKind } from "./stakePoints.ts";

const COLUMNS = [
  "point",
  "what",
  "room",
  "easting_m",
  "northing_m",
  "northing_first_m",
  "easting_second_m",
  "class",
] as const;

/** One row a point in the order of the walk, then one a layout pin (P1, P2 …). Easting is x, northing is y, from the datum. */
export function stakeOutCsv({ points, pins }: Pick<SettingOut, "points" | "pins">): string {
  const rows = [
    ...points,
    ...pins.map(({ at }, k) => ({ id: `P${k + 1}`, kind: "pin" as const, at, room: null })),
  ].map(({ id, kind, at, room }) => {
    const [easting, northing] = [metres(at[0]), metres(at[1])];
    const row = [id, kind, textCell(room ?? ""), easting, northing, northing, easting, toleranceClass(kind)];
    return row.join(",");
  });
  return `${[COLUMNS.join(","), ...rows].join("\r\n")}\r\n`;
}

/** How near a point is to be set: what each class allows stands on the sheet. */
function toleranceClass(kind: PointKind): "A" | "B" | "C" {
  return kind === "jamb" ? "B" : kind === "pin" ? "C" : "A";
}

/** Whole millimetres as metres, by their digits alone: 4300 → "4.300". */
function metres(length: Mm): string {
  const whole = Math.round(Math.abs(length));
  const sign = length < 0 && whole > 0 ? "-" : "";
  return `${sign}${Math.floor(whole / 1000)}.${String(whole % 1000).padStart(3, "0")}`;
}
