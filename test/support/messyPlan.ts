// Random drawings as careless as they come: walls at any angle, crossing, overlapping, ending a little off one another,
// some drawn twice.

import fc from "fast-check";
import type { Justify, Position, Wall } from "../../src/plan/project.ts";

/** Up to `most` walls; each end is free, on an earlier end, or on an earlier wall, all give or take 3 mm. */
export function messyArbitrary(most: number): fc.Arbitrary<Wall[]> {
  const end = fc.record({
    kind: fc.constantFrom("free", "square", "end", "wall"),
    x: fc.integer({ min: 0, max: 6000 }),
    y: fc.integer({ min: 0, max: 6000 }),
    pick: fc.nat(100),
    share: fc.integer({ min: 1, max: 9 }),
    slip: fc.tuple(fc.constantFrom(0, 0, 0, 1, -1, 2, 3), fc.constantFrom(0, 0, 0, 1, -2, 2, -3)),
  });
  const wall = fc.record({
    ends: fc.tuple(end, end),
    thickness: fc.constantFrom(80, 100, 101, 150, 200),
    justify: fc.constantFrom<Justify>("centre", "left", "right"),
  });
  return fc.array(wall, { minLength: 1, maxLength: most }).map((drawings) => {
    const walls: Wall[] = [];
    for (const { ends, thickness, justify } of drawings) {
      const [from, to] = ends.map((spec): Position => {
        const near = placeOf(spec, walls);
        return [near[0] + spec.slip[0], near[1] + spec.slip[1]];
      });
      walls.push({ id: `w${walls.length}`, from: from!, to: to!, thickness, justify });
    }
    return walls;
  });
}

function placeOf(
  spec: { kind: string; x: number; y: number; pick: number; share: number },
  walls: readonly Wall[],
): Position {
  const other = walls[spec.pick % Math.max(1, walls.length)];
  if (spec.kind === "square") return [Math.round(spec.x / 1000) * 1000, Math.round(spec.y / 1000) * 1000];
  if (spec.kind === "free" || other === undefined) return [spec.x, spec.y];
  if (spec.kind === "end") return spec.share > 4 ? other.from : other.to;
  const part = spec.share / 10;
  const [a, b] = [other.from, other.to];
  return [Math.round(a[0] + (b[0] - a[0]) * part), Math.round(a[1] + (b[1] - a[1]) * part)];
}
