// Numbers of the setting-out sheet against arithmetic that shares nothing with it: cells of concrete, hand sums.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mirrorFill } from "../../../src/fill/mirror.ts";
import type { UnitFill } from "../../../src/fill/result.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import type { ControlLine, Position, Unit } from "../../../src/plan/project.ts";
import { type SettingOut, settingOutOf } from "../../../src/sheet/settingOut/settingOut.ts";
import { facePlaces } from "../../support/concreteCells.ts";
import { fillOne } from "../../support/filled.ts";
import { houseArbitrary } from "../../support/housePlan.ts";
import { orthogonalArbitrary } from "../../support/orthogonalPlan.ts";
import { filled, sampleProject } from "../../support/samples.ts";
import { emptyUnit, withServices } from "../../support/services.ts";

const RUNS = { seed: 20_260_301, numRuns: 25, endOnFailure: true };

function sample(name: string, at = 0): { readonly unit: Unit; readonly fill: UnitFill } {
  const project = sampleProject(name);
  const fill = filled(project).units[at]!;
  return { unit: project.units.find(({ id }) => id === fill.unit)!, fill };
}

function numbers(layout: SettingOut, axis: "x" | "y"): readonly number[] {
  return layout.running.filter((one) => one.axis === axis).map(({ at }) => at);
}

describe("running numbers", () => {
  it("are the places where concrete begins and ends, from its least corner, on any square plan", () => {
    fc.assert(
      fc.property(orthogonalArbitrary(3), (walls) => {
        fc.pre(walls.length > 0);
        const unit = { ...emptyUnit, walls };
        const layout = settingOutOf(fillOne(unit), unit, false);
        const places = facePlaces(walls);
        expect(numbers(layout, "x")).toEqual(places.x.map((x) => x - places.x[0]!));
        expect(numbers(layout, "y")).toEqual(places.y.map((y) => y - places.y[0]!));
      }),
      RUNS,
    );
  });

  it.each([
    // The walls are drawn by their middle: 75 and 10 925 with 150, the others with 100.
    { axis: "x", why: "sides of the upright walls", of: [0, 150, 4650, 4750, 8050, 8150, 10850, 11000] },
    {
      axis: "y",
      why: "sides of the level walls",
      of: [0, 100, 1600, 1700, 4000, 4100, 5300, 5400, 7500, 7600],
    },
  ] as const)("of the two-bedroom sample: $why", ({ axis, of }) => {
    const { unit, fill } = sample("two-bedroom");
    expect(numbers(settingOutOf(fill, unit, false), axis)).toEqual(expect.arrayContaining([...of]));
  });

  it("have their open side where the room or the open air is", () => {
    const { unit, fill } = sample("one-room");
    const layout = settingOutOf(fill, unit, false);
    const sides = layout.running.map(({ axis, at, open, isReference }) => [axis, at, open, isReference]);
    expect(sides).toEqual([
      ["x", 0, -1, false],
      ["x", 100, 1, true],
      ["x", 3100, -1, true],
      ["x", 3200, 1, false],
      ["y", 0, -1, false],
      ["y", 100, 1, true],
      ["y", 3700, -1, true],
      ["y", 3800, 1, false],
    ]);
  });
});

describe("diagonals", () => {
  // Clear sizes between the drawn wall lines less half of each wall; lengths by Pythagoras on paper.
  it.each([
    ["Living and kitchen", 4500, 5800, 7341],
    ["Bedroom 1", 3300, 3900, 5109],
    ["Bedroom 2", 2700, 3900, 4743],
    ["Hall", 6100, 1200, 6217],
    ["Bathroom", 2300, 2100, 3114],
    ["Store", 1200, 2100, 2419],
    ["Shaft", 600, 900, 1082],
  ])("of %s", (room, width, depth, length) => {
    const { unit, fill } = sample("two-bedroom");
    const check = settingOutOf(fill, unit, false).rooms.find((one) => one.room === room)!;
    expect(check.clear).toEqual([width, depth]);
    expect(check.diagonals.map((one) => one.length)).toEqual([length, length]);
  });

  it("reach every corner of a rectangle, stay inside the room and are as long as the points say", () => {
    fc.assert(
      fc.property(
        houseArbitrary({ columns: 2, rows: 2, thicknesses: [100, 200], isMixed: false }),
        (unit) => {
          const layout = settingOutOf(fillOne(unit), unit, false);
          const hasIsland = layout.outlines.filter(({ isConcrete }) => isConcrete).length > 1;
          for (const { clear, corners, diagonals } of layout.rooms) {
            const reached = diagonals.flatMap(({ from, to }) => [from, to]).map(String);
            if (clear !== null) expect(reached.sort()).toEqual(corners.map(String).sort());
            expect(diagonals.length).toBeGreaterThan(0);
            for (const { from, to, points, length } of diagonals) {
              const [a, b] = points.map((id) => layout.points.find((point) => point.id === id)!.at);
              expect([a, b]).toEqual([from, to]);
              const square = (to[0] - from[0]) ** 2 + (to[1] - from[1]) ** 2;
              expect(Math.abs(length - Math.sqrt(square))).toBeLessThanOrEqual(0.5);
              // Over a column a tape may go: nothing stands yet.
              if (!hasIsland) expect(isInConcrete(middle(from, to), layout)).toBe(false);
            }
          }
        },
      ),
      RUNS,
    );
  });

  it("of the outside run between the corners that reach farthest out", () => {
    const { unit, fill } = sample("two-bedroom");
    const { outer } = settingOutOf(fill, unit, false);
    // 11 000 by 7600: √(121 000 000 + 57 760 000) = 13 370.1…
    expect(outer.map(({ length }) => length)).toEqual([13370, 13370]);
  });
});

