// The concrete walls of a real apartment floor, traced as rectangles that abut and overlap.

import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import type { Wall } from "../../src/plan/project.ts";
import { loadGeosUnion } from "../support/geosUnion.ts";
import { measureRectangles, type Rectangle } from "../support/orthogonalPlan.ts";
import {
  concreteArea,
  expectFacesAttributed,
  expectOppositesApart,
  expectOppositesSymmetric,
  expectRingsInOrder,
  formedLength,
} from "../support/outlineClaims.ts";
import { unitOfWalls } from "../support/walls.ts";

interface Traced {
  readonly walls: readonly Pick<Wall, "id" | "from" | "to" | "thickness">[];
}

const union = await loadUnion();
const geosUnion = await loadGeosUnion();
const file = new URL("../data/concrete-floor-302/walls.json", import.meta.url);
const traced: Traced = JSON.parse(readFileSync(file, "utf8"));
const walls = traced.walls.map((wall): Wall => ({ ...wall, justify: "centre" }));

const rectangles = traced.walls.map(({ from, to, thickness }): Rectangle => {
  const [acrossX, acrossY] = from[0] === to[0] ? [thickness / 2, 0] : [0, thickness / 2];
  return [
    Math.min(from[0], to[0]) - acrossX,
    Math.min(from[1], to[1]) - acrossY,
    Math.max(from[0], to[0]) + acrossX,
    Math.max(from[1], to[1]) + acrossY,
  ];
});

it("has the area and the outline of the traced rectangles", () => {
  const outline = buildOutline(unitOfWalls(walls), union);
  const counted = measureRectangles(rectangles);
  const second = geosUnion(
    rectangles.map(([x1, y1, x2, y2]) => [
      [x1, y1],
      [x2, y1],
      [x2, y2],
      [x1, y2],
    ]),
  );
  expect(counted.area).toBeCloseTo(second.area, 3);
  expect(concreteArea(outline)).toBe(counted.area);
  expect(formedLength(outline)).toBe(counted.perimeter);
  expect(outline.rooms.length).toBe(second.holes);
  expect(outline.rings.length).toBe(second.holes + second.bodies);
  expect(outline.findings).toEqual([]);
});

it("knows the wall and the side of every stretch, and what stands opposite", () => {
  const outline = buildOutline(unitOfWalls(walls), union);
  expectRingsInOrder(outline);
  expectFacesAttributed(outline, 0);
  expectOppositesSymmetric(outline, 0);
  expectOppositesApart(outline);
  // Every wall is 160 thick and no two stand side by side.
  expect([
    ...new Set(outline.faces.flatMap((face) => face.opposite.map(({ thickness }) => thickness))),
  ]).toEqual([160]);
});
