// Fills the walls of one unit at one storey: outline → settled faces → corners → stretches → parts → pieces → everything
// round them. Whoever wants the soffits as well hands in what places them: they take longer than all walls together.

import type { Union } from "../geom/union.ts";
import { familyOf } from "../kit/byFamily.ts";
import { type Kit, ruleValue } from "../kit/kit.ts";
import type { Outline } from "../plan/face.ts";
import { buildOutline } from "../plan/outline.ts";
import type { FillerPlace, Storey, Unit } from "../plan/project.ts";
import { type Mm, roundTo } from "../units.ts";
import { countAccessories } from "./accessories.ts";
import { billOf } from "./bill.ts";
import { gatherCauses } from "./causes.ts";
import { startCorners } from "./closingEnd.ts";
import { placeCorners } from "./corners.ts";
import { placeEdges } from "./edges.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { piecesOfFace } from "./facePieces.ts";
import { checkRings, firstOutOf } from "./firstOut.ts";
import { placeFittings } from "./fittings.ts";
import { type FormedFace, formedFaces } from "./formedFace.ts";
import { narrowUnder, squareCornerAt, tableOf } from "./kitTables.ts";
import { xOf } from "./onFace.ts";
import { countColumns, type FacePart } from "./parts.ts";
import { createPieceBook, type PieceBook } from "./pieceBook.ts";
import { placePins } from "./pins.ts";
import { createProblemLog, type ProblemLog } from "./problems.ts";
import { type Profile, profilesOf, soffitDropOf } from "./profile.ts";
import type { FaceOpening, FilledFace, FilledRoom, Problem, Soffit, UnitFill } from "./result.ts";
import { placeReveals } from "./reveals.ts";
import { type Settled, type SettledFace, settle } from "./settled.ts";
import { settledEnds } from "./settledEnds.ts";
import { checkSite } from "./siteChecks.ts";
import type { SoffitsInput } from "./soffit/placeSoffits.ts";
import { type ChooseCover, solveStretches } from "./solve.ts";
import { checkStaggered } from "./staggered.ts";
import { layOut, type Stretch } from "./stretches.ts";
import { checkTieRows, checkTieSpacing } from "./tieSpacing.ts";
import { isInKit, placeTies } from "./ties.ts";

export interface FillInput {
  readonly unit: Unit;
  readonly storey: Storey;
  readonly kit: Kit;
  readonly union: Union;
  /** What ids begin with: the unit's id, and "@2" for its second storey. */
  readonly prefix: string;
  readonly fillers: FillerPlace;
  /** Decides the free intervals that no pin holds; each is covered best by itself where this is not given. */
  readonly choose?: ChooseCover;
}

/** A fill with what the next storey of thinking needs: drawings and soffits stand on the drafts. */
export interface FilledUnit {
  readonly outline: Outline;
  readonly drafts: readonly FaceDraft[];
  /** The free intervals and zones of each face, by place: an interval of two faces is listed on both. */
  readonly stretches: readonly (readonly Stretch[])[];
  readonly fill: Omit<UnitFill, "storey" | "pours">;
}

/** Fills the soffits of a unit whose walls are filled. */
export type PlaceSoffits = (input: SoffitsInput) => readonly Soffit[];

/** Two places closer than this become one where the kit gives no rule `tieTolerance`, mm. */
const TIE_TOLERANCE = 2;

/**
 * Fills the walls of a unit. The same input gives the same result, whatever the order and the names of its walls. Without
 * `placeSoffits` the result has no soffits, and neither its bill nor its problems know of any; the walls are the same.
 */
export function fillWalls(input: FillInput, placeSoffits: PlaceSoffits | null): FilledUnit {
  const { unit, kit, storey, union } = input;
  const log = createProblemLog();
  const outline = buildOutline(unit, union);
  for (const { severity, kind, message, where } of outline.findings) log.add(severity, kind, message, where);
  const formed = formedFaces(outline, unit);
  const profiles = profilesOf({ faces: formed, outline, storey, kit, log });
  const leg = cornerLegOf(kit, log);
  const settled = settle({
    faces: formed,
    unit,
    clearHeightAt: (face) => clearHeightAt(formed[face]!, outline, storey),
    tolerance: tieTolerance(kit),
    cornerLeg: leg,
    log,
  });
  const { parts, stretches } = solveFaces(input, { outline, formed, profiles, settled, leg, log });
  const book = createPieceBook(kit, input.prefix);
  const drafts = draftFaces(input, { outline, settled, profiles, parts, leg, log, book });
  const fill = assemble(input, { outline, settled, drafts, stretches, leg, log, book, placeSoffits });
  return { outline, drafts, stretches, fill };
}

