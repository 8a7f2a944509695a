// What must hold of every outline, whatever was drawn.

import { expect } from "vitest";
import { alongLine, asideOfLine, lineThrough, pointAt } from "../../src/geom/line.ts";
import { comparePoints } from "../../src/geom/point.ts";
import { ringArea } from "../../src/geom/ring.ts";
import type { Face, Outline } from "../../src/plan/face.ts";

/** Corners of a ring, in order. */
function ringPoints(outline: Outline, ring: number) {
  return outline.rings[ring]!.faces.map((face) => outline.faces[face]!.from);
}

/** Corners of all rings, in order. */
export function outlineCorners(outline: Outline) {
  return outline.rings.map((_, ring) => ringPoints(outline, ring));
}

/** Area of the concrete, mm². */
export function concreteArea(outline: Outline): number {
  return outline.rings.reduce((sum, _, ring) => sum + ringArea(ringPoints(outline, ring)), 0);
}

/** Length of all faces, mm. */
export function formedLength(outline: Outline): number {
  return outline.faces.reduce((sum, face) => sum + face.length, 0);
}

/** Rings close and run the right way, start at their least corner and come in order; faces are linked and numbered. */
export function expectRingsInOrder(outline: Outline): void {
  const starts = outline.rings.map((_, ring) => ringPoints(outline, ring)[0]!);
  expect([...starts].sort(comparePoints)).toEqual(starts);
  expect(outline.rings.flatMap((ring) => ring.faces)).toEqual(outline.faces.map((_, i) => i));
  outline.rings.forEach((ring, r) => {
    const points = ringPoints(outline, r);
    expect(ring.isOuter).toBe(ringArea(points) > 0);
    expect([...points].sort(comparePoints)[0]).toEqual(points[0]);
    ring.faces.forEach((index, i) => {
      const face = outline.faces[index]!;
      const next = outline.faces[face.next]!;
      expect(face.next).toBe(ring.faces[(i + 1) % ring.faces.length]);
      expect(next.previous).toBe(index);
      expect(next.from).toEqual(face.to);
      expect(face.toCorner).toEqual(next.fromCorner);
      expect(face.ring).toBe(r);
      expect(face.room).toBe(ring.room);
    });
  });
}

/** The parts of every face cover it from end to end, give or take `reach` at each joint. */
export function expectFacesAttributed(outline: Outline, reach: number): void {
  for (const face of outline.faces) {
    let reached = 0;
    for (const part of [...face.walls].sort((a, b) => a.start - b.start)) {
      expect(part.start).toBeGreaterThanOrEqual(0);
      expect(part.end).toBeLessThanOrEqual(face.length);
      if (part.start - reached > reach) break;
      reached = Math.max(reached, part.end);
    }
    expect(face.length - reached, `face ${face.index} is covered by its walls`).toBeLessThanOrEqual(reach);
  }
}

/** No stretch of a face has two faces opposite. */
export function expectOppositesApart(outline: Outline): void {
  for (const { opposite } of outline.faces) {
    opposite.slice(1).forEach((stretch, i) => {
      expect(stretch.start).toBeGreaterThanOrEqual(opposite[i]!.end);
    });
  }
}

/**
 * If F faces G over a stretch, G faces F over the same, across the same thickness, within `reach`; stretches come in
 * order.
 */
export function expectOppositesSymmetric(outline: Outline, reach: number): void {
  for (const face of outline.faces) {
    let reached = 0;
    for (const opposite of face.opposite) {
      expect(opposite.start).toBeGreaterThanOrEqual(reached);
      expect(opposite.end).toBeLessThanOrEqual(face.length);
      reached = opposite.start;
      const other = outline.faces[opposite.face]!;
      const back = other.opposite.filter((stretch) => stretch.face === face.index);
      const distances = back.map((stretch) => stretchDistance([face, opposite], [other, stretch]));
      expect(Math.min(...distances), `face ${other.index} faces ${face.index} back`).toBeLessThanOrEqual(
        reach,
      );
    }
  }
}

type Across = readonly [Face, Face["opposite"][number]];

// How far apart two stretches are that should face each other: their ends, and the distance between the faces.
function stretchDistance([face, opposite]: Across, [other, stretch]: Across): number {
  const [line, back] = [lineThrough(face.from, face.to), lineThrough(other.from, other.to)];
  const at = (along: number) => pointAt(line, along, 0);
  const pairs = [
    [alongLine(back, at(opposite.start)), stretch.end],
    [alongLine(back, at(opposite.end)), stretch.start],
    [asideOfLine(back, at((opposite.start + opposite.end) / 2)), opposite.thickness],
    [opposite.thickness, stretch.thickness],
  ] as const;
  return Math.max(...pairs.map(([a, b]) => Math.abs(a - b)));
}
