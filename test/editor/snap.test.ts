// Snapping, against places worked out by hand.
//
//   5000 ●──w3──● (2000)          w4 45°: (6000, 3000) to (7000, 4000)
//
//   2000          ● w2 (4000, 2000 to 3500)
//      0 ●────w1────● (3000)

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildPlanIndex } from "../../src/editor/snap/planIndex.ts";
import { SNAP_ORDER, type SnapKind, type SnapQuery } from "../../src/editor/snap/snap.ts";
import { snapTo } from "../../src/editor/snap/snapTo.ts";
import { english } from "../../src/editor/words/en.ts";
import { say, speechOf } from "../../src/editor/words/say.ts";
import { unitToDocument } from "../../src/plan/documentProject.ts";
import type { Position } from "../../src/plan/project.ts";
import { unitOf, wallOf } from "../plan/editFixture.ts";

const index = buildPlanIndex(
  unitToDocument(
    unitOf([
      wallOf("w1", [0, 0], [3000, 0]),
      wallOf("w2", [4000, 2000], [4000, 3500]),
      wallOf("w3", [0, 5000], [2000, 5000]),
      wallOf("w4", [6000, 3000], [7000, 4000]),
    ]),
    0,
  ),
);
const query = (at: Position, more: Partial<SnapQuery> = {}): SnapQuery => ({
  at,
  reach: 80,
  grid: 50,
  from: null,
  rail: null,
  exclude: new Set(),
  isFree: false,
  ...more,
});

interface Row {
  readonly why: string;
  readonly at: Position;
  readonly more?: Partial<SnapQuery>;
  readonly place: Position;
  readonly kind: SnapKind | null;
  readonly wall?: string;
}

describe("a free pointer", () => {
  it.each<Row>([
    { why: "an end", at: [2950, 40], place: [3000, 0], kind: "end", wall: "w1" },
    { why: "an end before the nearer centreline", at: [2930, 5], place: [3000, 0], kind: "end", wall: "w1" },
    {
      why: "a centreline, along it to the grid",
      at: [1234, 60],
      place: [1250, 0],
      kind: "centreline",
      wall: "w1",
    },
    {
      why: "a centreline, along it to the level of an end",
      at: [1960, -30],
      place: [2000, 0],
      kind: "centreline",
      wall: "w1",
    },
    {
      why: "an oblique centreline, by steps from its start",
      at: [6500, 3520],
      place: [6494.974746830583, 3494.974746830583],
      kind: "centreline",
      wall: "w4",
    },
    { why: "in line beyond an end", at: [3612, 33], place: [3600, 0], kind: "extension", wall: "w1" },
    {
      why: "in line with the nearer of two",
      at: [4033, 470],
      place: [4000, 450],
      kind: "extension",
      wall: "w2",
    },
    {
      why: "level with an end, the rest to the grid",
      at: [5212, 3466],
      place: [5200, 3500],
      kind: "alignment",
      wall: "w2",
    },
    { why: "level with two ends", at: [2040, 3540], place: [2000, 3500], kind: "alignment", wall: "w3" },
    { why: "the grid where nothing else is near", at: [5317, 1121], place: [5300, 1100], kind: "grid" },
    {
      why: "without a grid the whole millimetre",
      at: [5317.4, 1120.6],
      more: { grid: 0 },
      place: [5317, 1121],
      kind: null,
    },
    {
      why: "a grid too coarse to reach",
      at: [5317, 1121],
      more: { grid: 1000 },
      place: [5317, 1121],
      kind: null,
    },
    { why: "suspended", at: [2950.4, 40.2], more: { isFree: true }, place: [2950, 40], kind: null },
    {
      why: "walls in the hand are not met",
      at: [2950, 40],
      more: { exclude: new Set(["w1", "w4"]), grid: 0 },
      place: [2950, 40],
      kind: null,
    },
    { why: "just within reach", at: [3080, 0], place: [3000, 0], kind: "end", wall: "w1" },
    {
      why: "just out of reach of the end, still in line with it",
      at: [3081, 0],
      place: [3100, 0],
      kind: "extension",
      wall: "w1",
    },
  ])("$why", ({ at, more, place, kind, wall }) => {
    const snap = snapTo(index, query(at, more));
    expect(snap.at[0]).toBeCloseTo(place[0], 9);
    expect(snap.at[1]).toBeCloseTo(place[1], 9);
    expect([snap.reason?.kind ?? null, snap.reason?.wall ?? undefined]).toEqual([kind, wall]);
  });
});

