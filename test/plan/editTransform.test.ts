// Mirror, turn, offset and the typed clear width.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BUCKETS, find, type ItemRef } from "../../src/plan/document.ts";
import { bodySpan, wallLine } from "../../src/plan/editAxis.ts";
import { clearBetween } from "../../src/plan/editClear.ts";
import type { Position } from "../../src/plan/project.ts";
import { documentOf, edited, endsOf, refusal, twoRooms, unitA, unitOf, wallOf } from "./editFixture.ts";

const plan = documentOf(twoRooms());
const everything: readonly ItemRef[] = BUCKETS.flatMap((bucket) =>
  Object.values(unitA(plan)[bucket]).map(({ id }) => ({ bucket, id })),
);
const mirror = (from: Position, to: Position, items = everything, copy = false) =>
  ({ kind: "mirror", unit: "A", items, from, to, copy }) as const;
const turn = (cosine: number, sine: number, about: Position = [0, 0], items = everything) =>
  ({ kind: "turn", unit: "A", items, about, cosine, sine, copy: false }) as const;

describe("mirror", () => {
  const one = documentOf(unitOf([wallOf("w1", [100, 200], [100, 3000], { justify: "left" })]));
  const w1: readonly ItemRef[] = [{ bucket: "walls", id: "w1" }];

  it.each([
    { why: "in an upright line", from: [1000, 0], to: [1000, 1], ends: [1900, 200, 1900, 3000] },
    { why: "in a level line", from: [0, 500], to: [9, 500], ends: [100, 800, 100, -2000] },
    { why: "in the diagonal, x and y change places", from: [0, 0], to: [7, 7], ends: [200, 100, 3000, 100] },
    // Direction (1, 2): p' = 2 (p·d / d·d) d − p; for (100, 200), which lies on it, p' = p.
    { why: "in a line of slope 2", from: [0, 0], to: [1, 2], ends: [100, 200, 2340, 1880] },
  ] as const)("$why", ({ from, to, ends }) => {
    const after = edited(one, mirror(from, to, w1));
    expect(endsOf(after, "w1")).toEqual(ends);
    expect(unitA(after).walls.w1?.justify).toBe("right");
  });

  it("twice is the identity on the whole unit", () => {
    const coordinate = fc.integer({ min: -5000, max: 5000 });
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, coordinate, (x, y, dx, dy) => {
        fc.pre(dx !== 0 || dy !== 0);
        const edit = mirror([x, y], [x + dx, y + dy]);
        expect(edited(plan, edit, edit)).toEqual(plan);
      }),
      { seed: 51, numRuns: 100 },
    );
  });

  it("as a copy leaves the original and hangs the copied door on the copied wall", () => {
    const items: readonly ItemRef[] = [{ bucket: "walls", id: "w1" }];
    const unit = unitA(edited(plan, mirror([0, -100], [1, -100], items, true)));
    expect(unit.walls.w1).toEqual(unitA(plan).walls.w1);
    expect(unit.walls.w7).toMatchObject({ from: [0, -200], to: [7200, -200] });
    expect(unit.openings.d4).toMatchObject({ wall: "w7", at: 1200, width: 900 });
  });

  it("is refused in a line without direction", () => {
    expect(refusal(plan, mirror([5, 5], [5, 5]))).toBe("bad-size");
  });
});

describe("turn", () => {
  it.each([
    { why: "a quarter", cosine: 0, sine: 1, ends: [0, 0, 0, 7200] },
    { why: "a half", cosine: -1, sine: 0, ends: [0, 0, -7200, 0] },
    { why: "three quarters", cosine: 0, sine: -1, ends: [0, 0, 0, -7200] },
    { why: "the angle of the 3-4-5 triangle", cosine: 0.6, sine: 0.8, ends: [0, 0, 4320, 5760] },
  ])("$why", ({ cosine, sine, ends }) => {
    expect(endsOf(edited(plan, turn(cosine, sine)), "w1")).toEqual(ends);
  });

  it("gives whole numbers without minus zero on quarter turns", () => {
    const after = edited(plan, turn(0, 1, [300, 100]));
    for (const wall of Object.values(unitA(after).walls)) {
      for (const value of [...wall.from, ...wall.to]) {
        expect(Number.isInteger(value) && !Object.is(value, -0)).toBe(true);
      }
    }
  });

  it("four quarters about any point are the identity", () => {
    const quarter = turn(0, 1, [1234, -567]);
    expect(edited(plan, quarter, quarter, quarter, quarter)).toEqual(plan);
  });

  it("there and back is the identity for angles of whole-number triangles", () => {
    const triple = fc.constantFrom([3, 4, 5], [5, 12, 13], [20, 21, 29], [119, 120, 169]);
    fc.assert(
      fc.property(triple, fc.integer({ min: -9000, max: 9000 }), ([a = 0, b = 0, c = 1], x) => {
        const there = edited(plan, turn(a / c, b / c, [x, 500]));
        expect(edited(there, turn(a / c, -b / c, [x, 500]))).toEqual(plan);
      }),
      { seed: 52, numRuns: 50 },
    );
  });

  it("is refused where cosine and sine belong to no angle", () => {
    expect(refusal(plan, turn(0.6, 0.7))).toBe("not-a-turn");
    expect(refusal(plan, turn(Number.NaN, 1))).toBe("not-a-turn");
  });
});

