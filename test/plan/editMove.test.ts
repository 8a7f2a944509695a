// Moving walls, joints and openings with what is joined to them. Expected places are worked out by hand on the
// picture in editFixture.ts.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ItemRef } from "../../src/plan/document.ts";
import type { Edit } from "../../src/plan/edit.ts";
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
const walls = (...ids: string[]): ItemRef[] => ids.map((id) => ({ bucket: "walls", id }));
const move = (items: readonly ItemRef[], dx: number, dy: number, stretch = true): Edit => ({
  kind: "move",
  unit: "A",
  items,
  dx,
  dy,
  stretch,
});
const moveJoint = (at: Position, to: Position): Edit => ({ kind: "move-joint", unit: "A", at, to });

describe("moving walls", () => {
  it.each([
    { why: "the wall itself", edit: move(walls("w5"), 300, 0), wall: "w5", ends: [3900, 0, 3900, 4200] },
    {
      why: "a stem on it shortens",
      edit: move(walls("w5"), 300, 0),
      wall: "w6",
      ends: [3900, 2000, 7200, 2000],
    },
    { why: "the wall it ends on stays", edit: move(walls("w5"), 300, 0), wall: "w1", ends: [0, 0, 7200, 0] },
    {
      why: "a neighbour at a joint stretches",
      edit: move(walls("w3"), 0, 500),
      wall: "w2",
      ends: [7200, 0, 7200, 4700],
    },
    {
      why: "and the one at the other joint",
      edit: move(walls("w3"), 0, 500),
      wall: "w4",
      ends: [0, 4700, 0, 0],
    },
    { why: "a stem lengthens", edit: move(walls("w3"), 0, 500), wall: "w5", ends: [3600, 0, 3600, 4700] },
    {
      why: "a stem of a stem stays",
      edit: move(walls("w3"), 0, 500),
      wall: "w6",
      ends: [3600, 2000, 7200, 2000],
    },
    {
      why: "a stem between two moved walls goes with both",
      edit: move(walls("w2", "w5"), 100, 0),
      wall: "w6",
      ends: [3700, 2000, 7300, 2000],
    },
    {
      why: "without stretch the stem stays",
      edit: move(walls("w5"), 300, 0, false),
      wall: "w6",
      ends: [3600, 2000, 7200, 2000],
    },
    {
      why: "without stretch the joint parts",
      edit: move(walls("w3"), 0, 500, false),
      wall: "w2",
      ends: [7200, 0, 7200, 4200],
    },
    {
      why: "along its own line a stem has no reason to move",
      edit: move(walls("w5"), 0, 50),
      wall: "w6",
      ends: [3600, 2000, 7200, 2000],
    },
  ])("$why", ({ edit, wall, ends }) => {
    expect(endsOf(edited(plan, edit), wall)).toEqual(ends);
  });

  it.each([
    {
      why: "a door keeps its place when `to` is pulled",
      edit: move(walls("w2"), 500, 0),
      opening: "d1",
      at: 1200,
    },
    {
      why: "a door keeps its place when `from` is pulled",
      edit: move(walls("w4"), -500, 0),
      opening: "d1",
      at: 1700,
    },
    { why: "a door rides on its wall", edit: move(walls("w5"), 300, 0), opening: "d2", at: 2500 },
    {
      why: "a window on the stem keeps its place in the plan",
      edit: move(walls("w5"), 300, 0),
      opening: "d3",
      at: 1200,
    },
    {
      why: "a door beyond the new end is pushed back inside",
      edit: move(walls("w2"), -5500, 0),
      opening: "d1",
      at: 800,
    },
  ])("$why", ({ edit, opening, at }) => {
    expect(openingPlace(edited(plan, edit), opening)[1]).toBe(at);
  });

  it("carries a pin with the end it is measured from", () => {
    // w3 runs from east to west: its `from` is the corner that w2 pulls.
    expect(unitA(edited(plan, move(walls("w2"), 400, 0))).pinned.n1).toMatchObject({ wall: "w3", from: 600 });
  });

  it("carries a stem of an oblique wall along the stem's own line", () => {
    const oblique = documentOf(
      unitOf([wallOf("w1", [0, 0], [3000, 3000]), wallOf("w2", [1500, 1500], [1500, 4000])]),
    );
    // The 45° wall moved by (200, 0) meets x = 1500 at y = 1300.
    expect(endsOf(edited(oblique, move(walls("w1"), 200, 0)), "w2")).toEqual([1500, 1300, 1500, 4000]);
  });

  it("keeps a hair's distance between a stem and the line it ends on", () => {
    const loose = documentOf(
      unitOf([wallOf("w1", [0, 0], [0, 3000]), wallOf("w2", [1, 1500], [4000, 1500])]),
    );
    expect(endsOf(edited(loose, move(walls("w1"), 250, 0)), "w2")).toEqual([251, 1500, 4000, 1500]);
  });

  it("refuses to move a wall onto the far end of its neighbour", () => {
    expect(refusal(plan, move(walls("w3"), 0, -4200))).toBe("wall-vanishes");
  });

  it("refuses a wall that is not there", () => {
    expect(refusal(plan, move(walls("w1", "w9"), 10, 0))).toBe("no-such-item");
  });
});