describe("a pointer drawing from a start", () => {
  it.each<Row>([
    // From (1500, 2500) the foot on w1 is (1500, 0); 40 beside it the line goes square.
    {
      why: "square onto a wall",
      at: [1540, 30],
      more: { from: [1500, 2500] },
      place: [1500, 0],
      kind: "perpendicular",
      wall: "w1",
    },
    {
      why: "too far from the foot: the centreline alone",
      at: [1640, 30],
      more: { from: [1500, 2500] },
      place: [1650, 0],
      kind: "centreline",
      wall: "w1",
    },
    // Off the middle of the 45° wall the square runs along (−1, 1); 3 steps of 50 from the start.
    {
      why: "square off the wall it starts on",
      at: [6396, 3598],
      more: { from: [6500, 3500], reach: 10 },
      place: [6393.934, 3606.066],
      kind: "perpendicular",
      wall: "w4",
    },
    {
      why: "a start on the wall under the pointer makes no square",
      at: [1012, 10],
      more: { from: [1000, 0] },
      place: [1000, 0],
      kind: "centreline",
      wall: "w1",
    },
  ])("$why", ({ at, more, place, kind, wall }) => {
    const snap = snapTo(index, query(at, more));
    expect(snap.at[0]).toBeCloseTo(place[0], 3);
    expect(snap.at[1]).toBeCloseTo(place[1], 3);
    expect([snap.reason?.kind, snap.reason?.wall]).toEqual([kind, wall]);
  });
});

describe("a pointer on a rail", () => {
  const level = (y: number) => ({ rail: { origin: [500, y] as Position, ux: 1, uy: 0 } });
  it.each<Row>([
    { why: "an end on the rail", at: [3040, 900], more: level(0), place: [3000, 0], kind: "end", wall: "w1" },
    {
      why: "a centreline across it",
      at: [4060, 2500],
      more: level(2600),
      place: [4000, 2600],
      kind: "centreline",
      wall: "w2",
    },
    {
      why: "beyond that wall's end its line carried on",
      at: [4060, 900],
      more: level(1000),
      place: [4000, 1000],
      kind: "extension",
      wall: "w2",
    },
    {
      why: "an oblique centreline",
      at: [6540, 3400],
      more: level(3500),
      place: [6500, 3500],
      kind: "centreline",
      wall: "w4",
    },
    {
      why: "the level of an end beside it",
      at: [2030, 1400],
      more: level(1300),
      place: [2000, 1300],
      kind: "alignment",
      wall: "w3",
    },
    {
      why: "the grid, counted from nought and not from the start",
      at: [1410, 1400],
      more: { rail: { origin: [517, 1300], ux: 1, uy: 0 } },
      place: [1400, 1300],
      kind: "grid",
    },
    {
      why: "suspended it stays on the rail",
      at: [3040.6, 900],
      more: { ...level(0), isFree: true },
      place: [3041, 0],
      kind: null,
    },
    {
      why: "an oblique rail by steps from its start",
      at: [5290, 380],
      more: { rail: { origin: [5000, 0], ux: 0.6, uy: 0.8 } },
      place: [5300, 400],
      kind: "grid",
    },
  ])("$why", ({ at, more, place, kind, wall }) => {
    const snap = snapTo(index, query(at, more));
    expect(snap.at).toEqual(place);
    expect([snap.reason?.kind ?? null, snap.reason?.wall ?? undefined]).toEqual([kind, wall]);
  });
});

describe("the reason", () => {
  it("has a chain line from the thing to the place, and words", () => {
    const { reason } = snapTo(index, query([3612, 33]));
    expect(reason).toMatchObject({ from: [3000, 0], to: [3600, 0] });
    expect(reason && say(speechOf("en", {}), reason.said)).toBe("In line with wall w1");
  });

  it("is given in the order of precedence of the design", () => {
    expect(SNAP_ORDER).toEqual(["end", "centreline", "perpendicular", "extension", "alignment", "grid"]);
    for (const kind of SNAP_ORDER) expect(Object.hasOwn(english, `snap.${kind}`)).toBe(true);
  });
});

it("never jumps: the place taken is within reach of the pointer, across and along", () => {
  const coordinate = fc.double({ min: -500, max: 8000, noNaN: true });
  fc.assert(
    fc.property(coordinate, coordinate, fc.constantFrom(0, 1, 10, 50, 500), (x, y, grid) => {
      const { at } = snapTo(index, query([x, y], { grid }));
      // A centreline or an extension moves the place across and along, each by the reach at most.
      expect(Math.sqrt((at[0] - x) * (at[0] - x) + (at[1] - y) * (at[1] - y))).toBeLessThanOrEqual(
        80 * Math.SQRT2 + 1,
      );
    }),
    { seed: 61, numRuns: 300 },
  );
});

it("does not depend on the order in which the walls are listed", () => {
  const walls = index.walls.map(({ rank: _, ...wall }) => wall);
  const turned = buildPlanIndex(unitToDocument(unitOf([...walls].reverse()), 0));
  const coordinate = fc.integer({ min: -500, max: 8000 });
  fc.assert(
    fc.property(coordinate, coordinate, (x, y) => {
      expect(snapTo(turned, query([x, y])).at).toEqual(snapTo(index, query([x, y])).at);
    }),
    { seed: 62, numRuns: 200 },
  );
});