function clearHeightAt(face: FormedFace, outline: Outline, storey: Storey): Mm {
  const drop =
    face.exposure === "room" && face.room !== null ? soffitDropOf(outline.rooms[face.room]!, storey) : 0;
  return storey.clearHeight - drop;
}

/** The leg of the kit's square inside corners: its rule, else the shortest equal legs it has, else none. */
export function cornerLegOf(kit: Kit, log: ProblemLog): Mm {
  const rule = ruleValue(kit, "cornerLeg");
  if (rule !== undefined) return rule;
  const legs = familyOf(kit, "inside-corner")
    .filter((corner) => corner.legs[0] === corner.legs[1])
    .map((corner) => corner.legs[0]);
  if (legs.length > 0) return Math.min(...legs);
  log.add(
    "error",
    "missing-piece",
    "The kit has no inside corner with equal legs and no rule cornerLeg: inside corners cannot be formed; add one.",
    {},
  );
  return 0;
}

interface Stage {
  readonly outline: Outline;
  readonly settled: Settled;
  readonly leg: Mm;
  readonly log: ProblemLog;
}

function solveFaces(
  { unit, storey, kit, fillers, prefix, choose }: FillInput,
  stage: Stage & { formed: readonly FormedFace[]; profiles: readonly Profile[] },
) {
  const { outline, formed, profiles, settled, leg, log } = stage;
  const { faces } = settled;
  const faceId = (face: number) => faceName(prefix, face);
  const legs = placeCorners({
    faces,
    leg,
    hasPiece: (face) =>
      leg === 0 || profiles[face]!.heights.every((height) => squareCornerAt(kit, leg, height) !== null),
    roomName: (face) => roomNameOf(face, outline),
    faceId,
    log,
  });
  const layouts = layOut(faces, legs, leg);
  const parts = solveStretches({
    faces,
    layouts,
    tableFor: (face, opposite) =>
      tableOf(kit, [...profiles[face]!.heights, ...(opposite === null ? [] : profiles[opposite]!.heights)]),
    starts: startCorners(outline, formed, faces),
    leg,
    tieSpacing: ruleValue(kit, "tieSpacing") ?? null,
    pins: placePins(unit, storey, settled),
    tolerance: tieTolerance(kit),
    fillers,
    ...(choose !== undefined && { choose }),
    faceId,
    log,
  });
  return { parts, stretches: layouts.map((layout) => layout.stretches) };
}

function tieTolerance(kit: Kit): Mm {
  return ruleValue(kit, "tieTolerance") ?? TIE_TOLERANCE;
}

function roomNameOf(face: SettledFace, outline: Outline): string | null {
  return face.formed.room === null ? null : outline.rooms[face.formed.room]!.name;
}

function draftFaces(
  { kit, prefix }: FillInput,
  stage: Stage & { profiles: readonly Profile[]; parts: readonly (readonly FacePart[])[]; book: PieceBook },
): readonly FaceDraft[] {
  const { outline, settled, profiles, parts, leg, log, book } = stage;
  const firstOutMax = ruleValue(kit, "firstOutMax");
  return settled.faces.map((face): FaceDraft => {
    const own = parts[face.index]!;
    const isRoomFace = face.formed.exposure === "room" || face.formed.exposure === "open";
    const out = firstOutMax === undefined || !isRoomFace ? null : firstOutOf(own, firstOutMax);
    const { pieces, unfilled, shared } = piecesOfFace(face, own, {
      faces: settled.faces,
      profiles,
      kit,
      book,
      log,
      leg,
      firstOut: new Set(out === null ? [] : [out]),
    });
    return {
      settled: face,
      profile: profiles[face.index]!,
      id: faceName(prefix, face.index),
      room: roomNameOf(face, outline),
      parts: own,
      openings: openingsOn(face),
      pieces,
      unfilled,
      shared,
    };
  });
}

function faceName(prefix: string, face: number): string {
  return `${prefix}/f${face + 1}`;
}

function openingsOn(face: SettledFace): readonly FaceOpening[] {
  return face.openings
    .map(({ placed, low, high }): FaceOpening => {
      const { id, sill, head, formed } = placed.opening;
      return { id, x: xOf(face, low, high), width: high - low, sill, head, formed };
    })
    .sort((a, b) => a.x - b.x || a.sill - b.sill);
}

