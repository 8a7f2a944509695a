// Takes the hairs out of a ring of the outline and puts its corners exactly where the drawn lines meet.
//
//        b               a hair: an edge within the tolerance between two
//   ─────┐      a        edges that run the same way. The longer wall of a and b
//        └───────────    gives the line of the one straight face.

import { intersectLines } from "../geom/line.ts";
import { cross, distance, isNear, type Point } from "../geom/point.ts";
import type { Mm } from "../units.ts";
import { type Edge, joinStraight, movedAside } from "./straight.ts";
import { ROUNDING, SILENT_MOVE, TIE_TOLERANCE } from "./tolerance.ts";

/** A piece of outline that was moved sideways by more than what goes without saying. */
export interface SettledPiece {
  readonly at: Point;
  readonly aside: Mm;
  /** Position of the body edge moved, −1 where the piece has none. */
  readonly source: number;
}

/** Joins and drops edges until no hair is left. The longest walls keep their lines. */
export function tidyEdges(ring: readonly Edge[], settled: SettledPiece[]): Edge[] {
  let edges = [...ring];
  for (;;) {
    const changes = findChanges(edges);
    const tidied = changes.length === 0 ? edges : applyChanges(edges, changes, settled);
    if (tidied.length === edges.length) return edges;
    edges = tidied;
  }
}

// Replaces `count` edges from `first` on by `edge`, or drops the middle one of three where there is none.
interface Change {
  readonly first: number;
  readonly count: 2 | 3;
  readonly edge: Edge | null;
  readonly weight: Mm;
}

function findChanges(edges: readonly Edge[]): Change[] {
  const count = edges.length;
  if (count < 4) return [];
  const changes: Change[] = [];
  edges.forEach((edge, i) => {
    const next = edges[(i + 1) % count]!;
    const straight = joinStraight(edge, next);
    if (straight !== null) changes.push({ first: i, count: 2, edge: straight, weight: straight.weight });
    if (!isNear(next.from, next.to, TIE_TOLERANCE + ROUNDING)) return;
    const after = edges[(i + 2) % count]!;
    const joined = joinStraight(edge, after);
    if (joined !== null) changes.push({ first: i, count: 3, edge: joined, weight: joined.weight });
    else if (meetsClose(edge, after, next)) {
      changes.push({ first: i, count: 3, edge: null, weight: Math.max(edge.weight, after.weight) });
    }
  });
  return changes.sort((a, b) => b.weight - a.weight || a.first - b.first);
}

// Whether the corner drawn as the short edge `between` is a plain corner of its two neighbours.
function meetsClose(edge: Edge, after: Edge, between: Edge): boolean {
  const corner = intersectLines(edge.line, after.line);
  return corner !== null && [between.from, between.to].every((end) => isNear(corner, end, TIE_TOLERANCE));
}

function applyChanges(edges: readonly Edge[], changes: readonly Change[], settled: SettledPiece[]): Edge[] {
  const count = edges.length;
  const isTaken = new Uint8Array(count);
  const replaced: (Edge | null)[] = [...edges];
  let left = count;
  for (const { first, count: span, edge } of changes) {
    const places = Array.from({ length: span }, (_, k) => (first + k) % count);
    if (places.some((place) => isTaken[place] === 1) || left - span + 1 < 3) continue;
    for (const place of places) isTaken[place] = 1;
    const [head, last] = [places[0]!, places[span - 1]!];
    if (edge === null) {
      replaced[places[1]!] = null;
      for (const place of [head, last]) replaced[place] = { ...edges[place]!, isMerged: true };
      left -= 1;
    } else {
      for (const place of places) replaced[place] = null;
      replaced[head] = edge;
      left -= span - 1;
      noteMoves(edge, [edges[head]!, edges[last]!], settled);
    }
  }
  return replaced.filter((edge) => edge !== null);
}

function noteMoves(joined: Edge, parts: readonly Edge[], settled: SettledPiece[]): void {
  for (const part of parts) {
    const aside = movedAside(joined, part);
    const at: Point = [(part.from[0] + part.to[0]) / 2, (part.from[1] + part.to[1]) / 2];
    if (aside > SILENT_MOVE + ROUNDING) settled.push({ at, aside, source: part.source });
  }
}

const OFF_CORNER = 0.02; // mm; three times what a right-angled corner moves when both bodies are grown for the union
const DECIMALS = 1e9; // coordinates are kept to 1e-9 mm: rounding noise goes, the drawing stays

/** The corners of the ring: corner i is where edge i begins. Edges that vanish between exact corners are dropped. */
export function ringCorners(ring: readonly Edge[]): Point[] {
  let edges = [...ring];
  while (edges.length >= 3) {
    const corners = edges.map((edge, i) => cornerOf(edges[(i + edges.length - 1) % edges.length]!, edge));
    const vanished = edges.findIndex((edge, i) => {
      const [from, to] = [corners[i]!, corners[(i + 1) % corners.length]!];
      const run = (to[0] - from[0]) * edge.line.ux + (to[1] - from[1]) * edge.line.uy;
      return run <= ROUNDING && distance(from, to) <= TIE_TOLERANCE;
    });
    if (vanished < 0) return corners;
    edges = edges.filter((_, i) => i !== vanished).map((edge) => ({ ...edge, isMerged: true }));
  }
  return [];
}

function cornerOf(before: Edge, after: Edge): Point {
  const drawn = after.from;
  const exact = intersectLines(before.line, after.line);
  const sine = Math.abs(cross(before.line.ux, before.line.uy, after.line.ux, after.line.uy));
  const reach = before.isMerged || after.isMerged ? 2 * TIE_TOLERANCE : OFF_CORNER;
  const [x, y] = exact !== null && isNear(exact, drawn, reach / sine) ? exact : drawn;
  return [Math.round(x * DECIMALS) / DECIMALS + 0, Math.round(y * DECIMALS) / DECIMALS + 0];
}
