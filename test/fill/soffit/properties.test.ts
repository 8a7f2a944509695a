// What every soffit must hold: exact tiling by another library's reckoning, supports, heads; and the same panels
// whichever way the plan lies and whatever the order of the file.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Soffit, UnitFill } from "../../../src/fill/result.ts";
import { writeFillDocument } from "../../../src/fill/writeFill.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import type { Position, Unit } from "../../../src/plan/project.ts";
import { auditAny } from "../../support/audit.ts";
import { fillDocument, fillOne, projectOf, STOREY } from "../../support/filled.ts";
import { loadGeosUnion } from "../../support/geosUnion.ts";
import { movedUnit, soffitUnits } from "../../support/soffitPlan.ts";

const union = await loadGeosUnion();
const audited = (unit: Unit) => ({ unit, storey: STOREY, kit: demoKit });

/** Slab panels and closures of all soffits, and how much is left open, in no order of rooms. */
function panelsOf(fill: UnitFill) {
  return fill.soffits
    .map(({ counts, pieces, unfilled }) => {
      const codes = pieces.filter(({ family }) => family === "slab-panel" || family === "closure-strip");
      const open = unfilled.reduce((sum, { outline }) => sum + union([outline]).area, 0);
      return [counts, codes.map(({ code }) => code).sort(), open > 0 ? "open" : "closed"];
    })
    .map((one) => JSON.stringify(one))
    .sort();
}

/** mm²: corners are given to 0.001 mm, which over the sides of a room makes up to this; along the axes it is nothing. */
const ASKEW = 200;

// Pieces and unfilled places cover what the outline holds, once, and nothing of the holes.
function expectTiled({ room, outline, holes, pieces, unfilled }: Soffit, slack: number): void {
  const shapes = [...pieces, ...unfilled].map((one) => one.outline);
  const sum = shapes.reduce((total, shape) => total + union([shape]).area, 0);
  const cut = holes.reduce((total, hole) => total + union([hole]).area, 0);
  const whole = union([outline]).area;
  const why = `${room} of ${whole}`;
  expect(Math.abs(sum + cut - whole), why).toBeLessThanOrEqual(slack);
  expect(Math.abs(union([...shapes, ...holes]).area - whole), why).toBeLessThanOrEqual(slack);
  expect(Math.abs(union([...shapes, ...holes, outline]).area - whole), why).toBeLessThanOrEqual(slack);
}

const TURNS: Readonly<Record<string, (at: Position) => Position>> = {
  "mirrored over y": ([x, y]) => [0 - x, y],
  "mirrored over x": ([x, y]) => [x, 0 - y],
  "turned by 90°": ([x, y]) => [0 - y, x],
  "turned by 180°": ([x, y]) => [0 - x, 0 - y],
  "mirrored over the diagonal": ([x, y]) => [y, x],
};

describe("every soffit", () => {
  it("passes the audit and is tiled by another library's reckoning", () => {
    fc.assert(
      fc.property(soffitUnits, (unit) => {
        const fill = fillOne(unit);
        expect(auditAny(fill, audited(unit))).toEqual([]);
        for (const soffit of fill.soffits) expectTiled(soffit, 1e-3);
      }),
      { seed: 21, numRuns: 80 },
    );
  }, 60_000);

  it.each(Object.entries(TURNS))(
    "takes the same panels and closures %s",
    (_, move) => {
      fc.assert(
        fc.property(soffitUnits, (unit) => {
          expect(panelsOf(fillOne(movedUnit(unit, move)))).toEqual(panelsOf(fillOne(unit)));
        }),
        { seed: 22, numRuns: 25 },
      );
    },
    60_000,
  );

  it("passes the audit askew at any angle and takes the same panels and closures", () => {
    fc.assert(
      fc.property(soffitUnits, fc.integer({ min: 1, max: 359 }), (unit, degrees) => {
        fc.pre(degrees % 45 !== 0);
        const angle = (degrees * Math.PI) / 180;
        const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
        const askew = movedUnit(unit, ([x, y]) => [x * cos - y * sin, x * sin + y * cos]);
        const fill = fillOne(askew);
        expect(auditAny(fill, audited(askew))).toEqual([]);
        for (const soffit of fill.soffits) expectTiled(soffit, ASKEW);
        expect(panelsOf(fill)).toEqual(panelsOf(fillOne(unit)));
      }),
      { seed: 23, numRuns: 50 },
    );
  }, 60_000);

  it("is the same bytes whatever the order of the file", () => {
    const textOf = (unit: Unit) => writeFillDocument(fillDocument(projectOf(unit)));
    fc.assert(
      fc.property(soffitUnits, (unit) => {
        const turned = <One>(list: readonly One[]) => [...list].reverse();
        const other = {
          ...unit,
          walls: turned(unit.walls),
          openings: turned(unit.openings),
          rooms: turned(unit.rooms),
          slabs: turned(unit.slabs),
          slabOpenings: turned(unit.slabOpenings),
        };
        expect(textOf(other)).toBe(textOf(unit));
      }),
      { seed: 24, numRuns: 20 },
    );
  }, 60_000);
});
