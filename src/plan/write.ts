// From a project to the text of its file: members in a fixed order, what equals its default left out.
//
// A file that says only what a person decided is short, and two versions of it differ only where they mean to.

import { bareObject, isObject, type Json, type JsonObject } from "../json/value.ts";
import { writeJson } from "../json/write.ts";
import { DEFAULT_CLEARANCE, DEFAULT_OBJECTIVE, usualForming } from "./defaults.ts";
import { PROJECT_FORMAT, PROJECT_VERSION } from "./migrate.ts";
import type { Limits, Objective, Opening, Pinned, Pour, Project, Service, Storey, Unit } from "./project.ts";

/**
 * Writes a project so that reading gives it back: two-space indent, one final newline, no −0.
 *
 * @throws {RangeError} if a number in it is not finite
 */
export function writeProject(project: Project): string {
  const file = members(
    {
      format: PROJECT_FORMAT,
      version: PROJECT_VERSION,
      name: unless(project.name, ""),
      revision: unless(project.revision, ""),
      language: unless(project.language, "en"),
      storey: storeyMembers(project.storey),
      kit: project.kit,
      units: project.units.map(unitMembers),
      pours: filled(project.pours.map(pourMembers)),
      stock: filled(project.stock),
      buy: unless(project.buy, true),
      fillers: unless(project.fillers, "corner"),
      objective: filled(objectiveMembers(project.objective)),
      limits: project.limits === undefined ? undefined : filled(limitsMembers(project.limits)),
      concrete: filled(project.concrete),
      loads: filled(project.loads),
    },
    project.extra,
  );
  return writeJson(file);
}

function unitMembers(unit: Unit): JsonObject {
  const { id, name, walls, openings, rooms, slabs, slabOpenings, services, controlLines, pinned, underlay } =
    unit;
  return members(
    {
      id,
      name: unless(name, ""),
      walls: walls.map(({ id, from, to, thickness, justify, extra }) =>
        members({ id, from, to, thickness, justify: unless(justify, "centre") }, extra),
      ),
      openings: filled(openings.map(openingMembers)),
      rooms: filled(
        rooms.map(({ name, at, kind, soffitDrop, soffitAlong, extra }) =>
          members(
            { name, at, kind: unless(kind, null), soffitDrop: unless(soffitDrop, 0), soffitAlong },
            extra,
          ),
        ),
      ),
      slabs: filled(slabs.map(({ id, outline, extra }) => members({ id, outline }, extra))),
      slabOpenings: filled(slabOpenings.map(({ id, outline, extra }) => members({ id, outline }, extra))),
      services: filled(services.map(serviceMembers)),
      controlLines: filled(controlLines.map(({ id, from, to, extra }) => members({ id, from, to }, extra))),
      pinned: filled(pinned.map(pinnedMembers)),
      underlay,
    },
    unit.extra,
  );
}

function openingMembers(opening: Opening): JsonObject {
  const { id, wall, at, width, sill, head, formed, extra } = opening;
  return members({ id, wall, at, width, sill, head, formed: unless(formed, usualForming(opening)) }, extra);
}

function serviceMembers({ id, path, clearance, extra }: Service): JsonObject {
  return members({ id, path, clearance: unless(clearance, DEFAULT_CLEARANCE) }, extra);
}

function pinnedMembers({ wall, from, widths, by, closure, storey, extra }: Pinned): JsonObject {
  const own = storey === undefined ? undefined : storeyMembers(storey);
  return members({ wall, from, widths, by, closure, storey: own }, extra);
}

function pourMembers({ id, name, unit, mirror, day, storey, extra }: Pour): JsonObject {
  return members(
    {
      id,
      name: unless(name, ""),
      unit,
      mirror: unless(mirror, false),
      day: unless(day, null),
      storey: storey === null ? undefined : storeyMembers(storey),
    },
    extra,
  );
}

function storeyMembers({ clearHeight, slab, extra }: Storey): JsonObject {
  return members({ clearHeight, slab }, extra);
}

function objectiveMembers(objective: Objective): JsonObject {
  const { handling, closure, closurePerMm, distinctSize, filler, extra } = objective;
  return members(
    {
      handling: unless(handling, DEFAULT_OBJECTIVE.handling),
      closure: unless(closure, DEFAULT_OBJECTIVE.closure),
      closurePerMm: unless(closurePerMm, DEFAULT_OBJECTIVE.closurePerMm),
      distinctSize: unless(distinctSize, DEFAULT_OBJECTIVE.distinctSize),
      filler: unless(filler ?? 0, 0),
    },
    extra,
  );
}

function limitsMembers({ forbidden, mostWidths, greatestMass, extra }: Limits): JsonObject {
  return members(
    {
      forbidden: filled(forbidden),
      mostWidths: unless(mostWidths, null),
      greatestMass: unless(greatestMass, null),
    },
    extra,
  );
}

/** The members that are there, then the unknown ones. An unknown one never takes the place of a member left out. */
function members(known: { readonly [name: string]: Json | undefined }, extra: JsonObject = {}): JsonObject {
  const result = bareObject<Json>();
  for (const [name, value] of Object.entries(known)) if (value !== undefined) result[name] = value;
  for (const [name, value] of Object.entries(extra)) if (!Object.hasOwn(known, name)) result[name] = value;
  return result;
}

function unless<T extends Json>(value: T, fallback: T): T | undefined {
  return value === fallback ? undefined : value;
}

function filled<T extends Json>(value: T): T | undefined {
  const isEmpty = Array.isArray(value)
    ? value.length === 0
    : isObject(value) && Object.keys(value).length === 0;
  return isEmpty ? undefined : value;
}