describe("offset", () => {
  const offset = (distance: number, ...walls: string[]) =>
    ({ kind: "offset-walls", unit: "A", walls, distance }) as const;

  it.each([
    { why: "to the left of its direction", distance: 500, ends: [0, 500, 7200, 500] },
    { why: "to the right", distance: -500, ends: [0, -500, 7200, -500] },
  ])("one wall $why", ({ distance, ends }) => {
    expect(endsOf(edited(plan, offset(distance, "w1")), "w7")).toEqual(ends);
  });

  it("mitres a ring inward to a smaller ring", () => {
    const after = edited(plan, offset(300, "w1", "w2", "w3", "w4"));
    expect(["w7", "w8", "w9", "w10"].map((id) => endsOf(after, id))).toEqual([
      [300, 300, 6900, 300],
      [6900, 300, 6900, 3900],
      [6900, 3900, 300, 3900],
      [300, 3900, 300, 300],
    ]);
  });

  it("keeps to one side of a chain drawn to and fro", () => {
    const chain = documentOf(
      unitOf([wallOf("w1", [0, 0], [5000, 0]), wallOf("w2", [5000, 4000], [5000, 0])]),
    );
    const after = edited(chain, offset(200, "w1", "w2"));
    expect([endsOf(after, "w3"), endsOf(after, "w4")]).toEqual([
      [0, 200, 4800, 200],
      [4800, 4000, 4800, 200],
    ]);
  });

  it("is refused where the copy would turn inside out", () => {
    expect(refusal(plan, offset(2200, "w1", "w2", "w3", "w4"))).toBe("offset-too-far");
  });
});

describe("clear width", () => {
  const clear = (wall: string, from: string, distance: number) =>
    ({ kind: "set-clear", unit: "A", wall, from, distance }) as const;

  it.each([
    // w4 at x = 0, faces to ±50; w5 stands at 3600: 3500 clear.
    { why: "wider", edit: clear("w5", "w4", 3600), wall: "w5", x: 3700 },
    { why: "narrower", edit: clear("w5", "w4", 3000), wall: "w5", x: 3100 },
    { why: "from the other side", edit: clear("w5", "w2", 3000), wall: "w5", x: 4100 },
    { why: "by moving the outer wall", edit: clear("w4", "w5", 3600), wall: "w4", x: -100 },
  ])("$why", ({ edit, wall, x }) => {
    const after = edited(plan, edit);
    expect(endsOf(after, wall)[0]).toBe(x);
    const moved = find(unitA(after).walls, edit.wall);
    const fixed = find(unitA(after).walls, edit.from);
    expect(moved && fixed && clearBetween(fixed, moved)?.distance).toBe(edit.distance);
  });

  it("moves every piece of a straight wall", () => {
    const split = edited(plan, { kind: "split-wall", unit: "A", wall: "w5", at: 1000 });
    const after = edited(split, clear("w5", "w4", 3600));
    expect([endsOf(after, "w5"), endsOf(after, "w7")]).toEqual([
      [3700, 0, 3700, 1000],
      [3700, 1000, 3700, 4200],
    ]);
  });

  it.each([
    { why: "of walls at an angle", edit: clear("w1", "w2", 3000), reason: "not-parallel" },
    { why: "of a wall from itself", edit: clear("w1", "w1", 3000), reason: "not-parallel" },
    { why: "below nothing", edit: clear("w5", "w4", -1), reason: "bad-size" },
    { why: "from no wall", edit: clear("w5", "w9", 100), reason: "no-such-item" },
  ])("is refused $why", ({ edit, reason }) => {
    expect(refusal(plan, edit)).toBe(reason);
  });

  it("measures between the nearest body sides, whatever the justification and direction", () => {
    const side = fc.constantFrom("centre" as const, "left" as const, "right" as const);
    const wall = fc.record({ justify: side, thickness: fc.constantFrom(80, 100, 200), isBack: fc.boolean() });
    fc.assert(
      fc.property(wall, wall, fc.integer({ min: 500, max: 4000 }), (a, b, y) => {
        const drawn = (w: typeof a, height: number) =>
          wallOf("w", [w.isBack ? 1000 : 0, height], [w.isBack ? 0 : 1000, height], w);
        // The oracle lists all four heights at which a body side runs and takes the inner two.
        const sides = [drawn(a, 0), drawn(b, y)].map((w) =>
          bodySpan(w).map((offset) => w.from[1] + offset * wallLine(w).ux),
        );
        const [lower = [], upper = []] = sides;
        expect(clearBetween(drawn(a, 0), drawn(b, y))).toEqual({
          distance: Math.min(...upper) - Math.max(...lower),
          ux: 0,
          uy: 1,
        });
      }),
      { seed: 53, numRuns: 100 },
    );
  });
});

