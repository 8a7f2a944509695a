// The figures of the selected thing and what typing them does, on the two-room plan: walls of 100, so that faces
// stand 50 off the drawn lines.

import { describe, expect, it } from "vitest";
import { freeAround, takenAlong } from "../../src/editor/along.ts";
import { liveDimensions } from "../../src/editor/dimensions.ts";
import { find, type ItemRef, type PlanDocument } from "../../src/plan/document.ts";
import type { Unit } from "../../src/plan/project.ts";
import {
  documentOf,
  edited,
  endsOf,
  openingOf,
  openingPlace,
  twoRooms,
  unitA,
  unitOf,
  wallOf,
} from "../plan/editFixture.ts";

const plan = documentOf(twoRooms());
const item = (bucket: ItemRef["bucket"], id: string): ItemRef => ({ bucket, id });
const of = (document: PlanDocument, ...items: ItemRef[]) => liveDimensions(unitA(document), items);
const typed = (document: PlanDocument, key: string, value: number, ...items: ItemRef[]): PlanDocument => {
  const dimension = of(document, ...items).find((entry) => entry.key === key);
  if (dimension === undefined) throw new Error(`no dimension ${key}`);
  return edited(document, dimension.edit(value));
};

describe("what stands along a wall", () => {
  const taken = (unit: Unit, wall: string) => {
    const document = documentOf(unit);
    const found = find(unitA(document).walls, wall);
    return found ? takenAlong(unitA(document), found, null).map(({ start, end }) => [start, end]) : [];
  };

  it("corners, joining walls and openings", () => {
    expect(taken(twoRooms(), "w1")).toEqual([
      [-50, 50],
      [1200, 2100],
      [3550, 3650],
      [7150, 7250],
    ]);
  });

  it.each([
    {
      why: "a body on the left of a wall drawn upward",
      justify: "right",
      from: [3000, 0],
      to: [3000, 2000],
      span: [2880, 3000],
    },
    {
      why: "the same drawn downward",
      justify: "left",
      from: [3000, 2000],
      to: [3000, 0],
      span: [2880, 3000],
    },
    { why: "a body on the right", justify: "left", from: [3000, 0], to: [3000, 2000], span: [3000, 3120] },
  ] as const)("$why", ({ justify, from, to, span }) => {
    const walls = [wallOf("w1", [0, 0], [6000, 0]), wallOf("w2", from, to, { justify, thickness: 120 })];
    expect(taken(unitOf(walls), "w1")).toEqual([span]);
  });

  it("not a wall that stays away, nor one that runs along", () => {
    const walls = [
      wallOf("w1", [0, 0], [6000, 0]),
      wallOf("w2", [3000, 300], [3000, 2000]),
      wallOf("w3", [6000, 0], [9000, 0]),
    ];
    expect(taken(unitOf(walls), "w1")).toEqual([]);
  });

  it("the free stretch round a place", () => {
    const unit = unitA(plan);
    const wall = find(unit.walls, "w1");
    expect(wall && freeAround(unit, wall, 2500, null)).toEqual({ start: 2100, end: 3550 });
    expect(wall && freeAround(unit, wall, 1500, "d1")).toEqual({ start: 50, end: 3550 });
  });
});

describe("a wall", () => {
  it("shows its clear distances on both sides, its length and its thickness", () => {
    // w5 at 3600 looks from 3100, the middle of its longer stretch (2050 to 4150), left to w4 and right to w2.
    expect(of(plan, item("walls", "w5")).map(({ key, value, line }) => [key, value, line])).toEqual([
      [
        "clear-left",
        3500,
        [
          [3550, 3100],
          [50, 3100],
        ],
      ],
      [
        "clear-right",
        3500,
        [
          [3650, 3100],
          [7150, 3100],
        ],
      ],
      [
        "length",
        4200,
        [
          [3600, 0],
          [3600, 4200],
        ],
      ],
      ["thickness", 100, null],
    ]);
  });

  it.each([
    { key: "clear-left", value: 3300, wall: "w5", ends: [3400, 0, 3400, 4200] },
    { key: "clear-right", value: 3300, wall: "w5", ends: [3800, 0, 3800, 4200] },
    { key: "length", value: 4500, wall: "w5", ends: [3600, 0, 3600, 4500] },
  ])("typing $value into $key", ({ key, value, wall, ends }) => {
    expect(endsOf(typed(plan, key, value, item("walls", wall)), wall)).toEqual(ends);
  });

  it("typing a thickness changes it and keeps the line", () => {
    const after = typed(plan, "thickness", 150, item("walls", "w5"));
    expect(unitA(after).walls.w5).toMatchObject({ thickness: 150, from: [3600, 0] });
  });

  it("looks from between the walls that join it", () => {
    // w5 parts w1 in two equal stretches; the first runs from 50 to 3550, and up to w3 it is 4200 less two half walls.
    const [up] = of(plan, item("walls", "w1"));
    expect([up?.key, up?.value, up?.line?.[0]]).toEqual(["clear-left", 4100, [1800, 50]]);
  });

  it("has no clear distance to a wall that is not parallel", () => {
    const unit = unitOf([wallOf("w1", [0, 0], [4000, 0]), wallOf("w2", [-2000, 1000], [6000, 3000])]);
    expect(of(documentOf(unit), item("walls", "w1")).map(({ key }) => key)).toEqual(["length", "thickness"]);
  });

  it("stretches at its free end", () => {
    const unit = unitOf([wallOf("w1", [0, 0], [3000, 0]), wallOf("w2", [3000, 0], [3000, 2000])]);
    expect(endsOf(typed(documentOf(unit), "length", 3500, item("walls", "w1")), "w1")).toEqual([
      -500, 0, 3000, 0,
    ]);
  });
});

