// Layout pins against brute force: every pin with every service, every gap with what is listed.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FilledFace, UnitFill } from "../../../src/fill/result.ts";
import type { Position, Service, Unit } from "../../../src/plan/project.ts";
import { PIN_RULES, pinRow } from "../../../src/sheet/settingOut/pinRow.ts";
import { type SettingOut, settingOutOf } from "../../../src/sheet/settingOut/settingOut.ts";
import { fillOne } from "../../support/filled.ts";
import { filled, sampleProject } from "../../support/samples.ts";
import { withServices } from "../../support/services.ts";

const RUNS = { seed: 20_260_302, numRuns: 30, endOnFailure: true };

describe("one row", () => {
  const everywhere = () => true;
  const panels = (...widths: readonly number[]) => {
    let at = 0;
    return widths.map((width) => {
      at += width;
      return { low: at - width, high: at };
    });
  };

  it.each([
    {
      why: "middles of 600s, ends in the corner legs",
      widths: [150, 600, 600, 150],
      row: [75, 450, 1050, 1425],
    },
    { why: "a pier of one narrow panel gets one pin in its middle", widths: [200], row: [100] },
    { why: "too short for any: nearer an edge than 50", widths: [90], row: [] },
  ])("$why", ({ widths, row }) => {
    const pieces = panels(...widths);
    expect(pinRow({ low: 0, high: pieces.at(-1)!.high, pieces, isFree: everywhere })).toEqual(row);
  });

  it("leaves the gap that a barred stretch forces, and keeps the pins beside it", () => {
    const pieces = panels(600, 600, 600, 600);
    const isFree = (x: number) => x < 700 || x > 1700;
    const row = pinRow({ low: 0, high: 2400, pieces, isFree });
    expect(row.filter((x) => x >= 700 && x <= 1700)).toEqual([]);
    expect(Math.max(...row.filter((x) => x < 700))).toBeGreaterThan(600);
    expect(Math.min(...row.filter((x) => x > 1700))).toBeLessThan(1800);
  });
});

/** Distance to a path by comparing with many places on it: slow, simple, and near enough from above. */
function sampledDistance([x, y]: Position, path: readonly Position[]): number {
  let least = Number.POSITIVE_INFINITY;
  path.forEach(([ax, ay], k) => {
    const [bx, by] = path[Math.min(k + 1, path.length - 1)]!;
    const isFar = Math.min(Math.abs(x - ax), Math.abs(x - bx)) > 400 && x > ax === x > bx;
    if (isFar) return; // no clearance is as wide
    const steps = 1 + Math.ceil((Math.abs(bx - ax) + Math.abs(by - ay)) / 2);
    for (let step = 0; step <= steps; step++) {
      const [px, py] = [ax + ((bx - ax) * step) / steps, ay + ((by - ay) * step) / steps];
      least = Math.min(least, (px - x) ** 2 + (py - y) ** 2);
    }
  });
  return Math.sqrt(least);
}

/** Places along a face of what lies on it, in coordinates of the sheet. */
function alongFace(face: FilledFace, at: Position, origin: Position): number | null {
  const [from, to] = face.settled.map(([x, y]): Position => [x - origin[0], y - origin[1]]) as [
    Position,
    Position,
  ];
  const length = Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]);
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const [dx, dy] = [at[0] - from[0], at[1] - from[1]];
  const aside = Math.abs(ux * dy - uy * dx);
  const x = ux * dx + uy * dy;
  return aside > 0.01 || x < -0.01 || x > length + 0.01 ? null : x;
}

function originOf(fill: UnitFill, layout: SettingOut): Position {
  const places = fill.faces.flatMap(({ settled }) => [...settled]);
  return [
    Math.min(...places.map(([x]) => x)) - layout.corner[0],
    Math.min(...places.map(([, y]) => y)) - layout.corner[1],
  ];
}

/** Stretches of a face with concrete on the floor. */
function onFloor({ length, openings }: FilledFace): readonly (readonly [number, number])[] {
  const cuts = openings.filter(({ sill }) => sill === 0).sort((a, b) => a.x - b.x);
  const edges = [0, ...cuts.flatMap(({ x, width }) => [x, x + width]), length];
  return edges.flatMap((low, k) =>
    k % 2 === 0 && edges[k + 1]! > low ? [[low, edges[k + 1]!] as const] : [],
  );
}

