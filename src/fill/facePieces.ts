// From the parts of a face to its pieces: every column gets one piece a row, every band its panels, the row over them
// its connectors or caps.

import { closureStripOf } from "../kit/closures.ts";
import type { Family, Kit } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import { bandPieces } from "./bands.ts";
import { type CrownBreak, type CrownContext, hasCrownPiece, placeCrown } from "./crown.ts";
import { coverEdge } from "./edgeCover.ts";
import { stopEndOffers } from "./edgeOffers.ts";
import type { DraftPiece, SharedPieces } from "./faceDraft.ts";
import { panelCodeAt, squareCornerAt } from "./kitTables.ts";
import { xOf } from "./onFace.ts";
import type { ClosurePart, FacePart, LegPart, PanelPart, StopEndPart } from "./parts.ts";
import type { Profile } from "./profile.ts";
import type { Unfilled } from "./result.ts";
import type { SettledFace, SettledOpening } from "./settled.ts";

export interface PieceContext extends CrownContext {
  readonly leg: Mm;
  /** The part of each face that comes out first, where it has one. */
  readonly firstOut: ReadonlySet<FacePart>;
}

export interface FacePieces {
  readonly pieces: readonly DraftPiece[];
  readonly unfilled: readonly Unfilled[];
  readonly shared: ReadonlyMap<DraftPiece, string>;
}

/** A band lower than this cannot be pinned by hand, mm. Common practice, no source. */
const LEAST_BAND = 100;

/** All pieces of a face, by x, then z. They and `unfilled` tile the face less its band openings. */
export function piecesOfFace(
  face: SettledFace,
  parts: readonly FacePart[],
  context: PieceContext,
): FacePieces {
  const profile = context.profiles[face.index]!;
  const sink: Sink = {
    face,
    profile,
    kit: context.kit,
    pieces: [],
    unfilled: [],
    shared: new Map(),
    context,
  };
  for (const part of parts) {
    if (part.kind === "panel") placePanel(part, sink);
    else if (part.kind === "closure") placeClosure(part, sink);
    else if (part.kind === "leg") placeLeg(part, sink);
    else if (part.kind === "stop-end") placeStopEnd(part, sink);
    else sink.unfilled.push(voidRectangle(part, sink));
  }
  const breaks: CrownBreak[] = [];
  for (const opening of face.openings) {
    if (opening.placed.opening.formed !== "band") continue;
    const broken = placeBands(opening, sink);
    if (broken !== null) breaks.push(broken);
  }
  const crown = placeCrown(face, parts, breaks, context);
  sink.pieces.push(...crown.pieces);
  sink.unfilled.push(...crown.unfilled);
  for (const [piece, key] of crown.shared) sink.shared.set(piece, key);
  return {
    pieces: sink.pieces.sort((a, b) => a.x - b.x || a.z - b.z),
    unfilled: sink.unfilled.sort((a, b) => a.x - b.x || a.z - b.z),
    shared: sink.shared,
  };
}

interface Sink {
  readonly face: SettledFace;
  readonly profile: Profile;
  readonly kit: Kit;
  readonly pieces: DraftPiece[];
  readonly unfilled: Unfilled[];
  readonly shared: SharedPieces;
  readonly context: PieceContext;
}

function voidRectangle(part: FacePart & { kind: "void" }, { face, profile }: Sink): Unfilled {
  const height = part.isFullHeight ? profile.height : profile.top;
  return {
    x: xOf(face, part.low, part.high),
    z: 0,
    width: part.high - part.low,
    height,
    problem: part.problem,
  };
}

function placePanel(part: PanelPart, sink: Sink): void {
  const width = part.high - part.low;
  const x = xOf(sink.face, part.low, part.high);
  const isFirstOut = sink.context.firstOut.has(part);
  for (const { kind, z, height } of sink.profile.rows) {
    const isPanel = kind === "panel";
    const piece: PlacedPiece = {
      piece: "",
      code: (isPanel ? panelCodeAt(sink.kit, height, width) : undefined) ?? closureCode(sink.kit, height),
      family: isPanel ? "wall-panel" : "closure-strip",
      x,
      z,
      width,
      height,
    };
    if (isPanel && part.reason !== null) piece.reason = part.reason;
    if (isPanel && isFirstOut) piece.firstOut = true;
    if (part.isZone) piece.zone = true;
    sink.pieces.push(piece);
  }
}

function placeClosure(part: ClosurePart, sink: Sink): void {
  const width = part.high - part.low;
  // One plank from floor to connector: a strip with a joint in it cannot be clamped.
  const piece: PlacedPiece = {
    piece: "",
    code: closureCode(sink.kit, width),
    family: "closure-strip",
    x: xOf(sink.face, part.low, part.high),
    z: 0,
    width,
    height: sink.profile.top,
    reason: part.reason,
  };
  if (sink.context.firstOut.has(part)) piece.firstOut = true;
  if (part.isZone) piece.zone = true;
  sink.pieces.push(piece);
}

/** A piece being put together: there are tens of thousands, and one object each is enough. */
type PlacedPiece = { -readonly [K in keyof DraftPiece]: DraftPiece[K] };

