// One room worked by hand: clear 3000 (x) by 3600 (y), walls and slab 100, storey 2400 clear, a door of 900 × 2100 in the
// south wall 600 from the south-west corner. Common practice, no source; every figure below is derived in place.
//
//          N                 x of the room 0..3000, y 0..3600, its outside -100..3100 and -100..3700
//      ┌───────┐             legs 150, so a wall between two corners leaves its clear length less 300
//    W │       │ E           outside, a corner takes 100 + 150 = 250 opposite wall and leg
//      └─/ /───┘
//          S

import { describe, expect, it } from "vitest";
import type { FilledFace, UnitFill } from "../../src/fill/result.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Unit } from "../../src/plan/project.ts";
import { auditSquare } from "../support/audit.ts";
import { fillOne, opening, STOREY } from "../support/filled.ts";
import { faceAt, quantities, runUpward } from "../support/runs.ts";
import { roundRoom, unitOf, type WallLine } from "../support/walls.ts";

interface Drawing {
  readonly thickness?: number;
  readonly length?: number;
  /** From the clear corner to the jamb. */
  readonly door?: number;
  readonly more?: readonly WallLine[];
}

/** Walls drawn on their centre lines; w1 south, w2 east, w3 north, w4 west. */
function drawRoom({ thickness: t = 100, length = 3600, door = 600, more = [] }: Drawing = {}): Unit {
  const half = t / 2;
  const walls = roundRoom([-half, -half], [3000 + half, length + half], t);
  return { ...unitOf([...walls, ...more]), openings: [opening("d1", "w1", [door + half, 900, 0, 2100])] };
}

const SIDES = { N: [1500, 3600], E: [3000, 900], S: [2500, 0], W: [0, 900] } as const;

function runsOf(fill: UnitFill, { thickness: t = 100, length = 3600 }: Drawing = {}) {
  const out = { N: [1500, length + t], E: [3000 + t, 900], S: [2500, -t], W: [-t, 900] } as const;
  const inner = { ...SIDES, N: [1500, length] as const };
  const read = (places: Record<"N" | "E" | "S" | "W", readonly [number, number]>) => ({
    N: runUpward(faceAt(fill, places.N)),
    E: runUpward(faceAt(fill, places.E)),
    S: runUpward(faceAt(fill, places.S)),
    W: runUpward(faceAt(fill, places.W)),
  });
  return { inner: read(inner), outer: read(out) };
}

function tileArea(faces: readonly FilledFace[]): number {
  const each = faces.flatMap(({ pieces }) => pieces.map(({ width, height }) => width * height));
  return each.reduce((sum, area) => sum + area, 0) / 1e6;
}

const isTieOn = (fill: UnitFill, axis: 0 | 1, line: number) =>
  fill.ties.filter(({ at }) => at[axis] === line).length;

