// Does every id in a project file stand alone, and does every mention of one lead somewhere?
//
// Works on the file as it came, not on the checked project, so that a mistake in one wall does not hide that another
// wall's id is there twice.

import { fail, inside, type Place } from "../json/checker.ts";
import { isObject, type Json, type JsonObject } from "../json/value.ts";

/** Lists of a unit whose items have ids. A wall and an opening may share an id; two walls may not. */
const LISTS_WITH_IDS = ["walls", "openings", "slabs", "slabOpenings", "services", "controlLines"] as const;
const LISTS_NAMING_WALLS = ["openings", "pinned"] as const;

/** Reports ids that occur twice and mentions of walls and units that are not there. Linear in the size of the file. */
export function checkReferences(file: JsonObject, place: Place): void {
  for (const { item: unit, at } of itemsOf(file, "units", place)) {
    for (const name of LISTS_WITH_IDS) checkOwnIds(unit, name, at);
    for (const name of LISTS_NAMING_WALLS) {
      checkMentions({ list: itemsOf(unit, name, at), member: "wall", among: idsOf(unit, "walls") });
    }
  }
  checkOwnIds(file, "units", place);
  checkOwnIds(file, "pours", place);
  const units = idsOf(file, "units");
  checkStoreyIds(file, units, place);
  checkMentions({ list: itemsOf(file, "pours", place), member: "unit", among: units });
}

interface Item {
  readonly item: JsonObject;
  readonly at: Place;
}

function itemsOf(owner: JsonObject, name: string, place: Place): readonly Item[] {
  const list = owner[name];
  if (!Array.isArray(list)) return [];
  const at = inside(place, name);
  return list.flatMap((item: Json, index) => (isObject(item) ? [{ item, at: inside(at, index) }] : []));
}

/** The ids of a list; null where the list or one of its items is too broken to say what may be mentioned. */
function idsOf(owner: JsonObject, name: string): ReadonlySet<Json> | null {
  const list = Object.hasOwn(owner, name) ? owner[name] : [];
  if (!Array.isArray(list)) return null;
  const ids = new Set<Json>(list.map((item: Json) => (isObject(item) ? (item.id ?? null) : null)));
  return [...ids].every((id) => typeof id === "string") ? ids : null;
}

function checkOwnIds(owner: JsonObject, name: string, place: Place): void {
  const seen = new Map<string, string | number>();
  for (const { item, at } of itemsOf(owner, name, place)) {
    if (typeof item.id !== "string") continue;
    const other = seen.get(item.id);
    if (other === undefined) seen.set(item.id, at.key);
    else fail(inside(at, "id"), `an id of its own, for ${name}[${other}] has this one`, item.id);
  }
}

function checkMentions(mentions: {
  readonly list: readonly Item[];
  readonly member: "wall" | "unit";
  readonly among: ReadonlySet<Json> | null;
}): void {
  const { list, member, among } = mentions;
  if (among === null) return;
  for (const { item, at } of list) {
    const named = item[member];
    if (typeof named !== "string" || among.has(named)) continue;
    const where = member === "wall" ? "a wall of this unit" : "a unit of this project";
    fail(inside(at, member), `the id of ${where}`, named);
  }
}

// Results name a unit's second storey "A@2": a unit of that very name beside A could not be told from it.
function checkStoreyIds(file: JsonObject, units: ReadonlySet<Json> | null, place: Place): void {
  for (const { item, at } of itemsOf(file, "units", place)) {
    const base = typeof item.id === "string" ? /^(.+)@[0-9]+$/u.exec(item.id)?.[1] : undefined;
    if (base === undefined || !units?.has(base)) continue;
    fail(inside(at, "id"), `an id that cannot be taken for a storey of the unit ${base}`, item.id ?? null);
  }
}
