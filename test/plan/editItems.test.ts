// Openings, labels, pins, delete, copy and paste.

import { describe, expect, it } from "vitest";
import { find, type ItemRef } from "../../src/plan/document.ts";
import { projectToDocument } from "../../src/plan/documentProject.ts";
import { copyItems } from "../../src/plan/editClip.ts";
import type { Opening } from "../../src/plan/project.ts";
import {
  documentOf,
  edited,
  openingPlace,
  projectOf,
  refusal,
  twoRooms,
  unitA,
  unitOf,
  wallOf,
} from "./editFixture.ts";

const plan = documentOf(twoRooms());
const change = (opening: string, set: Partial<Omit<Opening, "id">>) =>
  ({ kind: "change-opening", unit: "A", opening, set }) as const;
const add = (more: Partial<Opening>) =>
  ({
    kind: "add-opening",
    unit: "A",
    opening: { wall: "w1", at: 3000, width: 900, sill: 0, head: 2100, ...more },
  }) as const;

describe("openings", () => {
  it.each([
    { why: "in its place", edit: add({}), place: ["w1", 3000] },
    { why: "too near the end is pushed inside", edit: add({ at: 7000 }), place: ["w1", 6300] },
    { why: "before the start is pushed inside", edit: add({ at: -40 }), place: ["w1", 0] },
    { why: "as wide as the wall", edit: add({ wall: "w6", width: 3600, at: 100 }), place: ["w6", 0] },
  ])("added $why", ({ edit, place }) => {
    expect(openingPlace(edited(plan, edit), "d4")).toEqual(place);
  });

  // The limits are those of the file format: box if width ≤ 600, head − sill ≤ 600 and sill > 0.
  it.each([
    { width: 600, sill: 900, head: 1500, formed: "box" },
    { width: 601, sill: 900, head: 1500, formed: "band" },
    { width: 600, sill: 900, head: 1501, formed: "band" },
    { width: 600, sill: 0, head: 600, formed: "band" },
  ])("$width wide from $sill to $head is formed as a $formed", ({ width, sill, head, formed }) => {
    const after = edited(plan, add({ width, sill, head }));
    expect(find(unitA(after).openings, "d4")?.formed).toBe(formed);
  });

  it("changes what is named and nothing else", () => {
    const after = edited(plan, change("d3", { width: 650 }));
    expect(unitA(after).openings.d3).toEqual({ ...unitA(plan).openings.d3, width: 650 });
  });

  it("is carried to another wall", () => {
    expect(openingPlace(edited(plan, change("d1", { wall: "w6", at: 3000 })), "d1")).toEqual(["w6", 2700]);
  });

  it.each([
    { why: "wider than its wall", edit: change("d3", { width: 3601 }), reason: "opening-too-wide" },
    { why: "without width", edit: change("d3", { width: 0 }), reason: "bad-size" },
    { why: "head under sill", edit: change("d3", { sill: 2100 }), reason: "bad-size" },
    { why: "below the floor", edit: change("d3", { sill: -1 }), reason: "bad-size" },
    { why: "in no wall", edit: change("d3", { wall: "w9" }), reason: "no-such-item" },
    { why: "that is not there", edit: change("d9", {}), reason: "no-such-item" },
    { why: "added in no wall", edit: add({ wall: "w9" }), reason: "no-such-item" },
  ])("is refused $why", ({ edit, reason }) => {
    expect(refusal(plan, edit)).toBe(reason);
  });
});

