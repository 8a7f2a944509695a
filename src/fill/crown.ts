// The row over the panels: wall-slab connectors in rooms, slab edge caps outside, with their corner pieces.
//
//   ├corner├─ 1200 ─┼─ 1200 ─┼─ 300 ─┤corner┤      corners take a leg on each face at inside corners only
//
// Over an opening whose head leaves no room for a band of panels the row is broken at the jambs and a higher or lower
// piece takes the place of both.

import { capCornersOf, capsOf } from "../kit/caps.ts";
import { connectorCornersOf, connectorsOf } from "../kit/connectors.ts";
import type { CapCorner, ConnectorCorner, Kit } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import { coverEdge } from "./edgeCover.ts";
import { type EdgeOffers, edgeOffers } from "./edgeOffers.ts";
import type { DraftPiece, SharedPieces } from "./faceDraft.ts";
import { xOf } from "./onFace.ts";
import type { FacePart } from "./parts.ts";
import type { PieceBook } from "./pieceBook.ts";
import type { ProblemLog } from "./problems.ts";
import type { Crown, Profile } from "./profile.ts";
import type { Unfilled } from "./result.ts";
import type { SettledFace } from "./settled.ts";

export interface CrownContext {
  readonly faces: readonly SettledFace[];
  readonly profiles: readonly Profile[];
  readonly kit: Kit;
  readonly book: PieceBook;
  readonly log: ProblemLog;
}

/** A break in the row: over an opening, or where nothing is built. Its own piece, if any, is placed here too. */
export interface CrownBreak {
  readonly low: Mm;
  readonly high: Mm;
  /** Height of the piece over the opening, from `z`; 0 = nothing is formed there. */
  readonly height: Mm;
}

export interface CrownResult {
  readonly pieces: readonly DraftPiece[];
  readonly unfilled: readonly Unfilled[];
  readonly shared: ReadonlyMap<DraftPiece, string>;
}

/** The row over the panels of one face. Together with its breaks it fills the face from `top` to `height`. */
export function placeCrown(
  face: SettledFace,
  parts: readonly FacePart[],
  breaks: readonly CrownBreak[],
  context: CrownContext,
): CrownResult {
  const profile = context.profiles[face.index]!;
  const { crown, top, height, missing } = profile;
  const pieces: DraftPiece[] = [];
  const unfilled: Unfilled[] = [];
  const shared: SharedPieces = new Map();
  if (top === height) return { pieces, unfilled, shared };
  for (const span of spansOf(face, parts, breaks)) {
    if (span.high <= span.low) continue;
    if (crown === null) {
      if (missing !== null)
        unfilled.push(rectangle(face, span, { z: top, height: height - top, problem: missing }));
      continue;
    }
    let { low, high } = span;
    if (low === face.low) low = placeCorner("low", low, high);
    if (high === face.high) high = placeCorner("high", low, high);
    straight({ low, high }, crown, top);
  }
  for (const gap of breaks) {
    if (gap.height <= 0 || gap.high <= gap.low) continue;
    const z = height - gap.height;
    if (crown !== null) straight(gap, { family: crown.family, height: gap.height }, z);
    else if (missing !== null)
      unfilled.push(rectangle(face, gap, { z, height: gap.height, problem: missing }));
  }
  return { pieces, unfilled, shared };

  function straight(span: { low: Mm; high: Mm }, { family, height: own }: Crown, z: Mm): void {
    if (span.high <= span.low) return;
    const cover = coverEdge(span.high - span.low, crownOffers(context.kit, family, own), context.book);
    if (cover === null) {
      const problem = fileMissing(face, { family, height: own }, context);
      unfilled.push(rectangle(face, span, { z, height: own, problem }));
      return;
    }
    const x = xOf(face, span.low, span.high);
    for (const piece of cover) {
      pieces.push({
        piece: "",
        code: piece.code,
        family,
        x: x + piece.at,
        z,
        width: piece.length,
        height: own,
        ...(piece.isMadeToMeasure ? { madeToMeasure: true as const } : {}),
      });
    }
  }

  // Places the leg of a corner piece at one end and gives the place where the straight row begins.
  function placeCorner(end: "low" | "high", low: Mm, high: Mm): Mm {
    const here = end === "low" ? low : high;
    const part = parts.find((each) => each.kind === "leg" && (end === "low" ? each.low : each.high) === here);
    if (part === undefined || part.kind !== "leg" || crown === null) return here;
    const corner = crownCornerAt(part.corner, context);
    if (corner === null) return here;
    const isFrom = part.corner === face.index;
    const leg = corner.piece.legs[isFrom ? 1 : 0];
    const span = end === "low" ? { low, high: low + leg } : { low: high - leg, high };
    if (leg > high - low) return here;
    const piece: DraftPiece = {
      piece: "",
      code: corner.piece.code,
      family: corner.piece.family,
      x: xOf(face, span.low, span.high),
      z: top,
      width: leg,
      height: crown.height,
    };
    pieces.push(piece);
    shared.set(piece, `crown ${part.corner}`);
    return end === "low" ? span.high : span.low;
  }
}

