// Which sheets are ticked. What is kept is the sheets left out, so that a sheet that is new comes ticked, unless all there
// were of its kind and room had been left out.

import { allSheets, type SheetEntry, type SheetList } from "./sheetList.ts";

/** Keys of the sheets that are not ticked. */
export type LeftOut = ReadonlySet<string>;

export type Ticked = "all" | "some" | "none";

export function tickedOf(keys: readonly string[], leftOut: LeftOut): Ticked {
  const out = keys.filter((key) => leftOut.has(key)).length;
  return out === 0 ? "all" : out === keys.length ? "none" : "some";
}

/** Ticks all of `keys`, or none where all of them are ticked already. */
export function toggled(keys: readonly string[], leftOut: LeftOut): LeftOut {
  const isAll = tickedOf(keys, leftOut) === "all";
  const next = new Set(leftOut);
  for (const key of keys) {
    if (isAll) next.add(key);
    else next.delete(key);
  }
  return next;
}

/** What is left out of a list that takes the place of another: a room may need more pages on other paper. */
export function carried(
  leftOut: LeftOut,
  before: Pick<SheetList, "sets">,
  after: Pick<SheetList, "sets">,
): LeftOut {
  const known = new Set(allSheets(before).map(({ key }) => key));
  const next = new Set(leftOut);
  for (const set of after.sets) {
    const old = before.sets.find(({ name }) => name === set.name)?.sheets ?? [];
    for (const sheet of set.sheets) {
      const alike = old.filter((each) => isAlike(each, sheet)).map(({ key }) => key);
      if (!known.has(sheet.key) && alike.length > 0 && tickedOf(alike, leftOut) === "none")
        next.add(sheet.key);
    }
  }
  return next;
}

function isAlike(a: SheetEntry, b: SheetEntry): boolean {
  return a.kind === b.kind && a.room === b.room;
}

/** The ticked sheets, in the order in which they are bound. */
export function chosenKeys(list: Pick<SheetList, "sets">, leftOut: LeftOut): readonly string[] {
  return allSheets(list).flatMap(({ key }) => (leftOut.has(key) ? [] : [key]));
}

/** How many of the ticked sheets a filter keeps from view: they are saved and printed all the same. */
export function unlistedCount(chosen: readonly string[], listed: readonly string[]): number {
  const seen = new Set(listed);
  return chosen.filter((key) => !seen.has(key)).length;
}

/**
 * The name of the file that holds the sheets, without extension: that of the sheet where it is one, that of the set
 * where they are of one, else the project's.
 */
export function bundleName(list: Pick<SheetList, "sets">, keys: readonly string[], project: string): string {
  const wanted = new Set(keys);
  const sets = list.sets.filter(({ sheets }) => sheets.some(({ key }) => wanted.has(key)));
  const [set] = sets;
  if (sets.length !== 1 || set === undefined) return project;
  const [only] = keys;
  if (keys.length === 1 && only !== undefined) return sheetName(only);
  return set.name;
}

/** The key of a sheet, from the names of its set and its own; neither holds a slash. */
export function sheetKeyOf(set: string, sheet: string): string {
  return `${set}/${sheet}`;
}

/** The name of a sheet, for a file. */
export function sheetName(key: string): string {
  return key.slice(key.indexOf("/") + 1);
}
