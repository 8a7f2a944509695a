// Split, join, flip, redraw: the ways one wall is drawn differently while the concrete stays.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placeOnWall } from "../../src/plan/editAxis.ts";
import type { Position } from "../../src/plan/project.ts";
import {
  documentOf,
  edited,
  endsOf,
  openingOf,
  openingPlace,
  refusal,
  twoRooms,
  unitA,
  unitOf,
  wallOf,
} from "./editFixture.ts";

const plan = documentOf(twoRooms());
const split = (wall: string, at: number) => ({ kind: "split-wall", unit: "A", wall, at }) as const;
const join = (...walls: string[]) => ({ kind: "join-walls", unit: "A", walls }) as const;
const flip = (...walls: string[]) => ({ kind: "flip-walls", unit: "A", walls }) as const;

describe("split", () => {
  it("gives the part at `from` the old id and the rest a fresh one", () => {
    const after = edited(plan, split("w1", 3000));
    expect(endsOf(after, "w1")).toEqual([0, 0, 3000, 0]);
    expect(endsOf(after, "w7")).toEqual([3000, 0, 7200, 0]);
  });

  it.each([
    { why: "a door before the cut stays", at: 2100, place: ["w1", 1200] },
    { why: "a door after the cut is measured from it", at: 1000, place: ["w7", 200] },
    { why: "a cut at the near jamb puts it at the start", at: 1200, place: ["w7", 0] },
  ])("$why", ({ at, place }) => {
    expect(openingPlace(edited(plan, split("w1", at)), "d1")).toEqual(place);
  });

  it("gives a pin to the part it begins on", () => {
    expect(unitA(edited(plan, split("w3", 150))).pinned.n1).toMatchObject({ wall: "w7", from: 50 });
    expect(unitA(edited(plan, split("w3", 500))).pinned.n1).toMatchObject({ wall: "w3", from: 200 });
  });

  it.each([
    { why: "through a door", edit: split("w1", 1500), reason: "opening-in-the-way" },
    { why: "at the very start", edit: split("w1", 0), reason: "wall-vanishes" },
    { why: "at the very end", edit: split("w1", 7200), reason: "wall-vanishes" },
    { why: "beyond the wall", edit: split("w1", 8000), reason: "wall-vanishes" },
    { why: "at no number", edit: split("w1", Number.NaN), reason: "wall-vanishes" },
    { why: "of a wall that is not there", edit: split("w9", 100), reason: "no-such-item" },
  ])("is refused $why", ({ edit, reason }) => {
    expect(refusal(plan, edit)).toBe(reason);
  });
});

describe("join", () => {
  const inLine = (second: ReturnType<typeof wallOf>) =>
    documentOf(
      unitOf([wallOf("w1", [0, 0], [3000, 0], { justify: "left" }), second], {
        openings: [openingOf("d1", "w1", 500), openingOf("d2", second.id, 1000)],
        pinned: [{ wall: second.id, from: 100, widths: [600, 200] }],
      }),
    );

  it.each([
    {
      why: "carried on at `to`",
      second: wallOf("w2", [3000, 0], [7000, 0], { justify: "left" }),
      ends: [0, 0, 7000, 0],
      d1: 500,
      d2: 4000,
      pin: 3100,
    },
    {
      why: "carried on at `to`, drawn the other way",
      second: wallOf("w2", [7000, 0], [3000, 0], { justify: "right" }),
      ends: [0, 0, 7000, 0],
      d1: 500,
      d2: 5100,
      pin: 6100,
    },
    {
      why: "carried on at `from`",
      second: wallOf("w2", [-4000, 0], [0, 0], { justify: "left" }),
      ends: [-4000, 0, 3000, 0],
      d1: 4500,
      d2: 1000,
      pin: 100,
    },
    {
      why: "carried on at `from`, drawn the other way",
      second: wallOf("w2", [0, 0], [-4000, 0], { justify: "right" }),
      ends: [-4000, 0, 3000, 0],
      d1: 4500,
      d2: 2100,
      pin: 3100,
    },
  ])("$why", ({ second, ends, d1, d2, pin }) => {
    const after = edited(inLine(second), join("w1", "w2"));
    expect(endsOf(after, "w1")).toEqual(ends);
    expect([openingPlace(after, "d1"), openingPlace(after, "d2")]).toEqual([
      ["w1", d1],
      ["w1", d2],
    ]);
    expect(unitA(after).pinned.n1).toMatchObject({ wall: "w1", from: pin });
    expect(Object.keys(unitA(after).walls)).toEqual(["w1"]);
  });

  it("joins three pieces named in any order", () => {
    const three = documentOf(
      unitOf([
        wallOf("w1", [2000, 0], [0, 0]),
        wallOf("w2", [4000, 0], [6000, 0]),
        wallOf("w3", [2000, 0], [4000, 0]),
      ]),
    );
    expect(endsOf(edited(three, join("w2", "w1", "w3")), "w1")).toEqual([6000, 0, 0, 0]);
  });

  it.each([
    {
      why: "another thickness",
      second: wallOf("w2", [3000, 0], [7000, 0], { justify: "left", thickness: 120 }),
    },
    { why: "the body on the other side", second: wallOf("w2", [3000, 0], [7000, 0], { justify: "right" }) },
    { why: "a corner", second: wallOf("w2", [3000, 0], [3000, 4000], { justify: "left" }) },
    { why: "a gap", second: wallOf("w2", [3010, 0], [7000, 0], { justify: "left" }) },
    { why: "lying over it", second: wallOf("w2", [3000, 0], [1000, 0], { justify: "right" }) },
  ])("is refused for $why", ({ second }) => {
    expect(refusal(inLine(second), join("w1", "w2"))).toBe("not-in-line");
  });

  it("is refused for one wall alone", () => {
    expect(refusal(plan, join("w1"))).toBe("not-in-line");
  });
});