function assemble(
  { unit, kit, storey }: FillInput,
  stage: Stage & {
    drafts: readonly FaceDraft[];
    stretches: Parameters<typeof gatherCauses>[1];
    book: PieceBook;
    placeSoffits: PlaceSoffits | null;
  },
): FilledUnit["fill"] {
  const { outline, settled, drafts, stretches, leg, log, book, placeSoffits } = stage;
  const faces = numbered(drafts, book);
  const corners = placeEdges({ drafts, openings: settled.openings, kit, book, log });
  const reveals = placeReveals({ drafts, openings: settled.openings, kit, book, log });
  const joints = placeTies({ drafts, kit, log });
  const ties = joints.filter(isInKit);
  const fittings = placeFittings({ drafts, kit, book });
  const { slab, clearHeight } = storey;
  const given = { outline, unit, slab, clearHeight, drafts, corners, kit, book, log };
  const soffits = placeSoffits === null ? [] : placeSoffits(given);
  const accessories = countAccessories({ drafts, ties, edges: corners, reveals, soffits, kit });
  checkTieSpacing({ drafts, ties: joints, kit, log });
  checkStaggered(drafts, kit, log);
  checkTieRows({ drafts, kit, log });
  const tableFor = (face: number) => tableOf(kit, drafts[face]!.profile.heights);
  checkRings({ outline, drafts, kit, tableFor, log });
  checkSite({ outline, unit, storey, drafts, ties, kit, leg, log });
  const listed = {
    faces,
    corners,
    reveals,
    soffits,
    ties: ties.map(({ tie }) => tie),
    fittings,
    accessories,
  };
  const bill = billOf(listed, book);
  for (const problem of heavyPieces(bill, kit, book))
    log.add(problem.severity, problem.kind, problem.message, problem.where);
  return {
    unit: unit.id,
    rooms: roomsOf(outline, drafts),
    faces,
    corners,
    reveals,
    soffits,
    ties: listed.ties,
    fittings,
    accessories,
    bill,
    totals: countColumns(
      drafts.map((draft) => draft.parts),
      narrowUnder(kit),
    ),
    causes: gatherCauses(drafts, stretches, leg, tableFor),
    problems: log.list,
  };
}

// Numbers come last, face by face and left to right, so that they follow the geometry and nothing else.
function numbered(drafts: readonly FaceDraft[], book: PieceBook): readonly FilledFace[] {
  const shared = new Map<string, string>();
  const ends = settledEnds(drafts.map(({ settled }) => settled));
  return drafts.map((draft, index): FilledFace => {
    for (const piece of draft.pieces) {
      const key = draft.shared.size === 0 ? undefined : draft.shared.get(piece);
      piece.piece = (key === undefined ? undefined : shared.get(key)) ?? book.nextId();
      if (key !== undefined) shared.set(key, piece.piece);
    }
    const { formed, length } = draft.settled;
    return {
      id: draft.id,
      walls: formed.walls,
      room: draft.room,
      from: [roundTo(formed.from[0], 3), roundTo(formed.from[1], 3)],
      to: [roundTo(formed.to[0], 3), roundTo(formed.to[1], 3)],
      settled: ends[index]!,
      length,
      height: draft.profile.height,
      openings: draft.openings,
      pieces: draft.pieces,
      unfilled: draft.unfilled,
    };
  });
}

function roomsOf(outline: Outline, drafts: readonly FaceDraft[]): readonly FilledRoom[] {
  const faces = outline.rooms.map((): string[] => []);
  for (const draft of drafts) {
    const { room } = draft.settled.formed;
    if (room !== null) faces[room]!.push(draft.id);
  }
  return outline.rooms.map((room, k) => ({
    name: room.name,
    kind: room.kind ?? "room",
    area: roundTo(room.area, 4),
    faces: faces[k]!,
  }));
}

function heavyPieces(bill: UnitFill["bill"], kit: Kit, book: PieceBook): readonly Problem[] {
  const limit = ruleValue(kit, "personLimit");
  if (limit === undefined) return [];
  return bill.flatMap(({ code, quantity }): readonly Problem[] => {
    const mass = book.entry(code)?.mass ?? 0;
    if (mass <= limit) return [];
    const message =
      `${code} weighs ${roundTo(mass, 1)} kg, more than one person's limit of ${limit} kg: two people lift each of the ` +
      `${quantity}.`;
    return [{ severity: "warning", kind: "too-heavy", message, where: { code } }];
  });
}
