// The stake-out lists of a project: one for each unit, storey and hand, named as its sheets are.

import type { HandedEntry } from "../sheetSet.ts";
import { settingOutOf } from "./settingOut.ts";
import { stakeOutCsv } from "./stakeOutCsv.ts";

/** A table with the name of its file: "stake-out.csv" where there is one alone, else "a-stake-out.csv" and so on. */
export function stakeOutTables(
  entries: readonly HandedEntry[],
): readonly { readonly name: string; readonly text: string }[] {
  return entries.map(({ name, fill, unit, isMirrored }) => ({
    name: entries.length === 1 ? "stake-out.csv" : `${name}-stake-out.csv`,
    text: stakeOutCsv(settingOutOf(fill, unit, isMirrored)),
  }));
}
