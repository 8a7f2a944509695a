// From the bodies to the closed rings of the concrete's outline, in geometric order.

import { buildGridIndex, type GridIndex } from "../geom/gridIndex.ts";
import { comparePoints } from "../geom/point.ts";
import { beginRing, leastCorner, type Ring, ringArea } from "../geom/ring.ts";
import type { Union } from "../geom/union.ts";
import type { Body, BodyEdge } from "./body.ts";
import { matchEdges } from "./matchEdges.ts";
import { ringCorners, type SettledPiece, tidyEdges } from "./tidyRing.ts";

/** The rings of the outline and the edges of all bodies by place. */
export interface TracedOutline {
  /** By least corner; each begins at that corner, concrete on its left. */
  readonly rings: readonly Ring[];
  readonly edges: readonly BodyEdge[];
  /** Over `edges`. */
  readonly index: GridIndex;
  readonly settled: readonly SettledPiece[];
}

const CELL = 1000; // mm
const LEAST_AREA = 1; // mm²

/** Unites the bodies and puts every corner of the union back on the drawn lines. */
export function traceOutline(bodies: readonly Body[], union: Union): TracedOutline {
  const edges = bodies.flatMap((body) => body.edges);
  const index = buildGridIndex(
    edges.map((edge) => [edge.from, edge.to]),
    CELL,
  );
  const settled: SettledPiece[] = [];
  const rings = union(bodies.map((body) => body.ring))
    .map((ring) => {
      const begun = beginRing(ring, leastCorner(ring));
      return ringCorners(tidyEdges(matchEdges(begun, edges, index), settled));
    })
    .filter((ring) => Math.abs(ringArea(ring)) >= LEAST_AREA)
    .map((ring) => beginRing(ring, leastCorner(ring)));
  return { rings: rings.sort(compareRings), edges, index, settled };
}

// By least corner; where two rings touch in it the outer one comes first, then the one that leaves to lesser x, y.
function compareRings(a: Ring, b: Ring): number {
  return comparePoints(a[0]!, b[0]!) || ringArea(b) - ringArea(a) || comparePoints(a[1]!, b[1]!);
}
