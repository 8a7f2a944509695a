// The horizontal legs of the connectors round a soffit, as outlines in the room's own axes.
//
//    ●──────┬──────────┬──────●  wall      inside corner piece: its two legs, depth wide
//    │corner│ straight │mitre/            straight: a rectangle; where no corner piece stands it is cut to the mitre
//    ├──────┴──────────┴───⟋  soffit      outside corner piece: the depth × depth square past the corner

import { lineThrough } from "../../geom/line.ts";
import type { Point } from "../../geom/point.ts";
import type { Ring } from "../../geom/ring.ts";
import { connectorDepth } from "../../kit/connectors.ts";
import type { Family, Kit } from "../../kit/kit.ts";
import type { Mm } from "../../units.ts";
import type { DraftPiece, FaceDraft } from "../faceDraft.ts";
import type { EdgePiece } from "../result.ts";
import type { LocalFrame } from "./localFrame.ts";

/** The piece whose leg it is; null: the place of a connector that is not there. */
export interface Leg {
  readonly ring: Ring;
  readonly piece: LegPiece | null;
  /** Where the face has the connector, for words. */
  readonly face: FaceDraft;
}

interface LegPiece {
  readonly piece: string;
  readonly code: string;
  readonly family: Family;
  readonly madeToMeasure?: true;
}

/** Faces one after the other, the room on their right; `isClosed`: the last one meets the first. */
export interface FaceChain {
  readonly drafts: readonly FaceDraft[];
  readonly isClosed: boolean;
  /** Where each face begins, in the room's own axes; of an open chain also where the last one ends. */
  readonly points: readonly Point[];
}

interface Side {
  readonly draft: FaceDraft;
  readonly from: Point;
  readonly to: Point;
  /** Along the face, and into the room. */
  readonly e: Point;
  readonly n: Point;
  /** As settled: what pieces are counted along. */
  readonly length: Mm;
  readonly depth: Mm;
  /** Inset corners at `from` and at `to` where the leg is cut to the mitre; null: cut square. */
  fromMitre: Point | null;
  toMitre: Point | null;
}

/** The legs along a chain of faces that have a row of connectors, corner pieces first at each corner. */
export function legsAlong(
  chain: FaceChain,
  context: {
    readonly corners: readonly EdgePiece[];
    readonly kit: Kit;
    readonly frame: LocalFrame;
  },
): readonly Leg[] {
  const { points } = chain;
  const sides = chain.drafts.map((draft, k) =>
    sideOf(draft, points[k]!, points[(k + 1) % points.length]!, context.kit),
  );
  const legs: Leg[] = [];
  sides.forEach((side, k) => {
    const before = k > 0 ? sides[k - 1]! : chain.isClosed ? sides[sides.length - 1]! : null;
    if (before === null || before.length === 0 || side.length === 0) return;
    const corner = cornerLeg(before, side, context.corners, context.frame);
    if (corner !== null) legs.push(corner);
    else mitre(before, side);
  });
  for (const side of sides) legs.push(...straightLegs(side));
  return legs;
}

function sideOf(draft: FaceDraft, from: Point, to: Point, kit: Kit): Side {
  const line = isAt(from, to) ? null : lineThrough(from, to);
  const e: Point = line === null ? [0, 0] : [line.ux, line.uy];
  const { crown } = draft.profile;
  const depth = crown === null ? 0 : (connectorDepth(kit, crown.height) ?? 0);
  // Adding nothing to −0 makes it 0.
  const n: Point = [e[1] + 0, 0 - e[0]];
  return { draft, from, to, e, n, length: draft.settled.length, depth, fromMitre: null, toMitre: null };
}

/** The leg of the corner piece between two faces, inside or outside; null where there is none. */
function cornerLeg(before: Side, side: Side, corners: readonly EdgePiece[], frame: LocalFrame): Leg | null {
  const { draft, from: p, depth } = side;
  if (depth === 0 || depth !== before.depth) return null;
  if (draft.settled.formed.fromEnd === "outside") {
    const piece = corners.find(
      ({ family, from }) =>
        family === "connector-corner" &&
        isAt(frame.toLocal([from[0], from[1]]), p) &&
        from[2] === draft.profile.top,
    );
    if (piece === undefined) return null;
    const far = add(add(p, before.n, depth), side.n, depth);
    return { ring: [p, add(p, side.n, depth), far, add(p, before.n, depth)], piece, face: draft };
  }
  const own = draft.pieces.find(({ family, x }) => family === "connector-corner" && x === 0);
  if (own === undefined) return null;
  const other = before.draft.pieces.find(({ piece }) => piece === own.piece);
  if (other === undefined) return null;
  const inset = add(add(p, side.n, depth), before.n, depth);
  const onSide = add(p, side.e, own.width);
  const onBefore = add(p, before.e, -other.width);
  const ring = [p, onSide, add(onSide, side.n, depth), inset, add(onBefore, before.n, depth), onBefore];
  return { ring: withoutRepeats(ring), piece: own, face: draft };
}