describe("the way slab panels lie in a room", () => {
  const along = (soffitAlong: "x" | "y" | undefined) =>
    documentOf(
      unitOf([], {
        rooms: [
          {
            ...{ id: "r1", name: "Hall", at: [100, 200], kind: null, soffitDrop: 0 },
            ...(soffitAlong === undefined ? {} : { soffitAlong }),
          } as const,
        ],
      }),
    );
  const r1: readonly ItemRef[] = [{ bucket: "rooms", id: "r1" }];
  const wayAfter = (from: "x" | "y" | undefined, edit: Parameters<typeof edited>[1]) =>
    unitA(edited(along(from), edit)).rooms.r1?.soffitAlong;

  it.each([
    { why: "a quarter left swaps it", edit: turn(0, 1, [0, 0], r1), x: "y", y: "x" },
    { why: "a quarter right swaps it", edit: turn(0, -1, [50, 9], r1), x: "y", y: "x" },
    { why: "half a turn keeps it", edit: turn(-1, 0, [0, 0], r1), x: "x", y: "y" },
    { why: "a small turn keeps the nearer axis", edit: turn(0.8, 0.6, [0, 0], r1), x: "x", y: "y" },
    { why: "a steep turn takes the nearer axis", edit: turn(0.6, 0.8, [0, 0], r1), x: "y", y: "x" },
    { why: "a mirror in an upright line keeps it", edit: mirror([0, 0], [0, 9], r1), x: "x", y: "y" },
    { why: "a mirror in a level line keeps it", edit: mirror([0, 0], [9, 0], r1), x: "x", y: "y" },
    { why: "a mirror in the diagonal swaps it", edit: mirror([0, 0], [5, 5], r1), x: "y", y: "x" },
  ])("$why", ({ edit, x, y }) => {
    expect(wayAfter("x", edit)).toBe(x);
    expect(wayAfter("y", edit)).toBe(y);
    expect(wayAfter(undefined, edit)).toBeUndefined();
  });

  it("goes with a copy that is turned", () => {
    const unit = unitA(edited(along("x"), { ...turn(0, 1, [0, 0], r1), copy: true }));
    expect([unit.rooms.r1?.soffitAlong, unit.rooms.r2?.soffitAlong]).toEqual(["x", "y"]);
  });

  it("is that of the beginning after four quarters, and after any mirror taken twice", () => {
    const coordinate = fc.integer({ min: -900, max: 900 });
    fc.assert(
      fc.property(
        fc.constantFrom("x", "y", undefined),
        coordinate,
        coordinate,
        fc.boolean(),
        (way, dx, dy, isTurn) => {
          fc.pre(dx !== 0 || dy !== 0);
          const edit = isTurn ? turn(0, 1, [dx, dy], r1) : mirror([0, 0], [dx, dy], r1);
          const edits = isTurn ? [edit, edit, edit, edit] : [edit, edit];
          expect(unitA(edited(along(way), ...edits)).rooms.r1?.soffitAlong).toBe(way);
        },
      ),
      { seed: 57, numRuns: 80 },
    );
  });
});
