// Outside corners: angles without width that join two faces along an edge of the concrete, upright at corners and
// jambs, level at lintels and sills; and the corners of caps and connectors that have no width on a face.

import { capCornersOf } from "../kit/caps.ts";
import { connectorCornersOf } from "../kit/connectors.ts";
import type { Family, Kit } from "../kit/kit.ts";
import { lengthsOf } from "../kit/pieceLengths.ts";
import type { Position } from "../plan/project.ts";
import { type Mm, roundTo } from "../units.ts";
import { cornerPoint } from "./cornerPoint.ts";
import { coverEdge } from "./edgeCover.ts";
import { edgeOffers } from "./edgeOffers.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { pointAt } from "./onFace.ts";
import type { PieceBook } from "./pieceBook.ts";
import { counted, type ProblemLog } from "./problems.ts";
import type { EdgePiece } from "./result.ts";
import type { SettledOpening } from "./settled.ts";

export interface EdgeContext {
  readonly drafts: readonly FaceDraft[];
  readonly openings: readonly SettledOpening[];
  readonly kit: Kit;
  readonly book: PieceBook;
  readonly log: ProblemLog;
}

type Point = readonly [Mm, Mm, Mm];

interface Edge {
  readonly from: Point;
  readonly to: Point;
  readonly length: Mm;
}

/** Edge pieces of a unit: corners face by face, then the edges of openings. */
export function placeEdges(context: EdgeContext): readonly EdgePiece[] {
  const { drafts, kit, book, log } = context;
  const offers = edgeOffers(kit, "outside corner", () =>
    lengthsOf(kit, "outside-corner").map((piece) => ({ piece, length: piece.length })),
  );
  const found: EdgePiece[] = [];
  let lacking = 0;
  const cover = (edge: Edge) => {
    const pieces = coverEdge(edge.length, offers, book);
    if (pieces === null) lacking += 1;
    for (const piece of pieces ?? []) {
      found.push({
        piece: book.nextId(),
        code: piece.code,
        family: "outside-corner",
        from: between(edge, piece.at),
        to: between(edge, piece.at + piece.length),
        ...(piece.isMadeToMeasure ? { madeToMeasure: true as const } : {}),
      });
    }
  };
  for (const draft of drafts) {
    if (draft.settled.formed.fromEnd !== "outside") continue;
    const before = drafts[draft.settled.formed.previous]!;
    const at = cornerPoint(draft, before);
    // Where a cap meets a connector no corner piece fits both: the angle runs on up to the lower of the two faces.
    const top = hasSameCrown(draft, before)
      ? Math.min(draft.profile.top, before.profile.top)
      : Math.min(draft.profile.height, before.profile.height);
    cover({ from: [...at, 0], to: [...at, top], length: top });
    const crown = crownCorner(draft, before, at, context);
    if (crown !== null) found.push(crown);
  }
  for (const edge of openingEdges(context)) cover(edge);
  if (lacking > 0) {
    const message = `The kit has no outside corner: ${counted(lacking, "edge")} of the concrete stay open; add one to the kit.`;
    log.add("error", "missing-piece", message, {});
  }
  return found;
}

function hasSameCrown(a: FaceDraft, b: FaceDraft): boolean {
  const [one, other] = [a.profile.crown, b.profile.crown];
  return one?.family === other?.family && one?.height === other?.height;
}

function crownCorner(
  draft: FaceDraft,
  before: FaceDraft,
  at: Position,
  { kit, book, log }: EdgeContext,
): EdgePiece | null {
  const { crown, top, height } = draft.profile;
  if (crown === null || !hasSameCrown(draft, before)) return null;
  const isCap = crown.family === "slab-edge-cap";
  const family: Family = isCap ? "cap-corner" : "connector-corner";
  const corners = isCap
    ? capCornersOf(kit, "outside", crown.height)
    : connectorCornersOf(kit, "outside", crown.height);
  const piece = corners[0];
  if (piece === undefined) {
    const name = isCap ? "outside cap corner" : "outside connector corner";
    log.add(
      "error",
      "missing-piece",
      `The kit has no ${name} ${crown.height} mm high for the corner of wall ${draft.settled.formed.walls[0] ?? ""}: add it to ` +
        `the kit.`,
      { face: draft.id, x: 0 },
    );
    return null;
  }
  return { piece: book.nextId(), code: piece.code, family, from: [...at, top], to: [...at, height] };
}

function between({ from, to, length }: Edge, at: Mm): Point {
  const t = at / length;
  return [
    roundTo(from[0] + (to[0] - from[0]) * t, 3),
    roundTo(from[1] + (to[1] - from[1]) * t, 3),
    roundTo(from[2] + (to[2] - from[2]) * t, 3),
  ];
}

// Both faces have an angle up each jamb, along the lintel, and along the sill of a window. Under a full-height head
// there is no face to join where a room's soffit begins.
function openingEdges({ drafts, openings }: EdgeContext): readonly Edge[] {
  const edges: Edge[] = [];
  for (const opening of openings) {
    const { sill, head, formed } = opening.placed.opening;
    if (formed !== "band") continue;
    for (const index of [...opening.placed.faces].sort((a, b) => a - b)) {
      const draft = drafts[index]!;
      const low = pointAt(draft.settled, opening.low);
      const high = pointAt(draft.settled, opening.high);
      const width = opening.high - opening.low;
      for (const at of [low, high])
        edges.push({ from: [...at, sill], to: [...at, head], length: head - sill });
      if (head < draft.profile.height)
        edges.push({ from: [...low, head], to: [...high, head], length: width });
      if (sill > 0) edges.push({ from: [...low, sill], to: [...high, sill], length: width });
    }
  }
  return edges;
}
