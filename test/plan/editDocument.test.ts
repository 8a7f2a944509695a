// The document and the file's shape say the same thing: nothing is lost on the way there and back.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drop, find, freshId, isSame, listed, put, recordKey } from "../../src/plan/document.ts";
import { documentToProject, projectToDocument } from "../../src/plan/documentProject.ts";
import type { Unit, Wall } from "../../src/plan/project.ts";
import { edited, projectOf, twoRooms, unitOf, wallOf } from "./editFixture.ts";

const point = fc.tuple(fc.integer({ min: -9000, max: 9000 }), fc.integer({ min: -9000, max: 9000 }));
// Ids as a hostile file has them: numbers that objects sort, words that objects inherit, the document's own escape.
const id = fc.oneof(
  fc.constantFrom("10", "9", "__proto__", "constructor", "prototype", "toString", "~", "~constructor", ""),
  fc.string({ maxLength: 6 }),
);
const walls = fc.uniqueArray(
  fc.record<Wall>({
    id,
    from: point,
    to: point,
    thickness: fc.constantFrom(80, 100, 150),
    justify: fc.constantFrom("centre", "left", "right"),
  }),
  { selector: (wall) => wall.id, maxLength: 8 },
);
const unit: fc.Arbitrary<Unit> = fc.record({
  id,
  name: fc.string({ maxLength: 5 }),
  walls,
  openings: fc.constant([]),
  rooms: fc.array(
    fc.record({
      name: fc.string({ maxLength: 5 }),
      at: point,
      kind: fc.constantFrom("room" as const, "open" as const, null),
      soffitDrop: fc.nat(200),
    }),
    { maxLength: 4 },
  ),
  slabs: fc.constant([]),
  slabOpenings: fc.constant([]),
  services: fc.uniqueArray(
    fc.record({ id, path: fc.array(point, { minLength: 2, maxLength: 4 }), clearance: fc.nat(100) }),
    { selector: (service) => service.id, maxLength: 3 },
  ),
  controlLines: fc.constant([]),
  pinned: fc.array(fc.record({ wall: id, from: fc.nat(900), widths: fc.array(fc.nat(600)) }), {
    maxLength: 3,
  }),
});

describe("project and document", () => {
  it("come back the same, lists in their order, whatever the ids are", () => {
    fc.assert(
      fc.property(fc.uniqueArray(unit, { selector: (u) => u.id, maxLength: 3 }), (units) => {
        const project = projectOf(units, { pours: pours(units) });
        expect(documentToProject(projectToDocument(project))).toEqual(project);
      }),
      { seed: 41, numRuns: 200 },
    );
  });

  it("keep members of a unit that this version does not know", () => {
    const project = projectOf([{ ...twoRooms(), ...{ underlay: { scale: 2 } } }]);
    expect(documentToProject(projectToDocument(project))).toEqual(project);
  });

  it("keep the order of the file when a wall is taken out and put back", () => {
    const before = projectToDocument(projectOf([twoRooms()]));
    const draft = structuredClone(before);
    const walls = draft.units.A?.walls ?? {};
    const first = find(walls, "w1");
    drop(walls, "w1");
    if (first !== undefined) put(walls, first);
    expect(documentToProject(draft)).toEqual(documentToProject(before));
  });

  it("refuse two walls of one id rather than lose one", () => {
    const twins = [wallOf("w1", [0, 0], [1, 0]), wallOf("w1", [0, 0], [2, 0])];
    expect(() => projectToDocument(projectOf([unitOf(twins)]))).toThrow(/share the id "w1"/);
  });
});

describe("records", () => {
  it.each([
    { why: "an empty bucket begins at 1", ids: [], fresh: "w1" },
    { why: "one more than the greatest, gaps left alone", ids: ["w2", "w9"], fresh: "w10" },
    { why: "other names do not count", ids: ["w2b", "north", "v7", "w"], fresh: "w1" },
    { why: "digits that no number holds do not count", ids: ["w99999999999999999999"], fresh: "w1" },
  ])("a fresh id: $why", ({ ids, fresh }) => {
    expect(freshId(Object.fromEntries(ids.map((name) => [name, { id: name }])), "w")).toBe(fresh);
  });

  it("never find what every object inherits", () => {
    expect([find({}, "toString"), find({}, "constructor"), find({}, "__proto__")]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("give different ids different keys", () => {
    const ids = ["__proto__", "~__proto__", "~~__proto__", "constructor", "~constructor", "w1"];
    expect(new Set(ids.map(recordKey)).size).toBe(ids.length);
  });

  it("list by rank, equal ranks by id", () => {
    const records = { c: { id: "c", rank: 0 }, a: { id: "a", rank: 1 }, b: { id: "b", rank: 0 } };
    expect(listed(records).map((entry) => entry.id)).toEqual(["b", "c", "a"]);
  });

  it("write nothing where the same stands already", () => {
    const entry = { id: "w1", from: [0, 0] };
    const records = { w1: entry };
    put(records, { id: "w1", from: [0, 0] });
    expect(records.w1).toBe(entry);
  });

  it.each([
    { a: [1, 2], b: [1, 2], same: true },
    { a: [1, 2], b: [1, 2, 3], same: false },
    { a: { x: undefined }, b: {}, same: false },
    { a: {}, b: [], same: false },
    { a: 0, b: null, same: false },
    { a: { x: { y: [0] } }, b: { x: { y: [1] } }, same: false },
  ])("compare $a and $b: $same", ({ a, b, same }) => {
    expect(isSame(a, b)).toBe(same);
  });
});

it("a thickness changed and changed back leaves the document as it was", () => {
  const before = projectToDocument(projectOf([twoRooms()]));
  const after = edited(before, { kind: "change-walls", unit: "A", walls: ["w1"], set: { thickness: 150 } });
  const back = edited(after, { kind: "change-walls", unit: "A", walls: ["w1"], set: { thickness: 100 } });
  expect(after).not.toEqual(before);
  expect(back).toEqual(before);
});

function pours(units: readonly Unit[]) {
  return units.map(({ id: name }, index) => ({
    id: String(units.length - index),
    name,
    unit: name,
    mirror: index % 2 === 1,
    day: index === 0 ? null : index,
    storey: null,
  }));
}
