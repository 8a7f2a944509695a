// Projects at random, as large as a property test can bear, for fast-check. Every member takes its default and other
// values; unknown members occur everywhere.

import fc from "fast-check";
import { isReservedName, type JsonObject } from "../../src/json/value.ts";
import type {
  ControlLine,
  Limits,
  Opening,
  Pinned,
  Position,
  Pour,
  Project,
  RoomLabel,
  Service,
  SlabOutline,
  Storey,
  Unit,
  Wall,
} from "../../src/plan/project.ts";

/** Names the file format knows; an unknown member has another. */
const KNOWN = new Set(
  (
    "format version name revision language storey kit units pours stock buy fillers objective concrete loads id walls " +
    "openings rooms slabs slabOpenings services controlLines pinned from to thickness justify wall at width sill " +
    "head formed kind soffitDrop outline path clearance widths unit mirror day clearHeight slab handling closure " +
    "closurePerMm distinctSize filler limits forbidden mostWidths greatestMass by closure storey"
  ).split(" "),
);

const letter = fc.constantFrom(..."abcXYZ019 _-.#@éßж中😀'\"\\<&");
const mm = (least: number, greatest: number) =>
  fc.oneof(
    fc.integer({ min: least, max: greatest }),
    fc.double({ min: least, max: greatest, noNaN: true }).map((value) => value + 0),
  );
const coordinate = mm(-20_000, 20_000);
const position: fc.Arbitrary<Position> = fc.tuple(coordinate, coordinate);
const words = (minLength: number) => fc.string({ unit: letter, minLength, maxLength: 12 });

const jsonValue = fc.jsonValue({ maxDepth: 2 }).map((value) => JSON.parse(JSON.stringify(value)));
const named = <T>(value: fc.Arbitrary<T>) =>
  fc.dictionary(fc.string({ minLength: 1, maxLength: 8 }), value, { maxKeys: 3 }).filter(hasNoReservedName);
const anyObject: fc.Arbitrary<JsonObject> = named(jsonValue);
const unknownMembers = anyObject.filter((object) => Object.keys(object).every((name) => !KNOWN.has(name)));

function hasNoReservedName(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return true;
  return Object.entries(value).every(([name, each]) => !isReservedName(name) && hasNoReservedName(each));
}

/** An object with unknown members one time in five. */
function extended<T extends object>(whole: fc.Arbitrary<T>): fc.Arbitrary<T & { extra?: JsonObject }> {
  const extra = fc.option(
    unknownMembers.filter((object) => Object.keys(object).length > 0),
    { freq: 4 },
  );
  return fc
    .tuple(whole, extra)
    .map(([object, unknown]) => (unknown === null ? object : { ...object, extra: unknown }));
}

const storey: fc.Arbitrary<Storey> = extended(
  fc.record({ clearHeight: mm(300, 20_000), slab: mm(0, 2_000) }),
);

function wall(id: string): fc.Arbitrary<Wall> {
  return extended(
    fc
      .record({
        id: fc.constant(id),
        from: position,
        to: position,
        thickness: mm(20, 2_000),
        justify: fc.constantFrom("centre" as const, "left" as const, "right" as const),
      })
      .filter(({ from, to }) => Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]) > 2),
  );
}

function opening(id: string, walls: readonly string[]): fc.Arbitrary<Opening> {
  return extended(
    fc
      .record({
        id: fc.constant(id),
        wall: fc.constantFrom(...walls),
        at: coordinate,
        width: mm(1, 1_500),
        sill: fc.oneof(fc.constant(0), mm(0, 2_000)),
        height: mm(1, 1_500),
        formed: fc.constantFrom("band" as const, "box" as const),
      })
      .map(({ height, ...rest }) => ({ ...rest, head: rest.sill + height })),
  );
}

const room: fc.Arbitrary<RoomLabel> = extended(
  fc.record({
    name: words(1),
    at: position,
    kind: fc.constantFrom(null, "room" as const, "open" as const),
    soffitDrop: fc.oneof(fc.constant(0), mm(0, 500)),
  }),
);

// Three corners of their own, so that no ring repeats its first point or has too few.
function slabOutline(id: string): fc.Arbitrary<SlabOutline> {
  const outline = fc
    .array(position, { maxLength: 4 })
    .map((points): readonly Position[] => [[-30_000, 0], [30_000, 0], ...points, [0, 30_000]]);
  return extended(fc.record({ id: fc.constant(id), outline }));
}

