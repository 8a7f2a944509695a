// The outline of careless drawings against an independent union of the same bodies.

import fc from "fast-check";
import { expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import { buildBodies } from "../../src/plan/body.ts";
import { directWalls } from "../../src/plan/drawnWall.ts";
import { findJoints } from "../../src/plan/joints.ts";
import { mitreCorners } from "../../src/plan/mitre.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import { loadGeosUnion, loadGeosValid } from "../support/geosUnion.ts";
import { messyArbitrary } from "../support/messyPlan.ts";
import { concreteArea, formedLength } from "../support/outlineClaims.ts";
import { unitOf, unitOfWalls } from "../support/walls.ts";

const union = await loadUnion();
const geosUnion = await loadGeosUnion();
const geosValid = await loadGeosValid();

it("moves no face by more than the tolerance and loses nothing", () => {
  fc.assert(
    fc.property(messyArbitrary(10), (drawn) => {
      const { walls } = directWalls(drawn);
      const joints = findJoints(walls);
      const bodies = buildBodies(walls, joints, mitreCorners(walls, joints, []));
      // A body that a joint cuts away takes from its neighbour, which GEOS does not know.
      fc.pre(walls.length > 0 && !bodies.some((body) => body.isCutAway));
      const outline = buildOutline(unitOfWalls(drawn), union);
      const rings = bodies.map((body) => body.edges.map((edge) => edge.from));
      fc.pre(rings.every(geosValid));
      const { area } = geosUnion(rings);
      expect(Math.abs(concreteArea(outline) - area)).toBeLessThan(2 * formedLength(outline));
    }),
    { seed: 61, numRuns: 300 },
  );
});

it("keeps a room whose wall ends on the drawn side of another", () => {
  // Two of the ends lie exactly on a side: rounded, they leave a slit between the room and the open.
  const unit = unitOf(
    [
      [377, 2040, 2873, 172, 101, "right"],
      [377, 2037, 3192, 1212, 150, "right"],
      [3191, 1209, 1126, 1480, 200],
      [2874, 169, 2910, 1297, 200, "left"],
    ],
    [
      ["East", 2600, 900],
      ["West", 1470, 1640],
    ],
  );
  expect(buildOutline(unit, union).rooms.map((room) => room.name)).toEqual(["West", "East"]);
});
