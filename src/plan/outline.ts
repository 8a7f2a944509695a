// From the drawn walls of a unit to the faces of its concrete.
//
//   walls → joints → bodies → union → rings on the drawn lines → faces, their walls, rooms, opposites

import type { Union } from "../geom/union.ts";
import { attributeFaces, type FaceEdge, isWallEnd, nameParts } from "./attribution.ts";
import { buildBodies } from "./body.ts";
import { cornerBetween } from "./corners.ts";
import { findCrossings, findDoubles, findVanished } from "./drawnTwice.ts";
import { type DrawnWall, directWalls } from "./drawnWall.ts";
import type { Face, Outline, OutlineFinding } from "./face.ts";
import { draftFaces, type FaceDraft } from "./faceDraft.ts";
import { findJoints } from "./joints.ts";
import { keepLength } from "./keep.ts";
import { mitreCorners } from "./mitre.ts";
import { findOpposites } from "./opposite.ts";
import type { Unit } from "./project.ts";
import { type Enclosure, findRooms } from "./rooms.ts";
import type { SettledPiece } from "./tidyRing.ts";
import { type TracedOutline, traceOutline } from "./traceOutline.ts";
import { placeText, sentence, wallText } from "./wording.ts";

/**
 * The outline of a unit's concrete: its faces, rings, rooms and what could not be followed in the drawing.
 * The result depends on the geometry of the walls alone, not on their order, direction or names.
 * Cost is near-linear in the number of walls.
 */
export function buildOutline(unit: Unit, union: Union): Outline {
  const findings: OutlineFinding[] = [];
  const drawn = directWalls(unit.walls);
  const { walls } = drawn;
  const joints = findJoints(walls);
  const bodies = buildBodies(walls, joints, mitreCorners(walls, joints, findings));
  const traced = traceOutline(bodies, union);
  const drafts = draftFaces(traced.rings);
  const parts = attributeFaces(drafts, traced);
  findings.push(
    ...findDoubles(drawn),
    ...findCrossings(walls),
    ...findVanished(walls, { joints, bodies, parts }),
    ...traced.settled.map((piece) => settledFinding(walls, traced, piece)),
  );
  const enclosure = findRooms(traced.rings, unit.rooms, findings);
  const opposites = findOpposites({ walls, faces: drafts, parts, edges: traced.edges });
  const faces = drafts.map((_, index): Face => {
    const face = faceOf(drafts, index, { parts: parts[index]!, walls, enclosure });
    return { ...face, opposite: opposites[index]! };
  });
  const byRing = traced.rings.map((): number[] => []);
  for (const face of faces) byRing[face.ring]!.push(face.index);
  return {
    faces,
    rings: enclosure.rings.map((ring, i) => ({ faces: byRing[i]!, ...ring })),
    rooms: enclosure.rooms,
    findings,
  };
}

function faceOf(
  drafts: readonly FaceDraft[],
  index: number,
  known: {
    readonly parts: readonly FaceEdge[];
    readonly walls: readonly DrawnWall[];
    readonly enclosure: Enclosure;
  },
): Omit<Face, "opposite"> {
  const draft = drafts[index]!;
  const fromCorner = cornerBetween(drafts[draft.previous]!, draft);
  const toCorner = cornerBetween(draft, drafts[draft.next]!);
  const isStandingOut = fromCorner.turn === "outside" && toCorner.turn === "outside";
  return {
    index,
    from: draft.from,
    to: draft.to,
    length: keepLength(draft.length),
    ring: draft.ring,
    next: draft.next,
    previous: draft.previous,
    fromCorner,
    toCorner,
    walls: nameParts(known.parts, known.walls),
    isFreeEnd: isStandingOut && isWallEnd(draft, known.parts, known.walls),
    room: known.enclosure.rings[draft.ring]!.room,
  };
}

function settledFinding(
  walls: readonly DrawnWall[],
  traced: TracedOutline,
  piece: SettledPiece,
): OutlineFinding {
  const wall = piece.source < 0 ? undefined : walls[traced.edges[piece.source]!.wall];
  const subject = wall === undefined ? "The outline" : sentence(`a face of ${wallText(wall)}`);
  const moved = Math.round(piece.aside * 10) / 10;
  return {
    severity: "warning",
    kind: "settled",
    message:
      `${subject} at ${placeText(piece.at)} is moved ${moved} mm sideways, flush with the face beside it. ` +
      "Draw the two on one line if that is meant.",
    where: wall === undefined ? { at: piece.at } : { wall: wall.names[0]!.id, at: piece.at },
  };
}
