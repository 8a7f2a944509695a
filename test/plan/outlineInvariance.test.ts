// The outline depends on what is drawn, never on how: order, names and direction of the walls, and it mirrors.

import fc from "fast-check";
import { expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import type { Outline } from "../../src/plan/face.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import type { Wall } from "../../src/plan/project.ts";
import { messyArbitrary } from "../support/messyPlan.ts";
import { orthogonalArbitrary } from "../support/orthogonalPlan.ts";
import {
  concreteArea,
  expectFacesAttributed,
  expectOppositesSymmetric,
  expectRingsInOrder,
} from "../support/outlineClaims.ts";
import { networkArbitrary, networkWalls } from "../support/wallNetwork.ts";
import { unitOf, unitOfWalls } from "../support/walls.ts";

const union = await loadUnion();
const outlineOf = (walls: readonly Wall[]) => buildOutline(unitOfWalls(walls), union);

const plans: fc.Arbitrary<readonly Wall[]> = fc.oneof(
  orthogonalArbitrary(2),
  networkArbitrary(350).map((network) => unitOf(networkWalls(network)).walls),
  messyArbitrary(12),
);

const OTHER_JUSTIFY = { left: "right", right: "left", centre: "centre" } as const;
const OTHER_SIDE = { left: "right", right: "left", from: "to", to: "from" } as const;

function flip(wall: Wall): Wall {
  return { ...wall, from: wall.to, to: wall.from, justify: OTHER_JUSTIFY[wall.justify] };
}

// Everything that may be compared once the names are back: findings name walls in their text.
function geometryOf({ faces, rings, rooms, findings }: Outline) {
  return { faces, rings, rooms, kinds: findings.map(({ kind, where }) => [kind, where.at]) };
}

it("gives the same faces whatever the order of the walls", () => {
  fc.assert(
    fc.property(
      plans.chain((walls) =>
        fc.tuple(fc.constant(walls), fc.shuffledSubarray([...walls], { minLength: walls.length })),
      ),
      ([walls, shuffled]) => {
        expect(outlineOf(shuffled)).toEqual(outlineOf(walls));
      },
    ),
    { seed: 11, numRuns: 120 },
  );
});

it("gives the same faces whichever way and under whatever name the walls are drawn", () => {
  fc.assert(
    fc.property(plans, fc.array(fc.boolean(), { minLength: 24, maxLength: 24 }), (walls, flips) => {
      const isFlipped = (i: number) => flips[i % flips.length] === true;
      // Names of equal length in the opposite order, but for walls drawn twice, where the name decides.
      const other = walls.map((wall, i) => ({ ...(isFlipped(i) ? flip(wall) : wall), id: `v${i}` }));
      const { faces, ...rest } = geometryOf(outlineOf(other));
      const renamed = faces.map((face) => ({
        ...face,
        walls: face.walls.map((part) => {
          const i = Number(part.wall.slice(1));
          return { ...part, wall: walls[i]!.id, side: isFlipped(i) ? OTHER_SIDE[part.side] : part.side };
        }),
      }));
      expect({ ...rest, faces: renamed }).toEqual(geometryOf(outlineOf(walls)));
    }),
    { seed: 12, numRuns: 120 },
  );
});

it("keeps its promises for careless drawings as well", () => {
  fc.assert(
    fc.property(messyArbitrary(14), (walls) => {
      const outline = outlineOf(walls);
      expectRingsInOrder(outline);
      expectFacesAttributed(outline, 6);
      expectOppositesSymmetric(outline, 6);
    }),
    { seed: 13, numRuns: 300 },
  );
});

it("mirrors with the drawing", () => {
  const exact = fc.oneof(
    orthogonalArbitrary(2),
    networkArbitrary(350).map((network) => unitOf(networkWalls(network)).walls),
  );
  fc.assert(
    fc.property(exact, (walls) => {
      const mirrored = walls.map((wall): Wall => {
        const { from, to } = wall;
        return {
          ...wall,
          from: [-from[0], from[1]],
          to: [-to[0], to[1]],
          justify: OTHER_JUSTIFY[wall.justify],
        };
      });
      const [outline, image] = [outlineOf(walls), outlineOf(mirrored)];
      expect(concreteArea(image)).toBeCloseTo(concreteArea(outline), 3);
      expect(image.faces.map((face) => [...mirroredFace(face), face.isFreeEnd]).sort(compareRows)).toEqual(
        outline.faces.map((face) => [...plainFace(face), face.isFreeEnd]).sort(compareRows),
      );
    }),
    { seed: 14, numRuns: 120 },
  );
});

const plainFace = ({ from, to, opposite }: Outline["faces"][number]) => [
  ...[...from, ...to].map(toMicron),
  ...opposite.map((stretch) => toMicron(stretch.thickness)),
];

const mirroredFace = ({ from, to, opposite }: Outline["faces"][number]) => [
  ...[-to[0], to[1], -from[0], from[1]].map(toMicron),
  ...[...opposite].reverse().map((stretch) => toMicron(stretch.thickness)),
];

const toMicron = (length: number) => Math.round(length * 1000) + 0;

function compareRows(a: readonly unknown[], b: readonly unknown[]): number {
  const [p, q] = [JSON.stringify(a), JSON.stringify(b)];
  return p < q ? -1 : p > q ? 1 : 0;
}