describe("two walls", () => {
  it("show the clear width between them; typing moves the one taken last", () => {
    const both = [item("walls", "w4"), item("walls", "w5")];
    expect(of(plan, ...both).map(({ key, value, line }) => [key, value, line])).toEqual([
      [
        "between",
        3500,
        [
          [50, 2100],
          [3550, 2100],
        ],
      ],
    ]);
    expect(endsOf(typed(plan, "between", 3000, ...both), "w5")[0]).toBe(3100);
    const [first, second] = both;
    expect(first && second && endsOf(typed(plan, "between", 3000, second, first), "w4")[0]).toBe(500);
  });

  it("at an angle show nothing, nor do three", () => {
    expect(of(plan, item("walls", "w1"), item("walls", "w2"))).toEqual([]);
    expect(of(plan, item("walls", "w1"), item("walls", "w3"), item("walls", "w4"))).toEqual([]);
  });
});

describe("an opening", () => {
  it("shows its distances to both neighbours, width, sill and head", () => {
    expect(of(plan, item("openings", "d1")).map(({ key, value }) => [key, value])).toEqual([
      ["left", 1150],
      ["right", 1450],
      ["width", 900],
      ["sill", 0],
      ["head", 2100],
    ]);
  });

  it.each([
    { key: "left", value: 500, at: 550 },
    { key: "right", value: 500, at: 2150 },
    { key: "width", value: 1000, at: 1200 },
  ])("typing $value into $key", ({ key, value, at }) => {
    expect(openingPlace(typed(plan, key, value, item("openings", "d1")), "d1")).toEqual(["w1", at]);
  });

  it("measures to another opening when that is nearer", () => {
    const unit = { ...twoRooms(), openings: [openingOf("d1", "w1", 1200), openingOf("d2", "w1", 2400)] };
    expect(of(documentOf(unit), item("openings", "d1"))[1]?.value).toBe(300);
  });
});

describe("a room", () => {
  it("shows both clear sizes; typing one moves the wall inside the unit", () => {
    // The bath: from w5's face 3650 to w2's 7150, from w6's 2050 to w3's 4150.
    const bath = item("rooms", "r2");
    expect(of(plan, bath).map(({ key, value, line }) => [key, value, line])).toEqual([
      [
        "across",
        3500,
        [
          [3650, 3000],
          [7150, 3000],
        ],
      ],
      [
        "upright",
        2100,
        [
          [5400, 2050],
          [5400, 4150],
        ],
      ],
    ]);
    expect(endsOf(typed(plan, "across", 3000, bath), "w5")[0]).toBe(4100);
    expect(endsOf(typed(plan, "upright", 2500, bath), "w6")).toEqual([3600, 1600, 7200, 1600]);
  });

  it("that is turned is measured along its own sides", () => {
    const turned = edited(plan, {
      kind: "turn",
      unit: "A",
      items: [...["w1", "w2", "w3", "w4", "w5", "w6"].map((id) => item("walls", id)), item("rooms", "r2")],
      about: [0, 0],
      cosine: 0.8,
      sine: 0.6,
      copy: false,
    });
    expect(of(turned, item("rooms", "r2")).map(({ value }) => value)).toEqual([3500, 2100]);
  });

  it("without walls has none", () => {
    const unit = unitOf([], { rooms: [{ name: "", at: [0, 0], kind: null, soffitDrop: 0 }] });
    expect(of(documentOf(unit), item("rooms", "r1"))).toEqual([]);
  });
});

describe("other things", () => {
  it("a service has its clearance", () => {
    const after = typed(plan, "clearance", 80, item("services", "s1"));
    expect(unitA(after).services.s1?.clearance).toBe(80);
  });

  it("an upright control line has its distance from the datum", () => {
    const after = typed(plan, "position", 650, item("controlLines", "X1"));
    expect(unitA(after).controlLines.X1).toMatchObject({ from: [650, 0], to: [650, 9000] });
  });
});
