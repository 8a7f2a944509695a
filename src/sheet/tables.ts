// Which tables lie beside the sheets of a project, for a spreadsheet: the one list, as sheetSet.ts is of the sheets.

import { billCsv } from "../fill/billCsv.ts";
import { shortageOf } from "../fill/deliver/shortage.ts";
import { shortageCsv } from "../fill/deliver/shortageCsv.ts";
import { planOf } from "./deltas/deltaSheet.ts";
import { deltasCsv } from "./deltas/deltasCsv.ts";
import { accessoriesCsv, listedEntries, packingCsv } from "./lists/listsCsv.ts";
import { stakeOutTables } from "./settingOut/stakeOutTables.ts";
import { handedEntries, type MadeFill } from "./sheetSet.ts";

/** A table with the name of its file. */
export interface Table {
  readonly name: string;
  readonly text: string;
}

/** Bill, packing list, accessories, shortage, from pour to pour where there are several days, points to stake out. */
export function projectTables(made: MadeFill): readonly Table[] {
  const entries = listedEntries(made);
  const plan = planOf(made);
  return [
    { name: "bill.csv", text: billCsv(made.fill, made.kit) },
    { name: "packing.csv", text: packingCsv(entries) },
    { name: "accessories.csv", text: accessoriesCsv(entries) },
    { name: "shortage.csv", text: shortageCsv(shortageOf(made.fill, made.kit, made.project), made.kit) },
    ...(plan.days.length < 2 ? [] : [{ name: "deltas.csv", text: deltasCsv(plan, made.kit) }]),
    ...stakeOutTables(handedEntries(made)),
  ];
}