describe("the worked room", () => {
  const unit = drawRoom();
  const fill = fillOne(unit);

  it("passes the audit", () => {
    expect(auditSquare(fill, { unit, storey: STOREY, kit: demoKit })).toEqual([]);
  });

  // N: 3000 - 300 = 2700 = 4 · 600 + 300, closing at the greater x. E, W: 3600 - 300 = 3300 = 5 · 600 + 300, closing at
  // the greater y. S: 600 - 150 = 450 beside the door, 3000 - 1500 - 150 = 1350 = 2 · 600 + 150 closing at its corner.
  it("has the runs of every face, inside and outside", () => {
    expect(runsOf(fill)).toEqual({
      inner: {
        N: "C150 600 600 600 600 300 C150",
        E: "C150 600 600 600 600 600 300 C150",
        W: "C150 600 600 600 600 600 300 C150",
        S: "C150 450 /900/ 600 600 150 C150",
      },
      outer: {
        N: "250 600 600 600 600 300 250",
        E: "250 600 600 600 600 600 300 250",
        W: "250 600 600 600 600 600 300 250",
        S: "250 450 /900/ 600 600 150 250",
      },
    });
  });

  it("walks the inside clockwise, so the south face from east to west, and the outside the other way", () => {
    const door = (at: readonly [number, number]) =>
      faceAt(fill, at).openings.map(({ x, width }) => [x, width]);
    expect(door(SIDES.S)).toEqual([[1500, 900]]);
    expect(door([2500, -100])).toEqual([[700, 900]]);
  });

  it("stacks 2250 + 150 inside, 2250 + 250 outside and a band of 150 over the door", () => {
    const rows = (family: string) => [
      ...new Set(
        fill.faces.flatMap(({ pieces }) =>
          pieces.filter((one) => one.family === family).map(({ z, height }) => `${z}+${height}`),
        ),
      ),
    ];
    expect(rows("wall-panel").sort()).toEqual(["0+2250", "2100+150"]);
    expect(rows("wall-slab-connector")).toEqual(["2250+150"]);
    expect(rows("slab-edge-cap")).toEqual(["2250+250"]);
  });

  // Connectors 2700 = 1200 1200 300 and 3300 = 1200 1200 600 300, two sides each; caps 3200 = 1200 1200 600 200 and
  // 3800 = 3 · 1200 + 200, two sides each. Angles: 4 corners, 4 jamb edges, 2 lintel edges.
  it("bills what the faces carry", () => {
    expect(quantities(fill)).toMatchObject({
      Corner150x2250: 4,
      W600x2250: 32,
      W450x2250: 2,
      W300x2250: 6,
      W250x2250: 8,
      W150x2250: 2,
      W900x150: 2,
      End100x2100: 2,
      Reveal100x900: 1,
      Angle2250: 4,
      Angle2100: 4,
      Angle900: 2,
      Conn150x1200: 8,
      Conn150x600: 2,
      Conn150x300: 4,
      Conn150inside: 4,
      Cap250x1200: 10,
      Cap250x600: 2,
      Cap250x200: 4,
      Cap250outside: 4,
      Tie100: 120,
    });
    const panels = Object.entries(quantities(fill)).filter(
      ([code]) => code.startsWith("W") && code !== "Wedge",
    );
    expect(panels.reduce((sum, [, quantity]) => sum + quantity, 0)).toBe(52);
  });

  // Inside 13.2 · 2.4 - 0.9 · 2.1, outside 14.0 · 2.5 - 0.9 · 2.1, reveals (2 · 2.1 + 0.9) · 0.1.
  it("forms 29.79 m² inside, 33.11 m² outside and 0.51 m² of reveals", () => {
    expect(tileArea(fill.faces.filter(({ room }) => room !== null))).toBeCloseTo(29.79, 9);
    expect(tileArea(fill.faces.filter(({ room }) => room === null))).toBeCloseTo(33.11, 9);
    const reveals = fill.reveals.flatMap(({ pieces }) => pieces.map(({ length, width }) => length * width));
    expect(reveals.reduce((sum, area) => sum + area, 0) / 1e6).toBeCloseTo(0.51, 9);
    expect(fill.rooms.map(({ area }) => area)).toEqual([10.8]);
  });

  // Joints: N 4 between panels and 2 at legs; E and W 5 and 2; S 2 between panels and 2 at legs, jambs have none.
  it("ties 24 joints in 5 rows", () => {
    expect([
      isTieOn(fill, 1, 3650),
      isTieOn(fill, 0, 3050),
      isTieOn(fill, 0, -50),
      isTieOn(fill, 1, -50),
    ]).toEqual([6, 7, 7, 4]);
    expect(fill.ties.every(({ heights }) => heights.join() === "150,450,750,1200,1800")).toBe(true);
  });

  it("counts no closure, nothing narrow, 10 fillers, 8 zones and 50 panels", () => {
    expect(fill.totals).toEqual({ closures: 0, narrow: 0, fillers: 10, zones: 8, panels: 50 });
  });

  it("takes the 300 out first in N, E and W, the 150 in S, and is not locked", () => {
    const first = (at: readonly [number, number]) =>
      faceAt(fill, at)
        .pieces.filter(({ firstOut }) => firstOut)
        .map(({ width }) => width);
    expect([SIDES.N, SIDES.E, SIDES.W, SIDES.S].map(first)).toEqual([[300], [300], [300], [150]]);
    expect(fill.problems.filter(({ kind }) => kind === "locked-ring")).toEqual([]);
  });
});