function placeLeg(part: LegPart, sink: Sink): void {
  const { leg } = sink.context;
  sink.profile.rows.forEach((row, k) => {
    const corner = row.kind === "panel" ? squareCornerAt(sink.kit, leg, row.height) : null;
    const piece: DraftPiece = {
      piece: "",
      code: corner?.code ?? closureCode(sink.kit, row.height),
      family: corner === null ? "closure-strip" : "inside-corner",
      ...rowOf(part, row, sink),
    };
    sink.pieces.push(piece);
    if (corner !== null) sink.shared.set(piece, `corner ${part.corner} ${k}`);
  });
}

function placeStopEnd(part: StopEndPart, sink: Sink): void {
  const { face, profile, kit, context } = sink;
  const width = part.high - part.low;
  const offers = stopEndOffers(kit, width);
  // The joints of the faces beside it first; a kit without those heights closes the end as it can.
  const byRow = profile.rows.map((row) => offers.pieces.find((offer) => offer.length === row.height));
  if (byRow.every((offer) => offer !== undefined)) {
    profile.rows.forEach((row, k) => {
      sink.pieces.push({
        piece: "",
        code: byRow[k]!.piece.code,
        family: "stop-end",
        ...rowOf(part, row, sink),
      });
    });
    return;
  }
  const cover = coverEdge(profile.top, offers, context.book);
  if (cover === null) {
    const problem = context.log.addOnce(`stop-end ${width}`, {
      severity: "error",
      kind: "missing-piece",
      message:
        `The kit has no stop-end ${width} mm wide to close the end of wall ${face.formed.walls[0] ?? ""}: add it to the ` +
        `kit.`,
      where: { wall: face.formed.walls[0] ?? "" },
    });
    sink.unfilled.push({
      x: xOf(face, part.low, part.high),
      z: 0,
      width,
      height: profile.top,
      problem,
    });
    return;
  }
  for (const piece of cover) {
    sink.pieces.push({
      piece: "",
      code: piece.code,
      family: "stop-end",
      ...rowOf(part, { z: piece.at, height: piece.length }, sink),
      ...(piece.isMadeToMeasure ? { madeToMeasure: true as const } : {}),
    });
  }
}

function rowOf(
  part: { low: Mm; high: Mm },
  row: { z: Mm; height: Mm },
  { face }: Sink,
): { x: Mm; z: Mm; width: Mm; height: Mm } {
  return { x: xOf(face, part.low, part.high), z: row.z, width: part.high - part.low, height: row.height };
}

function closureCode(kit: Kit, width: Mm): string {
  return closureStripOf(kit, width)?.code ?? "";
}

// Sill band, lintel band, and what the head of the opening does to the row over the panels.
function placeBands(opening: SettledOpening, sink: Sink): CrownBreak | null {
  const { sill, head } = opening.placed.opening;
  const { low, high } = opening;
  const { top, height, crown } = sink.profile;
  if (sill > 0) placeBand({ low, high }, { z: 0, height: Math.min(sill, top) }, sink, opening);
  if (head === top) return null;
  const band = top - head;
  if (band >= LEAST_BAND || (crown === null && band > 0)) {
    placeBand({ low, high }, { z: head, height: band }, sink, opening);
    return null;
  }
  if (head < top && !hasCrown(sink, height - head)) {
    placeBand({ low, high }, { z: head, height: band }, sink, opening);
    const { id } = opening.placed.opening;
    sink.context.log.addOnce(`low band ${id}`, {
      severity: "warning",
      kind: "low-band",
      message:
        `The band over opening ${id} is ${band} mm high; under ${LEAST_BAND} mm it cannot be pinned by hand and the kit has ` +
        `no connector and cap that reach down to ${head} mm: change the head of the opening or add them to the kit.`,
      where: { opening: id },
    });
    return null;
  }
  return { low, high, height: height - head };
}

function hasCrown({ profile, kit }: Sink, height: Mm): boolean {
  if (profile.crown === null) return false;
  return hasCrownPiece(kit, profile.crown.family, height);
}

function placeBand(
  span: { low: Mm; high: Mm },
  row: { z: Mm; height: Mm },
  sink: Sink,
  opening: SettledOpening,
): void {
  const width = span.high - span.low;
  if (width <= 0 || row.height <= 0) return;
  const { id } = opening.placed.opening;
  const which = row.z === 0 ? "under" : "over";
  const pieces = bandPieces(sink.kit, width, row.height);
  if (pieces === null) {
    const problem = sink.context.log.addOnce(`band ${id} ${which} ${row.height}`, {
      severity: "error",
      kind: "missing-piece",
      message:
        `No panels of the kit fill the band ${which} opening ${id}, ${width} × ${row.height} mm: add a panel ` +
        `${row.height} mm high to the kit, or move the ${row.z === 0 ? "sill" : "head"} of the opening.`,
      where: { opening: id },
    });
    sink.unfilled.push({
      x: xOf(sink.face, span.low, span.high),
      z: row.z,
      width,
      height: row.height,
      problem,
    });
    return;
  }
  for (const piece of pieces) {
    const low = span.low + piece.at;
    const isClosure = piece.family === "closure-strip";
    const family: Family = piece.family;
    sink.pieces.push({
      piece: "",
      code: piece.code ?? closureCode(sink.kit, Math.min(piece.width, piece.height)),
      family,
      x: xOf(sink.face, low, low + piece.width),
      z: row.z + piece.z,
      width: piece.width,
      height: piece.height,
      ...(isClosure || !piece.isStandard
        ? { reason: `${width} × ${row.height} ${which} opening ${id}` }
        : {}),
    });
  }
}
