// Which tables lie beside the sheets of a project, for a spreadsheet: the one list, as sheetSet.ts is of the sheets.

import { billCsv } from "../fill/billCsv.ts";
import { accessoriesCsv, listedEntries, packingCsv } from "./lists/listsCsv.ts";
import { stakeOutTables } from "./settingOut/stakeOutTables.ts";
import { handedEntries, type MadeFill } from "./sheetSet.ts";

/** A table with the name of its file. */
export interface Table {
  readonly name: string;
  readonly text: string;
}

/** Bill, packing list, accessories, points to stake out. */
export function projectTables(made: MadeFill): readonly Table[] {
  const entries = listedEntries(made);
  return [
    { name: "bill.csv", text: billCsv(made.fill, made.kit) },
    { name: "packing.csv", text: packingCsv(entries) },
    { name: "accessories.csv", text: accessoriesCsv(entries) },
    ...stakeOutTables(handedEntries(made)),
  ];
}
