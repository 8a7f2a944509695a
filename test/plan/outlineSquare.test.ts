// Square plans with walls of any thickness and justification against rectangles counted in whole millimetres.

import fc from "fast-check";
import { expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import type { Face } from "../../src/plan/face.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import type { Position, Wall } from "../../src/plan/project.ts";
import {
  bodyRectangles,
  coreRectangles,
  countConcrete,
  orthogonalArbitrary,
  type Rectangle,
} from "../support/orthogonalPlan.ts";
import {
  concreteArea,
  expectFacesAttributed,
  expectOppositesApart,
  expectOppositesSymmetric,
  expectRingsInOrder,
  formedLength,
} from "../support/outlineClaims.ts";
import { unitOf, unitOfWalls, type WallLine } from "../support/walls.ts";

const union = await loadUnion();
const outlineOf = (walls: readonly Wall[]) => buildOutline(unitOfWalls(walls), union);

it("gives the area and the length of outline to the millimetre", () => {
  fc.assert(
    fc.property(orthogonalArbitrary(3), (walls) => {
      const outline = outlineOf(walls);
      const counted = countConcrete(walls);
      expect(concreteArea(outline)).toBe(counted.area);
      expect(formedLength(outline)).toBe(counted.perimeter);
      expectRingsInOrder(outline);
      expectFacesAttributed(outline, 0);
      expectOppositesSymmetric(outline, 0);
      expectOppositesApart(outline);
    }),
    { seed: 21, numRuns: 150 },
  );
});

it("loses nothing when the plan is turned and moved far from the origin", () => {
  fc.assert(
    fc.property(orthogonalArbitrary(2), (walls) => {
      // 3-4-5: the turned drawing is exact but for the last digits.
      const turn = ([x, y]: Position): Position => [0.8 * x - 0.6 * y + 250000, 0.6 * x + 0.8 * y - 410000];
      const outline = outlineOf(walls.map((wall) => ({ ...wall, from: turn(wall.from), to: turn(wall.to) })));
      const counted = countConcrete(walls);
      expect(concreteArea(outline)).toBeCloseTo(counted.area, 2);
      expect(formedLength(outline)).toBeCloseTo(counted.perimeter, 4);
      expect(outline.faces.length).toBe(outlineOf(walls).faces.length);
      for (const face of outline.faces) {
        expect([90, 270]).toContain(face.fromCorner.angle);
        expect(face.fromCorner.isSquare).toBe(true);
        for (const { thickness } of face.opposite) expect(thickness % 50).toBe(0);
      }
    }),
    { seed: 22, numRuns: 80 },
  );
});

it("faces what a line straight across the walls along the face comes out at", () => {
  fc.assert(
    fc.property(orthogonalArbitrary(2), (walls) => {
      const bodies = bodyRectangles(walls);
      const cores = coreRectangles(walls);
      for (const face of outlineOf(walls).faces) {
        const axis = face.from[1] === face.to[1] ? 0 : 1;
        const along = cores.filter((_, i) => walls[i]!.from[1 - axis] === walls[i]!.to[1 - axis]);
        // All coordinates are multiples of 25, so that no place looked at lies on an edge.
        for (let place = 12.5; place < face.length; place += 25) {
          const found = face.opposite.filter(({ start, end }) => place > start && place < end);
          expect(found.map(({ thickness }) => thickness)).toEqual(
            thicknessAt(face, place, { along, bodies }),
          );
        }
      }
    }),
    { seed: 23, numRuns: 60 },
  );
});

it("looks across walls that stand side by side, overlap or touch", () => {
  const wall = fc.record({
    x: fc.integer({ min: 0, max: 8 }),
    y: fc.integer({ min: 0, max: 10 }),
    length: fc.integer({ min: 1, max: 6 }),
    thickness: fc.constantFrom(100, 150, 200),
  });
  fc.assert(
    fc.property(fc.array(wall, { minLength: 1, maxLength: 10 }), (specs) => {
      const lines = specs.map(({ x, y, length, thickness }): WallLine => {
        return [x * 250, y * 50, (x + length) * 250, y * 50, thickness];
      });
      const rectangles = lines.map(([x1, y, x2, , t]): Rectangle => [x1, y - t / 2, x2, y + t / 2]);
      for (const face of buildOutline(unitOf(lines), union).faces) {
        if (face.from[1] !== face.to[1]) continue;
        for (let place = 12.5; place < face.length; place += 25) {
          const found = face.opposite.filter(({ start, end }) => place > start && place < end);
          const expected = thicknessAt(face, place, { along: rectangles, bodies: rectangles });
          expect(found.map(({ thickness }) => thickness)).toEqual(expected);
        }
      }
    }),
    { seed: 24, numRuns: 150 },
  );
});

// Thickness of the bodies along the face, one behind the other, at a place of the face; none where they end in others.
function thicknessAt(
  { from, to, length }: Face,
  place: number,
  { along, bodies }: { readonly along: readonly Rectangle[]; readonly bodies: readonly Rectangle[] },
): number[] {
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const at = (depth: number): Position => [
    from[0] + ux * place - uy * depth,
    from[1] + uy * place + ux * depth,
  ];
  const isIn = ([x1, y1, x2, y2]: Rectangle, [x, y]: Position) => x > x1 && x < x2 && y > y1 && y < y2;
  let depth = 0;
  while (along.some((rectangle) => isIn(rectangle, at(depth + 12.5)))) depth += 25;
  return depth === 0 || bodies.some((rectangle) => isIn(rectangle, at(depth + 12.5))) ? [] : [depth];
}