function service(id: string): fc.Arbitrary<Service> {
  const path = fc.array(position, { minLength: 2, maxLength: 4 });
  return extended(
    fc.record({ id: fc.constant(id), path, clearance: fc.oneof(fc.constant(60), mm(0, 1_000)) }),
  );
}

function controlLine(id: string): fc.Arbitrary<ControlLine> {
  const to = fc.tuple(mm(30_000, 40_000), coordinate);
  return extended(fc.record({ id: fc.constant(id), from: position, to }));
}

function pinned(walls: readonly string[]): fc.Arbitrary<Pinned> {
  const widths = fc.array(fc.integer({ min: 1, max: 10_000 }), { minLength: 1, maxLength: 4 });
  const own = extended(fc.record({ wall: fc.constantFrom(...walls), from: coordinate, widths }));
  const bySet = fc.record(
    { by: fc.constant("set" as const), closure: fc.constant(0), storey },
    { requiredKeys: [] },
  );
  return fc.tuple(own, fc.oneof(fc.constant({}), bySet)).map(([pin, more]) => ({ ...pin, ...more }));
}

const ids = (maxLength: number) => fc.uniqueArray(words(1), { maxLength });
const each = <T>(maxLength: number, make: (id: string) => fc.Arbitrary<T>) =>
  ids(maxLength).chain((list) => fc.tuple(...list.map(make)));

function unit(id: string): fc.Arbitrary<Unit> {
  return each(4, wall).chain((walls) => {
    const names = walls.map((one) => one.id);
    const onWalls = <T>(make: () => fc.Arbitrary<readonly T[]>) =>
      names.length === 0 ? fc.constant([]) : make();
    return extended(
      fc.record({
        id: fc.constant(id),
        name: words(0),
        walls: fc.constant(walls),
        openings: onWalls(() => each(3, (opened) => opening(opened, names))),
        rooms: fc.array(room, { maxLength: 2 }),
        slabs: each(2, slabOutline),
        slabOpenings: each(2, slabOutline),
        services: each(2, service),
        controlLines: each(2, controlLine),
        pinned: onWalls(() => fc.array(pinned(names), { maxLength: 2 })),
      }),
    );
  });
}

function pour(id: string, units: readonly string[]): fc.Arbitrary<Pour> {
  return extended(
    fc.record({
      id: fc.constant(id),
      name: words(0),
      unit: fc.constantFrom(...units),
      mirror: fc.boolean(),
      day: fc.option(fc.nat(400)),
      storey: fc.option(storey),
    }),
  );
}

const weight = (usual: number) => fc.oneof(fc.constant(usual), mm(0, 1_000));

// Limits that limit nothing are left out of a file.
const limits: fc.Arbitrary<Limits> = extended(
  fc
    .record({
      forbidden: fc.array(words(1), { maxLength: 3 }),
      mostWidths: fc.option(fc.integer({ min: 1, max: 1_000 })),
      greatestMass: fc.option(mm(0, 1_000)),
    })
    .filter(
      ({ forbidden, mostWidths, greatestMass }) =>
        forbidden.length > 0 || mostWidths !== null || greatestMass !== null,
    ),
);

function settings(units: readonly Unit[]): fc.Arbitrary<Project> {
  const names = units.map((one) => one.id);
  const required = fc.record({
    name: words(0),
    revision: words(0),
    language: fc.constantFrom("en" as const, "es" as const, "pt" as const),
    storey,
    kit: fc.oneof(words(1), anyObject),
    units: fc.constant(units),
    pours: each(3, (id) => pour(id, names)),
    stock: fc.dictionary(words(1), fc.nat(1_000), { maxKeys: 3 }),
    buy: fc.boolean(),
    fillers: fc.constantFrom("corner", "middle", "jamb"),
    objective: extended(
      fc.record({
        handling: weight(0.6),
        closure: weight(500),
        closurePerMm: weight(0.3),
        distinctSize: weight(0),
      }),
    ).chain((objective) => fc.constantFrom(objective, { ...objective, filler: 2.5 })),
    concrete: anyObject,
    loads: anyObject,
    extra: unknownMembers,
  });
  return fc
    .tuple(required, fc.option(limits))
    .map(([project, stated]) => (stated === null ? project : { ...project, limits: stated }));
}

/** Any project a file can hold, of one to three small units. */
export const projects: fc.Arbitrary<Project> = fc
  .uniqueArray(words(1), { minLength: 1, maxLength: 3 })
  .filter((names) => !names.some((name) => /@[0-9]+$/.test(name)))
  .chain((names) => fc.tuple(...names.map(unit)))
  .chain(settings);