// The row from end to end, less its breaks and less what is unfilled over the full height.
function spansOf(
  face: SettledFace,
  parts: readonly FacePart[],
  breaks: readonly CrownBreak[],
): readonly { low: Mm; high: Mm }[] {
  const holes = [...breaks, ...parts.filter((part) => part.kind === "void" && part.isFullHeight)].sort(
    (a, b) => a.low - b.low,
  );
  const spans: { low: Mm; high: Mm }[] = [];
  let low = face.low;
  for (const hole of holes) {
    spans.push({ low, high: hole.low });
    low = hole.high;
  }
  spans.push({ low, high: face.high });
  return spans;
}

interface CrownCorner {
  readonly piece: ConnectorCorner | CapCorner;
}

/** The corner piece between a face and the one before it, or null where the two rows differ or their ends are too short. */
export function crownCornerAt(corner: number, context: CrownContext): CrownCorner | null {
  const face = context.faces[corner]!;
  const before = context.faces[face.formed.previous]!;
  const crown = context.profiles[corner]!.crown;
  const other = context.profiles[before.index]!.crown;
  if (crown === null || other === null || crown.family !== other.family || crown.height !== other.height)
    return null;
  const corners =
    crown.family === "slab-edge-cap"
      ? capCornersOf(context.kit, "inside", crown.height)
      : connectorCornersOf(context.kit, "inside", crown.height);
  const piece = corners[0];
  if (piece === undefined) {
    const name = crown.family === "slab-edge-cap" ? "inside cap corner" : "inside connector corner";
    context.log.addOnce(`${name} ${crown.height}`, {
      severity: "error",
      kind: "missing-piece",
      message: `The kit has no ${name} ${crown.height} mm high: add it to the kit.`,
      where: {},
    });
    return null;
  }
  return piece.legs[0] <= before.length && piece.legs[1] <= face.length ? { piece } : null;
}

/** Whether the kit has straight pieces for a row of this height. */
export function hasCrownPiece(kit: Kit, family: Crown["family"], height: Mm): boolean {
  return crownOffers(kit, family, height).pieces.length > 0;
}

function crownOffers(kit: Kit, family: Crown["family"], height: Mm): EdgeOffers {
  return edgeOffers(kit, `${family} ${height}`, () => {
    const straights = family === "slab-edge-cap" ? capsOf(kit, height) : connectorsOf(kit, height);
    return straights.map((piece) => ({ piece, length: piece.length }));
  });
}

function fileMissing(face: SettledFace, { family, height }: Crown, { log }: CrownContext): number {
  const name = family === "slab-edge-cap" ? "slab edge cap" : "wall-slab connector";
  return log.addOnce(`${name} ${height}`, {
    severity: "error",
    kind: "missing-piece",
    message:
      `The kit has no ${name} ${height} mm high, which an opening's head on wall ${face.formed.walls[0] ?? ""} asks for: add ` +
      `it to the kit, or put the head where a panel or the connector ends.`,
    where: {},
  });
}

function rectangle(
  face: SettledFace,
  span: { low: Mm; high: Mm },
  { z, height, problem }: { z: Mm; height: Mm; problem: number },
): Unfilled {
  return { x: xOf(face, span.low, span.high), z, width: span.high - span.low, height, problem };
}