describe("variants of the worked room", () => {
  const variant = (drawing: Drawing) => {
    const unit = drawRoom(drawing);
    const fill = fillOne(unit);
    return {
      fill,
      faults: auditSquare(fill, { unit, storey: STOREY, kit: demoKit }),
      runs: runsOf(fill, drawing),
    };
  };

  // Outside a corner takes 120 + 150 = 270: no panel, so 250 and a closure of 20 at the leg end. Inside nothing changes,
  // every leg end keeps its ties: 24 joints. Eight zones, so eight closures.
  it("walls of 120: starters of 270 are 250 and a closure of 20", () => {
    const { fill, faults, runs } = variant({ thickness: 120 });
    expect(faults).toEqual([]);
    expect(runs.inner).toEqual(runsOf(fillOne(drawRoom())).inner);
    expect(runs.outer).toEqual({
      N: "250 (20) 600 600 600 600 300 (20) 250",
      E: "250 (20) 600 600 600 600 600 300 (20) 250",
      W: "250 (20) 600 600 600 600 600 300 (20) 250",
      S: "250 (20) 450 /900/ 600 600 150 (20) 250",
    });
    expect(fill.totals).toEqual({ closures: 8, narrow: 0, fillers: 10, zones: 8, panels: 50 });
    expect(quantities(fill)).toMatchObject({ "Closure10-59": 8, Tie120: 120, End120x2100: 2 });
  });

  // 625 - 150 = 475 = 25 + 450 and 3000 - 1525 - 150 = 1325 = 25 + 100 + 2 · 600: a closure of 25 on either side, each
  // at its corner, on both faces. A closure counts as one joint: still 1 + 3 joints in S.
  it("the door 25 further: a closure of 25 on both sides", () => {
    const { fill, faults, runs } = variant({ door: 625 });
    expect(faults).toEqual([]);
    expect(runs.inner.S).toBe("C150 (25) 450 /900/ 600 600 100 (25) C150");
    expect(runs.outer.S).toBe("250 (25) 450 /900/ 600 600 100 (25) 250");
    expect(fill.totals).toEqual({ closures: 4, narrow: 0, fillers: 10, zones: 8, panels: 50 });
    expect(quantities(fill)).toMatchObject({ "Closure10-59": 4, Tie100: 120 });
    expect(
      faceAt(fill, SIDES.S)
        .pieces.filter(({ firstOut }) => firstOut)
        .map(({ width }) => width),
    ).toEqual([25]);
  });

  // A wall across at y 1800..1900. W and E: legs end at 150 and 1650, 2050 and 3450, so 1500 = 2 · 600 + 300 and
  // 1400 = 2 · 600 + 200 on both faces, and outside 2 · 150 + 100 = 400 between. The wall itself: 2700 as N.
  // Panels: N 5 + 7, S 4 + 6, W and E (3 + 3) + (1 + 3 + 1 + 3 + 1) each, the wall 5 + 5. Joints: 6, 4, 8, 8, 6.
  it("a joining wall: a 400 on the far face of W and of E", () => {
    const { fill, faults, runs } = variant({ more: [[-50, 1850, 3050, 1850, 100]] });
    expect(faults).toEqual([]);
    expect(runs.inner.W).toBe("C150 600 600 300 C150");
    expect(runUpward(faceAt(fill, [0, 2500]))).toBe("C150 600 600 200 C150");
    expect(runUpward(faceAt(fill, [3000, 2500]))).toBe("C150 600 600 200 C150");
    expect(runs.outer.W).toBe("250 600 600 300 400 600 600 200 250");
    expect(runs.outer.E).toBe("250 600 600 300 400 600 600 200 250");
    expect(runUpward(faceAt(fill, [1500, 1800]))).toBe("C150 600 600 600 600 300 C150");
    expect(runUpward(faceAt(fill, [1500, 1900]))).toBe("C150 600 600 600 600 300 C150");
    expect(fill.totals).toEqual({ closures: 0, narrow: 0, fillers: 16, zones: 10, panels: 62 });
    expect(quantities(fill)).toMatchObject({ W400x2250: 2, Tie100: 160, Corner150x2250: 8 });
    expect(fill.rooms.map(({ area }) => area)).toEqual([5.4, 5.1]);
  });

  // 3620 - 300 = 3320 = 5 · 600 + 300 + 20: one closure on each face of E and W, at the closing end, the greater y. It is
  // tied on its other side: still 7 joints. It is the narrowest piece of its faces, so it comes out first. The soffit
  // takes its 20 in one line from wall to wall.
  it("a room of 3620: the residue of 20 in one closure", () => {
    const { fill, faults, runs } = variant({ length: 3620 });
    expect(faults).toEqual([]);
    expect(runs.inner.W).toBe("C150 600 600 600 600 600 300 (20) C150");
    expect(runs.outer.E).toBe("250 600 600 600 600 600 300 (20) 250");
    expect(fill.totals).toEqual({ closures: 4, narrow: 0, fillers: 10, zones: 8, panels: 50 });
    expect(quantities(fill)).toMatchObject({ "Closure10-59": 4 + 1, Tie100: 120 });
    expect(
      faceAt(fill, SIDES.W)
        .pieces.filter(({ firstOut }) => firstOut)
        .map(({ width }) => width),
    ).toEqual([20]);
  });

  it("drawn as its mirror image it takes the same bill and the same counts", () => {
    const unit = drawRoom();
    const turn = ([x, y]: readonly [number, number]) => [3000 - x, y] as const;
    const mirrored = {
      ...unit,
      walls: unit.walls.map((wall) => ({ ...wall, from: turn(wall.from), to: turn(wall.to) })),
    };
    const [a, b] = [fillOne(unit), fillOne(mirrored)];
    expect(b.totals).toEqual(a.totals);
    expect(b.bill).toEqual(a.bill);
  });
});
