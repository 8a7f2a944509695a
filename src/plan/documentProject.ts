// From the project file's shape to the document that is edited, and back without loss.
//
// Lists become records with a rank; room labels and pins get ids that the file does not carry. Members of a unit
// that this version does not know are passed through.

import {
  BUCKETS,
  type Bucket,
  type Entry,
  ID_PREFIX,
  listed,
  type PlanDocument,
  type Records,
  recordKey,
  type UnitDocument,
} from "./document.ts";
import type { Project, Unit } from "./project.ts";

/**
 * The document of a project. Ids must be unique in their list; the reader of the file has seen to that.
 *
 * @throws {RangeError} if two things of one list share an id
 */
export function projectToDocument(project: Project): PlanDocument {
  const { units, pours, ...settings } = project;
  return { ...settings, units: filed(units.map(unitToDocument)), pours: filed(pours.map(withRank)) };
}

/** The project of a document: `documentToProject(projectToDocument(p))` equals `p`, the order of lists included. */
export function documentToProject(document: PlanDocument): Project {
  const { units, pours, ...settings } = document;
  return { ...settings, units: listed(units).map(documentToUnit), pours: listed(pours).map(withoutRank) };
}

/** One unit as the fill reads it. */
export function documentToUnit(document: UnitDocument): Unit {
  const { rank: _, ...unit } = document;
  return {
    ...unit,
    walls: listed(unit.walls).map(withoutRank),
    openings: listed(unit.openings).map(withoutRank),
    rooms: listed(unit.rooms).map(withoutId),
    slabs: listed(unit.slabs).map(withoutRank),
    slabOpenings: listed(unit.slabOpenings).map(withoutRank),
    services: listed(unit.services).map(withoutRank),
    controlLines: listed(unit.controlLines).map(withoutRank),
    pinned: listed(unit.pinned).map(withoutId),
  };
}

/** A unit as records, at a place in the order of the units. */
export function unitToDocument(unit: Unit, rank: number): UnitDocument {
  const named = <T>(list: readonly T[], bucket: Bucket) =>
    filed(list.map((item, index) => ({ ...item, id: `${ID_PREFIX[bucket]}${index + 1}`, rank: index })));
  return {
    ...unit,
    rank,
    walls: filed(unit.walls.map(withRank)),
    openings: filed(unit.openings.map(withRank)),
    rooms: named(unit.rooms, "rooms"),
    slabs: filed(unit.slabs.map(withRank)),
    slabOpenings: filed(unit.slabOpenings.map(withRank)),
    services: filed(unit.services.map(withRank)),
    controlLines: filed(unit.controlLines.map(withRank)),
    pinned: named(unit.pinned, "pinned"),
  };
}

/** A unit with nothing in it. */
export function emptyUnit(id: string, name: string, rank: number): UnitDocument {
  return {
    id,
    name,
    rank,
    walls: {},
    openings: {},
    rooms: {},
    slabs: {},
    slabOpenings: {},
    services: {},
    controlLines: {},
    pinned: {},
  };
}

/** Whether nothing is drawn in the unit. */
export function isEmptyUnit(unit: UnitDocument): boolean {
  return BUCKETS.every((bucket) => Object.keys(unit[bucket]).length === 0);
}

function withRank<T extends { readonly id: string }>(item: T, rank: number): Entry<T> {
  return { ...item, rank };
}

function withoutRank<T>(entry: T & { readonly rank: number }): Omit<T & { readonly rank: number }, "rank"> {
  const { rank: _, ...item } = entry;
  return item;
}

function withoutId<T extends { readonly id: string; readonly rank: number }>(
  entry: T,
): Omit<T, "id" | "rank"> {
  const { id: _, rank: __, ...item } = entry;
  return item;
}

function filed<T extends { readonly id: string }>(entries: readonly T[]): Records<T> {
  const records: { [key: string]: T } = {};
  for (const entry of entries) {
    const key = recordKey(entry.id);
    if (Object.hasOwn(records, key)) throw new RangeError(`two entries share the id "${entry.id}"`);
    records[key] = entry;
  }
  return records;
}
