// Which drawn line is each edge of the union? The union rounds its vertices; the lines of the bodies are exact.

import type { GridIndex } from "../geom/gridIndex.ts";
import { alongLine, asideOfLine, type Line, lineThrough, pointAt } from "../geom/line.ts";
import { distance, isNear, type Point } from "../geom/point.ts";
import type { Ring } from "../geom/ring.ts";
import type { BodyEdge } from "./body.ts";
import type { Edge } from "./straight.ts";
import { ROUNDING, TIE_TOLERANCE } from "./tolerance.ts";

const OFF_LINE = 0.02; // mm; five times what the bodies are grown by for the union
const LEAST_COSINE = 0.9; // a short edge may be turned by the rounding of its ends

/** The edges of a ring of the union, each on the line it was drawn on where there is one. */
export function matchEdges(ring: Ring, bodyEdges: readonly BodyEdge[], index: GridIndex): Edge[] {
  const edges: Edge[] = [];
  ring.forEach((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    if (isNear(from, to, 0)) return;
    const source = drawnEdge([from, to], bodyEdges, index);
    const { line, weight } = bodyEdges[source] ?? { line: lineThrough(from, to), weight: distance(from, to) };
    const foot = { from: footOn(line, from), to: footOn(line, to) };
    edges.push({ from: foot.from, to: foot.to, line, weight, source, isMerged: false });
  });
  return edges;
}

function footOn(line: Line, point: Point): Point {
  return pointAt(line, alongLine(line, point), 0);
}

// The body edge nearest to the middle of the edge, then the longest, then the first. A middle in a closed gap has its
// body edge within the tolerance along the line.
function drawnEdge(
  [from, to]: readonly [Point, Point],
  bodyEdges: readonly BodyEdge[],
  index: GridIndex,
): number {
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const own = lineThrough(from, to);
  let best = -1;
  let bestAside = 0;
  let bestWeight = 0;
  for (const candidate of index.near(middle, middle, TIE_TOLERANCE + ROUNDING)) {
    const { line, from: start, to: end, weight } = bodyEdges[candidate]!;
    if (own.ux * line.ux + own.uy * line.uy < LEAST_COSINE) continue;
    const aside = Math.max(Math.abs(asideOfLine(line, from)), Math.abs(asideOfLine(line, to)));
    const along = alongLine(line, middle);
    const reach = TIE_TOLERANCE + ROUNDING;
    if (aside > OFF_LINE || along < alongLine(line, start) - reach || along > alongLine(line, end) + reach)
      continue;
    const rounded = Math.round(aside / ROUNDING);
    if (best >= 0 && (rounded > bestAside || (rounded === bestAside && weight <= bestWeight))) continue;
    [best, bestAside, bestWeight] = [candidate, rounded, weight];
  }
  return best;
}
