// Random square plans with walls of any thickness drawn on any of their lines, and their concrete by counting cells.
//
// On a grid of 1 m some edges carry a wall; edges in line are sometimes drawn as one wall. A wall ends square at its
// node, except where exactly two walls turn a corner: there each runs to the other's far side.

import fc from "fast-check";
import type { Justify, Wall } from "../../src/plan/project.ts";

const STEP = 1000;

/** Walls along the axes, ends on a grid of 1 m, no two on the same edge of the grid. */
export function orthogonalArbitrary(size: number): fc.Arbitrary<Wall[]> {
  const edge = fc.record({
    isDrawn: fc.integer({ min: 0, max: 2 }).map((n) => n > 0),
    goesOn: fc.boolean(),
    isFlipped: fc.boolean(),
    thickness: fc.constantFrom(100, 150, 200, 300),
    justify: fc.constantFrom<Justify>("centre", "left", "right"),
  });
  const count = size * (size + 1);
  const lines = fc.array(edge, { minLength: count, maxLength: count });
  return fc.tuple(lines, lines).map(([across, upright]) => {
    const walls: Wall[] = [];
    for (const [edges, isUpright] of [
      [across, false],
      [upright, true],
    ] as const) {
      for (let line = 0; line <= size; line++) {
        for (let start = 0; start < size; ) {
          const first = edges[line * size + start]!;
          let end = start + 1;
          if (first.isDrawn) {
            while (end < size && edges[line * size + end]!.isDrawn && edges[line * size + end]!.goesOn) end++;
            const at = (along: number): [number, number] =>
              isUpright ? [line * STEP, along * STEP] : [along * STEP, line * STEP];
            const [from, to] = first.isFlipped ? [at(end), at(start)] : [at(start), at(end)];
            walls.push({
              id: `w${walls.length}`,
              from,
              to,
              thickness: first.thickness,
              justify: first.justify,
            });
          }
          start = end;
        }
      }
    }
    return walls;
  });
}

export type Rectangle = readonly [minX: number, minY: number, maxX: number, maxY: number];

/** Area and length of outline of the concrete, by the rule at the head of this file, counted in whole millimetres. */
export function countConcrete(walls: readonly Wall[]): { readonly area: number; readonly perimeter: number } {
  return measureRectangles(bodyRectangles(walls));
}

/** The bodies, each run to the far side of the wall it turns a corner with. */
export function bodyRectangles(walls: readonly Wall[]): Rectangle[] {
  return walls.map((wall) => runRectangle(wall, walls, Math.max));
}

/** The bodies as far as both of their sides run: at a corner to the near side of the other wall only. */
export function coreRectangles(walls: readonly Wall[]): Rectangle[] {
  return walls.map((wall) => runRectangle(wall, walls, Math.min));
}

/** Area and length of outline of a union of rectangles along the axes, by cutting the plan along all their sides. */
export function measureRectangles(rectangles: readonly Rectangle[]) {
  const xs = [...new Set(rectangles.flatMap(([a, , b]) => [a, b]))].sort((a, b) => a - b);
  const ys = [...new Set(rectangles.flatMap(([, a, , b]) => [a, b]))].sort((a, b) => a - b);
  const isFilled = (i: number, k: number) =>
    i >= 0 &&
    k >= 0 &&
    i + 1 < xs.length &&
    k + 1 < ys.length &&
    rectangles.some(
      ([x1, y1, x2, y2]) => x1 <= xs[i]! && x2 >= xs[i + 1]! && y1 <= ys[k]! && y2 >= ys[k + 1]!,
    );
  let area = 0;
  let perimeter = 0;
  for (let i = 0; i + 1 < xs.length; i++) {
    for (let k = 0; k + 1 < ys.length; k++) {
      if (!isFilled(i, k)) continue;
      const [width, height] = [xs[i + 1]! - xs[i]!, ys[k + 1]! - ys[k]!];
      area += width * height;
      for (const side of [-1, 1]) {
        if (!isFilled(i + side, k)) perimeter += height;
        if (!isFilled(i, k + side)) perimeter += width;
      }
    }
  }
  return { area, perimeter };
}

function runRectangle(
  wall: Wall,
  walls: readonly Wall[],
  choose: (a: number, b: number) => number,
): Rectangle {
  const rectangle = [...spread(wall)];
  const axis = wall.from[0] === wall.to[0] ? 1 : 0;
  for (const end of [wall.from, wall.to]) {
    const corner = turningWall(wall, end, walls);
    if (corner === null) continue;
    const sides = [spread(corner)[axis]!, spread(corner)[axis + 2]!] as const;
    const isLower = end[axis] === Math.min(wall.from[axis], wall.to[axis]);
    // Further out is lesser at the lower end.
    rectangle[isLower ? axis : axis + 2] = isLower
      ? -choose(-sides[0], -sides[1])
      : choose(sides[0], sides[1]);
  }
  return [rectangle[0]!, rectangle[1]!, rectangle[2]!, rectangle[3]!];
}

// The rectangle of a wall that ends square at its nodes.
function spread(wall: Wall): Rectangle {
  const left = wall.justify === "centre" ? wall.thickness / 2 : wall.justify === "left" ? 0 : wall.thickness;
  const right = wall.thickness - left;
  const [fx, fy] = wall.from;
  const [tx, ty] = wall.to;
  if (fx === tx) return ty > fy ? [fx - left, fy, fx + right, ty] : [fx - right, ty, fx + left, fy];
  return tx > fx ? [fx, fy - right, tx, fy + left] : [tx, fy - left, fx, fy + right];
}

// The one wall that turns the corner with `wall` at `end`, where nothing else is.
function turningWall(wall: Wall, end: Wall["from"], walls: readonly Wall[]): Wall | null {
  const others = walls.filter((other) => other !== wall && isOn(other, end));
  const [only] = others;
  if (only === undefined || others.length > 1) return null;
  const endsHere = [only.from, only.to].some(([x, y]) => x === end[0] && y === end[1]);
  const isSquare = (only.from[0] === only.to[0]) !== (wall.from[0] === wall.to[0]);
  return endsHere && isSquare ? only : null;
}

function isOn({ from, to }: Wall, [x, y]: Wall["from"]): boolean {
  const within = (a: number, b: number, p: number) => p >= Math.min(a, b) && p <= Math.max(a, b);
  return within(from[0], to[0], x) && within(from[1], to[1], y);
}