it("split then join is the identity, on an axis and off it", () => {
  const far: fc.Arbitrary<Position> = fc.oneof(
    fc.constantFrom<Position>([7200, 0], [0, -7200], [3000, 4000], [-5000, 12000]),
    fc.tuple(fc.integer({ min: 2000, max: 9000 }), fc.integer({ min: -9000, max: 9000 })),
  );
  fc.assert(
    fc.property(far, fc.integer({ min: 1, max: 1900 }), (to, at) => {
      const one = documentOf(
        unitOf([wallOf("w1", [0, 0], to, { justify: "right" })], {
          openings: [openingOf("d1", "w1", 0, { width: 1 }), openingOf("d2", "w1", 1950, { width: 40 })],
          pinned: [{ wall: "w1", from: 1900, widths: [50] }],
        }),
      );
      expect(edited(one, split("w1", at), join("w1", "w2"))).toEqual(one);
    }),
    { seed: 45, numRuns: 200 },
  );
});

describe("flip", () => {
  it("keeps the concrete, the door and the pin where they are", () => {
    const before = documentOf(
      unitOf([wallOf("w1", [0, 0], [5000, 0], { justify: "left" })], {
        openings: [openingOf("d1", "w1", 700)],
        pinned: [{ wall: "w1", from: 2000, widths: [600, 450, 300] }],
      }),
    );
    const unit = unitA(edited(before, flip("w1")));
    expect(unit.walls.w1).toMatchObject({ from: [5000, 0], to: [0, 0], justify: "right" });
    expect(unit.openings.d1?.at).toBe(3400);
    expect(unit.pinned.n1).toMatchObject({ from: 1650, widths: [300, 450, 600] });
    const wall = unit.walls.w1;
    expect(wall && placeOnWall(wall, 3400 + 900)).toEqual([700, 0]);
  });

  it("twice is the identity", () => {
    expect(edited(plan, flip("w1", "w3", "w6"), flip("w6", "w3", "w1"))).toEqual(plan);
  });
});

describe("thickness, justification, ends", () => {
  it("changes several walls at once and moves no line", () => {
    const after = edited(plan, {
      kind: "change-walls",
      unit: "A",
      walls: ["w1", "w2"],
      set: { thickness: 150, justify: "left" },
    });
    expect(unitA(after).walls.w2).toMatchObject({ thickness: 150, justify: "left", from: [7200, 0] });
    expect(unitA(after).walls.w3).toMatchObject({ thickness: 100, justify: "centre" });
  });

  it.each([0, -100, Number.NaN])("refuses a thickness of %s", (thickness) => {
    const edit = { kind: "change-walls", unit: "A", walls: ["w1"], set: { thickness } } as const;
    expect(refusal(plan, edit)).toBe("bad-size");
  });

  it("redraws one wall alone", () => {
    const after = edited(plan, {
      kind: "redraw-wall",
      unit: "A",
      wall: "w6",
      from: [3600, 1800],
      to: [7200, 1800],
    });
    expect(endsOf(after, "w6")).toEqual([3600, 1800, 7200, 1800]);
    expect(openingPlace(after, "d3")).toEqual(["w6", 1500]);
  });

  it("draws a wall under a fresh id at the end of the list", () => {
    const { id: _, ...wall } = wallOf("", [0, 9000], [3000, 9000], { thickness: 120, justify: "right" });
    const after = edited(plan, { kind: "add-wall", unit: "A", wall });
    expect(unitA(after).walls.w7).toEqual({ ...wall, id: "w7", rank: 6 });
  });

  it("refuses a wall without length", () => {
    const { id: _, ...wall } = wallOf("", [10, 10], [10, 10]);
    expect(refusal(plan, { kind: "add-wall", unit: "A", wall })).toBe("wall-vanishes");
  });
});
