// Edits that leave the old document alone: the same result as on a clone, and everything untouched is shared.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { PlanDocument } from "../../src/plan/document.ts";
import { projectToDocument } from "../../src/plan/documentProject.ts";
import { applyEdits, type Edit } from "../../src/plan/edit.ts";
import { withEdits, writeDifference } from "../../src/plan/editCopy.ts";
import { projectOf, twoRooms, unitA } from "./editFixture.ts";

const plan = frozen(projectToDocument(projectOf([twoRooms(), { ...twoRooms(), id: "B" }])));

const wall = fc.constantFrom("w1", "w2", "w3", "w4", "w5", "w6", "w7");
const unit = fc.constantFrom("A", "B", "Z");
const small = fc.integer({ min: -900, max: 900 });
const items = fc.subarray(
  [
    { bucket: "walls", id: "w5" },
    { bucket: "walls", id: "w3" },
    { bucket: "openings", id: "d1" },
    { bucket: "rooms", id: "r1" },
    { bucket: "slabs", id: "b1" },
  ] as const,
  { minLength: 1 },
);
const edit: fc.Arbitrary<Edit> = fc.oneof(
  fc.record({ kind: fc.constant("move" as const), unit, items, dx: small, dy: small, stretch: fc.boolean() }),
  fc.record({ kind: fc.constant("split-wall" as const), unit, wall, at: fc.nat(7000) }),
  fc.record({ kind: fc.constant("flip-walls" as const), unit, walls: wall.map((id) => [id]) }),
  fc.record({ kind: fc.constant("delete" as const), unit, items }),
  fc.record({
    kind: fc.constant("change-walls" as const),
    unit,
    walls: wall.map((id) => [id]),
    set: fc.constant({ thickness: 100 }),
  }),
  fc.record({
    kind: fc.constant("duplicate-unit" as const),
    unit,
    id: fc.constant(null),
    name: fc.constant(""),
    mirror: fc.boolean(),
  }),
  fc.record({ kind: fc.constant("delete-unit" as const), unit }),
  fc.record({ kind: fc.constant("change-unit" as const), unit, name: fc.constantFrom("Type A", "Other") }),
  fc.record({
    kind: fc.constant("change-project" as const),
    set: fc.constantFrom({ name: "Fixture" }, { buy: false }),
  }),
);
const edits = fc.array(edit, { minLength: 1, maxLength: 4 });

describe("edits on a shared copy", () => {
  it("give what the same edits give on a clone, and leave the old document untouched", () => {
    const before = JSON.stringify(plan);
    fc.assert(
      fc.property(edits, (list) => {
        const clone = structuredClone(plan);
        const expected = applyEdits(clone, list);
        const { document, outcome } = withEdits(plan, list);
        expect(outcome).toEqual(expected);
        expect(document).toEqual(expected.status === "done" ? clone : plan);
        expect(JSON.stringify(plan)).toBe(before);
      }),
      { seed: 91, numRuns: 300 },
    );
  });

  it("are the very document where nothing has changed", () => {
    fc.assert(
      fc.property(edits, (list) => {
        const { document } = withEdits(plan, list);
        if (JSON.stringify(document) === JSON.stringify(plan)) expect(document).toBe(plan);
      }),
      { seed: 92, numRuns: 300 },
    );
  });

  it("share every entry, bucket and unit that was not touched", () => {
    const { document } = withEdits(plan, [
      { kind: "change-walls", unit: "A", walls: ["w1"], set: { thickness: 150 } },
    ]);
    const [old, next] = [unitA(plan), unitA(document)];
    expect(document.units.B).toBe(plan.units.B);
    expect([
      next.openings === old.openings,
      next.walls.w2 === old.walls.w2,
      next.walls.w1 === old.walls.w1,
    ]).toEqual([true, true, false]);
  });

  it("written into a draft as differences make the same document with as few writings as entries changed", () => {
    fc.assert(
      fc.property(edits, (list) => {
        const { document } = withEdits(plan, list);
        const draft = structuredClone(plan);
        writeDifference(draft, plan, document);
        expect(draft).toEqual(document);
      }),
      { seed: 93, numRuns: 200 },
    );
    const { document } = withEdits(plan, [
      { kind: "delete", unit: "A", items: [{ bucket: "walls", id: "w1" }] },
    ]);
    const writings: string[] = [];
    writeDifference(recorded(structuredClone(plan), writings), plan, document);
    // The wall and the door in it.
    expect(writings.sort()).toEqual(["delete d1", "delete w1"]);
  });
});

function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null) for (const part of Object.values(value)) frozen(part);
  return Object.freeze(value);
}

// The document with every writing to any part of it noted down.
function recorded(document: PlanDocument, writings: string[]): PlanDocument {
  const watch = <T extends object>(target: T): T =>
    new Proxy(target, {
      get: (object, name) => {
        const value: unknown = Reflect.get(object, name);
        return typeof value === "object" && value !== null ? watch(value) : value;
      },
      set: (object, name, value) => {
        writings.push(`set ${String(name)}`);
        return Reflect.set(object, name, value);
      },
      deleteProperty: (object, name) => {
        writings.push(`delete ${String(name)}`);
        return Reflect.deleteProperty(object, name);
      },
    });
  return watch(document);
}
