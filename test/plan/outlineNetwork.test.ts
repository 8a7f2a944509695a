// Random plans of walls of one thickness against an independent union of simple pieces.

import fc from "fast-check";
import { expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import { loadGeosUnion } from "../support/geosUnion.ts";
import {
  concreteArea,
  expectFacesAttributed,
  expectOppositesApart,
  expectOppositesSymmetric,
  expectRingsInOrder,
  formedLength,
} from "../support/outlineClaims.ts";
import { networkArbitrary, networkPieces, networkWalls } from "../support/wallNetwork.ts";
import { unitOf } from "../support/walls.ts";

const union = await loadUnion();
const geosUnion = await loadGeosUnion();

it.each([
  { why: "square plans", bend: 0, seed: 1 },
  { why: "plans a little out of square", bend: 40, seed: 2 },
  { why: "oblique plans", bend: 350, seed: 3 },
])("gives $why the area, length and rooms that GEOS finds", ({ bend, seed }) => {
  fc.assert(
    fc.property(networkArbitrary(bend), (network) => {
      const outline = buildOutline(unitOf(networkWalls(network)), union);
      const expected = geosUnion(networkPieces(network));
      expect(concreteArea(outline)).toBeCloseTo(expected.area, 1);
      expect(formedLength(outline)).toBeCloseTo(expected.perimeter, 3);
      expect(outline.rooms.length).toBe(expected.holes);
      expect(outline.rings.length).toBe(expected.holes + expected.bodies);
      expect(outline.findings).toEqual([]);
      expectRingsInOrder(outline);
      expectFacesAttributed(outline, 1e-3);
      expectOppositesSymmetric(outline, 1e-3);
      expectOppositesApart(outline);
    }),
    { seed, numRuns: 150 },
  );
});