function judge(
  unit: Unit,
  fill: UnitFill,
): { readonly pins: number; readonly moved: number; readonly gaps: number } {
  const layout = settingOutOf(fill, unit, false);
  const origin = originOf(fill, layout);
  const services = unit.services.map((one): Service => {
    return { ...one, path: one.path.map(([x, y]): Position => [x - origin[0], y - origin[1]]) };
  });
  for (const { at, face } of layout.pins) {
    for (const { path, clearance } of services)
      expect(sampledDistance(at, path)).toBeGreaterThanOrEqual(clearance - 1e-6);
    const own = fill.faces.find(({ id }) => id === face)!;
    const x = alongFace(own, at, origin);
    expect(x).not.toBeNull();
    expect(onFloor(own).some(([low, high]) => x! >= low + 50 && x! <= high - 50)).toBe(true);
    for (const piece of own.pieces)
      if (piece.z === 0 && piece.family === "closure-strip")
        expect(x! < piece.x || x! > piece.x + piece.width).toBe(true);
    for (const opening of own.openings)
      if (opening.formed === "band")
        for (const jamb of [opening.x, opening.x + opening.width])
          expect(Math.abs(jamb - x!)).toBeGreaterThanOrEqual(50);
  }
  for (const face of fill.faces) {
    if (face.pieces.some(({ family }) => family === "stop-end")) continue;
    const places = layout.pins
      .filter((pin) => pin.face === face.id)
      .map(({ at }) => alongFace(face, at, origin)!);
    const listed = layout.gaps
      .filter((gap) => gap.face === face.id)
      .map(({ from, to }) => [alongFace(face, from, origin)!, alongFace(face, to, origin)!] as const);
    for (const [low, high] of onFloor(face)) {
      const own = places.filter((x) => x > low && x < high).sort((a, b) => a - b);
      const stops = [low, ...own, high];
      stops.slice(1).forEach((stop, k) => {
        const isEnd = k === 0 || k === stops.length - 2;
        const allowed = isEnd ? PIN_RULES.greatestEnd : PIN_RULES.greatestGap;
        // A pier too short for a pin has none and needs none.
        if (stop - stops[k]! <= allowed || high - low < 2 * PIN_RULES.greatestEnd) return;
        const isListed = listed.some(([a, b]) => Math.abs(a - stops[k]!) < 1 && Math.abs(b - stop) < 1);
        expect(isListed, `${face.id} from ${stops[k]} to ${stop}`).toBe(true);
      });
    }
  }
  const moved = layout.pins.filter(({ movedOff }) => movedOff.length > 0).length;
  return { pins: layout.pins.length, moved, gaps: layout.gaps.length };
}

describe("the pins of a unit", () => {
  it("keep clear of every service, of doors and closures, with no gap that is not listed", () => {
    const seen = { pins: 0, moved: 0, gaps: 0 };
    fc.assert(
      fc.property(withServices({ columns: 2, rows: 2 }), (unit) => {
        const { pins, moved, gaps } = judge(unit, fillOne(unit));
        seen.pins += pins;
        seen.moved += moved;
        seen.gaps += gaps;
      }),
      RUNS,
    );
    // The plans must have put the rules to work.
    expect(seen.pins).toBeGreaterThan(1000);
    expect(seen.moved).toBeGreaterThan(10);
    expect(seen.gaps).toBeGreaterThan(5);
  });

  it.each(["one-room", "two-bedroom", "mirrored-pair", "row-of-three"])(
    "of the sample %s hold the same",
    (name) => {
      const project = sampleProject(name);
      for (const fill of filled(project).units) {
        const { pins, gaps } = judge(project.units.find(({ id }) => id === fill.unit)!, fill);
        expect(pins).toBeGreaterThan(0);
        expect(gaps).toBe(0);
      }
    },
  );

  it("stand in the middle half of a panel rather than at its joints, corners and jambs apart", () => {
    const project = sampleProject("two-bedroom");
    const fill = filled(project).units[0]!;
    const layout = settingOutOf(fill, project.units[0]!, false);
    const origin = originOf(fill, layout);
    let [good, all] = [0, 0];
    for (const face of fill.faces) {
      for (const pin of layout.pins.filter((one) => one.face === face.id)) {
        const x = alongFace(face, pin.at, origin)!;
        if (onFloor(face).some(([low, high]) => Math.abs(x - low) <= 150 || Math.abs(high - x) <= 150))
          continue;
        const piece = face.pieces.find((one) => one.z === 0 && x >= one.x && x <= one.x + one.width);
        if (piece === undefined) continue;
        all += 1;
        if (Math.min(x - piece.x, piece.x + piece.width - x) >= piece.width / 4) good += 1;
      }
    }
    expect(all).toBeGreaterThan(100);
    expect(good / all).toBeGreaterThan(0.9);
  });
});
