// Whatever is edited can be saved and read again: the limits that edits ask are those of the reader.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { PlanDocument } from "../../src/plan/document.ts";
import { documentToProject, projectToDocument } from "../../src/plan/documentProject.ts";
import type { Edit } from "../../src/plan/edit.ts";
import { withEdits, writeDifference } from "../../src/plan/editCopy.ts";
import { readProject } from "../../src/plan/read.ts";
import { writeProject } from "../../src/plan/write.ts";
import { projectOf, twoRooms } from "./editFixture.ts";

const plan = projectToDocument(
  projectOf([twoRooms()], {
    pours: [{ id: "p1", name: "West", unit: "A", mirror: false, day: null, storey: null }],
  }),
);
const outcomeOf = (document: PlanDocument, edit: Edit) => {
  const { outcome } = withEdits(document, [edit]);
  return outcome.status === "done" ? "done" : outcome.reason;
};
const addWall = (length: number, thickness: number): Edit => ({
  kind: "add-wall",
  unit: "A",
  wall: { from: [0, 9000], to: [length, 9000], thickness, justify: "centre" },
});

describe("limits of the file", () => {
  it.each<{ why: string; edit: Edit; outcome: string }>([
    { why: "the longest wall", edit: addWall(1e6, 100), outcome: "done" },
    { why: "a longer one", edit: addWall(1e6 + 1, 100), outcome: "out-of-limits" },
    { why: "the thinnest wall", edit: addWall(1000, 20), outcome: "done" },
    { why: "a thinner one", edit: addWall(1000, 19), outcome: "out-of-limits" },
    { why: "a thicker one than any", edit: addWall(1000, 2001), outcome: "out-of-limits" },
    {
      why: "a wall moved off the map",
      edit: {
        kind: "move",
        unit: "A",
        items: [{ bucket: "walls", id: "w5" }],
        dx: 2e7,
        dy: 0,
        stretch: false,
      },
      outcome: "out-of-limits",
    },
    {
      why: "a label off the map",
      edit: { kind: "change-room", unit: "A", room: "r1", set: { at: [0, 2e7] } },
      outcome: "out-of-limits",
    },
    {
      why: "slab panels along x",
      edit: { kind: "change-room", unit: "A", room: "r1", set: { soffitAlong: "x" } },
      outcome: "done",
    },
    {
      why: "slab panels along no axis",
      edit: JSON.parse('{"kind":"change-room","unit":"A","room":"r1","set":{"soffitAlong":"z"}}'),
      outcome: "out-of-limits",
    },
    {
      why: "a room of no kind there is",
      edit: JSON.parse('{"kind":"change-room","unit":"A","room":"r1","set":{"kind":"attic"}}'),
      outcome: "out-of-limits",
    },
    {
      why: "a soffit raised above the storey's",
      edit: { kind: "change-room", unit: "A", room: "r1", set: { soffitDrop: -1 } },
      outcome: "out-of-limits",
    },
    {
      why: "a name without a letter",
      edit: { kind: "change-room", unit: "A", room: "r1", set: { name: "" } },
      outcome: "out-of-limits",
    },
    {
      why: "a name with a line break",
      edit: { kind: "change-room", unit: "A", room: "r1", set: { name: "a\nb" } },
      outcome: "out-of-limits",
    },
    {
      why: "an outline that comes back to its first corner",
      edit: {
        kind: "add-slab",
        unit: "A",
        bucket: "slabs",
        outline: [
          [0, 0],
          [9, 0],
          [9, 9],
          [0, 0],
        ],
      },
      outcome: "out-of-limits",
    },
    {
      why: "an outline of two places",
      edit: {
        kind: "add-slab",
        unit: "A",
        bucket: "slabs",
        outline: [
          [0, 0],
          [9, 0],
          [9, 0],
        ],
      },
      outcome: "out-of-limits",
    },
    {
      why: "half a millimetre of panel",
      edit: { kind: "pin", unit: "A", pinned: { wall: "w1", from: 0, widths: [600.5] } },
      outcome: "out-of-limits",
    },
    {
      why: "a storey too low",
      edit: { kind: "change-project", set: { storey: { clearHeight: 299, slab: 0 } } },
      outcome: "out-of-limits",
    },
    {
      why: "half a day",
      edit: { kind: "change-pour", pour: "p1", set: { day: 1.5 } },
      outcome: "out-of-limits",
    },
    {
      why: "a unit that reads as a storey of another",
      edit: { kind: "add-unit", id: "A@2", name: "" },
      outcome: "out-of-limits",
    },
    {
      why: "a unit with a stroke in its id",
      edit: { kind: "add-unit", id: "A/2", name: "" },
      outcome: "out-of-limits",
    },
    {
      why: "no number",
      edit: {
        kind: "change-service",
        unit: "A",
        service: "s1",
        set: {
          path: [
            [0, 0],
            [Number.NaN, 1],
          ],
        },
      },
      outcome: "out-of-limits",
    },
  ])("$why: $outcome", ({ edit, outcome }) => {
    expect(outcomeOf(plan, edit)).toBe(outcome);
    expect(readAgain(withEdits(plan, [edit]).document)).toEqual(
      documentToProject(withEdits(plan, [edit]).document),
    );
  });

  it("are those of the reader: what is done can be read again, whatever the figures", () => {
    const wild = fc.oneof(
      fc.integer({ min: -200, max: 5000 }),
      fc.constantFrom(
        0,
        0.5,
        -1,
        19,
        20,
        2000,
        2001,
        1e5,
        1e6,
        1e7,
        1e7 + 1,
        1e12,
        Number.NaN,
        Number.POSITIVE_INFINITY,
      ),
    );
    const place = fc.tuple(wild, wild);
    const text = fc.oneof(
      fc.string({ maxLength: 4 }),
      fc.constantFrom("\u2028", "x".repeat(201), "A@2", "A/b"),
    );
    const unit = fc.constant("A");
    const edit: fc.Arbitrary<Edit> = fc.oneof(
      fc.record({
        kind: fc.constant("add-wall" as const),
        unit,
        wall: fc.record({ from: place, to: place, thickness: wild, justify: fc.constant("left" as const) }),
      }),
      fc.record({
        kind: fc.constant("add-opening" as const),
        unit,
        opening: fc.record({
          wall: fc.constantFrom("w1", "w6"),
          at: wild,
          width: wild,
          sill: wild,
          head: wild,
        }),
      }),
      fc.record({
        kind: fc.constant("add-room" as const),
        unit,
        room: fc.record({ name: text, at: place, kind: fc.constant(null), soffitDrop: wild }),
      }),
      fc.record({
        kind: fc.constant("add-slab" as const),
        unit,
        bucket: fc.constant("slabs" as const),
        outline: fc.array(place, { maxLength: 5 }),
      }),
      fc.record({
        kind: fc.constant("add-service" as const),
        unit,
        path: fc.array(place, { maxLength: 3 }),
        clearance: wild,
      }),
      fc.record({ kind: fc.constant("add-control-line" as const), unit, from: place, to: place }),
      fc.record({
        kind: fc.constant("pin" as const),
        unit,
        pinned: fc.record({
          wall: fc.constantFrom("w1", "w9"),
          from: wild,
          widths: fc.array(wild, { maxLength: 3 }),
        }),
      }),
      fc.record({
        kind: fc.constant("move-joint" as const),
        unit,
        at: fc.constant([7200, 0] as const),
        to: place,
      }),
      fc.record({
        kind: fc.constant("set-clear" as const),
        unit,
        wall: fc.constant("w5"),
        from: fc.constant("w4"),
        distance: wild,
      }),
      fc.record({ kind: fc.constant("add-unit" as const), id: text, name: text }),
      fc.record({
        kind: fc.constant("change-project" as const),
        set: fc.record({ name: text, storey: fc.record({ clearHeight: wild, slab: wild }) }),
      }),
      fc.record({
        kind: fc.constant("change-pour" as const),
        pour: fc.constant("p1"),
        set: fc.record({ day: wild, name: text }),
      }),
    );
    let done = 0;
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 2 }), (edits) => {
        const { document, outcome } = withEdits(plan, edits);
        if (outcome.status === "done") done++;
        expect(readAgain(document)).toEqual(documentToProject(document));
      }),
      { seed: 95, numRuns: 600 },
    );
    expect(done).toBeGreaterThan(60); // enough of them are carried out for the claim to mean something
  });
});

it("a member that an edit takes away is taken away by its difference, too", () => {
  const unit = { ...twoRooms(), underlay: { scale: 2 } };
  const [under, bare] = [projectToDocument(projectOf([unit])), projectToDocument(projectOf([twoRooms()]))];
  const draft = structuredClone(under);
  writeDifference(draft, under, bare);
  expect(draft).toEqual(bare);
});

function readAgain(document: PlanDocument) {
  const read = readProject(writeProject(documentToProject(document)));
  return read.status === "ok" ? read.project : read;
}