describe("labels, services, lines, slabs, pins", () => {
  it("are added under fresh ids and changed by id", () => {
    const unit = unitA(
      edited(
        plan,
        { kind: "add-room", unit: "A", room: { name: "Store", at: [9, 9], kind: "open", soffitDrop: 0 } },
        { kind: "change-room", unit: "A", room: "r3", set: { name: "Duct" } },
        {
          kind: "add-service",
          unit: "A",
          path: [
            [0, 0],
            [1, 1],
          ],
          clearance: 40,
        },
        { kind: "change-service", unit: "A", service: "s2", set: { clearance: 80 } },
        { kind: "add-control-line", unit: "A", from: [0, 500], to: [9, 500] },
        { kind: "change-control-line", unit: "A", controlLine: "X2", set: { to: [99, 500] } },
        {
          kind: "add-slab",
          unit: "A",
          bucket: "slabOpenings",
          outline: [
            [0, 0],
            [9, 0],
            [0, 9],
          ],
        },
        {
          kind: "change-slab",
          unit: "A",
          bucket: "slabOpenings",
          slab: "o1",
          set: {
            outline: [
              [0, 0],
              [8, 0],
              [0, 8],
            ],
          },
        },
      ),
    );
    expect(unit.rooms.r3).toMatchObject({ name: "Duct", kind: "open" });
    expect(unit.services.s2).toMatchObject({ clearance: 80 });
    expect(unit.controlLines.X2).toMatchObject({ from: [0, 500], to: [99, 500] });
    expect(unit.slabOpenings.o1?.outline[1]).toEqual([8, 0]);
  });

  it("a pin takes the place of those it overlaps and leaves those it only touches", () => {
    const pin = (from: number, widths: readonly number[]) =>
      ({ kind: "pin", unit: "A", pinned: { wall: "w3", from, widths } }) as const;
    // The plan's own pin runs from 200 to 1250.
    const touching = unitA(edited(plan, pin(1250, [600])));
    expect(Object.keys(touching.pinned)).toEqual(["n1", "n2"]);
    const overlapping = unitA(edited(plan, pin(1249, [600])));
    expect(Object.values(overlapping.pinned)).toMatchObject([{ from: 1249, widths: [600] }]);
  });

  it.each([
    { why: "a service of one point", edit: { kind: "add-service", unit: "A", path: [[0, 0]], clearance: 1 } },
    {
      why: "a negative clearance",
      edit: { kind: "change-service", unit: "A", service: "s1", set: { clearance: -1 } },
    },
    {
      why: "a control line without length",
      edit: { kind: "add-control-line", unit: "A", from: [1, 1], to: [1, 1] },
    },
    {
      why: "a slab of two points",
      edit: {
        kind: "add-slab",
        unit: "A",
        bucket: "slabs",
        outline: [
          [0, 0],
          [1, 1],
        ],
      },
    },
    {
      why: "a pin of nothing",
      edit: { kind: "pin", unit: "A", pinned: { wall: "w1", from: 0, widths: [] } },
    },
    {
      why: "a pin of no width",
      edit: { kind: "pin", unit: "A", pinned: { wall: "w1", from: 0, widths: [600, 0] } },
    },
  ] as const)("refuse $why", ({ edit }) => {
    expect(refusal(plan, edit)).toBe("bad-size");
  });
});

describe("delete", () => {
  it("takes the openings and pins of a wall with it", () => {
    const items: readonly ItemRef[] = [
      { bucket: "walls", id: "w1" },
      { bucket: "walls", id: "w3" },
      { bucket: "openings", id: "d1" },
      { bucket: "rooms", id: "r1" },
    ];
    const unit = unitA(edited(plan, { kind: "delete", unit: "A", items }));
    expect(Object.keys(unit.walls)).toEqual(["w2", "w4", "w5", "w6"]);
    expect(Object.keys(unit.openings)).toEqual(["d2", "d3"]);
    expect([Object.keys(unit.pinned), Object.keys(unit.rooms)]).toEqual([[], ["r2"]]);
  });
});

describe("copy and paste", () => {
  const two = projectToDocument(
    projectOf([twoRooms(), { ...unitOf([wallOf("w1", [0, 0], [3000, 0])]), id: "B" }]),
  );
  const paste = (unit: string, items: readonly ItemRef[], dx: number, dy: number) =>
    ({ kind: "paste", unit, clip: copyItems(unitA(two), items), dx, dy }) as const;

  it("brings a wall with its door and pin into another unit, under ids of that unit", () => {
    const walls: readonly ItemRef[] = [
      { bucket: "walls", id: "w3" },
      { bucket: "walls", id: "w1" },
    ];
    const unit = edited(two, paste("B", walls, 0, 5000)).units.B;
    expect(unit?.walls.w2).toMatchObject({ from: [0, 5000], to: [7200, 5000] });
    expect(unit?.walls.w3).toMatchObject({ from: [7200, 9200] });
    expect(Object.values(unit?.openings ?? {})).toMatchObject([{ id: "d1", wall: "w2", at: 1200 }]);
    expect(Object.values(unit?.pinned ?? {})).toMatchObject([{ wall: "w3", from: 200 }]);
  });

  it("lands an opening copied by itself on the wall where it is put", () => {
    // d1 stands 1200 to 2100 on y = 0; moved by (0, 2000) its middle (1650, 2000) meets no wall within reach,
    // moved by (3000, 2050) it lies 50 off w6, 1050 from its start.
    const door: readonly ItemRef[] = [{ bucket: "openings", id: "d1" }];
    expect(refusal(two, paste("A", door, 0, 2000))).toBe("no-wall-here");
    expect(openingPlace(edited(two, paste("A", door, 3000, 2050)), "d4")).toEqual(["w6", 600]);
  });

  it("pastes labels and lines moved, and the clip stays as it was", () => {
    const edit = paste(
      "A",
      [
        { bucket: "services", id: "s1" },
        { bucket: "rooms", id: "r1" },
      ],
      100,
      200,
    );
    const unit = unitA(edited(two, edit, edit));
    expect(unit.services.s3?.path).toEqual([
      [100, 800],
      [1000, 800],
    ]);
    expect(Object.values(unit.rooms).map(({ at }) => at)).toEqual([
      [1800, 2100],
      [5400, 3000],
      [1900, 2300],
      [1900, 2300],
    ]);
  });
});