describe("moving a joint", () => {
  const crossing = documentOf(
    unitOf([
      wallOf("w1", [0, 0], [3000, 0]),
      wallOf("w2", [3000, 1], [6000, 0]),
      wallOf("w3", [3002, 0], [3000, 2500]),
      wallOf("w4", [3000, -3], [3000, -2500]),
    ]),
  );
  const moved = edited(crossing, moveJoint([3000, 0], [3100, 400]));

  it.each([
    { why: "an end at the joint", wall: "w1", ends: [0, 0, 3100, 400] },
    { why: "an end 1 mm off keeps that 1 mm", wall: "w2", ends: [3100, 401, 6000, 0] },
    { why: "an end 2 mm off, the greatest", wall: "w3", ends: [3102, 400, 3000, 2500] },
    { why: "an end 3 mm off stays", wall: "w4", ends: [3000, -3, 3000, -2500] },
  ])("$why", ({ wall, ends }) => {
    expect(endsOf(moved, wall)).toEqual(ends);
  });

  it("slides the stems of the walls that turn with it", () => {
    // Corner (7200, 0) pulled to (7200, -1200): w1 becomes a line falling 1 in 6, so at x = 3600 it lies at y = -600.
    const turned = edited(plan, moveJoint([7200, 0], [7200, -1200]));
    expect(endsOf(turned, "w5")).toEqual([3600, -600, 3600, 4200]);
    expect(endsOf(turned, "w6")).toEqual([3600, 2000, 7200, 2000]);
  });

  it("refuses a joint where no wall ends", () => {
    expect(refusal(plan, moveJoint([1000, 1000], [0, 0]))).toBe("no-wall-here");
  });
});

describe("moving other things", () => {
  const item = (bucket: ItemRef["bucket"], id: string): ItemRef => ({ bucket, id });

  it("slides an opening along its wall and no other way", () => {
    expect(openingPlace(edited(plan, move([item("openings", "d1")], 150, 999)), "d1")).toEqual(["w1", 1350]);
  });

  it("stops an opening at the end of its wall", () => {
    expect(openingPlace(edited(plan, move([item("openings", "d1")], 99999, 0)), "d1")).toEqual(["w1", 6300]);
  });

  it("does not slide an opening whose wall moves with it", () => {
    const both = [...walls("w1"), item("openings", "d1")];
    expect(openingPlace(edited(plan, move(both, 150, 0)), "d1")).toEqual(["w1", 1200]);
  });

  it("carries labels, slabs, services and control lines", () => {
    const items = [
      item("rooms", "r1"),
      item("slabs", "b1"),
      item("services", "s1"),
      item("controlLines", "X1"),
    ];
    const unit = unitA(edited(plan, move(items, 10, -20)));
    expect(unit.rooms.r1?.at).toEqual([1810, 2080]);
    expect(unit.slabs.b1?.outline[2]).toEqual([3010, 5430]);
    expect(unit.services.s1?.path[1]).toEqual([910, 580]);
    expect(unit.controlLines.X1?.to).toEqual([510, 8980]);
  });
});

it("a move there and back is the identity, whatever is chosen", () => {
  // The plan stands on hundreds; a shift by an odd number of millimetres under 50 can lay no joint on another.
  const small = fc.integer({ min: 3, max: 49 });
  const signed = fc.tuple(small, fc.boolean()).map(([n, negative]) => (negative ? -n : n));
  const shift = fc.oneof(
    fc.record({ dx: signed, dy: fc.constant(0) }),
    fc.record({ dx: fc.constant(0), dy: signed }),
  );
  const every: readonly ItemRef[] = [
    ...walls("w1", "w2", "w3", "w4", "w5", "w6"),
    { bucket: "openings", id: "d1" },
    { bucket: "rooms", id: "r1" },
    { bucket: "slabs", id: "b1" },
  ];
  fc.assert(
    fc.property(fc.subarray([...every]), shift, (items, { dx, dy }) => {
      const there = edited(plan, move(items, dx, dy));
      expect(edited(there, move(items, -dx, -dy))).toEqual(plan);
    }),
    { seed: 42, numRuns: 200 },
  );
});

it("joints stay joints: every end that met another still meets it after a wall is moved", () => {
  fc.assert(
    fc.property(
      fc.constantFrom("w1", "w2", "w3", "w4"),
      fc.integer({ min: -900, max: 900 }),
      fc.integer({ min: -900, max: 900 }),
      (id, dx, dy) => {
        const after = edited(plan, move(walls(id), dx, dy));
        const corners = (["w1", "w2", "w3", "w4"] as const).map((name) => endsOf(after, name));
        for (const [index, [, , x, y]] of corners.entries()) {
          expect([x, y]).toEqual(corners[(index + 1) % 4]?.slice(0, 2));
        }
      },
    ),
    { seed: 43, numRuns: 100 },
  );
});

it("a carried opening stays within its wall or begins at its start", () => {
  fc.assert(
    fc.property(fc.integer({ min: -6000, max: 6000 }), fc.integer({ min: 200, max: 3000 }), (dx, width) => {
      const walled = documentOf(
        unitOf([wallOf("w1", [0, 0], [7200, 0]), wallOf("w2", [7200, 0], [7200, 3000])], {
          openings: [openingOf("d1", "w1", 2000, { width })],
        }),
      );
      const after = edited(walled, move(walls("w2"), dx, 0));
      const [, at] = openingPlace(after, "d1");
      const [x0 = 0, , x1 = 0] = endsOf(after, "w1");
      expect(at).toBe(Math.max(0, Math.min(2000, x1 - x0 - width)));
    }),
    { seed: 44, numRuns: 100 },
  );
});
