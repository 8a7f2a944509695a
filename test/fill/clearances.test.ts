import fc from "fast-check";
import { expect, it } from "vitest";
import { clearBetween, lookAcross, type NearFace } from "../../src/fill/clearances.ts";
import { fillUnit } from "../../src/fill/fillUnit.ts";
import type { SettledFace } from "../../src/fill/settled.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { STOREY } from "../support/filled.ts";
import { unitOf, type WallLine } from "../support/walls.ts";

const union = await loadUnion();

function facesOf(walls: readonly WallLine[]): readonly SettledFace[] {
  const given = { unit: unitOf(walls), storey: STOREY, kit: demoKit, union, prefix: "A" };
  return fillUnit({ ...given, fillers: "corner" }).drafts.map(({ settled }) => settled);
}

/** Every face against every other: too simple to be wrong. */
function byLookingAtAll(
  face: SettledFace,
  faces: readonly SettledFace[],
  reach: number,
): readonly [number, number] | null {
  const distances = faces
    .filter((other) => other !== face && other.formed.room === face.formed.room)
    .flatMap((other): (readonly [number, number])[] => {
      const distance = clearBetween(face, other);
      return distance !== null && distance < reach ? [[distance, other.index]] : [];
    });
  return distances.sort((a, b) => a[0] - b[0] || a[1] - b[1])[0] ?? null;
}

const told = (near: NearFace | null) => near && [near.distance, near.face.index];

it.each([
  { why: "an end before a wall", to: 2600, found: 350 },
  { why: "an end too far from it", to: 2500, found: null },
])("a wall's end looks at what stands before it: $why", ({ to, found }) => {
  // The wall across has its near face at 2950.
  const faces = facesOf([
    [0, 0, to, 0, 100],
    [3000, -1000, 3000, 1000, 100],
  ]);
  const end = faces.find((face) => face.formed.isFreeEnd && face.formed.from[0] === to);
  expect(lookAcross(faces, 400)(end!)?.distance ?? null).toBe(found);
});

it("finds the face that looking at all of them finds", () => {
  const at = fc.integer({ min: -3000, max: 3000 });
  const line = fc
    .tuple(at, at, fc.integer({ min: 300, max: 6000 }), fc.integer({ min: -40, max: 40 }), fc.boolean())
    .map(
      ([x, y, along, off, isUp]): WallLine =>
        isUp ? [x, y, x + off, y + along, 100] : [x, y, x + along, y + off, 100],
    );
  fc.assert(
    fc.property(
      fc.array(line, { minLength: 2, maxLength: 12 }),
      fc.integer({ min: 50, max: 2000 }),
      (walls, reach) => {
        const faces = facesOf(walls);
        const nearestTo = lookAcross(faces, reach);
        for (const face of faces) expect(told(nearestTo(face))).toEqual(byLookingAtAll(face, faces, reach));
      },
    ),
    { seed: 20, numRuns: 60 },
  );
});