// No corner piece: both rows are cut where their edges meet.
function mitre(before: Side, side: Side): void {
  const sine = before.e[0] * side.e[1] - before.e[1] * side.e[0];
  if (Math.abs(sine) < 1e-6) return;
  const a = add(before.from, before.n, before.depth);
  const b = add(side.from, side.n, side.depth);
  const along = ((b[0] - a[0]) * side.e[1] - (b[1] - a[1]) * side.e[0]) / sine;
  const meet: Point = [Math.round(a[0] + before.e[0] * along), Math.round(a[1] + before.e[1] * along)];
  before.toMitre = meet;
  side.fromMitre = meet;
}

function straightLegs(side: Side): readonly Leg[] {
  const { draft, length, depth } = side;
  if (depth === 0) return [];
  const row = draft.pieces.filter(
    ({ family }) => family === "wall-slab-connector" || family === "connector-corner",
  );
  const legs = row
    .filter(({ family }) => family === "wall-slab-connector")
    .map((piece): Leg => ({ ring: slice(side, piece.x, piece.x + piece.width), piece, face: draft }));
  const gaps = gapsOf(length, [...row, ...fullHeightOpenings(draft)]);
  return [...legs, ...gaps.map(([x0, x1]): Leg => ({ ring: slice(side, x0, x1), piece: null, face: draft }))];
}

/** Under a full-height head the slab goes on through the wall: no connector, and none missing. */
function fullHeightOpenings(draft: FaceDraft): readonly Pick<DraftPiece, "x" | "width">[] {
  return draft.openings.filter(({ formed, head }) => formed === "band" && head >= draft.profile.height);
}

function gapsOf(length: Mm, row: readonly Pick<DraftPiece, "x" | "width">[]): readonly (readonly [Mm, Mm])[] {
  const gaps: [Mm, Mm][] = [];
  let reached = 0;
  for (const { x, width } of [...row].sort((a, b) => a.x - b.x)) {
    if (x > reached) gaps.push([reached, x]);
    reached = Math.max(reached, x + width);
  }
  if (length > reached) gaps.push([reached, length]);
  return gaps;
}

// From the wall inward: along the face, and back along the edge of the soffit.
function slice(side: Side, x0: Mm, x1: Mm): Ring {
  const { n, length, depth, fromMitre, toMitre } = side;
  const low = placeOn(side, x0);
  const high = placeOn(side, x1);
  const innerLow = x0 === 0 && fromMitre !== null ? fromMitre : add(low, n, depth);
  const innerHigh = x1 === length && toMitre !== null ? toMitre : add(high, n, depth);
  // Between two corners nearer than their mitres the cuts cross: the leg is then too wide, never inside out.
  const along = (innerHigh[0] - innerLow[0]) * side.e[0] + (innerHigh[1] - innerLow[1]) * side.e[1];
  return withoutRepeats(along < 0 ? [low, high, innerLow, innerHigh] : [low, high, innerHigh, innerLow]);
}

// Each half is measured from its own end: a face brought straight may be a hair longer than its pieces, and the corner
// pieces at its two ends keep their places.
function placeOn({ from, to, e, length }: Side, x: Mm): Point {
  return 2 * x <= length ? add(from, e, x) : add(to, e, x - length);
}

function withoutRepeats(ring: Ring): Ring {
  return ring.filter((point, k) => !isAt(point, ring[(k + ring.length - 1) % ring.length]!));
}

function add(p: Point, direction: Point, by: Mm): Point {
  return [p[0] + direction[0] * by, p[1] + direction[1] * by];
}

function isAt(a: Point, b: Point): boolean {
  return a[0] === b[0] && a[1] === b[1];
}
