// The project as it is edited: every thing a record under its id, in buckets by unit, so that one change touches
// one entry and an undo step stays small. The order of the file is kept as a rank on each entry, because the order
// of keys is lost when an entry is taken out and put back.
//
//   document ─ units ─ "A" ─ walls ─ "w1" ─ { id, rank, from, to, thickness, justify }
//                          └ openings, rooms, slabs, slabOpenings, services, controlLines, pinned
//
// Reading and writing the file's own shape is `documentProject.ts`; changing it is `edit.ts`.

import type {
  ControlLine,
  Opening,
  Pinned,
  Pour,
  Project,
  RoomLabel,
  Service,
  SlabOutline,
  Unit,
  Wall,
} from "./project.ts";

/** A thing of the file with its id and its place in the file's order. */
export type Entry<T> = T & { readonly id: string; readonly rank: number };

/** Entries under {@link recordKey} of their id. */
export interface Records<T> {
  readonly [key: string]: T;
}

/** What a unit holds, by kind. Room labels and pins have no id in the file; the document gives them one. */
export interface Buckets {
  readonly walls: Records<Entry<Wall>>;
  readonly openings: Records<Entry<Opening>>;
  readonly rooms: Records<Entry<RoomLabel>>;
  readonly slabs: Records<Entry<SlabOutline>>;
  readonly slabOpenings: Records<Entry<SlabOutline>>;
  readonly services: Records<Entry<Service>>;
  readonly controlLines: Records<Entry<ControlLine>>;
  readonly pinned: Records<Entry<Pinned>>;
}

export type Bucket = keyof Buckets;

/** The buckets in the order of the file. */
export const BUCKETS: readonly Bucket[] = [
  "walls",
  "openings",
  "rooms",
  "slabs",
  "slabOpenings",
  "services",
  "controlLines",
  "pinned",
];

export interface UnitDocument extends Omit<Unit, Bucket>, Buckets {
  readonly rank: number;
}

export interface PlanDocument extends Omit<Project, "units" | "pours"> {
  readonly units: Records<UnitDocument>;
  readonly pours: Records<Entry<Pour>>;
}

/** One thing of a unit. */
export interface ItemRef {
  readonly bucket: Bucket;
  readonly id: string;
}

/** A unit being changed: buckets may be written, entries are replaced whole. */
export type UnitDraft = {
  -readonly [K in keyof UnitDocument]: K extends Bucket
    ? { [key: string]: UnitDocument[K][string] }
    : UnitDocument[K];
};

/** A document being changed: a clone, or a draft of a state library. */
export type PlanDraft = {
  -readonly [K in keyof Omit<PlanDocument, "units" | "pours">]: PlanDocument[K];
} & { units: { [key: string]: UnitDraft }; pours: { [key: string]: Entry<Pour> } };

const ESCAPE = "~";
const RESERVED: readonly string[] = ["__proto__", "constructor", "prototype"];

/** The key an id is filed under: the id itself, unless that word means something else to every object. */
export function recordKey(id: string): string {
  return RESERVED.includes(id) || id.startsWith(ESCAPE) ? ESCAPE + id : id;
}

/** The entry with this id, or undefined. Names that every object inherits are no entries. */
export function find<T>(records: { readonly [key: string]: T }, id: string): T | undefined {
  const key = recordKey(id);
  return Object.hasOwn(records, key) ? records[key] : undefined;
}

/** All entries in the order of the file; equal ranks by id. */
export function listed<T extends { readonly id: string; readonly rank: number }>(records: {
  readonly [key: string]: T;
}): T[] {
  return Object.values(records).sort((a, b) => a.rank - b.rank || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}

/** The rank after all others. */
export function nextRank(records: { readonly [key: string]: { readonly rank: number } }): number {
  let last = -1;
  for (const { rank } of Object.values(records)) if (rank > last) last = rank;
  return last + 1;
}

/** `prefix` and one more than the greatest number in use behind it, so the same document always gives the same id. */
export function freshId(
  records: { readonly [key: string]: { readonly id: string } },
  prefix: string,
): string {
  let greatest = 0;
  for (const { id } of Object.values(records)) {
    if (!id.startsWith(prefix)) continue;
    const tail = id.slice(prefix.length);
    if (/^[0-9]{1,9}$/.test(tail)) greatest = Math.max(greatest, Number(tail));
  }
  return `${prefix}${greatest + 1}`;
}

/** First letters of the ids given to things drawn by hand. */
export const ID_PREFIX: Readonly<Record<Bucket, string>> = {
  walls: "w",
  openings: "d",
  rooms: "r",
  slabs: "b",
  slabOpenings: "o",
  services: "s",
  controlLines: "X",
  pinned: "n",
};

/** Files an entry under its id. Writes nothing where an equal entry stands already. */
export function put<T extends { readonly id: string }>(records: { [key: string]: T }, entry: T): void {
  const old = find(records, entry.id);
  if (old === undefined || !isSame(old, entry)) records[recordKey(entry.id)] = entry;
}

/** Takes an entry out; none there is no fault. */
export function drop(records: { [key: string]: unknown }, id: string): void {
  const key = recordKey(id);
  if (Object.hasOwn(records, key)) delete records[key];
}

/** Whether two values of plain data say the same. */
export function isSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const left = new Map<string, unknown>(Object.entries(a));
  const right = Object.entries(b);
  return (
    left.size === right.length && right.every(([key, value]) => left.has(key) && isSame(left.get(key), value))
  );
}