function middle(a: Position, b: Position): Position {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

/** Whether a place lies strictly inside concrete, by the winding of all outlines together. */
function isInConcrete([x, y]: Position, { outlines }: SettingOut): boolean {
  const around = outlines.filter(({ places }) => {
    let inside = false;
    places.forEach(([ax, ay], k) => {
      const [bx, by] = places[(k + 1) % places.length]!;
      if (ay > y !== by > y && ax + ((y - ay) / (by - ay)) * (bx - ax) > x) inside = !inside;
    });
    return inside;
  });
  return around.length % 2 === 1;
}

const line = (id: string, from: Position, to: Position): ControlLine => ({ id, from, to });

describe("control lines and datum", () => {
  it("read what they are from the outer corner, and say how far the nearest faces are", () => {
    const { unit, fill } = sample("two-bedroom");
    const { controls, corner } = settingOutOf(fill, unit, false);
    expect(corner).toEqual([0, 0]);
    // X1 is drawn at 650; the faces beside it are at 300 (a wall's end) and 4650.
    expect(controls.map(({ id, offsets }) => [id, ...offsets])).toEqual([
      ["X1", 350, 4000],
      ["X2", 500, 1800],
      ["Y1", 500, 1000],
    ]);
  });

  it("carry the datum out by whole metres where a line lies before the concrete", () => {
    const { unit, fill } = sample("one-room");
    const outside = [line("X0", [-1350, -900], [-1350, 4000]), line("Y0", [-1900, -250], [4000, -250])];
    const layout = settingOutOf(fill, { ...unit, controlLines: outside }, false);
    // The concrete begins at −50 in both directions: 1300 and 200 before it.
    expect(layout.corner).toEqual([2000, 1000]);
    expect(layout.controls.map(({ from }) => from)).toEqual([
      [700, 150],
      [150, 800],
    ]);
    expect(layout.running.every(({ at }) => at >= 0)).toBe(true);
    expect(layout.points.find(({ kind }) => kind === "control")?.at).toEqual([700, 800]);
  });

  it("gives oblique walls by their end points", () => {
    const { unit, fill } = sample("awkward");
    const layout = settingOutOf(fill, unit, false);
    expect(layout.oblique.length).toBeGreaterThan(0);
    for (const { points, length } of layout.oblique) {
      const [a, b] = points.map((id) => layout.points.find((point) => point.id === id)!.at);
      expect(Math.abs(Math.sqrt((a![0] - b![0]) ** 2 + (a![1] - b![1]) ** 2) - length)).toBeLessThan(1);
    }
  });
});

describe("a mirrored pour", () => {
  it("is the reflection, point for point and pin for pin, from the least corner of the reflection", () => {
    fc.assert(
      fc.property(withServices({ columns: 2, rows: 1 }), (unit) => {
        const fill = fillOne(unit);
        const drawn = settingOutOf(fill, unit, false);
        const mirrored = settingOutOf(mirrorFill(fill, demoKit), unit, true);
        // The far side of the concrete becomes its near side.
        const at = ([x, y]: Position): Position => [
          drawn.extent[0] - x + mirrored.corner[0],
          y - drawn.corner[1] + mirrored.corner[1],
        ];
        expect(mirrored.points.map((one) => [one.id, one.kind, one.at])).toEqual(
          drawn.points.map((one) => [one.id, one.kind, at(one.at)]),
        );
        expect(mirrored.pins.map((one) => one.at)).toEqual(drawn.pins.map((one) => at(one.at)));
        expect(mirrored.rooms.map((one) => one.diagonals.map(({ length }) => length))).toEqual(
          drawn.rooms.map((one) => one.diagonals.map(({ length }) => length)),
        );
      }),
      RUNS,
    );
  });
});

describe("points", () => {
  it("are numbered once each, every corner of the concrete and both jambs of every opening on the floor", () => {
    const { unit, fill } = sample("two-bedroom");
    const { points, outlines, openings } = settingOutOf(fill, unit, false);
    expect(new Set(points.map(({ id }) => id)).size).toBe(points.length);
    expect(points.every(({ id }) => id.length <= 8)).toBe(true);
    const corners = points
      .filter(({ kind }) => kind === "corner" || kind === "end")
      .map(({ at }) => String(at));
    for (const { places } of outlines) for (const place of places) expect(corners).toContain(String(place));
    const jambs = points.filter(({ kind }) => kind === "jamb");
    expect(jambs.length).toBe(2 * openings.filter(({ isBoxed }) => !isBoxed).length);
  });
});
